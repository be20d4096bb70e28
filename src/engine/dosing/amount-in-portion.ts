import { pigmentIn, type SpoonedJar } from '../colour/jars/jar-spoons.ts';
import type { Strength, WantedStrength } from '../quantities/strength.ts';
import type { Measures } from '../quantities/units.ts';

/** A strength as it is; an amount in a portion of so many millilitres as spoons of dry powder to the cup. */
export function strengthInPortion(
  wanted: WantedStrength,
  jar: SpoonedJar,
  { millilitres, measures }: { readonly millilitres: number; readonly measures: Measures },
): Strength {
  if (wanted.by !== 'amount') return wanted;
  const { colourant } = jar;
  const dry = jar.pigmentFraction === undefined ? jar : { colourant };
  const powder = dry.gramsPerTeaspoon ?? colourant.bulkDensity.typical * measures.teaspoon;
  const teaspoons = pigmentIn(wanted.amount, jar, measures) / powder;
  return { by: 'cup', tspPerCup: (teaspoons * measures.cup) / millilitres };
}
