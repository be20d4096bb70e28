import type { Context } from '../../src/conversation/context.ts';
import { readDay } from '../../src/engine/challenges/day.ts';
import { dateAt, instantOf } from '../../src/engine/challenges/wall-time.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { excerpt } from '../../src/engine/text/excerpt.ts';
import type { Batch } from '../../src/records/batches/index.ts';
import { clockOf, preferencesOf } from '../../src/records/preferences.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'batch-day-unfit': { readonly text: string };
    'batch-day-before-pour': { readonly name: string; readonly date: string };
  }
}

const DAY = 86_400_000;
/** Older notebooks are not entered one by one. */
const OLDEST = 20 * 366 * DAY;

/**
 * When something was done: now unless a day is said, `2026-11-03`, `yesterday`, `ayer`; of another day noon by the
 * member's clock. Throws a Refusal: `batch-day-unfit` for what is no day, is still to come or is ages ago, `date-impossible`.
 */
export async function dayOf(text: string | undefined, context: Context): Promise<Date> {
  const { at } = context;
  if (text === undefined) return new Date(at);
  const { zone } = clockOf(await preferencesOf(context.store, context.asker.id));
  const day = readDay(text, { zone, now: at }) ?? refuse('batch-day-unfit', { text: excerpt(text) });
  const noon = instantOf({ ...day, hour: 12, minute: 0 }, zone).at;
  if (dateAt(noon, zone) === dateAt(at, zone)) return new Date(at);
  if (noon > at || noon < at - OLDEST) refuse('batch-day-unfit', { text: excerpt(text) });
  return new Date(noon);
}

/** {@link dayOf} for what follows the pour. Throws a Refusal `batch-day-before-pour` as well. */
export async function dayAfterPour(
  text: string | undefined,
  batch: Pick<Batch, 'name' | 'at'>,
  context: Context,
): Promise<Date> {
  const at = await dayOf(text, context);
  const { zone } = clockOf(await preferencesOf(context.store, context.asker.id));
  const [poured, then] = [dateAt(batch.at.getTime(), zone), dateAt(at.getTime(), zone)];
  if (then < poured) refuse('batch-day-before-pour', { name: batch.name, date: poured });
  return at;
}
