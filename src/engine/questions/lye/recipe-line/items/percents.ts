import type { Pair } from '../settling/parts.ts';

/** Percents that round to a whole. */
export const isWhole = (sum: number): boolean => Math.abs(sum - 100) <= 1;

/** What several oils add up to that each have a percent, where that is no hundred. Pure. */
export function noHundred(pairs: readonly Pair[]): { readonly sum?: number } {
  const sum = pairs.reduce(
    (all, { measure }) =>
      all + (measure.is === 'amount' && measure.unit === '%' ? measure.figure : Number.NaN),
    0,
  );
  return pairs.length < 2 || Number.isNaN(sum) || isWhole(sum) ? {} : { sum };
}
