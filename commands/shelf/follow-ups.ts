import { z } from 'zod';
import { followUp } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Choice, Reply } from '../../src/conversation/reply.ts';
import { relearn } from '../../src/presenting/colour/learn.ts';
import { pourUndone } from '../../src/presenting/pour-undone.ts';
import { batchAmong, readBatch } from '../../src/records/batches/index.ts';
import { type Outcome, removeItem, undoOnShelf } from '../../src/records/shelf/index.ts';
import { UNDO_MINUTES } from '../../src/records/undo/index.ts';
import type { Words } from '../../src/words/index.ts';
import { changedReply } from './view.ts';

/** Takes back what one answer changed of a member's records, for ten minutes. */
const undo = followUp({
  seenBy: 'asker',
  hours: 1,
  args: { cause: z.string() },
  answer: (made, context) => undone(made, context),
});

/** Takes a change back and says how things stand now. Throws the Refusals of `undoOnShelf`. */
export async function undone(made: { readonly cause: string }, context: Context): Promise<Reply> {
  const { shelf, at, say, book } = context;
  if (await readBatch(book, made.cause)) return pourUndone(made.cause, context);
  const done = await undoOnShelf(shelf, made, { at: new Date(at) });
  if ('change' in done) {
    const { what, name, repeated, back } = done.change;
    const batch = what === 'batch-removed' ? batchAmong(back) : undefined;
    if (batch !== undefined) await relearn(batch, context);
    return plainReply(repeated ? say.undo.already : say.undo.done[what]({ name }), done.change);
  }
  const { outcomes } = done;
  if (outcomes.some(({ repeated }) => repeated)) return plainReply(say.undo.already, { outcomes });
  const [only, other] = outcomes;
  if (only && !other) return changedReply(backHeadline(only, say), only, say);
  const lefts = outcomes.map(({ name, left = 0 }) => say.match.left({ name, grams: say.shelf.grams(left) }));
  return plainReply(say.undo.several({ lefts }), { outcomes });
}

const backHeadline = ({ action, name, left }: Outcome, say: Words): string =>
  action === 'new-lot'
    ? say.undo.lot({ name, left: left === undefined ? undefined : say.shelf.grams(left) })
    : say.shelf.undone({ name, left: left ?? 0 });

const plainReply = (headline: string, data: object): Reply => ({
  kind: 'reply',
  headline,
  data,
  blocks: [],
  cautions: [],
});

/** The button that takes back what was changed under a cause; none where nothing was changed now. */
export const undoChoice = (
  { repeated }: { readonly repeated: boolean },
  cause: string,
  { say }: Pick<Context, 'say'>,
): readonly Choice[] =>
  repeated ? [] : [{ kind: 'button', label: say.undo.button, follow: undo.with({ cause }) }];

/** The same for a removal, with how long there is for it. */
export function removedReply(outcome: Outcome, { change, say }: Context): Reply {
  const reply = changedReply(say.shelf.removed(outcome), { ...outcome, low: false }, say);
  if (outcome.repeated) return reply;
  return {
    ...reply,
    blocks: [...reply.blocks, { kind: 'text', text: say.undo.within({ minutes: UNDO_MINUTES }) }],
    choices: undoChoice(outcome, change.cause, { say }),
  };
}

/** Removes an item once its owner has said that its history may go. */
const remove = followUp({
  seenBy: 'asker',
  hours: 1,
  args: { item: z.string() },
  async answer({ item }, context) {
    return removedReply(await removeItem(context.shelf, item, context.change), context);
  },
});

/** Asks whether an item may go with its history. */
export const askRemove = (
  { id, name, lines }: { readonly id: string; readonly name: string; readonly lines: number },
  { say }: Pick<Context, 'say'>,
): Reply => ({
  kind: 'reply',
  headline: say.shelf.removeSure({ name, lines }),
  data: { asks: 'remove', id, name, lines },
  blocks: [],
  cautions: [],
  choices: [
    {
      kind: 'button',
      label: say.shelf.removeYes({ name }),
      weight: 'danger',
      follow: remove.with({ item: id }),
    },
  ],
});

export const shelfFollowUps = { undo, remove };
