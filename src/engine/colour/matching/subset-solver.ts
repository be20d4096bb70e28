import { SOAP_SURFACE } from '../mixing/base-soap.ts';
import { ratioOfReflectance } from '../mixing/kubelka-munk.ts';
import { type KernelComponent, MixKernel, MOST_IN_MIX } from '../mixing/mix-kernel.ts';
import type { BaseOptics } from '../mixing/optics.ts';
import { inverseSaunderson } from '../mixing/saunderson.ts';
import { type Lab, labResponseSlope } from '../spectra/cielab.ts';
import { WHITE_POINT, X_WEIGHTS, Y_WEIGHTS, Z_WEIGHTS } from '../spectra/observer.ts';
import { reflectanceOfLab } from '../spectra/reconstruct.ts';
import { BAND_COUNT } from '../spectra/spectrum.ts';
import { ConstrainedLeastSquares } from './constrained-least-squares.ts';
import { targetMetric } from './target-metric.ts';

const MOST_STEPS = 8;
/** About a thirtieth of what an eye can tell. */
const CLOSE = 0.03;

/**
 * Finds the amounts of a few colourants that come nearest to one colour. Amounts are shares of each ceiling, so they
 * are 0 or more and sum to 1 at most. The start solves K = (K/S of the target) S, which is linear in the amounts;
 * then damped Gauss-Newton in CIELAB under the local form of CIEDE2000, with exact slopes.
 */
export class SubsetSolver {
  readonly kernel: MixKernel;
  /** Amounts found, four; those beyond the subset are 0. */
  readonly amounts = new Float64Array(MOST_IN_MIX);
  /** The local form of CIEDE2000 about the target. */
  readonly metric: Float64Array;
  readonly target: Lab;
  /** Slopes of the weighted difference at the amounts found: three numbers an unknown. */
  readonly slopes = new Float64Array(3 * MOST_IN_MIX);
  /** The weighted difference at the amounts found. */
  readonly residual = new Float64Array(3);
  readonly #linear: Float64Array;
  readonly #bounded = new ConstrainedLeastSquares();
  readonly #next = new Float64Array(MOST_IN_MIX);

  constructor(components: readonly KernelComponent[], base: BaseOptics, target: Lab) {
    this.kernel = new MixKernel(components, base);
    this.target = target;
    this.metric = targetMetric(target);
    this.#linear = linearSlopes(components, base, target, this.metric);
  }

