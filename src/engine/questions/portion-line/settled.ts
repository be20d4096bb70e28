import type { Portion } from '../../quantities/amount.ts';
import { figureText } from '../../quantities/for-readers.ts';
import { parsePortionRange } from '../../quantities/told/portion.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import type { Item, Product, Quantity } from './item.ts';
import { isTaken, type PartsTold, partsIn } from './parts.ts';
import { multiplied } from './products.ts';

/** How a portion was reckoned, each figure as it was told, and what it comes to. */
export type Reckoned =
  | {
      readonly by: 'count';
      readonly count: number;
      readonly noun: string;
      readonly each: string;
      readonly comes: Portion;
    }
  | { readonly by: 'share'; readonly share: string; readonly whole: string; readonly comes: Portion }
  | { readonly by: 'lost'; readonly whole: string; readonly lost: string; readonly comes: Portion };

/** The portion of a question and the whole it is of, in words that the grammar of portions reads. */
export type Settled = {
  readonly whole: string | undefined;
  readonly part: string | undefined;
  readonly reckoned: Reckoned | undefined;
  /** Portions that may be meant as well. */
  readonly others: readonly string[];
  /** The amount that is the portion, or the whole that it is of. */
  readonly from: Quantity | undefined;
};

/** Two amounts within this are one that was told twice, by scales and by a spoon's rounding. */
const SAME = 0.015;
const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= SAME * Math.max(a, b);

const isPortion = (item: Item): item is Quantity =>
  item.is === 'amount' &&
  !item.isSpoons &&
  !item.isOther &&
  !item.told.perPound &&
  // Of weights alone it may be unsaid what they are of: a volume is of batter where nothing else is named.
  (item.told.of === 'batter' || item.told.of === 'oils' || item.told.of === 'unsaid');

const WEIGHED = /\b(?:g|gr|grs|grams?|gramos?|kg|kgs|kilos?|oz|ounces?|lbs?|pounds?|libras?|onzas?)\b/u;

/** An amount as an option of a portion: what it is of goes with it. */
export const asPortion = ({ told: { text, of } }: Quantity): string => {
  if (of === 'oils') return `${text} oils`;
  return of === 'batter' && WEIGHED.test(text) ? `${text} batter` : text;
};

const comesOf = (text: string): Portion => parsePortionRange(text).low;
/** In grams or millilitres, with what it is of. */
const plainly = ({ told: { measure, of } }: Quantity, value: number): string =>
  measure === 'volume'
    ? `${figureText(value)} ml`
    : `${figureText(value)} g${of === 'oils' ? ' oils' : of === 'batter' ? ' batter' : ''}`;

const unsettled: Settled = {
  whole: undefined,
  part: undefined,
  reckoned: undefined,
  others: [],
  from: undefined,
};

/**
 * Which amount of a question is the portion, with counts and shares multiplied out. `isBase` tells of an amount whether a rate is
 * told to it ("per 500 g"). Pure.
 */
export function settled(all: readonly Item[], isBase: (one: Quantity) => boolean): Settled {
  const { items, doubts } = multiplied(all);
  const told = items.filter(isPortion);
  const portions = told.some(one => !isBase(one)) ? told.filter(one => !isBase(one)) : told;
  const taken = portions.find(
    one => (portions.length > 1 || one.told.of === 'batter') && isTaken(items, one),
  );
  const main =
    taken && portions.length > 1
      ? portions.find(one => one !== taken)
      : (taken ?? portions.find(({ told: { of } }) => of !== 'unsaid') ?? portions[0]);
  if (!main) return unsettled;
  const left = leftOf(items, main);
  if (left) return left;
  if (taken && taken !== main) return ofAmount(taken, asPortion(main));
  const parts = partsIn(items);
  const settledPart = partOf(items, main, { parts, portions });
  const rest = portions.filter(
    one => one !== settledPart.from && !isOfThing(items, one) && isAnother(one, main, portions),
  );
  const more = [...doubts.filter(({ from }) => from <= main.from), ...rest].map(one => asPortion(one));
  return { ...settledPart, others: [...settledPart.others, ...more] };
}

/** "500 g of charcoal" is a bag of it. */
const isOfThing = (items: readonly Item[], one: Quantity): boolean => {
  const [next, behind] = items.slice(items.indexOf(one) + 1);
  return next?.is === 'thing' || (/^(?:of|de)$/u.test(next?.text ?? '') && behind?.is === 'thing');
};

/** Oils with lye and water come to 1.2 to 1.7 times their weight; common practice (no source). */
const [LEAST_BATTER, MOST_BATTER] = [1.2, 1.7] as const;
/** Lighter ones may be of powder. */
const LEAST_PORTION_G = 100;

/** Whether an amount is of another portion than the one that was chosen, and no part, sum or other measure of it. */
function isAnother(one: Quantity, main: Quantity, all: readonly Quantity[]): boolean {
  if (one === main || one.value < LEAST_PORTION_G) return false;
  if (one.told.measure !== main.told.measure || isSame(one.value, main.value)) return false;
  const ratio = Math.max(one.value, main.value) / Math.min(one.value, main.value);
  if (one.told.of !== main.told.of && ratio >= LEAST_BATTER && ratio <= MOST_BATTER) return false;
  const others = all.filter(other => other !== main && other.told.measure === main.told.measure);
  return !isSame(
    others.reduce((sum, { value }) => sum + value, 0),
    main.value,
  );
}

