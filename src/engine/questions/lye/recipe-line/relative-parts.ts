/** A weight in words, whose unit a part behind it must not take: a third of that is no third of a kilo. */
const IN_WORDS =
  '(?:half|quarters?|fourths?|thirds?|medi[oa]|cuartos?|tercios?|[\\d.,/]+) (?:(?:an?|of|de|una?) )*(?:kilos?|kg|pounds?|lbs?|libras?|ounces?|onzas?|oz)(?!\\p{L})(?! (?:(?:of|de) )?(?:the )?(?:oils?|fats?|aceites?|grasas?|total)(?!\\p{L}))';
/** "That", of which a part is told; the whole of a recipe is told of as well ("half of that, please"), so an oil has to follow. */
const THAT =
  '(?:that|it|this|those|es[oa]s?|est[oa]s?|ello|l[oa] (?:primer[oa]|anterior)|the first|the same)';
const PART =
  '(?:thirds?|quarters?|fourths?|fifths?|tenths?|tercios?|cuartos?|quintos?|decimos?|(?:tercera|cuarta|quinta|decima) parte|0?[.,]\\d+|[1-9]/\\d|\\d{1,3} ?(?:%|percent|por ciento))';
const OF_PURPOSE = '(?:for|para|please|por|lye|sosa|soda|naoh|koh|batch|tanda|recipe|receta|mix|mezcla)';

/**
 * "Three quarters of a kilo of olive and a third of that in coconut": how much one oil is, told by another. Halves and multiples of a weight in
 * grams are worked out (`alike.ts`); the rest is asked. Takes what `plainWords` gives.
 */
export const RELATIVE_PARTS: readonly RegExp[] = [
  new RegExp(
    `(?<!\\p{L})${PART}(?<=${IN_WORDS}.*) (?:of|de|as much as|que) ${THAT}(?: (?:in|as|of|en|con|de|again))* (?!${OF_PURPOSE}(?!\\p{L}))\\p{L}`,
    'u',
  ),
];

const SUPERFAT =
  '(?:superfat\\p{L}*|sf|(?:sobre|super) ?(?:grasa|engrasado)|lye discount|descuento)(?: (?:de|of|at|al))?(?: ?\\d[\\d.,]* ?(?:%|percent|por ciento)?)?,?';
const ONLY = '(?:only|just|solo|solamente|nomas|unicamente)';
const THE = '(?: (?:the|my|el|la|los|las|mi))*';
/** What a superfat is of anyway. */
const OF_ALL =
  '(?:this|that|it|these|batch|recipe|esta|este|esto|tanda|receta|lote|soap|jabon|babies|skin|piel)';

/**
 * "30 % superfat on the coconut only": fat that stays free is of the whole pot; of one oil it is another figure, and a wish that nobody
 * here follows.
 */
export const SUPERFAT_OF_ONE: readonly RegExp[] = [
  new RegExp(
    `(?<!\\p{L})${SUPERFAT} (?:on|in|from|over|en|sobre|del?|al)${THE} (?!${OF_ALL}(?!\\p{L}))\\p{L}+(?: (?!${OF_ALL})\\p{L}+)? (?:only|alone|solo|sola|solamente|nomas|unicamente|nada mas|and not|but not|y no|pero no)(?!\\p{L})`,
    'u',
  ),
  new RegExp(
    `(?<!\\p{L})${SUPERFAT} (?:(?:but|pero) )?${ONLY} (?:on|in|from|over|en|sobre|del?|al|for|para)${THE} (?!${OF_ALL}(?!\\p{L}))\\p{L}`,
    'u',
  ),
];

const PLACED =
  '(?:last|first|second|third|fourth|[1-4](?:st|nd|rd|th)|end|ultim[oa]s?|primer[oa]?s?|segund[oa]s?|tercer[oa]?s?|cuart[oa]s?|final|solid[oa]?s?|liquid[oa]?s?|vegetal(?:es)?|hard|soft)';
const ONES = '(?: (?:ones?|1|2|3|two|three|oils?|fats?|dos|tres|aceites?|grasas?|part|only|solo))*';
/**
 * "Without the last", "for just the first two", "the vegan version": an oil that is left out by its place in the list or its kind. Which
 * that is nobody here works out; it is asked.
 */
export const LEFT_OUT_BY_PLACE: readonly RegExp[] = [
  new RegExp(
    `(?<!\\p{L})(?:without|minus|except(?:ing)?|skip(?:ping)?|leav(?:e|ing) out|(?:not|without) counting|dropping|sin(?: contar)?|quit(?:ando|o|amos)|salvo|menos|excepto|exceptuando|descontando|just|only|solo|solamente|nomas)(?<=\\d.*)(?: (?:for|para|of|de|counting|the|el|la|lo|los|las|del))* ${PLACED}${ONES}(?= ?(?:[;,]|$|(?:at|al|a|con|with|and|y|sobreengrasado|superfat|\\d|please|por)(?![\\p{L}])))`,
    'u',
  ),
  /(?<!\p{L})(?:for|para|of|de)(?<=\d.*)(?: (?:just|only|solo|the|los|las|el|la))* (?:first|last|primer[oa]s|ultim[oa]s|liquid|solid|hard|soft) (?:two|2|three|3|dos|tres|ones?)(?!\p{L})/u,
  /(?<!\p{L})(?:vegan|vegetarian|vegana?)(?<=\d.*) (?:version|one|half|part)|(?:version|parte) (?:vegana|vegetal)(?!\p{L})/u,
];