  /**
   * Starts a subset, the first `count` of four members, from the linear problem; returns the weighted difference
   * that this promises (about CIEDE2000). Costs no spectra.
   */
  start(members: readonly number[], count: number): number {
    const { slopes, residual, amounts } = this;
    let cost = 0;
    for (let row = 0; row < 3; row++) {
      residual[row] = this.#linear[row]!;
      cost += residual[row]! ** 2;
      for (let at = 0; at < count; at++) {
        slopes[3 * at + row] = this.#linear[3 * (members[at]! + 1) + row]!;
      }
    }
    amounts.fill(0);
    this.#bounded.solve(slopes, residual, amounts, count);
    for (let at = 0; at < count; at++) amounts[at] = Math.max(this.#bounded.step[at]!, 0);
    return Math.sqrt(Math.max(cost + this.#bounded.change, 0));
  }

  /** Solves a subset from its start, in so many steps; gives up once it promises to stay above `limit`. */
  solve(
    members: readonly number[],
    count: number,
    { steps = MOST_STEPS, limit = Number.POSITIVE_INFINITY } = {},
  ): number {
    this.start(members, count);
    return this.refine(members, count, { steps, limit });
  }

  /**
   * Goes on from the present amounts; returns the weighted difference.
   * @param held an unknown that stays where it is
   * @param limit give up once the next step promises to stay above this
   */
  refine(
    members: readonly number[],
    count: number,
    { held = -1, steps = MOST_STEPS, limit = Number.POSITIVE_INFINITY } = {},
  ): number {
    let cost = this.#look(members, count);
    for (let step = 0; step < steps && cost > CLOSE * CLOSE; step++) {
      this.#bounded.solve(this.slopes, this.residual, this.amounts, count, held);
      if (cost + this.#bounded.change > limit * limit) break;
      const lower = this.#advance(members, count, cost);
      if (lower === undefined) break;
      const gained = cost - lower;
      cost = lower;
      if (gained < 1e-3 * cost) break;
    }
    return Math.sqrt(cost);
  }

  /** Predicts at the present amounts, fills residual and slopes, and returns the squared weighted difference. */
  #look(members: readonly number[], count: number): number {
    this.kernel.differentiate(members, this.amounts, count);
    const cost = this.#weigh();
    const { slopes } = this.kernel;
    for (let at = 0; at < count; at++) {
      weigh(this.metric, slopes[3 * at]!, slopes[3 * at + 1]!, slopes[3 * at + 2]!, this.slopes, 3 * at);
    }
    return cost;
  }

  #weigh(): number {
    const { lab } = this.kernel;
    const { residual } = this;
    weigh(
      this.metric,
      lab[0]! - this.target.l,
      lab[1]! - this.target.a,
      lab[2]! - this.target.b,
      residual,
      0,
    );
    return residual[0]! ** 2 + residual[1]! ** 2 + residual[2]! ** 2;
  }

  /** Takes the step found, or half or a quarter of it; undefined when none is better. */
  #advance(members: readonly number[], count: number, cost: number): number | undefined {
    const { amounts } = this;
    this.#next.set(amounts);
    for (let share = 1; share > 0.05; share /= 2) {
      for (let at = 0; at < count; at++) {
        amounts[at] = Math.max(this.#next[at]! + share * this.#bounded.step[at]!, 0);
      }
      const lower = this.#look(members, count);
      if (lower < cost) return lower;
    }
    amounts.set(this.#next);
    this.#look(members, count);
    return undefined;
  }
}

function weigh(metric: Float64Array, l: number, a: number, b: number, into: Float64Array, at: number): void {
  into[at] = metric[0]! * l + metric[1]! * a + metric[2]! * b;
  into[at + 1] = metric[4]! * a + metric[5]! * b;
  into[at + 2] = metric[8]! * b;
}

/**
 * About the target's smoothest reflectance with K/S = q, a mix misses by (K - q S) / S, which is linear in K and S:
 * turned into weighted CIELAB once a component, so that a subset's start costs no spectra. First the base, then every
 * component, three numbers each.
 */
function linearSlopes(
  components: readonly KernelComponent[],
  base: BaseOptics,
  target: Lab,
  metric: Float64Array,
): Float64Array {
  const seen = reflectanceOfLab(target, SOAP_SURFACE.outside);
  const through = (1 - SOAP_SURFACE.outside) * (1 - SOAP_SURFACE.inside);
  const sums = { x: 0, y: 0, z: 0 };
  const bands = Array.from(seen, (value, band) => {
    const within = inverseSaunderson(Math.min(value, 0.99), SOAP_SURFACE, 0.004);
    const ratio = ratioOfReflectance(within);
    const byRatio = -within / Math.sqrt(ratio * (ratio + 2));
    sums.x += value * X_WEIGHTS[band]!;
    sums.y += value * Y_WEIGHTS[band]!;
    sums.z += value * Z_WEIGHTS[band]!;
    return { ratio, slope: (byRatio * through) / (1 - SOAP_SURFACE.inside * within) ** 2 };
  });
  const slopeX = labResponseSlope(sums.x / WHITE_POINT.x) / WHITE_POINT.x;
  const slopeY = labResponseSlope(sums.y / WHITE_POINT.y) / WHITE_POINT.y;
  const slopeZ = labResponseSlope(sums.z / WHITE_POINT.z) / WHITE_POINT.z;
  const out = new Float64Array(3 * (components.length + 1));
  const rows = [
    { k: base.k, s: base.s, grams: 1 },
    ...components.map(({ optics, gramsPerUnit }) => ({ k: optics.k, s: optics.s, grams: gramsPerUnit })),
  ];
  rows.forEach(({ k, s, grams }, row) => {
    let [dx, dy, dz] = [0, 0, 0];
    for (let band = 0; band < BAND_COUNT; band++) {
      const { ratio, slope } = bands[band]!;
      const change = slope * grams * (k[band]! - ratio * s[band]!);
      dx += change * X_WEIGHTS[band]!;
      dy += change * Y_WEIGHTS[band]!;
      dz += change * Z_WEIGHTS[band]!;
    }
    const l = 116 * slopeY * dy;
    weigh(metric, l, 500 * (slopeX * dx - slopeY * dy), 200 * (slopeY * dy - slopeZ * dz), out, 3 * row);
  });
  return out;
}
