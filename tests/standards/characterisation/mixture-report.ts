import { colourDifference, type Lab, labOfReflectance } from '../../../src/engine/colour/spectra/cielab.ts';
import { type Characterisation, hidingReflectanceOfMixture, knowsAll } from './characterise.ts';
import { type Film, hidingReflectanceOfFilm } from './films.ts';
import { resample } from './resample.ts';

/** How far prediction and measurement lie apart, CIEDE2000. */
export type MixtureReport = {
  readonly n: number;
  readonly mean: number;
  /** 95th percentile, between neighbours by straight line. */
  readonly p95: number;
  readonly rows: readonly { readonly code: string; readonly deltaE: number }[];
};

/** CIELAB of a reflectance known at these wavelengths (nm). */
export function labOfReadings(wavelengths: readonly number[], reflectance: readonly number[]): Lab {
  return labOfReflectance(resample(wavelengths, reflectance));
}

/**
 * Predicts every mixture among the films from its recipe alone and compares it with the film's own hiding
 * reflectance. Single pigments, and mixtures with a pigment never characterised, are left out.
 * @param wavelengths of the films' readings, nm
 */
export function reportMixtures(
  known: Characterisation,
  films: readonly Film[],
  wavelengths: readonly number[],
): MixtureReport {
  const rows = films
    .filter(film => film.shares.size > 1 && knowsAll(known, film.shares))
    .map(film => {
      const measured = labOfReadings(wavelengths, hidingReflectanceOfFilm(film, known.surface));
      const predicted = labOfReadings(known.wavelengths, hidingReflectanceOfMixture(known, film.shares));
      return { code: film.code, deltaE: colourDifference(predicted, measured) };
    });
  return summary(rows);
}

/** Mean and 95th percentile of such rows; both 0 when there is none. */
export function summary(rows: MixtureReport['rows']): MixtureReport {
  const sorted = rows.map(row => row.deltaE).sort((a, b) => a - b);
  const position = 0.95 * (sorted.length - 1);
  const below = sorted[Math.floor(position)] ?? 0;
  const above = sorted[Math.ceil(position)] ?? below;
  return {
    n: rows.length,
    mean: sorted.reduce((sum, value) => sum + value, 0) / Math.max(sorted.length, 1),
    p95: below + (above - below) * (position - Math.floor(position)),
    rows,
  };
}

const LIGHTEST_COLOUR = 85;

/** The white that the films are mixed with: light by itself (L* over 85) and in more films than any other. */
export function commonWhite(films: readonly Film[], wavelengths: readonly number[]): string | undefined {
  const whites = films
    .filter(({ shares, overWhite }) => shares.size === 1 && overWhite !== undefined)
    .filter(({ overWhite }) => labOfReadings(wavelengths, overWhite ?? []).l > LIGHTEST_COLOUR)
    .flatMap(({ shares }) => [...shares.keys()]);
  const uses = (pigment: string) => films.filter(({ shares }) => shares.has(pigment)).length;
  return whites.sort((a, b) => uses(b) - uses(a))[0];
}
