import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { RETEST_AFTER, toldAt } from '../../src/engine/batch/curing/stages.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { cut } from '../../src/engine/text/excerpt.ts';
import { fold } from '../../src/engine/text/fold.ts';
import { unlearn } from '../../src/presenting/colour/learn.ts';
import { shareJars, unshareJars } from '../../src/presenting/colour/share-jars.ts';
import { plainReply } from '../../src/presenting/plain-reply.ts';
import {
  type Batch,
  findBatch,
  hideBatch,
  isShared,
  listBatches,
  newest,
  removeBatch,
  showBatch,
} from '../../src/records/batches/index.ts';
import { clockOf, preferencesOf } from '../../src/records/preferences.ts';
import { UNDO_MINUTES } from '../../src/records/undo/index.ts';
import { undoChoice } from '../shelf/follow-ups.ts';
import { dueOf } from './dates.ts';
import { portionView } from './view.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'batch-not-here': { readonly name: string };
  }
}

const itemsOf = (batches: readonly Batch[]): ReadonlySet<string> =>
  new Set(
    batches.flatMap(({ portions }) =>
      portions.flatMap(({ colours }) => colours.flatMap(({ item }) => item ?? [])),
    ),
  );

/** Shows a batch to the group it was poured in, and lets the group's pool learn from its jars. */
export async function sharedReply(
  asked: { readonly batch?: string | undefined },
  context: Context,
): Promise<Reply> {
  const { say, change, store, asker } = context;
  const book = context.book;
  const batch = await findBatch(book, asked.batch);
  if (batch.group !== context.group) refuse('batch-not-here', { name: batch.name });
  const cured = newest(batch, 'cured');
  const clock = clockOf(await preferencesOf(store, asker.id));
  const again =
    cured && toldAt({ stage: 'retest', at: cured.at.getTime() + RETEST_AFTER, exact: false }, clock);
  const also = again !== undefined && again > context.at ? [dueOf(batch, 'retest', again)] : [];
  await showBatch(book, batch, { ...change, also });
  const pooled = await shareJars(itemsOf([batch]), context);
  return plainReply(say.batches.sharedNow({ name: batch.name }), { batch: batch.id, pooled }, [
    { kind: 'rows', rows: batch.portions.map((_, at) => portionView(batch, at, say)) },
    ...(pooled.length > 0 ? [{ kind: 'text' as const, text: say.batches.pooled({ names: pooled }) }] : []),
  ]);
}

export async function unsharedReply(
  asked: { readonly batch?: string | undefined },
  context: Context,
): Promise<Reply> {
  const book = context.book;
  const batch = await findBatch(book, asked.batch);
  await hideBatch(book, batch);
  const others = await Promise.all(
    (await listBatches(book)).map(async one => ((await isShared(book, one.group, one.id)) ? [one] : [])),
  );
  const stay = itemsOf(others.flat());
  await unshareJars(new Set([...itemsOf([batch])].filter(item => !stay.has(item))), context);
  return plainReply(context.say.batches.unshared({ name: batch.name }), { batch: batch.id });
}

/** Only its whole name will do, or its id. */
export async function removedReply(asked: { readonly batch: string }, context: Context): Promise<Reply> {
  const book = context.book;
  const batch = await findBatch(book, asked.batch);
  if (batch.id !== asked.batch && fold(batch.name) !== fold(asked.batch))
    refuse('batch-unknown', { asked: cut(asked.batch, 60), nearest: [batch.name] });
  await removeBatch(book, batch, context.change);
  await unlearn(batch.id, context);
  const { say, change } = context;
  return {
    ...plainReply(say.batches.removed({ name: batch.name }), { batch: batch.id }, [
      { kind: 'text', text: say.undo.within({ minutes: UNDO_MINUTES }) },
    ]),
    choices: undoChoice({ repeated: false }, change.cause, context),
  };
}
