import type { SpoonCount } from '../../quantities/spoons.ts';
import { refuse } from '../../refusal.ts';
import { type BarPrediction, predictBar } from '../mixing/bar.ts';
import { MOST_IN_MIX } from '../mixing/mix-kernel.ts';
import { colourDifference, differenceFrom, type Lab } from '../spectra/cielab.ts';
import { explainMiss, type Miss } from './match-miss.ts';
import type { MatchRequest } from './match-request.ts';
import { type RoundedRecipe, searchRecipes } from './match-search.ts';
import { spoonsHolding } from './spoon-grid.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'match-without-colourants': Record<string, never>;
    'match-too-many-colourants': { most: number };
  }
}

export type MatchDose = {
  readonly id: string;
  readonly teaspoons: number;
  readonly grams: number;
  readonly spoons: readonly SpoonCount[];
  /** Share of its own ceiling. */
  readonly ofCeiling: number;
  /** Teaspoons more than are on the shelf. */
  readonly short: number;
};

export type MatchRecipe = {
  /** CIEDE2000 of what the spoons give. */
  readonly deltaE: number;
  /** CIEDE2000 of the best doses, before they were rounded to spoons. */
  readonly deltaEUnrounded: number;
  readonly doses: readonly MatchDose[];
  readonly predicted: BarPrediction;
  /** Sum of dose over ceiling, 1 at most. */
  readonly fullness: number;
  readonly pigmentGrams: number;
  /** The greatest risk among its colourants. */
  readonly risk: number;
};

export type MatchAnswer = {
  /** The best recipe of each set of colourants, best first. */
  readonly recipes: readonly MatchRecipe[];
  /** Whether the best recipe is within CIEDE2000 3 of the target. */
  readonly reached: boolean;
  /** Where the best recipe falls short, when it is not reached. */
  readonly miss: Miss | undefined;
};

const USUAL_RECIPES = 5;
/** CIEDE2000 that two bars of one batch may show: nearer than that counts as reached (common practice). */
const REACHED = 3;

/** CIEDE2000 from which a colour is another one, and what a person would point at as the nearest is asked instead. */
const FAR = 10;
/** Parts of the target's chroma that are aimed at where the whole of it is out of reach. Chosen. */
const DULLER = [0.75, 0.55, 0.4, 0.25] as const;
/** Of each aim, the best recipes are looked at. */
const OF_EACH_AIM = 12;

/**
 * The recipes in real spoons that come nearest to a colour: every subset of at most `most` colourants, with or without a
 * white, is solved for its best doses within the ceilings (dose over ceiling sums to 1 at most, whites included), then rounded
 * by searching spoon sums around and along the solution. Ranked by CIEDE2000 to a tenth; then fewer colourants, less risk, no
 * shortage, less pigment. Where the best is further than 10, duller colours of the target's hue are aimed at too, and recipes
 * are ranked by {@link differenceFrom} the target. Throws a Refusal: `match-without-colourants`, `match-too-many-colourants`.
 * @example matchColour({ target: labOfHex('#3f6fa8'), candidates: [{ id: 'blue', optics:
 * opticsOf(findColourant('ultramarine blue')), gramsPerTeaspoon: 2.6, ceilingTspPerCup: 0.5, white: false,
 * risk: 0 }], base: plainBase('white', false), portion: { cups: 1, grams: 236.6 }, most: 1 }).recipes[0].doses[0].id // 'blue'
 */
export function matchColour(request: MatchRequest): MatchAnswer {
  const { candidates, most, base } = request;
  if (candidates.length === 0) refuse('match-without-colourants', {});
  if (!(most >= 1 && most < MOST_IN_MIX)) refuse('match-too-many-colourants', { most: MOST_IN_MIX - 1 });
  const near = searchRecipes(request)
    .map(recipe => described(recipe, request))
    .sort(byMerit);
  const isFar = near[0] !== undefined && near[0].deltaE > FAR;
  const recipes = (isFar ? fromAfar(near, request) : near).slice(0, request.recipes ?? USUAL_RECIPES);
  const best = recipes[0];
  if (best === undefined)
    return { recipes, reached: false, miss: explainMiss(request.target, predictBar([], base).lab) };
  const reached = best.deltaE <= REACHED;
  return { recipes, reached, miss: reached ? undefined : explainMiss(request.target, best.predicted.lab) };
}

/** What a person would point at as nearest, best first: the hue counts where the colour itself is out of reach. */
function fromAfar(near: readonly MatchRecipe[], request: MatchRequest): MatchRecipe[] {
  const { l, a, b } = request.target;
  const aims = DULLER.map((share): Lab => ({ l, a: share * a, b: share * b }));
  const duller = aims.flatMap(target =>
    searchRecipes({ ...request, target })
      .slice(0, OF_EACH_AIM)
      .map(recipe => described(recipe, request)),
  );
  const off = ({ predicted }: MatchRecipe) => Math.round(2 * differenceFrom(request.target, predicted.lab));
  const best = new Map<string, MatchRecipe>();
  for (const recipe of [...near, ...duller]) {
    const set = recipe.doses
      .map(({ id }) => id)
      .sort()
      .join(' ');
    const known = best.get(set);
    if (!known || off(recipe) < off(known)) best.set(set, recipe);
  }
  return [...best.values()].sort((one, other) => off(one) - off(other) || byMerit(one, other));
}

function described(
  recipe: RoundedRecipe,
  { candidates, base, portion, owned, target }: MatchRequest,
): MatchRecipe {
  const doses = recipe.doses.map(({ member, teaspoons }): MatchDose => {
    const candidate = candidates[member]!;
    return {
      id: candidate.id,
      teaspoons,
      grams: teaspoons * candidate.gramsPerTeaspoon,
      spoons: spoonsHolding(Math.round(teaspoons * 32), owned),
      ofCeiling: teaspoons / (candidate.ceilingTspPerCup * portion.cups),
      short: Math.max(0, teaspoons - (candidate.stockTeaspoons ?? Number.POSITIVE_INFINITY)),
    };
  });
  const mix = recipe.doses.map(({ member, teaspoons }) => {
    const { optics, gramsPerTeaspoon } = candidates[member]!;
    return { optics, grams: (100 * teaspoons * gramsPerTeaspoon) / portion.grams };
  });
  const predicted = predictBar(mix, base);
  const deltaE = colourDifference(predicted.lab, target);
  return {
    deltaE,
    deltaEUnrounded: Math.min(recipe.deltaEUnrounded, deltaE),
    doses,
    predicted,
    fullness: doses.reduce((sum, dose) => sum + dose.ofCeiling, 0),
    pigmentGrams: doses.reduce((sum, dose) => sum + dose.grams, 0),
    risk: Math.max(0, ...recipe.doses.map(({ member }) => candidates[member]!.risk)),
  };
}

/** Order of recipes: colour to a tenth, then what makes life easier. */
export function byMerit(one: MatchRecipe, other: MatchRecipe): number {
  const shortage = (recipe: MatchRecipe) => recipe.doses.reduce((sum, dose) => sum + dose.short, 0);
  return (
    Math.round(one.deltaE * 10) - Math.round(other.deltaE * 10) ||
    one.doses.length - other.doses.length ||
    one.risk - other.risk ||
    shortage(one) - shortage(other) ||
    one.fullness - other.fullness ||
    one.deltaE - other.deltaE
  );
}
