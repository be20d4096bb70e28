import { reflectanceOfRatio } from '../../../src/engine/colour/mixing/kubelka-munk.ts';

/**
 * Reflectance of a film over a backing.
 * @param absorption K times thickness
 * @param scattering S times thickness, above 0
 * @param backing reflectance of what lies behind, 0 to 1
 */
export function filmReflectance(absorption: number, scattering: number, backing: number): number {
  const a = 1 + absorption / scattering;
  const b = Math.sqrt(Math.max(a * a - 1, 1e-12));
  const bCoth = b / Math.tanh(Math.min(b * scattering, 18));
  return (1 - backing * (a - bCoth)) / (a - backing + bCoth);
}

/** A film seen over two backings (all reflectances inside the surface). */
export type FilmPair = {
  readonly overWhite: number;
  readonly overBlack: number;
  readonly white: number;
  readonly black: number;
};

/** A film lets through too little to tell from noise below this share (transmittance squared). */
const LEAST_TRANSMITTANCE = 1e-4;
const LEAST_REFLECTANCE = 2e-4;

/**
 * Reflectance the film would have if it were deep enough to hide its backing, from the pair:
 * R0 and T follow from the two measured values, then a = (1 + R0^2 - T^2) / (2 R0).
 * A film that already hides gives the mean of the two.
 */
export function hidingReflectance({ overWhite, overBlack, white, black }: FilmPair): number {
  let overNothing = Math.max(overBlack, LEAST_REFLECTANCE);
  let through = 0;
  for (let step = 0; step < 30; step++) {
    through = Math.max(((overWhite - overNothing) * (1 - overNothing * white)) / white, 0);
    const next =
      through > LEAST_TRANSMITTANCE
        ? overBlack - (through * black) / (1 - overNothing * black)
        : (overWhite + overBlack) / 2;
    overNothing = Math.max(next, LEAST_REFLECTANCE);
  }
  const a = (1 + overNothing ** 2 - through) / (2 * overNothing);
  return reflectanceOfRatio(Math.max(a - 1, 1e-5));
}
