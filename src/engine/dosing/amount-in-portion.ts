import { pigmentIn, type SpoonedJar } from '../colour/jars/jar-spoons.ts';
import type { Colourant } from '../colourants/colourant.ts';
import type { Strength, StrengthName, WantedStrength } from '../quantities/strength.ts';
import type { Measures } from '../quantities/units.ts';

/** How deep most begin with a colourant where nothing is said: full colour unless its kind is mostly put in weaker. Pure. */
export const usualStrength = ({ dose }: Pick<Colourant, 'dose'>): StrengthName => dose.usual ?? 'full';

/**
 * A strength as it is, the usual one of that colourant where none was said; an amount in a portion of so many
 * millilitres as spoons of dry powder to the cup.
 */
export function strengthInPortion(
  wanted: WantedStrength,
  jar: SpoonedJar,
  { millilitres, measures }: { readonly millilitres: number; readonly measures: Measures },
): Strength {
  const { colourant } = jar;
  if (wanted.by === 'usual') return { by: 'name', name: usualStrength(colourant) };
  if (wanted.by !== 'amount') return wanted;
  const dry = jar.pigmentFraction === undefined ? jar : { colourant };
  const powder = dry.gramsPerTeaspoon ?? colourant.bulkDensity.typical * measures.teaspoon;
  const teaspoons = pigmentIn(wanted.amount, jar, measures) / powder;
  return { by: 'cup', tspPerCup: (teaspoons * measures.cup) / millilitres };
}
