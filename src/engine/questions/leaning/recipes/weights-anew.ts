import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { LYE_WORDS } from '../../fields/soap-words.ts';
import { isEveryday } from '../../lye/amounts/chat-words.ts';
import type { Ran } from '../before.ts';
import { ASKS_RECIPE, type Lean, run } from '../lean-kinds.ts';
import { namesOilOf, reweighed, unitOf } from './recipe.ts';
import { tellsOilOff } from './recipe-swaps.ts';

/*
 * After the lye of a recipe a weight of an oil is of that pot, however it is brought up: it is never reckoned as a pot of its own, nor passed
 * by for a colour or a flaw, since the lye that was told stands on it.
 */

/** Figures that weigh nothing: shares, heat, times, pieces. */
const NO_WEIGHT = new RegExp(
  unbroken`
    \d+(?:[.,]\d+)? ?(?:%|percent|por ?ciento|c(?!\p{L})|f(?!\p{L})|°|degrees?|grados?|ºc|min\p{L}*|
    h(?:ours?|oras?|rs?)?(?!\p{L})|days?|dias?|weeks?|semanas?|months?|meses|years?|anos?|bars?|pastillas?|
    barras?|people|personas|times|veces|am(?!\p{L})|pm(?!\p{L}))|\d+ ?: ?\d+
  `,
  'gu',
);
/** Words of colour and of other jobs: what is asked stands by itself. */
const OF_ELSE = new RegExp(
  unbroken`
    (?<!\p{L})(?:micas?|oxid\p{L}*|pigment\p{L}*|colou?r\p{L}*|tint\p{L}*|dye\p{L}*|powders?|polvos?|clays?|
    arcillas?|swirl\p{L}*|charcoal|carbon|titanium|titanio|superfat\p{L}*|sobreengras\p{L}*|fragranc\p{L}*|
    scents?|esencia\p{L}*|water|agua|too much|demasiad\p{L}+|how long|cuanto (?:tiempo|dura)|shelf|estante|
    infus\p{L}*|macer\p{L}*|recipe for|receta de)(?!\p{L})
  `,
  'u',
);
/** Whether a plain turn speaks of a colour or another job than the pot. */
export const isOfElse = (plain: string): boolean => OF_ELSE.test(plain);
/** Says that what was told before was not so, or what the scale says after all. */
const NOT_SO = new RegExp(
  unbroken`
    (?<!\p{L})(?:sorry|wrong|wrongly|misread|mixed up|swapped|meant|hang on|hold on|oops|crud|slipped|
    scales?|weigh(?:s|ed|ing)?|really|actually|in fact|turns out|turned out|only|
    perdon\p{L}*|equivoc\p{L}*|confund\p{L}*|bail\p{L}*|al reves|uy|ups|quise decir|queria decir|
    balanza|bascula|peso|pesa|pese|pesaba|de verdad|en verdad|en realidad|resulta|resulto|solo|mal)(?!\p{L})
  `,
  'u',
);
/** "Do I change the lye?", asked behind it. */
const LYE_ASKED_BEHIND = new RegExp(
  unbroken`
    (?:(?:do|should|must|does) (?:i )?(?:have to |need to )?(?:change|adjust|redo|alter)?|(?:tengo que |debo |
    hay que |se )?(?:cambi|ajust)\p{L}*) ?(?:the |my |la )?(?:lye|sosa|naoh|koh|potasa)(?: change| cambia)?\W*$
  `,
  'u',
);
const withoutItsQuestion = (plain: string): string => plain.replace(LYE_ASKED_BEHIND, '');
/** Whether each word beside the oils is one of everyday: any other may be a fat, or change one. */
const isUnderstood = (plain: string): boolean =>
  (withoutItsQuestion(plain).match(/\p{L}+/gu) ?? []).every(
    word =>
      knownOil(word) !== undefined ||
      isEveryday(word) ||
      NOT_SO.test(word) ||
      IN_GRAMS.test(word) ||
      SAID_ON_THE_WAY.test(word),
  );
const IN_GRAMS = /^(?:g|gr|grams?|gramos?)$/u;
const SAID_ON_THE_WAY =
  /^(?:oh|ah|hang|hold|own|says?|said|tells?|reads?|dice|marca|handwriting|nosy|numeros?|numbers?)$/u;
