import { refuse } from '../refusal.ts';
import { excerpt } from '../text/excerpt.ts';
import { type AmountPhrase, amountPhrase } from './spoken/amount-phrases.ts';
import { isMetricUnit, measuredBy, OWN_MEASURE, ratioOf } from './told-in-two-units.ts';
import { unitSize } from './unit-words.ts';
import { MEASURES, type Measures } from './units.ts';
import { LONGEST_AMOUNT, readWritten, type Term } from './written.ts';

/** A number with its unit, for a sentence; these four are written alike in every language. */
export type Quantity = { readonly value: number; readonly unit: 'ml' | 'l' | 'g' | 'kg' };

/** What a member wrote, in SI: millilitres of something poured or grams of something weighed. */
export type Volume = { readonly measure: 'volume'; readonly millilitres: number };
export type Mass = { readonly measure: 'mass'; readonly grams: number };
export type Amount = Volume | Mass;

/** How much batter is to be coloured; `oils` when the member counts by the oils that went into it. */
export type Portion = Amount & { readonly of: 'batter' | 'oils' };

declare module '../refusal.ts' {
  interface Reasons {
    'amount-without-unit': { text: string };
    'amount-unit-unknown': { unit: string };
    'amount-unreadable': { text: string };
    /** `low` and `high` are the two ends as they were written, each an amount. */
    'amount-range': { text: string; low: string; high: string };
    'amount-ambiguous': { text: string; small: string; large: string };
    /** `text` as it was written, or what the amount came to. */
    'amount-out-of-range': { text: string | Quantity; low: Quantity; high: Quantity };
  }
}

/** Millilitres, or grams, that an amount may be: above `low`'s own value or equal to it, up to `high`. */
export type Bounds = { readonly low: number; readonly high: number };

/** 200 l, or the 200 kg that about fill them. */
const ANY_AMOUNT: Bounds = { low: 0.001, high: 200_000 };

/**
 * Reads an amount such as `1 1/2 cups`, `250ml`, `1 lb 4 oz`, `media taza`. Spoons and cups are those of `measures`.
 * "About", "two cups", `1/3 of 3 lb` and `10 bars of 4 oz` are read too. Throws a Refusal: `amount-without-unit`,
 * `amount-unit-unknown`, `amount-unreadable`, `amount-range` (`2-3 cups`), `amount-ambiguous` (`1,500 oz`),
 * `amount-out-of-range`.
 */
export function parseAmount(
  text: string,
  measures: Measures = MEASURES.us,
  bounds: Bounds = ANY_AMOUNT,
): Amount {
  const phrase = amountPhrase(text.slice(0, LONGEST_AMOUNT + 1));
  const { amount, words } = readPhrase(text, phrase, { measures, bounds });
  if (words.length > 0) refuse('amount-unit-unknown', { unit: excerpt(words.join(' ')) });
  return amount;
}

/** What a text of which `phrase` was made says, and its words that are no units. Throws as {@link parseAmount} does. */
export function readPhrase(
  text: string,
  { low, high }: AmountPhrase,
  { measures, bounds }: { readonly measures: Measures; readonly bounds: Bounds },
): { amount: Amount; words: readonly string[] } {
  if (high !== undefined)
    refuse('amount-range', { text: excerpt(text), low: excerpt(low), high: excerpt(high) });
  const written = text.length > LONGEST_AMOUNT ? undefined : readWritten(low);
  if (written === undefined || written.terms.length === 0)
    refuse('amount-unreadable', { text: excerpt(text) });
  const { terms, words, negative } = written;
  if (terms.some(term => term.unit === undefined)) {
    if (words.length > 0) refuse('amount-unit-unknown', { unit: excerpt(words.join(' ')) });
    if (terms.length > 1) refuse('amount-unreadable', { text: excerpt(text) });
    refuse('amount-without-unit', { text: excerpt(text) });
  }
  const sizes = terms.map(term => unitSize(term.unit!, measures));
  const { measure } = sizes[0]!;
  if (sizes.some(size => size.measure !== measure)) refuse('amount-unreadable', { text: excerpt(text) });
  const told = terms.map((term, at) => ({
    ...term,
    value: settle(term, sizes[at]!.size, bounds, text),
    size: sizes[at]!.size,
  }));
  const total = toldOnce(told) ?? refuse('amount-unreadable', { text: excerpt(text) });
  const value = negative ? -total : total;
  if (!(value >= bounds.low && value <= bounds.high))
    refuse('amount-out-of-range', range(text, measure, bounds));
  return {
    amount: measure === 'volume' ? { measure, millilitres: value } : { measure, grams: value },
    words,
  };
}

type TermTold = Term & { readonly value: number; readonly size: number };

/**
 * What amounts side by side come to: `1 lb 4 oz` is a sum, `16 oz (454 g)` and `a pint, 568 ml` are one amount that was told
 * twice, where the metric one is as it was measured. Undefined where they are neither.
 */
function toldOnce(terms: readonly TermTold[]): number | undefined {
  const sums: { value: number; isMetric: boolean }[] = [];
  for (const [at, term] of terms.entries()) {
    const before = terms[at - 1];
    const isMetric = isMetricUnit(term.unit);
    const isRestated =
      term.isApart &&
      isMetric &&
      sums.at(-1)?.isMetric === true &&
      ratioOf(before!.value, term.value) < OWN_MEASURE;
    // A sum goes on in smaller units, and of each in fewer than make the larger one.
    const isSmaller = before && Math.abs(term.value) < before.size && isMetric === isMetricUnit(before.unit);
    const goesOn = before && (term.isAdded || (isSmaller && !isRestated));
    if (goesOn) sums.at(-1)!.value += term.value;
    else sums.push({ value: term.value, isMetric });
  }
  const [first, second, ...more] = sums;
  if (first === undefined || more.length > 0) return undefined;
  return second === undefined ? first.value : measuredBy(first, second)?.value;
}

/** Of two readings (`1,500`) the one that lies in range; asks when both do. */
function settle(term: Term, size: number, bounds: Bounds, text: string): number {
  const values = term.counts.map(count => count * size);
  const within = values.filter(value => value <= bounds.high && value >= bounds.low);
  if (within.length > 1) {
    const [small, large] = term.counts.map(count => String(count));
    refuse('amount-ambiguous', { text: excerpt(text), small: small!, large: large! });
  }
  return within[0] ?? values[0]!;
}

function range(text: string, measure: Amount['measure'], bounds: Bounds) {
  const [small, large] = measure === 'volume' ? (['ml', 'l'] as const) : (['g', 'kg'] as const);
  const high =
    bounds.high >= 1000 ? { value: bounds.high / 1000, unit: large } : { value: bounds.high, unit: small };
  return { text: excerpt(text), low: { value: bounds.low, unit: small }, high };
}
