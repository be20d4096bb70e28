import type { Carrier, Colourant } from '../colourants/colourant.ts';
import { CARRIER_DENSITY } from '../dispersion/batter.ts';
import type { Band } from '../origin.ts';
import { scaled } from './powder.ts';
import type { Premix } from './request.ts';

/** How much wet premix holds a dose, and the carrier that comes along with it. */
export type PremixMeasure = {
  readonly share?: number;
  readonly grams: Band;
  readonly millilitres: number;
  readonly carrierMillilitres: number;
};

/** The pigment a dose needs, dry: loose millilitres and grams. */
export type DryDose = { readonly millilitres: number; readonly grams: Band };

/** The share of the full dose to begin with when nobody knows how strong a premix is (common practice). */
export const UNKNOWN_PREMIX_START = 1 / 4;

/**
 * The premix that holds a dry dose. By percent: grams over pigment share, and its volume from the densities of pigment
 * and carrier. By spoons: the share of the paste is the share of its powder; paste volume is carrier plus solid powder.
 * Of unknown strength: as many millilitres of the premix as `dry` says, to begin with.
 */
export function premixFor(premix: Premix, dry: DryDose, density: Colourant['density']): PremixMeasure {
  switch (premix.by) {
    case 'percent':
      return byPercent(premix.pigmentShare, premix.carrier, dry, density);
    case 'spoons': {
      const share = dry.millilitres / premix.powderMillilitres;
      const powder = scaled(dry.grams, premix.powderMillilitres / dry.millilitres);
      const solid = powder.typical / density.typical;
      const carrierGrams = premix.carrierMillilitres * CARRIER_DENSITY[premix.carrier];
      const paste = {
        low: powder.low + carrierGrams,
        typical: powder.typical + carrierGrams,
        high: powder.high + carrierGrams,
      };
      return {
        share,
        grams: scaled(paste, share),
        millilitres: share * (premix.carrierMillilitres + solid),
        carrierMillilitres: share * premix.carrierMillilitres,
      };
    }
    case 'unknown': {
      // From all carrier to half pigment by weight: the widest band that is still useful.
      const bare = CARRIER_DENSITY[premix.carrier];
      const half = 2 / (1 / bare + 1 / density.typical);
      const [low, high] = [Math.min(bare, half), Math.max(bare, half)];
      const grams = scaled({ low, typical: (low + high) / 2, high }, dry.millilitres);
      return { grams, millilitres: dry.millilitres, carrierMillilitres: dry.millilitres };
    }
  }
}

function byPercent(
  share: number,
  carrier: Carrier,
  dry: DryDose,
  density: Colourant['density'],
): PremixMeasure {
  const grams = scaled(dry.grams, 1 / share);
  const carrierMillilitres = (grams.typical * (1 - share)) / CARRIER_DENSITY[carrier];
  return { grams, millilitres: carrierMillilitres + dry.grams.typical / density.typical, carrierMillilitres };
}
