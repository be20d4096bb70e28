import { z } from 'zod';
import { followUp } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { type OtherBars, otherBars, parseWeights } from '../../src/engine/batch/curing/weight-loss.ts';
import { plainReply } from '../../src/presenting/plain-reply.ts';
import { askedLineOf, keepAskedLine } from '../../src/records/asked/index.ts';
import { batchOf, findBatch, noteEvent, weighingsOf } from '../../src/records/batches/index.ts';
import { clockOf, kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { undoChoice } from '../shelf/follow-ups.ts';
import { dayAfterPour } from './day.ts';
import { dryingView, nextBlock } from './view.ts';

type WeighedAsked = {
  readonly batch?: string | undefined;
  readonly weights?: string | undefined;
  readonly on?: string | undefined;
};

/**
 * Notes that it was cut, or weighed; either with the weights of its bars. Unless they are `sure`, bars that cannot be the ones
 * weighed before are asked about first: their loss would tell nothing.
 */
export async function weighedReply(
  kind: 'cut' | 'weighed',
  asked: WeighedAsked,
  context: Context,
  { sure = false }: { readonly sure?: boolean } = {},
): Promise<Reply> {
  const { say, store, asker, change } = context;
  const book = context.book;
  const found = await findBatch(book, asked.batch);
  const wishes = await preferencesOf(store, asker.id);
  const at = await dayAfterPour(asked.on, found, context);
  const grams = asked.weights === undefined ? undefined : [...parseWeights(asked.weights, kitchenOf(wishes))];
  const doubt = grams && !sure ? otherBars(weighingsOf(found), { at: at.getTime(), grams }) : undefined;
  if (doubt) return askOtherBars(kind, { doubt, batch: found, asked }, context);
  const did = kind === 'cut' ? { kind, ...(grams && { grams }) } : { kind, grams: grams ?? [] };
  const noted = await noteEvent(book, found, did, { at, now: change.at, cause: change.cause });
  const batch = await batchOf(book, found.id);
  const lines = [...(noted ? [] : [say.shelf.repeated]), ...dryingView(batch, say)];
  const headline =
    kind === 'cut'
      ? say.batches.cut({ name: batch.name, bars: grams?.length })
      : say.batches.weighed({ name: batch.name, grams: grams ?? [] });
  return {
    ...plainReply(headline, { batch: batch.id, grams, noted }, [
      ...(lines.length > 0 ? [{ kind: 'text' as const, text: lines.join('\n') }] : []),
      ...nextBlock(batch, clockOf(wishes), context),
    ]),
    choices: undoChoice({ repeated: !noted }, change.cause, context),
  };
}

/** Asks whether these are the bars that were weighed before; nothing is kept until a press says so. */
async function askOtherBars(
  kind: 'cut' | 'weighed',
  {
    doubt,
    batch,
    asked,
  }: {
    readonly doubt: OtherBars;
    readonly batch: { readonly id: string; readonly name: string };
    readonly asked: WeighedAsked;
  },
  context: Context,
): Promise<Reply> {
  const { say, shelf, idempotencyKey: line, change } = context;
  const { batch: _, ...rest } = asked;
  const given = Object.fromEntries(
    Object.entries({ ...rest, batch: batch.id }).filter(([, value]) => value !== undefined),
  );
  await keepAskedLine(
    shelf,
    line,
    { command: kind, given: given as Record<string, string>, candidates: [] },
    change.at,
  );
  const { why, before, now } = doubt;
  return {
    ...plainReply(
      say.batches.otherBars({ name: batch.name, why, before: before.grams, now: now.grams }),
      { batch: batch.id, asks: why, noted: false },
      [{ kind: 'text', text: say.batches.sameBars }],
    ),
    choices: [{ kind: 'button', label: say.batches.keepWeights, follow: keepAnyway.with({ line }) }],
  };
}

const keepAnyway = followUp({
  seenBy: 'asker',
  hours: 24,
  args: { line: z.string() },
  async answer({ line }, context) {
    const { command, given } = await askedLineOf(context.shelf, line);
    return weighedReply(command === 'cut' ? 'cut' : 'weighed', given as WeighedAsked, context, {
      sure: true,
    });
  },
});

export const weighingFollowUps = { 'keep-anyway': keepAnyway };
