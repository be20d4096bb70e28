import { labResponse, labResponseSlope } from '../spectra/cielab.ts';
import { WHITE_POINT, X_WEIGHTS, Y_WEIGHTS, Z_WEIGHTS } from '../spectra/observer.ts';
import { BAND_COUNT, type Spectrum } from '../spectra/spectrum.ts';
import { SOAP_SURFACE } from './base-soap.ts';
import { glowXyz } from './fluorescence.ts';
import type { BaseOptics, MixPart, Optics } from './optics.ts';

/** Colourants a kernel mixes at once: three and a white. */
export const MOST_IN_MIX = 4;

/** One component: its optics per gram, and the grams that one unit of it stands for. */
export type KernelComponent = { readonly optics: Optics; readonly gramsPerUnit: number };

const { outside, inside } = SOAP_SURFACE;
/**
 * Saunderson around Kubelka-Munk in one fraction: seen = outside + through S / ((1 - inside) S + K + root(K (K + 2S))).
 * `through` is folded into the weights.
 */
const HELD_BACK = 1 - inside;
const THROUGH = (1 - outside) * (1 - inside);
const fold = (weights: Spectrum) => weights.map(weight => weight * THROUGH);
const [WX, WY, WZ] = [fold(X_WEIGHTS), fold(Y_WEIGHTS), fold(Z_WEIGHTS)];

/**
 * Predicts the CIELAB of many mixes of the same components in the same base, and how it changes with each amount,
 * without making garbage: K and S of all components lie in one row, results are left in `lab` and `slopes`.
 * A mix is four component numbers and four amounts; number {@link MixKernel.nothing} with amount 0 fills up.
 */
export class MixKernel {
  /** L*, a*, b* of the mix last predicted. */
  readonly lab = new Float64Array(3);
  /** Change of L*, a*, b* per unit of each component: three numbers a component. */
  readonly slopes = new Float64Array(3 * MOST_IN_MIX);
  /** The component that is not there. */
  readonly nothing: number;

  readonly #k: Float64Array;
  readonly #s: Float64Array;
  readonly #components: readonly KernelComponent[];
  readonly #glows: Uint8Array;
  readonly #anyGlows: boolean;
  readonly #base: BaseOptics;
  readonly #byK = new Float64Array(BAND_COUNT);
  readonly #byS = new Float64Array(BAND_COUNT);
  readonly #xyz = new Float64Array(3);

  constructor(components: readonly KernelComponent[], base: BaseOptics) {
    this.nothing = components.length;
    this.#components = components;
    this.#base = base;
    this.#glows = Uint8Array.from(components, ({ optics }) => (optics.emission === undefined ? 0 : 1));
    const row = (read: (optics: Optics) => Spectrum) => {
      const values = new Float64Array((components.length + 1) * BAND_COUNT);
      components.forEach(({ optics, gramsPerUnit }, at) => {
        values.set(
          read(optics).map(value => value * gramsPerUnit),
          at * BAND_COUNT,
        );
      });
      return values;
    };
    this.#k = row(optics => optics.k);
    this.#s = row(optics => optics.s);
    this.#anyGlows = this.#glows.includes(1);
  }

