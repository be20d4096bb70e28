import type { Unit } from './item.ts';

/** From what figure a bare one is grams. */
export const LEAST_GRAMS = 10;
/** Bare figures beside pounds or kilos up to these are of that unit. */
const MOST_POUNDS = 20;
const MOST_KILOS = 9;
const MOST_OUNCES = 200;

/** Beside a pound and a half of one oil, eight of another are as likely ounces: so many times the most that is told with its unit. */
const MOST_TIMES = 2;

/** The unit that a bare figure has beside those that are told, `most` the largest of them; undefined where it may be either of two. Pure. */
export function unitBeside(figure: number, units: ReadonlySet<Unit>, most: number): Unit | undefined {
  const [one, another, third] = [...units];
  if (third !== undefined) return undefined;
  if (another !== undefined)
    return units.has('g') && units.has('kg') && figure >= LEAST_GRAMS ? 'g' : undefined;
  if (one === 'g') return figure >= LEAST_GRAMS ? 'g' : undefined;
  if (one === 'kg') return figure > MOST_KILOS ? (figure >= LEAST_GRAMS ? 'g' : undefined) : 'kg';
  if (one === 'oz') return figure <= MOST_OUNCES ? 'oz' : undefined;
  if (one === 'lb') return figure <= Math.min(MOST_POUNDS, MOST_TIMES * most) ? 'lb' : undefined;
  return undefined;
}
