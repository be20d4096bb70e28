import type { AlkaliBehaviour } from '../colourants/colourant.ts';
import { betaQuantile } from './beta.ts';
import type { Confidence } from './report.ts';

/** What a member saw of a colour in a cured bar. */
export type Result = 'held' | 'shifted' | 'faded' | 'bled';

/** How often each result was reported. */
export type ResultCounts = { readonly [R in Result]: number };

/** The posterior of the share of bars whose colour holds, as a group's reports leave it. */
export type Posterior = {
  /** Mean share that holds, 0 to 1. */
  readonly mean: number;
  /** 90 % interval, equal tails. */
  readonly low: number;
  readonly high: number;
  /** Reports counted; the chemistry's prior is not among them. */
  readonly reports: number;
};

/** Five verbal levels of "it holds", from memory: almost always, mostly, nobody knows, seldom, almost never. */
const levels = { almostAlways: 0.95, mostly: 0.7, nobodyKnows: 0.5, seldom: 0.2, almostNever: 0.04 } as const;

const expected: Readonly<Record<AlkaliBehaviour, number>> = {
  stable: levels.almostAlways,
  conditional: levels.mostly,
  unknown: levels.nobodyKnows,
  bleeds: levels.seldom,
  shifts: levels.seldom,
  destroyed: levels.almostNever,
  never: levels.almostNever,
};

/** How many reports the chemistry is worth; from memory. */
const worth: Readonly<Record<Confidence, number>> = { high: 10, medium: 5, low: 2 };

/**
 * The share of bars in which a colour holds: a Beta prior from its chemistry, updated with the group's reports.
 * Counts are whole and not negative. Returns the posterior mean and its 90 % equal-tailed interval.
 */
export function posterior(
  chemistry: { readonly behaviour: AlkaliBehaviour; readonly confidence: Confidence },
  counts: ResultCounts,
): Posterior {
  const share = expected[chemistry.behaviour];
  const strength = chemistry.behaviour === 'unknown' ? worth.low : worth[chemistry.confidence];
  const lost = counts.shifted + counts.faded + counts.bled;
  const a = share * strength + counts.held;
  const b = (1 - share) * strength + lost;
  return {
    mean: a / (a + b),
    low: betaQuantile(0.05, a, b),
    high: betaQuantile(0.95, a, b),
    reports: counts.held + lost,
  };
}
