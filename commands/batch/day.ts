import type { Context } from '../../src/conversation/context.ts';
import { dateAt, instantOf } from '../../src/engine/challenges/wall-time.ts';
import { excerpt } from '../../src/engine/quantities/excerpt.ts';
import { refuse } from '../../src/engine/refusal.ts';
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
 * member's clock. Throws a Refusal `batch-day-unfit` for what is no day, is still to come or is ages ago.
 */
export async function dayOf(text: string | undefined, context: Context): Promise<Date> {
  const { at } = context;
  if (text === undefined) return new Date(at);
  const { zone } = clockOf(await preferencesOf(context.store, context.asker.id));
  const said = text.trim().toLowerCase();
  const days: Readonly<Record<string, number>> = { today: 0, hoy: 0, yesterday: 1, ayer: 1 };
  const back = Object.hasOwn(days, said) ? days[said] : undefined;
  if (back === 0) return new Date(at);
  const date = back === undefined ? said : dateAt(at - back * DAY, zone);
  const [, year, month, day] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(date)?.map(Number) ?? [];
  if (!year || !month || !day) return refuse('batch-day-unfit', { text: excerpt(text) });
  const noon = instantOf({ year, month, day, hour: 12, minute: 0 }, zone).at;
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
