import { amountText } from '../../../quantities/for-readers.ts';
import { amountOf } from '../../portion-line/amount-at.ts';
import type { Laid } from '../before.ts';
import type { Slots } from '../turn/slots.ts';
import { atSuperfat, OF_ANY_SIZE, onlyOilAt, recipeFor, timesRecipe } from './recipe.ts';

/** What a turn changes in a recipe whose lye was told: all oils at once, or the superfat. Nothing else is laid over it, and a volume is asked for. Pure. */
export function recipeLaid(laid: Laid, slots: Slots): Laid | undefined {
  const { amount, times, percent, figure, of, named, hues, depth, isMarked } = slots;
  if (named.length > 0 || hues.length > 0 || depth !== undefined || of === 'batter') return undefined;
  if (percent !== undefined) return atSuperfat(laid, percent);
  if (times !== undefined) return scaledBy(laid, { times, isMarked });
  if (amount) {
    if (amount.of === 'batter' || amount.of === 'oil') return undefined;
    const laidFor = recipeFor(laid, amount.text) ?? sized(laid, gramsIn(amount.text));
    return laidFor && { ...laidFor, scaled: 'to-size' };
  }
  const oilAnew = figure === undefined ? undefined : onlyOilAt(laid, figure);
  if (oilAnew && isMarked) return oilAnew;
  // "15 then" is a superfat only where one was told.
  return figure !== undefined && laid.given.superfat !== undefined ? atSuperfat(laid, figure) : undefined;
}

/**
 * So many times the recipe. After "double" "no, half" is half of what was told and not of the double, and "and half?" may be either: it is
 * asked, as is a multiple of what was brought to another size.
 */
function scaledBy(
  laid: Laid,
  { times, isMarked }: { readonly times: number; readonly isMarked: boolean },
): Laid | undefined {
  const { scaled = 1 } = laid;
  if (scaled === 'to-size' || (scaled !== 1 && !isMarked)) return undefined;
  const by = timesRecipe(laid, times / scaled) ?? sizedTimes(laid, times / scaled);
  return by && { ...by, scaled: times };
}

const gramsIn = (amount: string): number | undefined => {
  const told = amountOf(amount);
  return told?.measure === 'mass' ? told.grams : undefined;
};

/** A recipe of percentages for so many grams of oils; undefined where it tells weights, or an amount that would have to be scaled too. */
function sized(laid: Laid, grams: number | undefined): Laid | undefined {
  const { size, ...others } = laid.given;
  const { oils = '', water = '%' } = others;
  const isOfPercents = size !== undefined && oils.split(/,(?!\d)/u).every(one => one.includes('%'));
  if (grams === undefined || !isOfPercents || !Object.keys(others).every(name => OF_ANY_SIZE.has(name)))
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
