import type { Batter } from '../../dispersion/batter.ts';
import { hydroxideDemand, superfatPercent } from '../lye/lye.ts';
import { lyeSolutionDensity } from '../lye/lye-solution.ts';
import type { Oil, OilMass } from '../oils/oil.ts';
import { batchWaterGrams, type Recipe } from '../recipe.ts';

/** How oils thin with warmth, g/ml per K (oil handbooks print 0.00065 to 0.00070; from memory). */
const OIL_DENSITY_SLOPE = -0.00068;

/** What was taken out of the recipe for the colours: oil dipped before the lye, water kept from the lye water. */
export type Taken = { readonly dipped: readonly OilMass[]; readonly holdBackGrams: number };

export const NOTHING_TAKEN: Taken = { dipped: [], holdBackGrams: 0 };

/** The raw batter in the pot when it is split. Grams, millilitres, moles. */
export type Pot = {
  readonly grams: number;
  readonly millilitres: number;
  readonly oils: readonly OilMass[];
  readonly oilGrams: number;
  readonly demand: number;
  readonly hydroxide: number;
  readonly lyeGrams: number;
  /** All water in it, from whatever source. */
  readonly waterGrams: number;
};

/** Density of a melted oil at that temperature, g/ml. */
export function oilDensity(oil: Oil, celsius: number): number {
  return oil.density.typical + OIL_DENSITY_SLOPE * (celsius - oil.density.atCelsius);
}

/** Millilitres of these oils, melted, at that temperature. */
export function oilMillilitres(oils: readonly OilMass[], celsius: number): number {
  return oils.reduce((sum, { oil, grams }) => sum + grams / oilDensity(oil, celsius), 0);
}

/** Some grams of the recipe's own blend. */
export function fromBlend(recipe: Recipe, grams: number): readonly OilMass[] {
  return recipe.oils.map(({ oil, grams: all }) => ({ oil, grams: (grams * all) / recipe.oilGrams }));
}

/**
 * The batter that fills the pot, at `celsius`. Oils, lye solution and solids are taken to keep their volumes when mixed
 * (ideal mixing; real batter contracts a little as it saponifies).
 */
export function potOf(recipe: Recipe, taken: Taken, celsius: number): Pot {
  const oils = lessDipped([...recipe.oils, ...recipe.totals.fats], taken.dipped);
  const oilGrams = oils.reduce((sum, { grams }) => sum + grams, 0);
  const waterGrams = batchWaterGrams(recipe) - taken.holdBackGrams;
  const solution = recipe.lyeGrams + waterGrams;
  const potassium = recipe.lye.find(({ alkali }) => alkali === 'KOH')?.grams ?? 0;
  const density = lyeSolutionDensity(
    (100 * recipe.lyeGrams) / solution,
    potassium / recipe.lyeGrams,
    celsius,
  );
  const solids = recipe.totals.grams - recipe.totals.waterGrams - fatGrams(recipe);
  return {
    grams: oilGrams + solution + solids,
    millilitres: oilMillilitres(oils, celsius) + solution / density + recipe.totals.solidMillilitres,
    oils,
    oilGrams,
    demand: hydroxideDemand(oils).typical,
    hydroxide: recipe.hydroxide,
    lyeGrams: recipe.lyeGrams,
    waterGrams,
  };
}

function fatGrams(recipe: Recipe): number {
  return recipe.totals.fats.reduce((sum, { grams }) => sum + grams, 0);
}

function lessDipped(oils: readonly OilMass[], dipped: readonly OilMass[]): readonly OilMass[] {
  const taken = new Map<string, number>();
  for (const { oil, grams } of dipped) taken.set(oil.id, (taken.get(oil.id) ?? 0) + grams);
  return oils.map(({ oil, grams }) => {
    const less = Math.min(grams, taken.get(oil.id) ?? 0);
    taken.set(oil.id, (taken.get(oil.id) ?? 0) - less);
    return { oil, grams: grams - less };
  });
}

/** Superfat of the uncoloured batter, percent: lower than asked once oil has been dipped from it. */
export function potSuperfat(pot: Pot): number {
  return superfatPercent(pot.hydroxide, pot.demand);
}

/** The pot as the dosing of colours sees it. */
export function batterOfPot(pot: Pot): Batter {
  return {
    gramsPerMillilitre: pot.grams / pot.millilitres,
    oilsShare: pot.oilGrams / pot.grams,
    lyeConcentration: pot.lyeGrams / (pot.lyeGrams + pot.waterGrams),
    superfat: potSuperfat(pot) / 100,
  };
}
