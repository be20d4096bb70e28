import { inverse, Matrix } from 'ml-matrix';
import { targetMetric } from '../matching/target-metric.ts';
import { barLab } from '../mixing/bar.ts';
import type { BaseOptics, Optics } from '../mixing/optics.ts';
import { colourDifference, hexOfLab, type Lab } from '../spectra/cielab.ts';
import { mapSpectrum } from '../spectra/spectrum.ts';

/** A natural logarithm that is believed to lie about `ln`, give or take `spread` (one standard deviation). */
export type Belief = { readonly ln: number; readonly spread: number };

/** What is believed of a jar's K and S beside the kind's: the logarithms of their scales. */
export type ScaleBelief = { readonly k: Belief; readonly s: Belief };

/** A cured test bar. */
export type TestBar = {
  /** Of the colourant, per 100 g of batter; 0 for a plain bar, which corrects the base. */
  readonly grams: number;
  readonly lab: Lab;
  /** Of the reading, CIEDE2000: about 3 for a hex typed by eye, 2 to 4 with a card, 4 to 8 with white paper. */
  readonly plusMinus: number;
};

/** How a fit explains one bar. */
export type BarFit = {
  readonly grams: number;
  readonly measured: Lab;
  readonly predicted: Lab;
  readonly predictedHex: string;
  readonly deltaE: number;
};

/** Natural logarithms of the scales on K and S. */
export type Scales = readonly [number, number];

/** A jar is taken to be within six times of its kind. */
export const BOUND = Math.log(6);
const MOST_STEPS = 40;
const NUDGE = 1e-4;
/** Nothing is learnt about a scale from bars that do not depend on it. */
const WIDEST = 3;

/** Optics with K and S scaled; arguments are natural logarithms. */
export function scaled(optics: Optics, [lnK, lnS]: Scales): Optics {
  const [k, s] = [Math.exp(lnK), Math.exp(lnS)];
  return { ...optics, k: mapSpectrum(optics.k, v => v * k), s: mapSpectrum(optics.s, v => v * s) };
}

/** Misfit of two scales to the bars of one jar. */
export class ScaleEstimation {
  readonly #optics: Optics;
  readonly #base: BaseOptics;
  readonly #bars: readonly { readonly bar: TestBar; readonly metric: Float64Array }[];
  readonly #prior: readonly [Belief, Belief];

  constructor(optics: Optics, base: BaseOptics, bars: readonly TestBar[], prior: ScaleBelief) {
    this.#optics = optics;
    this.#base = base;
    this.#bars = bars.map(bar => ({ bar, metric: targetMetric(bar.lab) }));
    this.#prior = [prior.k, prior.s];
  }

  #predict(grams: number, scales: Scales): Lab {
    return barLab([{ optics: scaled(this.#optics, scales), grams }], this.#base);
  }

  /** Weighted misfits of all bars, three each, then how far each scale is from its prior. */
  #residuals(scales: Scales): number[] {
    const ofBars = this.#bars.flatMap(({ bar, metric }) => {
      const lab = this.#predict(bar.grams, scales);
      return weighed(metric, lab, bar.lab).map(value => value / bar.plusMinus);
    });
    const ofBelief = this.#prior.map(({ ln, spread }, at) => ((scales[at] ?? 0) - ln) / spread);
    return [...ofBars, ...ofBelief];
  }

  #slopes(scales: Scales, now: readonly number[]): readonly [number[], number[]] {
    const towards = (moved: Scales) =>
      this.#residuals(moved).map((value, at) => (value - (now[at] ?? 0)) / NUDGE);
    return [towards([scales[0] + NUDGE, scales[1]]), towards([scales[0], scales[1] + NUDGE])];
  }

  solve(start: Scales): Scales {
    let scales = start;
    let residuals = this.#residuals(scales);
    let cost = dot(residuals, residuals);
    let damping = 1e-3;
    for (let step = 0; step < MOST_STEPS; step++) {
      const [a, b] = this.#slopes(scales, residuals);
      const [aa, bb, ab] = [dot(a, a) * (1 + damping), dot(b, b) * (1 + damping), dot(a, b)];
      const [ga, gb] = [dot(a, residuals), dot(b, residuals)];
      const determinant = aa * bb - ab * ab;
      const next: Scales = [
        bounded(scales[0] - (bb * ga - ab * gb) / determinant),
        bounded(scales[1] - (aa * gb - ab * ga) / determinant),
      ];
      const tried = this.#residuals(next);
      const lower = dot(tried, tried);
      if (lower < cost) {
        const done = cost - lower < 1e-9 * cost;
        [scales, residuals, cost] = [next, tried, lower];
        damping /= 4;
        if (done) break;
      } else if (damping > 1e6) break;
      else damping *= 8;
    }
    return scales;
  }

  /** The posterior, and what the bars alone say. */
  beliefs(found: Scales): { belief: ScaleBelief; evidence: ScaleBelief } {
    const [a, b] = this.#slopes(found, this.#residuals(found));
    const covariance = inverse(
      new Matrix([
        [dot(a, a), dot(a, b)],
        [dot(a, b), dot(b, b)],
      ]),
    );
    const after = (at: 0 | 1): Belief => ({ ln: found[at], spread: Math.sqrt(covariance.get(at, at)) });
    const alone = (at: 0 | 1): Belief => withoutPrior(after(at), this.#prior[at]);
    return { belief: { k: after(0), s: after(1) }, evidence: { k: alone(0), s: alone(1) } };
  }

  /** CIEDE2000 that the spread of the scales makes at a dose. */
  errorAt(grams: number, scales: Scales, { k, s }: ScaleBelief): number {
    const lab = this.#predict(grams, scales);
    const metric = targetMetric(lab);
    const change = (moved: Scales) =>
      Math.hypot(...weighed(metric, this.#predict(grams, moved), lab)) / NUDGE;
    return Math.hypot(
      k.spread * change([scales[0] + NUDGE, scales[1]]),
      s.spread * change([scales[0], scales[1] + NUDGE]),
    );
  }

  rows(scales: Scales): BarFit[] {
    return this.#bars.map(({ bar }) => {
      const predicted = this.#predict(bar.grams, scales);
      return {
        grams: bar.grams,
        measured: bar.lab,
        predicted,
        predictedHex: hexOfLab(predicted),
        deltaE: colourDifference(predicted, bar.lab),
      };
    });
  }
}

const bounded = (ln: number) => Math.min(Math.max(ln, -BOUND), BOUND);

const dot = (one: readonly number[], other: readonly number[]) =>
  one.reduce((sum, value, at) => sum + value * (other[at] ?? 0), 0);

/** A colour's offset from another in units of CIEDE2000, as three numbers. */
export function weighed(metric: Float64Array, from: Lab, to: Lab): [number, number, number] {
  const [l, a, b] = [from.l - to.l, from.a - to.a, from.b - to.b];
  return [metric[0]! * l + metric[1]! * a + metric[2]! * b, metric[4]! * a + metric[5]! * b, metric[8]! * b];
}

/** Takes the prior out of a belief: precisions subtract, and so do precision-weighted means. */
function withoutPrior(after: Belief, prior: Belief): Belief {
  const precision = after.spread ** -2 - prior.spread ** -2;
  if (precision <= WIDEST ** -2) return { ln: after.ln, spread: WIDEST };
  const ln = (after.ln * after.spread ** -2 - prior.ln * prior.spread ** -2) / precision;
  return { ln: bounded(ln), spread: precision ** -0.5 };
}
