import { LuDecomposition, Matrix } from 'ml-matrix';
import type { Lab } from './cielab.ts';
import { WHITE_POINT, X_WEIGHTS, type Xyz, Y_WEIGHTS, Z_WEIGHTS } from './observer.ts';
import { BAND_COUNT, mapSpectrum, type Spectrum } from './spectrum.ts';

const WEIGHTS = [X_WEIGHTS, Y_WEIGHTS, Z_WEIGHTS] as const;
const MOST_STEPS = 60;
const CLOSE_ENOUGH = 1e-8;

/**
 * The smoothest reflectance, between 0 and 1 everywhere, that has these tristimulus values under D65:
 * reflectance is (tanh z + 1) / 2 and the sum of squared steps of z is least, found by Newton's method on the
 * Lagrangian. S. A. Burns, "Numerical methods for smoothest reflectance reconstruction", Color Research and
 * Application 45 (2020) 8-21 (least hyperbolic tangent slope squared).
 * @returns undefined when no reflectance has these values
 */
export function smoothestReflectance(target: Xyz): Spectrum | undefined {
  const wanted = [target.x, target.y, target.z];
  const z = new Float64Array(BAND_COUNT);
  const multipliers = new Float64Array(3);
  for (let step = 0; step < MOST_STEPS; step++) {
    const { matrix, right, miss } = newtonSystem(z, multipliers, wanted);
    if (miss < CLOSE_ENOUGH) return mapSpectrum(z, value => (Math.tanh(value) + 1) / 2);
    const lu = new LuDecomposition(matrix);
    if (lu.isSingular()) return undefined;
    const move = lu.solve(Matrix.columnVector(right)).to1DArray();
    const longest = Math.max(...move.slice(0, BAND_COUNT).map(Math.abs));
    const share = Math.min(1, 2 / longest);
    for (let band = 0; band < BAND_COUNT; band++) z[band]! += share * (move[band] ?? 0);
    for (let row = 0; row < 3; row++) multipliers[row]! += share * (move[BAND_COUNT + row] ?? 0);
  }
  return undefined;
}

/** Gradient and curvature of the Lagrangian about `z`: 36 bands and three multipliers. */
function newtonSystem(z: Spectrum, multipliers: Float64Array, wanted: readonly number[]) {
  const matrix = Matrix.zeros(BAND_COUNT + 3, BAND_COUNT + 3);
  const right = new Array<number>(BAND_COUNT + 3).fill(0);
  let miss = 0;
  const sums = [...wanted];
  for (let band = 0; band < BAND_COUNT; band++) {
    const tanh = Math.tanh(z[band]!);
    const slope = (1 - tanh * tanh) / 2;
    const weights = WEIGHTS.map(weight => weight[band]!);
    const pull = weights.reduce((sum, weight, row) => sum + weight * multipliers[row]!, 0);
    const left = band > 0 ? z[band]! - z[band - 1]! : 0;
    const next = band < BAND_COUNT - 1 ? z[band]! - z[band + 1]! : 0;
    const gradient = 2 * (left + next) + slope * pull;
    right[band] = -gradient;
    miss = Math.max(miss, Math.abs(gradient));
    const neighbours = (band > 0 ? 1 : 0) + (band < BAND_COUNT - 1 ? 1 : 0);
    matrix.set(band, band, 2 * neighbours - 2 * tanh * slope * pull);
    if (band > 0) {
      matrix.set(band, band - 1, -2);
      matrix.set(band - 1, band, -2);
    }
    weights.forEach((weight, row) => {
      matrix.set(band, BAND_COUNT + row, weight * slope);
      matrix.set(BAND_COUNT + row, band, weight * slope);
      sums[row]! -= (weight * (tanh + 1)) / 2;
    });
  }
  sums.forEach((left, row) => {
    right[BAND_COUNT + row] = left;
    miss = Math.max(miss, Math.abs(left));
  });
  return { matrix, right, miss };
}

/** Tristimulus values of a CIELAB colour under D65. */
export function xyzOfLab({ l, a, b }: Lab): Xyz {
  const fy = (l + 16) / 116;
  const back = (f: number) => (f > 6 / 29 ? f ** 3 : (116 * f - 16) * (27 / 24389));
  return {
    x: WHITE_POINT.x * back(fy + a / 500),
    y: WHITE_POINT.y * back(fy),
    z: WHITE_POINT.z * back(fy - b / 200),
  };
}

/**
 * A reflectance for a colour. No surface is darker than its gloss (`least`): a colour that is too dark or too vivid
 * for that is greyed step by step until a reflectance exists.
 */
export function reflectanceOfLab(lab: Lab, least: number): Spectrum {
  const wanted = xyzOfLab(lab);
  const level = Math.min(Math.max(wanted.y, least * 1.1), 0.999);
  for (let grey = 0; grey < 1; grey += 0.04) {
    const mixed = (value: number, white: number) =>
      ((1 - grey) * value + grey * level * white - least * white) / (1 - least);
    const target = {
      x: mixed(wanted.x, WHITE_POINT.x),
      y: mixed(wanted.y, WHITE_POINT.y),
      z: mixed(wanted.z, WHITE_POINT.z),
    };
    if (Math.min(target.x, target.y, target.z) <= 0) continue;
    const found = smoothestReflectance(target);
    if (found !== undefined) return mapSpectrum(found, value => least + (1 - least) * value);
  }
  return mapSpectrum(new Float64Array(BAND_COUNT), () => level);
}
