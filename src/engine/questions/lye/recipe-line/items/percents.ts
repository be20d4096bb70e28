import type { Pair } from '../settling/parts.ts';
import type { Unclear } from '../unclear.ts';

/** Percents that round to a whole. */
export const isWhole = (sum: number): boolean => Math.abs(sum - 100) <= 1;

/** That amounts have no place, or make no whole. Pure. */
export const unplaced = (pairs: readonly Pair[]): Unclear => ({
  why: 'place',
  unclear: pairs.map(({ measure }) => measure.text).join(', '),
});

/** That several oils which each have a percent add up to no hundred, at what is `unclear`. Undefined where they do. Pure. */
export function noHundred(pairs: readonly Pair[], { unclear }: Unclear): Unclear | undefined {
  const sum = pairs.reduce(
    (all, { measure }) =>
      all + (measure.is === 'amount' && measure.unit === '%' ? measure.figure : Number.NaN),
    0,
  );
  return pairs.length < 2 || Number.isNaN(sum) || isWhole(sum) ? undefined : { why: 'sum', unclear, sum };
}
