import { z } from 'zod';
import { followUp } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Choice, Reply } from '../../src/conversation/reply.ts';
import { type Outcome, removeItem, undoMovement } from '../../src/records/shelf/index.ts';
import { changedReply } from './view.ts';

/** Takes back a use or a restock, for ten minutes. */
const undo = followUp({
  seenBy: 'asker',
  hours: 1,
  args: { item: z.string(), cause: z.string() },
  answer: (movement, context) => undone(movement, context),
});

/** Takes a movement back and says what is left now. */
export async function undone(
  movement: { readonly item: string; readonly cause: string },
  { shelf, at, say }: Context,
): Promise<Reply> {
  const outcome = await undoMovement(shelf, movement, { at: new Date(at) });
  const { name, left = 0 } = outcome;
  return changedReply(say.shelf.undone({ name, left }), outcome, say);
}

/** The button that takes a movement back; none where nothing was moved now. */
export const undoChoice = (
  { id, change, repeated }: Outcome,
  cause: string,
  { say }: Pick<Context, 'say'>,
): readonly Choice[] =>
  change === undefined || repeated
    ? []
    : [{ kind: 'button', label: say.shelf.undo, follow: undo.with({ item: id, cause }) }];

/** Removes an item once its owner has said that its history may go. */
const remove = followUp({
  seenBy: 'asker',
  hours: 1,
  args: { item: z.string() },
  async answer({ item }, { shelf, change, say }) {
    const outcome = await removeItem(shelf, item, change);
    return changedReply(say.shelf.removed(outcome), { ...outcome, low: false }, say);
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
