import type { Carrier } from '../colourants/colourant.ts';
import type { Origin } from '../origin.ts';

/** The raw batter as far as colour needs it. Shares are mass fractions, 0 to 1. */
export type Batter = {
  readonly gramsPerMillilitre: number;
  /** Oils in the batter; the rest is lye solution. */
  readonly oilsShare: number;
  /** NaOH in the lye solution. */
  readonly lyeConcentration: number;
  /** Oils left unsaponified, of all oils. */
  readonly superfat: number;
};

/** What stands in until the recipe is known: 5 % superfat, 30 % lye. */
export const TYPICAL_BATTER: Batter & { readonly origin: Origin } = {
  gramsPerMillilitre: 1,
  oilsShare: 0.69,
  lyeConcentration: 0.3,
  superfat: 0.05,
  origin: {
    trust: 'computed',
    source:
      '1000 g oils at 0.905 g/ml with 134 g NaOH in 313 g water at 1.328 g/ml: 1447 g in 1441 ml; superfat and lye strength are common practice',
  },
};

/**
 * Grams per millilitre of the carriers at room temperature. From memory: CRC Handbook, water 0.9982 and glycerol 1.2611 at 20 C;
 * light oils: centre of the Codex CXS 210 relative densities, 0.913 to 0.919.
 */
export const CARRIER_DENSITY: Readonly<Record<Carrier, number>> = {
  water: 0.998,
  oil: 0.915,
  glycerin: 1.261,
};

/** Grams of oils in so many millilitres of batter. */
export function oilsIn(millilitres: number, batter: Batter): number {
  return millilitres * batter.gramsPerMillilitre * batter.oilsShare;
}

/** Millilitres of batter that so many grams of oils make. */
export function batterFromOils(oilsGrams: number, batter: Batter): number {
  return oilsGrams / (batter.gramsPerMillilitre * batter.oilsShare);
}
