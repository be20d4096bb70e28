import type { Pair } from '../settling/parts.ts';
import type { Unclear } from '../unclear.ts';

/** Percents that round to a whole. */
export const isWhole = (sum: number): boolean => Math.abs(sum - 100) <= 1;

/** That several oils which each have a percent add up to no hundred; `text` is what is unclear. Undefined where they do. Pure. */
export function noHundred(pairs: readonly Pair[], text: string): Unclear | undefined {
  const sum = pairs.reduce(
    (all, { measure }) =>
      all + (measure.is === 'amount' && measure.unit === '%' ? measure.figure : Number.NaN),
    0,
  );
  return pairs.length < 2 || Number.isNaN(sum) || isWhole(sum)
    ? undefined
    : { why: 'sum', unclear: text, sum };
}
