import { hidingReflectance } from './kubelka.ts';
import { reflectanceWithin, type Surface, seenThroughSurface } from './surface.ts';

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
export function hidingReflectanceOfFilm(film: Film, surface: Surface): number[] {
  const { overWhite, overBlack, white, black } = film;
  if (overWhite === undefined || overBlack === undefined) return [...(overWhite ?? overBlack ?? [])];
  return overWhite.map((seen, band) =>
    seenThroughSurface(
      hidingReflectance({
        overWhite: reflectanceWithin(seen, surface),
        overBlack: reflectanceWithin(overBlack[band] ?? seen, surface),
        white: reflectanceWithin(white[band] ?? 1, surface),
        black: reflectanceWithin(black[band] ?? 0, surface),
      }),
      surface,
    ),
  );
}