  #isGlowing(members: readonly number[], amounts: ArrayLike<number>): boolean {
    if (!this.#anyGlows) return false;
    for (let at = 0; at < MOST_IN_MIX; at++) {
      if (this.#glows[members[at]!] === 1 && amounts[at]! > 0) return true;
    }
    return false;
  }

  /** Predicts the mix of `amounts[i]` units of component `members[i]`, four of each; the answer is in `lab`. */
  predict(members: readonly number[], amounts: ArrayLike<number>): void {
    const [k, s] = [this.#k, this.#s];
    const baseK = this.#base.k;
    const baseS = this.#base.s;
    const [from0, from1] = [members[0]! * BAND_COUNT, members[1]! * BAND_COUNT];
    const [from2, from3] = [members[2]! * BAND_COUNT, members[3]! * BAND_COUNT];
    const [a0, a1, a2, a3] = [amounts[0]!, amounts[1]!, amounts[2]!, amounts[3]!];
    let x = 0;
    let y = 0;
    let z = 0;
    for (let b = 0; b < BAND_COUNT; b++) {
      const K = baseK[b]! + a0 * k[from0 + b]! + a1 * k[from1 + b]! + a2 * k[from2 + b]! + a3 * k[from3 + b]!;
      const S = baseS[b]! + a0 * s[from0 + b]! + a1 * s[from1 + b]! + a2 * s[from2 + b]! + a3 * s[from3 + b]!;
      const seen = S / (HELD_BACK * S + K + Math.sqrt(K * (K + 2 * S)));
      x += seen * WX[b]!;
      y += seen * WY[b]!;
      z += seen * WZ[b]!;
    }
    this.#setXyz(members, amounts, x, y, z);
    this.#setLab();
  }

  /** Like {@link predict}, and leaves the change per unit of each of the first `count` components in `slopes`. */
  differentiate(members: readonly number[], amounts: ArrayLike<number>, count: number): void {
    const [k, s, byK, byS] = [this.#k, this.#s, this.#byK, this.#byS];
    const baseK = this.#base.k;
    const baseS = this.#base.s;
    const [from0, from1] = [members[0]! * BAND_COUNT, members[1]! * BAND_COUNT];
    const [from2, from3] = [members[2]! * BAND_COUNT, members[3]! * BAND_COUNT];
    const [a0, a1, a2, a3] = [amounts[0]!, amounts[1]!, amounts[2]!, amounts[3]!];
    let x = 0;
    let y = 0;
    let z = 0;
    for (let b = 0; b < BAND_COUNT; b++) {
      const K = baseK[b]! + a0 * k[from0 + b]! + a1 * k[from1 + b]! + a2 * k[from2 + b]! + a3 * k[from3 + b]!;
      const S = baseS[b]! + a0 * s[from0 + b]! + a1 * s[from1 + b]! + a2 * s[from2 + b]! + a3 * s[from3 + b]!;
      // At K = 0 the slope has no end, so the root is held.
      const root = Math.max(Math.sqrt(K * (K + 2 * S)), 1e-3 * S);
      const part = 1 / (HELD_BACK * S + K + root);
      const seen = S * part;
      const byRoot = 1 / root;
      x += seen * WX[b]!;
      y += seen * WY[b]!;
      z += seen * WZ[b]!;
      byK[b] = -seen * part * (1 + (K + S) * byRoot);
      byS[b] = (1 - seen * (HELD_BACK + K * byRoot)) * part;
    }
    this.#setXyz(members, amounts, x, y, z);
    this.#setLab();
    this.#setSlopes(members, count);
  }

  /** Tristimulus values with what the surface reflects and what glows. */
  #setXyz(members: readonly number[], amounts: ArrayLike<number>, x: number, y: number, z: number): void {
    const xyz = this.#xyz;
    xyz[0] = x + outside * WHITE_POINT.x;
    xyz[1] = y + outside * WHITE_POINT.y;
    xyz[2] = z + outside * WHITE_POINT.z;
    if (this.#isGlowing(members, amounts)) glowXyz(this.#mix(members, amounts), this.#base, xyz);
  }

  /** The same mix as parts in grams. */
  #mix(members: readonly number[], amounts: ArrayLike<number>): MixPart[] {
    const parts: MixPart[] = [];
    for (let at = 0; at < MOST_IN_MIX; at++) {
      const component = this.#components[members[at]!];
      if (component === undefined) continue;
      parts.push({ optics: component.optics, grams: amounts[at]! * component.gramsPerUnit });
    }
    return parts;
  }

  #setLab(): void {
    const fy = labResponse(this.#xyz[1]! / WHITE_POINT.y);
    this.lab[0] = 116 * fy - 16;
    this.lab[1] = 500 * (labResponse(this.#xyz[0]! / WHITE_POINT.x) - fy);
    this.lab[2] = 200 * (fy - labResponse(this.#xyz[2]! / WHITE_POINT.z));
  }

  /** Slopes of the mix last differentiated; what glows is held as it is. */
  #setSlopes(members: readonly number[], count: number): void {
    const slopeX = labResponseSlope(this.#xyz[0]! / WHITE_POINT.x) / WHITE_POINT.x;
    const slopeY = labResponseSlope(this.#xyz[1]! / WHITE_POINT.y) / WHITE_POINT.y;
    const slopeZ = labResponseSlope(this.#xyz[2]! / WHITE_POINT.z) / WHITE_POINT.z;
    for (let at = 0; at < count; at++) {
      const from = members[at]! * BAND_COUNT;
      let dx = 0;
      let dy = 0;
      let dz = 0;
      for (let b = 0; b < BAND_COUNT; b++) {
        const change = this.#byK[b]! * this.#k[from + b]! + this.#byS[b]! * this.#s[from + b]!;
        dx += change * WX[b]!;
        dy += change * WY[b]!;
        dz += change * WZ[b]!;
      }
      this.slopes[3 * at] = 116 * slopeY * dy;
      this.slopes[3 * at + 1] = 500 * (slopeX * dx - slopeY * dy);
      this.slopes[3 * at + 2] = 200 * (slopeY * dy - slopeZ * dz);
    }
  }
}
