import type { Colourant } from '../colourants/colourant.ts';
import type { Band } from '../origin.ts';
import { refuse } from '../refusal.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'spoon-weight-out-of-range': { grams: number; low: number; high: number };
  }
}

/**
 * How far a level spoon of one jar strays from its own mean, as a share. From memory, of repeated level spoons of one powder; to
 * be replaced by members’ own weighings.
 */
export const SPOON_SCATTER = 0.05;

/** A level teaspoon of fluffy mica weighs a gram or less, of the heaviest white about ten: beyond is a slip. */
export const SPOON_GRAMS = { low: 0.1, high: 20 };

/**
 * What so many teaspoons of a powder weigh, grams. With the member's own weight of a level spoon the band is the
 * scatter of levelling a spoon; without it, the spread of bulk density between jars.
 * Throws a Refusal `spoon-weight-out-of-range`.
 */
export function powderGrams(powder: {
  readonly bulkDensity: Colourant['bulkDensity'];
  readonly teaspoons: number;
  readonly teaspoonMillilitres: number;
  readonly gramsPerTeaspoon?: number | undefined;
}): Band {
  const { bulkDensity, teaspoons, teaspoonMillilitres, gramsPerTeaspoon } = powder;
  if (gramsPerTeaspoon === undefined) return scaled(bulkDensity, teaspoons * teaspoonMillilitres);
  if (!(gramsPerTeaspoon >= SPOON_GRAMS.low && gramsPerTeaspoon <= SPOON_GRAMS.high)) {
    refuse('spoon-weight-out-of-range', { grams: gramsPerTeaspoon, ...SPOON_GRAMS });
  }
  const typical = teaspoons * gramsPerTeaspoon;
  return { low: typical * (1 - SPOON_SCATTER), typical, high: typical * (1 + SPOON_SCATTER) };
}

/** A band times a positive factor. */
export function scaled(band: Band, by: number): Band {
  return { low: band.low * by, typical: band.typical * by, high: band.high * by };
}
