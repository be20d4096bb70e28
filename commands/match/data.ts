import type { Recipe } from '../../src/presenting/colour/recipe.ts';
import { predictedData, rounded } from '../../src/presenting/colour/view.ts';
import { recipeCost } from '../../src/presenting/cost.ts';
import { spoonsData } from '../../src/presenting/dose-data.ts';
import type { MatchView } from './view.ts';

/** The same for programs: ids, numbers, no prose. */
export function matchData(view: MatchView): object {
  const { target, asked, from, base, millilitres, answer, recipes } = view;
  return {
    target: target.hex,
    targetLab: rounded(target.lab),
    targetWord: target.word,
    from,
    base: { ...base, gelled: asked.gelled },
    portion: { written: asked.portion, millilitres },
    most: asked.most,
    reached: answer.reached,
    miss: answer.miss,
    recipes: recipes.map(recipe => ({
      deltaE: recipe.deltaE,
      deltaEUnrounded: recipe.deltaEUnrounded,
      doses: recipe.doses.map(dose => ({
        colourant: dose.jar.colourant.id,
        item: dose.jar.item?.id,
        name: dose.jar.item?.name ?? dose.jar.colourant.names.en,
        teaspoons: dose.teaspoons,
        spoons: spoonsData(dose),
        grams: dose.offShelfGrams,
        pigmentGrams: dose.grams,
        ofCeiling: dose.ofCeiling,
        short: dose.short,
        left: dose.jar.item?.stock.grams,
      })),
      predicted: predictedData(recipe.predicted),
      warnings: warningsOf(recipe),
      fullness: recipe.fullness,
      pigmentGrams: recipe.pigmentGrams,
      risk: recipe.risk,
      takeable: recipe.takeable,
      ...(recipeCost(recipe) && { cost: recipeCost(recipe) }),
    })),
  };
}

function warningsOf({ doses, predicted }: Recipe): readonly object[] {
  const { pearl, fluorescent, onScreen } = predicted;
  return [
    ...doses.flatMap(({ jar: { colourant } }) =>
      colourant.alkali.behaviour === 'stable'
        ? []
        : [{ id: 'lye-changes', colourant: colourant.id, behaviour: colourant.alkali.behaviour }],
    ),
    ...doses.flatMap(({ jar, short }) =>
      short > 0 ? [{ id: 'short', item: jar.item?.id, teaspoons: short }] : [],
    ),
    ...doses.flatMap(({ jar: { colourant } }) =>
      colourant.light === 'holds' ? [] : [{ id: 'fades-in-light', colourant: colourant.id }],
    ),
    ...(pearl ? [{ id: 'pearl' }] : []),
    ...(fluorescent ? [{ id: 'fluorescent' }] : []),
    ...(onScreen ? [] : [{ id: 'off-screen' }]),
  ];
}
