import type { Unit } from './unit-words.ts';

/** Two amounts this near are one that was told in two units. */
const SAME = 1.025;
/** A cup, a pint or a pound that is told in metric units too is the member's own, up to so many times another one's. */
export const OWN_MEASURE = 1.3;
const METRIC: ReadonlySet<Unit> = new Set([
  'gram',
  'kilogram',
  'millilitre',
  'centilitre',
  'decilitre',
  'litre',
]);

/** Whether a unit is metric, as scales and jugs show; no unit is not. */
export const isMetricUnit = (unit: Unit | undefined): boolean => unit !== undefined && METRIC.has(unit);

/** How many times the smaller of two amounts the larger is; both positive, in one unit. */
export const ratioOf = (one: number, other: number): number => Math.max(one, other) / Math.min(one, other);

/** An amount in whatever unit its twin has too, and whether it was told in a metric one. */
export type InOneUnit = { readonly value: number; readonly isMetric: boolean };

/**
 * Of two amounts that stand side by side the one by which one thing was measured: the first where they are the same, the metric one
 * where the other is a household's measure. Undefined where they are two things. Pure.
 */
export function measuredBy<One extends InOneUnit>(first: One, second: One): One | undefined {
  const ratio = ratioOf(first.value, second.value);
  if (ratio <= SAME) return first;
  if (first.isMetric === second.isMetric || ratio > OWN_MEASURE) return undefined;
  return first.isMetric ? first : second;
}
