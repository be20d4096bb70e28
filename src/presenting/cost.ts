import { costOf, type Money, sumsOf, times } from '../engine/cost/money.ts';
import type { ShelfItem } from '../records/shelf/shelf.ts';
import type { Words } from '../words/index.ts';
import type { Recipe } from './colour/recipe.ts';

/** Grams of what is in a jar; no item where it comes from no shelf. */
export type Taken = { readonly item: ShelfItem | undefined; readonly grams: number };

/** What the colour costs, one sum a currency, and the jars whose price nobody said. */
export type ColourCost = { readonly sums: readonly Money[]; readonly unpriced: readonly string[] };

/** The cost of what is taken from the member's own jars; undefined where none of them has a price. */
export function colourCost(taken: readonly Taken[]): ColourCost | undefined {
  const costs = taken.flatMap(({ item, grams }) => (item?.price ? [costOf(item.price, grams)] : []));
  if (costs.length === 0) return undefined;
  const unpriced = taken.flatMap(({ item }) => (item && !item.price ? [item.name] : []));
  return { sums: sumsOf(costs), unpriced: [...new Set(unpriced)] };
}

/** `€0.12`, or `€0.12 + $0.30` where jars were bought in two currencies. */
export const sumsView = (sums: readonly Money[], say: Words): string => sums.map(say.costs.money).join(' + ');

/** A bar of soap that a cost is told for, g. */
const BAR_GRAMS = 100;

/** The cost of a whole as that of 100 g of it. */
export const perBar = (sums: readonly Money[], batterGrams: number): readonly Money[] =>
  sums.map(sum => times(sum, BAR_GRAMS / batterGrams));

/** What the colour of a portion costs, in a sentence; nothing where no jar has a price. */
export function portionCostView(
  cost: ColourCost | undefined,
  batterGrams: number,
  say: Words,
): readonly string[] {
  if (!cost) return [];
  const { sums, unpriced } = cost;
  return [
    say.costs.portion({ sum: sumsView(sums, say), bar: sumsView(perBar(sums, batterGrams), say) }),
    ...unpricedView(unpriced, say),
  ];
}

export const unpricedView = (names: readonly string[], say: Words): readonly string[] =>
  names.length === 0 ? [] : [say.costs.unpriced({ names: names.slice(0, 5) })];

/** What a recipe costs, where all of its jars have a price in one currency. */
export function recipeCost({ doses }: Pick<Recipe, 'doses'>): Money | undefined {
  if (doses.some(({ jar }) => !jar.item?.price)) return undefined;
  const cost = colourCost(doses.map(({ jar, offShelfGrams }) => ({ item: jar.item, grams: offShelfGrams })));
  return cost?.sums.length === 1 ? cost.sums[0] : undefined;
}

/** A recipe no farther off than this (CIEDE2000) still counts as the colour, or than one more than the best there is. */
const STILL_IT = 3;

/** The cheapest of the recipes that hold in lye and in light and are still the colour, with its place; undefined without prices. */
export function cheapestHolding(
  recipes: readonly Recipe[],
): { readonly recipe: Recipe; readonly cost: Money } | undefined {
  const most = Math.max(STILL_IT, (recipes[0]?.deltaE ?? 0) + 1);
  const held = recipes.flatMap(recipe => {
    const cost = recipeCost(recipe);
    const holds = recipe.doses.every(
      ({ jar: { colourant } }) => colourant.alkali.behaviour === 'stable' && colourant.light === 'holds',
    );
    return cost && holds && recipe.deltaE <= most ? [{ recipe, cost }] : [];
  });
  const [first] = held;
  if (!first) return undefined;
  return held
    .filter(({ cost }) => cost.currency === first.cost.currency)
    .reduce((least, one) => (one.cost.amount < least.cost.amount ? one : least));
}
