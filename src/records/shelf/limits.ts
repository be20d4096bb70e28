import { SPOON_GRAMS } from '../../engine/dosing/powder.ts';
import { US_TEASPOON_ML } from '../../engine/quantities/units.ts';
import { refuse } from '../../engine/refusal.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'shelf-grams-unfit': { readonly grams: number; readonly least: number; readonly most: number };
    'shelf-pigment-unfit': { readonly percent: number };
    'shelf-spoon-unfit': { readonly grams: number; readonly least: number; readonly most: number };
  }
}

/** One milligram: what the finest pocket scale shows, g. */
const leastGrams = 0.001;
/** More than any home cupboard holds of one colourant, g. */
const mostGrams = 100_000;

/** A mass to put on or take off, g; refuses what is not between a milligram and 100 kg. */
export function checkGrams(grams: number): number {
  if (!(grams >= leastGrams && grams <= mostGrams)) {
    refuse('shelf-grams-unfit', { grams, least: leastGrams, most: mostGrams });
  }
  return grams;
}

/** Like {@link checkGrams}, but 0 is allowed: an empty jar, or a mark that never tells. */
export const checkGramsOrNone = (grams: number): number => (grams === 0 ? 0 : checkGrams(grams));

/** Pigment by weight of a dispersed colourant: more than none, at most all of it. */
export function checkPigment(fraction: number): number {
  if (!(fraction > 0 && fraction <= 1)) refuse('shelf-pigment-unfit', { percent: fraction * 100 });
  return fraction;
}

/**
 * Loosest and densest powders a spoon may hold, g/ml. From memory: fumed powders pour at about 0.05, the
 * heaviest pigments (bismuth, lead-free oxides) stay under 4 when loose.
 */
const lightest = 0.05;
const heaviest = 5;

/** True of a spoon that was weighed before there was a limit, and holds more or less than any powder: a slip. */
export const isOddSpoon = (grams: number, spoonMillilitres: number): boolean => {
  const gramsPerTeaspoon = (grams * US_TEASPOON_ML) / spoonMillilitres;
  return !(gramsPerTeaspoon >= SPOON_GRAMS.low && gramsPerTeaspoon <= SPOON_GRAMS.high);
};

/**
 * What one level spoon weighs, g, in a spoon of that many ml; refuses what no powder or paste weighs, and what a dose
 * would refuse, or the jar could never be dosed again.
 */
export function checkSpoon(grams: number, spoonMillilitres: number): void {
  const least = Math.max(SPOON_GRAMS.low, lightest * spoonMillilitres);
  const most = Math.min(SPOON_GRAMS.high, heaviest * spoonMillilitres);
  if (!(grams >= least && grams <= most)) refuse('shelf-spoon-unfit', { grams, least, most });
}
