import { D65, TABLE_FIRST_NANOMETRE, TABLE_STEP_NANOMETRES, X_BAR, Y_BAR, Z_BAR } from './cie-tables.ts';
import { BAND_COUNT, FIRST_NANOMETRE, NANOMETRES_PER_BAND, type Spectrum } from './spectrum.ts';

/** Tristimulus values, 2 degree observer, D65; a perfect white has `y` 1. */
export type Xyz = { readonly x: number; readonly y: number; readonly z: number };

const normalisation = D65.reduce((sum, power, i) => sum + power * (Y_BAR[i] ?? 0), 0);

/**
 * What one unit of reflectance in each band adds to a tristimulus value, when reflectance runs straight
 * between bands and stays level beyond the outer ones: the 5 nm table folded onto our 10 nm bands.
 */
function bandWeights(sensitivity: readonly number[]): Spectrum {
  const weights = new Float64Array(BAND_COUNT);
  sensitivity.forEach((response, row) => {
    const nanometres = TABLE_FIRST_NANOMETRE + TABLE_STEP_NANOMETRES * row;
    const share = (response * (D65[row] ?? 0)) / normalisation;
    const position = Math.min(
      Math.max((nanometres - FIRST_NANOMETRE) / NANOMETRES_PER_BAND, 0),
      BAND_COUNT - 1,
    );
    const band = Math.min(Math.floor(position), BAND_COUNT - 2);
    weights[band] = (weights[band] ?? 0) + share * (1 - (position - band));
    weights[band + 1] = (weights[band + 1] ?? 0) + share * (position - band);
  });
  return weights;
}

/** Weights of the 36 bands for X, Y and Z under D65; each reflectance spectrum times these sums to XYZ. */
export const X_WEIGHTS: Spectrum = bandWeights(X_BAR);
export const Y_WEIGHTS: Spectrum = bandWeights(Y_BAR);
export const Z_WEIGHTS: Spectrum = bandWeights(Z_BAR);

const total = (weights: Spectrum) => weights.reduce((sum, weight) => sum + weight, 0);

/** XYZ of a perfect diffuser: D65 itself. */
export const WHITE_POINT: Xyz = { x: total(X_WEIGHTS), y: total(Y_WEIGHTS), z: total(Z_WEIGHTS) };

/** Tristimulus values of a reflectance spectrum under D65. */
export function xyzOfReflectance(reflectance: Spectrum): Xyz {
  let x = 0;
  let y = 0;
  let z = 0;
  for (let band = 0; band < BAND_COUNT; band++) {
    const r = reflectance[band] ?? 0;
    x += r * (X_WEIGHTS[band] ?? 0);
    y += r * (Y_WEIGHTS[band] ?? 0);
    z += r * (Z_WEIGHTS[band] ?? 0);
  }
  return { x, y, z };
}

/** Relative power of D65 at each band, 100 at 560 nm. */
export const D65_AT_BANDS: Spectrum = Float64Array.from({ length: BAND_COUNT }, (_, band) => {
  const nanometres = FIRST_NANOMETRE + NANOMETRES_PER_BAND * band;
  return D65[(nanometres - TABLE_FIRST_NANOMETRE) / TABLE_STEP_NANOMETRES] ?? 0;
});
