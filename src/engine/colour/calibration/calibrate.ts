import { refuse } from '../../refusal.ts';
import { barLab } from '../mixing/bar.ts';
import type { BaseOptics, Optics } from '../mixing/optics.ts';
import { colourDifference } from '../spectra/cielab.ts';
import { mapSpectrum } from '../spectra/spectrum.ts';
import {
  type BarFit,
  BOUND,
  type ScaleBelief,
  ScaleEstimation,
  type Scales,
  scaled,
  type TestBar,
} from './scale-estimation.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'calibration-without-bars': Record<string, never>;
    'calibration-dose-unusable': { grams: number };
  }
}

export type CalibrationRequest = {
  readonly optics: Optics;
  readonly base: BaseOptics;
  readonly bars: readonly TestBar[];
  /** What the group knows of this product; else the kind's own uncertainty. */
  readonly prior?: ScaleBelief;
};

export type Calibration = {
  /** The kind's optics with this jar's scales, and the error that is left. */
  readonly optics: Optics;
  /** The base as plain bars corrected it. */
  readonly base: BaseOptics;
  /** Scales on K and S, 1 where the jar is as its kind. */
  readonly scale: { readonly k: number; readonly s: number };
  /** The posterior; goes into the next calibration of the same jar. */
  readonly belief: ScaleBelief;
  /** What the bars alone say (the likelihood, as a normal distribution), without the prior; goes into the group's pool. */
  readonly evidence: ScaleBelief;
  readonly bars: readonly BarFit[];
  /** Mean CIEDE2000 of the bars with the prior's scales and with the fitted ones. */
  readonly before: number;
  readonly after: number;
  /** `at-bound`: the jar would have to be over six times off its kind. `poor-fit`: no scales explain the bars. */
  readonly doubt: 'at-bound' | 'poor-fit' | undefined;
};

/** What is left of the error when the scales are known: the theory in translucent soap, the reading, the lot. */
export const LEAST_PLUS_MINUS = 2.5;
/** Bars further off than this on average (CIEDE2000) are not explained: they speak of something else. */
export const POOR_FIT = 10;

/**
 * Fits one jar's K and S scales to its test bars, at the maximum of the posterior: squared CIEDE2000 over the reading's
 * error, plus the squared distance of the scales from the prior, made least within bounds by Gauss-Newton. The error left
 * comes from the curvature (Laplace's approximation).
 * Throws a Refusal: `calibration-without-bars`, `calibration-dose-unusable`.
 */
export function calibrate(request: CalibrationRequest): Calibration {
  const { optics, bars } = request;
  for (const { grams } of bars) {
    if (!(grams >= 0 && grams < 50)) refuse('calibration-dose-unusable', { grams });
  }
  const coloured = bars.filter(({ grams }) => grams > 0);
  const deepest = Math.max(0, ...coloured.map(({ grams }) => grams));
  if (deepest === 0) refuse('calibration-without-bars', {});
  const base = correctedBase(request.base, bars);
  const prior = request.prior ?? usualBelief(optics, base, deepest);
  const problem = new ScaleEstimation(optics, base, coloured, prior);
  const start = [prior.k.ln, prior.s.ln] as const;
  const found = problem.solve(start);
  const { belief, evidence } = problem.beliefs(found);
  const rows = problem.rows(found);
  const after = mean(rows.map(row => row.deltaE));
  const parameterError = problem.errorAt(deepest, found, belief);
  return {
    optics: {
      ...scaled(optics, found),
      plusMinus: Math.min(
        Math.max(Math.hypot(LEAST_PLUS_MINUS, parameterError), unexplained(after, coloured)),
        optics.plusMinus,
      ),
    },
    base,
    scale: { k: Math.exp(found[0]), s: Math.exp(found[1]) },
    belief,
    evidence,
    bars: rows,
    before: mean(problem.rows(start).map(row => row.deltaE)),
    after,
    doubt: doubtOf(found, after),
  };
}

function doubtOf(found: Scales, after: number): Calibration['doubt'] {
  if (found.some(value => Math.abs(value) > BOUND - 1e-6)) return 'at-bound';
  return after > POOR_FIT ? 'poor-fit' : undefined;
}

/** What the bars are off beyond the error of their readings: the scales do not tell it, so it is left. */
function unexplained(after: number, bars: readonly TestBar[]): number {
  const reading = mean(bars.map(({ plusMinus }) => plusMinus));
  return Math.sqrt(Math.max(0, after ** 2 - reading ** 2));
}

/** The base with its K scaled so that it looks like the plain bars, as far as one factor can. */
function correctedBase(base: BaseOptics, bars: readonly TestBar[]): BaseOptics {
  const plain = bars.filter(({ grams }) => grams === 0);
  if (plain.length === 0) return base;
  const off = (ln: number) => {
    const tried = { ...base, k: mapSpectrum(base.k, value => value * Math.exp(ln)) };
    const lab = barLab([], tried);
    const misfit = plain.reduce((sum, bar) => sum + (colourDifference(lab, bar.lab) / bar.plusMinus) ** 2, 0);
    return { tried, cost: misfit + ln * ln };
  };
  const tries = Array.from({ length: 81 }, (_, step) => off(((step - 40) / 40) * BOUND));
  const best = tries.reduce((least, attempt) => (attempt.cost < least.cost ? attempt : least));
  return { ...best.tried, plusMinus: Math.min(base.plusMinus, LEAST_PLUS_MINUS) };
}

/** The prior of a jar that nobody has tried: the spread of the scales that makes the kind's plus-or-minus at a dose. */
export function usualBelief(optics: Optics, base: BaseOptics, grams: number): ScaleBelief {
  const problem = new ScaleEstimation(optics, base, [], FLAT);
  const unit = problem.errorAt(grams, [0, 0], FLAT);
  const wanted = Math.sqrt(Math.max(optics.plusMinus ** 2 - LEAST_PLUS_MINUS ** 2, 1));
  const spread = Math.min(Math.max(wanted / Math.max(unit, 1e-6), 0.2), 1.2);
  return { k: { ln: 0, spread }, s: { ln: 0, spread } };
}

const FLAT: ScaleBelief = { k: { ln: 0, spread: 1 }, s: { ln: 0, spread: 1 } };

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
