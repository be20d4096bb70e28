import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import { aspectIn } from '../asked-of-it.ts';
import { type Before, isOfLye, type Ran } from '../before.ts';
import { ASKS_RECIPE, type Lean, run } from '../lean-kinds.ts';
import type { Opened } from '../turn/plain.ts';
import { slotsOf } from '../turn/slots.ts';
import { oilTurn } from '../turn/turns.ts';
import { addedOil, atSuperfat, inUnitOf, oilsAlone, recipeFor } from './recipe.ts';
import { scaledToFit, weightsPutRight } from './recipe-put-right.ts';
import { swapLaid, takesOilAway, tellsOilOff, waterLaid } from './recipe-swaps.ts';
import { otherLyeLaid, purityLaid, tellsPurity } from './told-anew.ts';
import { potToldOtherwise } from './told-otherwise.ts';
import { asksWhetherLyeChanges, weightsAnew } from './weights-anew.ts';

/* Turns that go on from a recipe, or from the question which recipe it is. Near lye what is unclear is asked for, whole. */

/** What the lye goes into instead of water. */
const LIQUID_INSTEAD = new RegExp(
  unbroken`
    ^(?:if |si )?(?:its |it is |es |fuera |lo hago |la hago |i )?(?:(?:with|use|using|con|en|usar|
    uso) )?(?:goat |coconut )?(?:milk|beer|wine|coffee|tea|aloe(?: juice)?|leche(?: de (?:cabra|coco))?|
    cerveza|vino|cafe|te)(?: (?:for|instead of|and not|not|en vez del?|en lugar del?|y no|
    no)(?: the| el| con| with)? (?:water|agua)| instead)?$
  `,
  'u',
);

/** "And how much lye", after a colour: never without the oils. */
const OF_LYE = /^(?:of |de )(?:the |la |el )?(?:lye|naoh|caustic soda|sosa|soda(?: caustica)?|lejia)$/u;

const WEIGHT = String.raw`\d+(?:[.,]\d+)? ?(?:g|gr|grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)`;
const SO_MUCH_OVER = new RegExp(
  unbroken`
    ^(?:(?:by|por|of|de|only|just|solo|unos|about|like|como|its|son|fueron|it|was) )*${WEIGHT}(?: (?:more|
    over|extra|too much|de mas|mas|de sobra))?(?: (?:in|en|for|para|per|on|of|de|out of) (?:a |
    un )?${WEIGHT}(?: (?:of |de )?(?:oils?|aceites?|batch|lote))?)?$
  `,
  'u',
);
/** "By 10 g in 1 kg": how far over lye is, of oils that nobody named. Pure. */
export const isSoMuchOver = (text: string): boolean => SO_MUCH_OVER.test(text);

/** "I saved 90 g of it so I'll go with that", after the question for the recipe. */
const WEIGHS_IT = new RegExp(
  unbroken`
    (?<![\d.,])${WEIGHT}(?: of| de)? (?:it|that|those|eso|ello|es[ao])(?!\p{L})|
    ^(?:lo|la|los|las) (?:he |ha )?\p{L}+ .*\d
  `,
  'u',
);
const weighsIt = (text: string): boolean => WEIGHS_IT.test(text);

const TOTAL = new RegExp(
  unbroken`
    ^(?:(?:al final|mejor|finalmente|actually|make|it|the|el|un|in|en|quiero|want|i|to|a) )*total(?: (?:en|de|
    a|es|to|at|of|is|seria|sea|will be|be))* (${WEIGHT})(?: (?:of |de )?(?:oils?|aceites?))?$
  `,
  'u',
);
/** "Al final el total en 750 g": the same recipe for so much oil. */
function totalLaid(text: string, before: Ran): Lean | undefined {
  const [, weight] = TOTAL.exec(text) ?? [];
  const laid = weight === undefined ? undefined : recipeFor(before, weight);
  return laid && run({ ...laid, scaled: 'to-size' });
}

/** "Anyway whats mine at 8 then": the superfat. */
const MINE_AT = new RegExp(
  unbroken`
    ^(?:(?:anyway|anyways|whats|what is|what|about|how|cuanto|es|seria|y) )*(?:mine|it|the lye|la mia|lo mio|
    eso) (?:at|al|con) (\d{1,2})(?: ?%| ?percent| por ciento)?$
  `,
  'u',
);
function mineAt(text: string, before: Ran): Lean | undefined {
  const [, percent] = MINE_AT.exec(text) ?? [];
  const laid = percent === undefined ? undefined : atSuperfat(before, Number(percent));
  return laid && run(laid);
}

