import { amountText } from '../../../quantities/for-readers.ts';
import { amountOf } from '../../portion-line/amount-at.ts';
import type { Laid } from '../before.ts';
import type { Slots } from '../turn/slots.ts';
import { atSuperfat, onlyOilAt, recipeFor, timesRecipe } from './recipe.ts';

/** What a turn changes in a recipe whose lye was told: all oils at once, or the superfat. Nothing else is laid over it, and a volume is asked for. Pure. */
export function recipeLaid(laid: Laid, slots: Slots): Laid | undefined {
  const { amount, times, percent, figure, of, named, hues, depth } = slots;
  if (named.length > 0 || hues.length > 0 || depth !== undefined || of === 'batter') return undefined;
  if (percent !== undefined) return atSuperfat(laid, percent);
  if (times !== undefined) return timesRecipe(laid, times) ?? sizedTimes(laid, times);
  if (amount) {
    if (amount.of === 'batter' || amount.of === 'oil') return undefined;
    return recipeFor(laid, amount.text) ?? sized(laid, gramsIn(amount.text));
  }
  const [oilAnew, isTold] = [figure === undefined ? undefined : onlyOilAt(laid, figure), slots.isMarked];
  if (oilAnew && isTold) return oilAnew;
  // "15 then" is a superfat only where one was told.
  return figure !== undefined && laid.given.superfat !== undefined ? atSuperfat(laid, figure) : undefined;
}

const gramsIn = (amount: string): number | undefined => {
  const told = amountOf(amount);
  return told?.measure === 'mass' ? told.grams : undefined;
};

/** Options that stay right whatever the size. */
const OF_ANY_SIZE: ReadonlySet<string> = new Set(['oils', 'size', 'superfat', 'lye', 'water']);

/** A recipe of percentages for so many grams of oils; undefined where it tells weights, or an amount that would have to be scaled too. */
function sized(laid: Laid, grams: number | undefined): Laid | undefined {
  const { oils = '', size, water = '%' } = laid.given;
  const isOfPercents = size !== undefined && oils.split(/,(?!\d)/u).every(one => one.includes('%'));
  if (grams === undefined || !isOfPercents || !Object.keys(laid.given).every(name => OF_ANY_SIZE.has(name)))
    return undefined;
  return water.includes('%')
    ? { ...laid, given: { ...laid.given, size: amountText(grams, { ofOils: true, decimals: 1 }) } }
    : undefined;
}

/** Half of it, or twice: of a size that is told as the weight of its oils. */
function sizedTimes(laid: Laid, times: number): Laid | undefined {
  const [, weight] = /^(.+) oils$/u.exec(laid.given.size ?? '') ?? [];
  const grams = weight === undefined ? undefined : gramsIn(weight);
  return grams === undefined ? undefined : sized(laid, grams * times);
}
