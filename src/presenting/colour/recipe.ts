import { ceilingPerCup } from '../../engine/colour/jars/jar-spoons.ts';
import type { MatchAnswer, MatchDose, MatchRecipe } from '../../engine/colour/matching/match.ts';
import type { Measures } from '../../engine/quantities/units.ts';
import type { Jar } from '../../records/shelf/jars/jar.ts';
import type { Usable } from './candidates.ts';

/** A dose of a recipe with the jar it comes from. */
export type RecipeDose = MatchDose & {
  readonly jar: Jar;
  /** Of what is in the jar, pigment or liquid, grams. */
  readonly offShelfGrams: number;
  /** Of dry powder, in the member's teaspoons: what a dose counts in. */
  readonly powderTeaspoons: number;
};

export type Recipe = Omit<MatchRecipe, 'doses'> & {
  readonly doses: readonly RecipeDose[];
  /** Every colourant is on the shelf, and enough of it is counted there. */
  readonly takeable: boolean;
};

/** The recipes of an answer with their jars, the best first. */
export function recipesOf(
  { recipes }: MatchAnswer,
  usable: readonly Usable[],
  measures: Measures,
): readonly Recipe[] {
  const jars = new Map(usable.map(({ candidate, jar }) => [candidate.id, { jar, candidate }]));
  return recipes.map(recipe => {
    const doses = recipe.doses.map((dose): RecipeDose => {
      const { jar, candidate } = jars.get(dose.id)!;
      const { colourant, item } = jar;
      const fraction = item?.pigmentFraction;
      // A liquid's spoons stand for the powder they hold.
      const powder = ceilingPerCup({ colourant }, measures) / candidate.ceilingTspPerCup;
      const powderTeaspoons = fraction === undefined ? dose.teaspoons : dose.teaspoons * powder;
      return {
        ...dose,
        jar,
        offShelfGrams: dose.grams / (fraction ?? 1),
        powderTeaspoons,
      };
    });
    return {
      ...recipe,
      doses,
      takeable: doses.every(({ jar, offShelfGrams }) => (jar.item?.stock.grams ?? 0) >= offShelfGrams),
    };
  });
}