/** What takes an oil out, tells that it came out otherwise, or asks whether the lye stays, and is not understood, changes the lye. */
const CHANGES_POT = [takesOilAway, tellsOilOff, asksWhetherLyeChanges] as const;

/** How a turn goes on from a recipe; undefined where it says nothing of one. Pure. */
export function recipeTurn(typed: string, turn: Opened, before: Before | undefined): Lean | undefined {
  const isRecipe = before?.kind === 'command' && isOfLye(before);
  if ((isRecipe || before?.kind === 'recipe') && LIQUID_INSTEAD.test(turn.text))
    return { kind: 'matter', id: 'liquid-instead' };
  if (before && OF_LYE.test(turn.text)) return isRecipe ? { kind: 'runs', readings: [before] } : ASKS_RECIPE;
  if (isRecipe)
    return (
      weightsPutRight(typed, before) ??
      scaledToFit(turn, before) ??
      swapLaid(turn.text, before) ??
      oilLaid(turn, before) ??
      otherLyeLaid(turn.text, before) ??
      purityLaid(turn.text, before) ??
      weightsAnew(typed, before) ??
      totalLaid(turn.text, before) ??
      mineAt(turn.text, before) ??
      waterLaid(turn.text, before) ??
      (CHANGES_POT.some(tells => tells(turn.text)) ? ASKS_RECIPE : undefined) ??
      potToldOtherwise(typed, before)
    );
  if (before?.kind === 'recipe') return withoutRecipe(typed, turn, before.hadOne !== true);
  // Of a recipe that nobody holds any more, after a matter of lye.
  return before?.kind === 'matter' && tellsPurity(turn.text) ? ASKS_RECIPE : addedToNothing(turn);
}

/** After the question for the recipe: the recipe, or what still cannot be reckoned without it. */
function withoutRecipe(typed: string, turn: Opened, mayBeOne: boolean): Lean | undefined {
  const oils = oilsAlone(typed, mayBeOne);
  if (oils !== undefined)
    return { kind: 'runs', readings: [{ job: 'lye', command: 'plan', given: { oils } }] };
  const [added, one] = [addedToNothing(turn), oilTurn(turn.text)];
  if (added) return added;
  if ([...CHANGES_POT, tellsPurity, weighsIt].some(tells => tells(turn.text))) return ASKS_RECIPE;
  if (one && knownOil(one.name) !== undefined) return ASKS_RECIPE;
  const aspect = aspectIn(turn.text);
  if (aspect === 'water' || aspect === 'how-much') return ASKS_RECIPE;
  const slots = slotsOf(turn);
  const isBare = slots !== undefined && slots.named.length === 0 && slots.hues.length === 0;
  return isBare || knownOil(turn.text) !== undefined ? ASKS_RECIPE : undefined;
}

/** "I add 200 of coconut too": to what? An oil alone is never reckoned for the whole. */
function addedToNothing({ text, leads, tails }: Opened): Lean | undefined {
  const oil = oilTurn(text);
  const isMore = oil?.isAdded || (leads.length > 0 && tails.some(tail => ALSO.test(tail)));
  return oil && isMore && knownOil(oil.name) !== undefined ? ASKS_RECIPE : undefined;
}
const ALSO = /^(?:too|also|as well|tambien)$/u;

/** "And 50 g castor" after a recipe: in addition, or instead? It is asked unless the words say it. */
function oilLaid({ text, leads, tails }: Opened, before: Ran): Lean | undefined {
  const oil = oilTurn(text);
  const isSaid = oil?.isAdded === true || tails.some(tail => ALSO.test(tail));
  if (!oil || knownOil(oil.name) === undefined || !(isSaid || leads.length > 0)) return undefined;
  const amount = inUnitOf(before, oil.amount);
  const laid = isSaid && amount !== undefined ? addedOil(before, amount, oil.name) : undefined;
  return laid ? { kind: 'runs', readings: [laid] } : ASKS_RECIPE;
}