function ofAmount(one: Quantity, whole = asPortion(one)): Settled {
  const part = asPortion(one);
  const { product } = one;
  const reckoned = product && countedOf(product, product.count, part);
  return { whole, part, reckoned, others: [], from: one };
}

/** One of them needs no reckoning. */
const countedOf = ({ noun, each }: Product, count: number, part: string): Reckoned | undefined =>
  count > 1 ? { by: 'count', count, noun, each, comes: comesOf(part) } : undefined;

type Given = { readonly parts: PartsTold; readonly portions: readonly Quantity[] };

function partOf(items: readonly Item[], main: Quantity, { parts, portions }: Given): Settled {
  const { product } = main;
  const whole = asPortion(main);
  if (product?.of === 'parts') {
    const each = { ...main, told: { ...main.told, text: product.each } };
    return { whole, part: asPortion(each), reckoned: undefined, others: [], from: main };
  }
  const counts = countsTold(items, main, parts);
  if (product && counts.length > 0) return ofCounts(main, counts);
  const shares = counts.length > 0 ? counts : parts.shares;
  const [share] = shares;
  if (share === undefined || parts.isMeasured || isShareItself(main)) return ofAmount(main);
  const size = portions.find(
    one =>
      one !== main && one.told.measure === main.told.measure && isSame(one.value, main.value * share.value),
  );
  if (size) return ofAmount(size, whole);
  const read = shares.map(({ share: one }) => `${one} of ${product ? plainly(main, main.value) : whole}`);
  const [first, ...others] = read;
  const reckoned: Reckoned = { by: 'share', share: share.share, whole, comes: comesOf(first!) };
  return { whole, part: first, reckoned, others: parts.isBeside ? [...others, whole] : others, from: main };
}

/** "Half of 900 g" was read as one amount. */
const isShareItself = ({ told: { text } }: Quantity): boolean =>
  /\d\/\d of |^(?:(?:an?|one|la|un|una) )?(?:half|thirds?|quarters?|mitad|tercio|cuarto)\b/u.test(text);

type Part = { readonly share: string; readonly value: number; readonly count?: number };

/** How many of what is counted are meant: "3 of them", or as many as each colour has. */
function countsTold(items: readonly Item[], main: Quantity, { some }: PartsTold): readonly Part[] {
  const cups = /^(\d{1,2}) (?:cups?|tazas?)$/u.exec(main.told.text)?.[1];
  const all =
    main.product?.count ??
    (cups === undefined ? undefined : Number(cups)) ??
    items.flatMap(item => (item.is === 'count' ? [item.count] : item.is === 'split' ? [item.parts] : []))[0];
  if (all === undefined) return [];
  // "One of them wants it dark, two cups of it": of cups that are told later nobody speaks yet.
  const isBefore = cups !== undefined && items.findIndex(({ is }) => is === 'some') < items.indexOf(main);
  if (isBefore) return [];
  const partOfAll = (count: number): Part => ({ share: `${count}/${all}`, value: count / all, count });
  const told = some.filter((count): count is number => count !== 'all' && count < all);
  if (told.length > 0) return told.map(partOfAll);
  const perColour = main.product ? ofColours(items) : [];
  const sum = perColour.reduce((total, count) => total + count, 0);
  return perColour.length > 1 && sum === all ? [...new Set(perColour)].map(partOfAll) : [];
}

/** "4 pink 4 green 4 yellow". */
const ofColours = (items: readonly Item[]): readonly number[] =>
  items.flatMap((item, at) => {
    const behind = items[at + 1];
    const next = /^(?:with|con|of|de|in|en)$/u.test(behind?.text ?? '') ? items[at + 2] : behind;
    const isColour = next?.is === 'thing' || (next?.is === 'word' && isColourWord(foldedColour(next.text)));
    return item.is === 'figure' && Number.isInteger(item.value) && isColour ? [item.value] : [];
  });

function ofCounts(main: Quantity, counts: readonly Part[]): Settled {
  const product = main.product!;
  const read = counts.map(({ count = 1 }) => {
    const text = count === 1 ? product.each : `${count} x ${product.each}`;
    return { count, text: asPortion({ ...main, told: { ...main.told, text } }) };
  });
  const [first, ...others] = read as [(typeof read)[number], ...typeof read];
  const reckoned = countedOf(product, first.count, first.text);
  return {
    whole: asPortion(main),
    part: first.text,
    reckoned,
    others: others.map(({ text }) => text),
    from: main,
  };
}

/** "500 g but I spilt 40": what is gone is no part of it. */
function leftOf(items: readonly Item[], main: Quantity): Settled | undefined {
  const at = items.findIndex(({ is }) => is === 'lost');
  const gone = items[at + 1];
  if (at < items.indexOf(main) || (gone?.is !== 'figure' && gone?.is !== 'amount')) return undefined;
  const own = Number(/^\d+(?:[.,]\d+)?/u.exec(main.told.text)?.[0].replace(',', '.'));
  if (gone.is === 'amount' && (gone.told.measure !== main.told.measure || gone.isSpoons)) return undefined;
  const lost = gone.is === 'amount' ? gone.value : (gone.value * main.value) / own;
  if (!(lost > 0 && lost < main.value)) return undefined;
  const part = plainly(main, main.value - lost);
  const reckoned: Reckoned = { by: 'lost', whole: asPortion(main), lost: gone.text, comes: comesOf(part) };
  return { whole: part, part, reckoned, others: [], from: main };
}
