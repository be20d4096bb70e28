import { STRENGTH_SHARES, type StrengthName } from '../../quantities/strength.ts';
import { type BarPrediction, predictBar } from './bar.ts';
import { baseSoap, type ShadeShare } from './base-soap.ts';
import type { MixPart } from './optics.ts';

/** One field of a swatch card. */
export type Swatch = {
  readonly strength: StrengthName;
  readonly gelled: boolean;
  readonly predicted: BarPrediction;
};

const STRENGTHS: readonly StrengthName[] = ['tint', 'pastel', 'medium', 'full'];

/**
 * A mix at every strength, gelled and not: tint, pastel, medium, full, first not gelled.
 * @param full grams per 100 g of batter at full strength; a white keeps its dose in every field when `steady` holds it
 * @param shades the base, by the cast of its oils
 * @param steady parts that do not grow with the strength
 */
export function swatches(
  full: readonly MixPart[],
  shades: readonly ShadeShare[],
  steady: readonly MixPart[] = [],
): Swatch[] {
  return [false, true].flatMap(gelled => {
    const base = baseSoap(shades, gelled);
    return STRENGTHS.map(strength => {
      const share = STRENGTH_SHARES[strength];
      const mix = [...full.map(part => ({ ...part, grams: part.grams * share })), ...steady];
      return { strength, gelled, predicted: predictBar(mix, base) };
    });
  });
}
