import type { Colourant } from '../../colourants/colourant.ts';
import { batterFromOils, CARRIER_DENSITY, TYPICAL_BATTER } from '../../dispersion/batter.ts';
import type { Amount } from '../../quantities/amount.ts';
import { STRENGTH_SHARES, type Strength } from '../../quantities/strength.ts';
import { type Measures, POUND_G, US_CUP_ML, US_TEASPOON_ML } from '../../quantities/units.ts';
import type { BarDose } from '../reading/bar-text.ts';
import { fullDose } from './colourant-optics.ts';

/** What a jar's spoon holds: a powder, or a liquid that a share of is pigment. */
export type SpoonedJar = {
  readonly colourant: Colourant;
  /** Its owner's weighing of a level teaspoon of what is in it, grams, of the teaspoon in use. */
  readonly gramsPerTeaspoon?: number;
  /** 0 to 1; undefined of a powder. */
  readonly pigmentFraction?: number;
};

/** Pigment in one level teaspoon of the jar, grams. */
export function pigmentPerTeaspoon(
  { colourant, gramsPerTeaspoon, pigmentFraction }: SpoonedJar,
  { teaspoon }: Pick<Measures, 'teaspoon'>,
): number {
  if (pigmentFraction === undefined) return gramsPerTeaspoon ?? colourant.bulkDensity.typical * teaspoon;
  const liquid =
    gramsPerTeaspoon ??
    teaspoon /
      (pigmentFraction / colourant.density.typical + (1 - pigmentFraction) / CARRIER_DENSITY.glycerin);
  return pigmentFraction * liquid;
}

/** Most spoons of the jar to the US cup of batter, in teaspoons of the measures in use. */
export function ceilingPerCup(jar: SpoonedJar, measures: Pick<Measures, 'teaspoon'>): number {
  const { colourant, pigmentFraction } = jar;
  const powder = (colourant.dose.ceilingTspPerCup * US_TEASPOON_ML) / measures.teaspoon;
  if (pigmentFraction === undefined) return powder;
  const grams = powder * colourant.bulkDensity.typical * measures.teaspoon;
  return grams / pigmentPerTeaspoon(jar, measures);
}

/** Pigment in an amount of what is in the jar, grams. */
export function pigmentIn(amount: Amount, jar: SpoonedJar, measures: Measures): number {
  if (amount.measure === 'mass') return amount.grams * (jar.pigmentFraction ?? 1);
  return (amount.millilitres / measures.teaspoon) * pigmentPerTeaspoon(jar, measures);
}

/** Pigment in a test bar, grams per 100 g of typical batter. Bars are not held under any ceiling: they were made. */
export function barGrams(dose: BarDose, jar: SpoonedJar, measures: Measures): number {
  const cup = measures.cup * TYPICAL_BATTER.gramsPerMillilitre;
  const spoon = pigmentPerTeaspoon(jar, measures);
  switch (dose.by) {
    case 'plain':
      return 0;
    case 'grams-a-cup':
      return (100 * dose.grams * (jar.pigmentFraction ?? 1)) / cup;
    case 'cup':
      return (100 * dose.tspPerCup * spoon) / cup;
    case 'percent-of-oils': {
      const batter = batterFromOils(POUND_G, TYPICAL_BATTER) * TYPICAL_BATTER.gramsPerMillilitre;
      return (dose.percent * POUND_G * (jar.pigmentFraction ?? 1)) / batter;
    }
    case 'pound-of-oils': {
      const batter = batterFromOils(POUND_G, TYPICAL_BATTER) * TYPICAL_BATTER.gramsPerMillilitre;
      return (100 * dose.tspPerPound * spoon) / batter;
    }
    case 'name':
    case 'share':
      return shareOf(dose) * fullGrams(jar, measures);
  }
}

const shareOf = (dose: Extract<Strength, { by: 'name' | 'share' }>): number =>
  dose.by === 'name' ? STRENGTH_SHARES[dose.name] : dose.ofFull;

/** Pigment of a full dose, grams per 100 g of typical batter, by the owner's own spoon where it was weighed. */
export function fullGrams(jar: SpoonedJar, measures: Pick<Measures, 'teaspoon'>): number {
  if (jar.pigmentFraction !== undefined || jar.gramsPerTeaspoon === undefined) return fullDose(jar.colourant);
  const perMillilitre = jar.gramsPerTeaspoon / measures.teaspoon;
  const powder = jar.colourant.dose.fullTspPerCup * US_TEASPOON_ML * perMillilitre;
  return (100 * powder) / (US_CUP_ML * TYPICAL_BATTER.gramsPerMillilitre);
}