const FIGURE = String.raw`\d{1,4}(?:[.,]\d+)?`;
const NAME_THEN = new RegExp(
  unbroken`
    (\p{L}+)(?: oil)?,?(?: (?:is|are|was|were|its|it|at|the|only|to|be|really|actually|in fact|weighs|weighed|
    came|es|son|era|eran|pesa|pesan|pesaba|la|el|los|las|de|con|en|solo|realidad|verdad))* (${FIGURE}) ?(?:g|gr|
    grams?|gramos?)?(?![\p{L}\d.,]*\d)
  `,
  'gu',
);
const THEN_NAME = new RegExp(
  `(?<![\\d.,])(${FIGURE}) ?(?:g|gr|grams?|gramos?)? (?:of |de )?(?:the |el |la |los |las )?(?:aceite de )?(\\p{L}+)`,
  'gu',
);

/** Each known oil with the one figure beside it; undefined where figures and oils do not pair. */
function pairsIn(plain: string, count: number): ReadonlyMap<string, number> | undefined {
  for (const [pattern, name, figure] of [
    [NAME_THEN, 1, 2],
    [THEN_NAME, 2, 1],
  ] as const) {
    const found = [...plain.matchAll(pattern)].filter(one => knownOil(one[name]!) !== undefined);
    const pairs = new Map(found.map(one => [one[name]!, Number(one[figure]!.replace(',', '.'))]));
    if (pairs.size === count && found.length === count) return pairs;
  }
  return undefined;
}

const oilsNamed = (plain: string): readonly string[] =>
  (plain.match(/\p{L}+/gu) ?? []).filter(word => knownOil(word) !== undefined);

/**
 * "I misread it, the coconut is 150 and the palm the 250": other weights of oils of the recipe, the rest of which stays, and its superfat with
 * it. Asked for whole where the weights do not pair with oils of it. Undefined where no oil is told with a figure, where a colour or another
 * job is spoken of, or lye that is asked for, or where a list of two oils and more says nowhere that it puts anything right: that is another recipe. Pure.
 */
export function weightsAnew(typed: string, before: Ran): Lean | undefined {
  const plain = unaccented(typed).replace(/['’]/gu, '').replace(NO_WEIGHT, ' ');
  const figures = plain.match(/\d+(?:[.,]\d+)?/gu) ?? [];
  const oils = oilsNamed(plain);
  if (
    figures.length === 0 ||
    oils.length === 0 ||
    OF_ELSE.test(plain) ||
    LYE_WORDS.test(withoutItsQuestion(plain))
  )
    return undefined;
  const isOfIt = oils.every(oil => namesOilOf(before, oil));
  // A list is another recipe, unless it says that the one before was wrong.
  if (oils.length > 1 && !NOT_SO.test(plain)) return undefined;
  if (tellsOilOff(plain)) return ASKS_RECIPE;
  const isOfGrams =
    unitOf(before) === 'g' && !/\d ?(?:oz|ounces?|onzas?|lbs?|libras?|pounds?|kg|kilos?)/u.test(plain);
  const pairs =
    isOfIt && isOfGrams && figures.length === oils.length && isUnderstood(plain)
      ? pairsIn(plain, oils.length)
      : undefined;
  const laid = pairs && reweighed(before, pairs);
  return laid ? run(laid) : ASKS_RECIPE;
}

const LYE_NAMES = '(?:lye|sosa|naoh|koh|potasa|lejia|soda)';
const LYE_CHANGES = new RegExp(
  unbroken`
    ^(?:(?:do|does|will|would|is|has|should|did|so|then|still|and|y|entonces|me|i|have to|need to|tengo que|
    debo|hay que|se) )*(?:(?:change|changes|alter|adjust|redo|cambia\p{L}*|ajusta\p{L}*|varia\p{L}*)(?: (?:the|
    my|la|el|de|mi))* ${LYE_NAMES}|(?:the |my |la |mi )?${LYE_NAMES}(?: (?:amount|figure|weight|still|
    needs? to|have to|number|cantidad|sigue|es|queda|la|the|is|be))* (?:change|changes|changed|right|ok|okay|
    good|same|fine|hold|stand|cambia\p{L}*|igual|bien|vale|misma))(?!\p{L})
  `,
  'u',
);
/** "So does the lye change?", "¿cambia la sosa?": of a pot that was told of otherwise since; takes a plain turn. Pure. */
export const asksWhetherLyeChanges = (text: string): boolean => LYE_CHANGES.test(text);
