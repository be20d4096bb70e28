import { parseAmount } from '../../quantities/amount.ts';
import type { Measures } from '../../quantities/units.ts';
import { refuse } from '../../refusal.ts';
import { excerpt } from '../../text/excerpt.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'batch-weights-unreadable': { readonly text: string };
    'batch-weights-many': { readonly most: number };
  }
}

/** Bars on the scale at a time, ms since 1970 UTC; each in grams, always in the same order. */
export type Weighing = { readonly at: number; readonly grams: readonly number[] };

/** Share of its weight that a bar may still lose in a week and count as cured (common practice: "it stops losing"). */
export const CURED_WEEKLY_LOSS = 0.01;
/** A loss is only judged over so many days: a kitchen scale shows whole grams. */
const LEAST_DAYS = 5;
const DAY = 86_400_000;
const MOST_BARS = 50;

export type Drying = {
  /** Share of the weight lost in a week between the last two weighings that can be compared. */
  readonly weeklyLoss: number;
  /** Share lost since the first of them. */
  readonly lostInAll: number;
  readonly cured: boolean;
  /** Weeks until it will be, where the loss has been falling; undefined where it cannot be told. */
  readonly weeksLeft: number | undefined;
};

/**
 * How far a batch has dried. Only weighings of as many bars are compared, and a week's loss is judged over five days or
 * more. Undefined where that leaves fewer than two.
 */
export function dryingOf(weighings: readonly Weighing[]): Drying | undefined {
  const sorted = [...weighings].sort((a, b) => a.at - b.at);
  const last = sorted.at(-1);
  if (!last) return undefined;
  const alike = spaced(sorted.filter(({ grams }) => grams.length === last.grams.length));
  const before = alike.at(-2);
  if (!before) return undefined;
  const weeklyLoss = weekly(before, alike.at(-1)!);
  const earlier = alike.at(-3);
  const cured = weeklyLoss < CURED_WEEKLY_LOSS;
  return {
    weeklyLoss,
    lostInAll: 1 - total(last) / total(alike[0]!),
    cured,
    weeksLeft: cured ? 0 : earlier && weeksUntil(weekly(earlier, before), weeklyLoss),
  };
}

/** What speaks against two weighings being of the same bars: how many there are, or that they gained. */
export type OtherBars = {
  readonly why: 'count' | 'gained';
  readonly before: Weighing;
  readonly now: Weighing;
};

/** Grams that a kitchen scale of whole grams may be off a bar, twice (common practice). */
const SCALE_GRAMS = 2;

/**
 * Why a weighing cannot be of the bars that were weighed last before it: another number of them, or more weight than the scale
 * errs by, for drying soap only loses. Undefined where it may be, and for the first weighing.
 */
export function otherBars(weighings: readonly Weighing[], now: Weighing): OtherBars | undefined {
  const before = weighings
    .filter(({ at }) => at <= now.at)
    .toSorted((a, b) => a.at - b.at)
    .at(-1);
  if (!before) return undefined;
  if (before.grams.length !== now.grams.length) return { why: 'count', before, now };
  return total(now) > total(before) + SCALE_GRAMS * now.grams.length
    ? { why: 'gained', before, now }
    : undefined;
}

/** From the newest backwards, only those five days or more apart. */
function spaced(weighings: readonly Weighing[]): readonly Weighing[] {
  const kept: Weighing[] = [];
  for (const one of weighings.toReversed()) {
    const next = kept[0];
    if (!next || next.at - one.at >= LEAST_DAYS * DAY) kept.unshift(one);
  }
  return kept;
}

const total = ({ grams }: Weighing) => grams.reduce((sum, one) => sum + one, 0);

const weekly = (from: Weighing, to: Weighing): number => {
  const weeks = (to.at - from.at) / (7 * DAY);
  return 1 - (total(to) / total(from)) ** (1 / weeks);
};

/** Drying falls off by a like share each week (a first-order loss), so two weeks tell the third. */
function weeksUntil(before: number, now: number): number | undefined {
  if (!(now > 0 && now < before)) return undefined;
  return Math.ceil(Math.log(CURED_WEEKLY_LOSS / now) / Math.log(now / before));
}

/**
 * Reads weights: `112 g, 108 g` or `112, 108` (bare numbers are grams), `4 oz`. Throws a Refusal: `batch-weights-unreadable`,
 * `batch-weights-many`, or one of the amounts' own.
 */
export function parseWeights(text: string, measures: Measures): readonly number[] {
  const pieces = text
    .slice(0, 1000)
    .split(/\s*(?:[;+\n]|,(?!\d)|\by\b|\band\b)\s*/iu)
    .filter(piece => piece !== '');
  if (pieces.length > MOST_BARS) refuse('batch-weights-many', { most: MOST_BARS });
  if (pieces.length === 0) refuse('batch-weights-unreadable', { text: excerpt(text) });
  return pieces.map(piece => {
    if (/^[-\u2212\u2013]/u.test(piece)) refuse('batch-weights-unreadable', { text: excerpt(text) });
    const bare = /^\d+(?:[.,]\d+)?$/u.test(piece);
    const amount = parseAmount(bare ? `${piece} g` : piece, measures, { low: 1, high: 100_000 });
    return amount.measure === 'mass'
      ? amount.grams
      : refuse('batch-weights-unreadable', { text: excerpt(text) });
  });
}
