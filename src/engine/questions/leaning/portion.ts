import { amountOf } from '../portion-line/amount-at.ts';
import type { Slots } from './turn/slots.ts';

/* What a turn makes of the portion before: another amount, of something else, so many times. */

const OIL_WORD = / ?(?:of |de )?(?:oils?|fats?|aceites?|grasas?)$/u;
const BATTER_WORD = / ?(?:of |de )?(?:batter|soap|masa|mezcla|jabon)$/u;

const isOfOils = (portion: string) => OIL_WORD.test(portion);
const bare = (portion: string) => portion.replace(OIL_WORD, '').replace(BATTER_WORD, '');

/** A portion with the word for what it is of, in words that the options read. */
const ofWhat = (amount: string, of: 'oils' | 'batter' | undefined): string =>
  of === undefined ? bare(amount) : `${bare(amount)} ${of}`;

/** Bare figures of oils or batter are grams from here on; common practice (no source). */
const LEAST_GRAMS = 100;

/** The new portion: a weight of which nothing is said is of what the one before was of. */
export function portionLaid(
  before: string | undefined,
  { amount, of, figure, times: multiple, share }: Slots,
): string | undefined {
  const times = multiple ?? share;
  const ofBefore = before !== undefined && isOfOils(before) ? 'oils' : undefined;
  if (amount) {
    if (amount.of === 'powder' || amount.of === 'oil' || amount.perPound) return undefined;
    if (of === undefined && amount.measure === 'volume') return amount.text;
    const told = of ?? (amount.of === 'unsaid' ? undefined : amount.of);
    return ofWhat(amount.text, told ?? ofBefore);
  }
  if (figure !== undefined && of !== undefined && figure >= LEAST_GRAMS) return ofWhat(`${figure} g`, of);
  if (before === undefined) return undefined;
  const scaled =
    times !== undefined
      ? timesPortion(before, times)
      : figure !== undefined
        ? withFigure(before, figure)
        : before;
  if (scaled === undefined || (scaled === before && of === undefined)) return undefined;
  return of === undefined ? scaled : ofWhat(scaled, of);
}

const FIRST_FIGURE = /^(\d+(?:[.,]\d+)?)(?= )/u;
/** "And for 3": so many of the same unit. */
export const withFigure = (before: string, figure: number): string | undefined =>
  FIRST_FIGURE.test(before) && figure > 0 ? before.replace(FIRST_FIGURE, String(figure)) : undefined;

/** A portion so many times: in its own unit where it begins with a figure, else in grams or millilitres. */
function timesPortion(portion: string, times: number): string | undefined {
  const round = (value: number) => String(Number(value.toPrecision(4)));
  const figure = FIRST_FIGURE.exec(portion)?.[1];
  if (figure !== undefined && !/^\d+ \d/u.test(portion))
    return portion.replace(FIRST_FIGURE, round(times * Number(figure.replace(',', '.'))));
  const amount = amountOf(bare(portion));
  if (!amount) return undefined;
  const [value, unit] = amount.measure === 'mass' ? [amount.grams, 'g'] : [amount.millilitres, 'ml'];
  return ofWhat(`${round(value * times)} ${unit}`, isOfOils(portion) ? 'oils' : undefined);
}
