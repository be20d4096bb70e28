import { refuse } from '../refusal.ts';
import { daysLater, instantOf, type WallTime, wallTimeAt } from './wall-time.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'challenge-date-unreadable': { readonly text: string };
  }
}

/** A day as it is written, whether or not any calendar has it. Months count from 1. */
export type Day = Pick<WallTime, 'year' | 'month' | 'day'>;

/** Days that a word tells, English and Spanish, as days from today. */
const TOLD: ReadonlyMap<string, number> = new Map([
  ['today', 0],
  ['hoy', 0],
  ['yesterday', -1],
  ['ayer', -1],
]);

/**
 * Reads a day, `2026-11-03` or `2026-1-5` (year, month, day: ISO 8601), and, where a clock is given (a zone, and now in ms
 * since 1970 UTC), `today`, `yesterday`, `hoy`, `ayer` as well. Undefined for anything else.
 */
export function readDay(
  text: string,
  clock?: { readonly zone: string; readonly now: number },
): Day | undefined {
  const said = text.trim().toLowerCase();
  const told = clock && TOLD.get(said);
  if (clock && told !== undefined) {
    const { year, month, day } = daysLater(wallTimeAt(clock.now, clock.zone), told);
    return { year, month, day };
  }
  const found = /^(\d{4})-(\d{1,2})-(\d{1,2})$/u.exec(said);
  return found ? { year: Number(found[1]), month: Number(found[2]), day: Number(found[3]) } : undefined;
}

/** A day of the calendar. Throws a Refusal: `challenge-date-unreadable` for anything else, `date-impossible` for a day that no calendar has. */
export function calendarDay(text: string): Day {
  const day = readDay(text) ?? refuse('challenge-date-unreadable', { text });
  startOfDay(day, 'UTC');
  return day;
}

/** The instant at which a day begins in a zone, ms since 1970 UTC. Throws a Refusal `date-impossible`. */
export const startOfDay = (day: Day, zone: string): number =>
  instantOf({ ...day, hour: 0, minute: 0 }, zone).at;
