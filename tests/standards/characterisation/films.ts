import {
  inverseSaunderson,
  type SaundersonSurface,
  saundersonReflectance,
} from '../../../src/engine/colour/mixing/saunderson.ts';
import { hidingReflectance } from './film-optics.ts';

/**
 * A measured paint film. Reflectances are fractions, one a band of the instrument (every list as long);
 * a side that was not measured is absent.
 */
export type Film = {
  readonly code: string;
  /** Mass share of each pigment; the shares sum to 1. */
  readonly shares: ReadonlyMap<string, number>;
  readonly overWhite?: readonly number[];
  readonly overBlack?: readonly number[];
  /** The bare backings. */
  readonly white: readonly number[];
  readonly black: readonly number[];
};

/**
 * What the film would measure were it thick enough to hide its backing: from both sides where there are two,
 * else the one side as it is. Seen from outside the surface, one value a band.
 */
export function hidingReflectanceOfFilm(film: Film, surface: SaundersonSurface): number[] {
  const { overWhite, overBlack, white, black } = film;
  if (overWhite === undefined || overBlack === undefined) return [...(overWhite ?? overBlack ?? [])];
  return overWhite.map((seen, band) =>
    saundersonReflectance(
      hidingReflectance({
        overWhite: inverseSaunderson(seen, surface),
        overBlack: inverseSaunderson(overBlack[band] ?? seen, surface),
        white: inverseSaunderson(white[band] ?? 1, surface),
        black: inverseSaunderson(black[band] ?? 0, surface),
      }),
      surface,
    ),
  );
}
