import { unbroken } from '../../../../../over-lines.ts';

/** A weight in words, whose unit a part behind it must not take: a third of that is no third of a kilo. */
const IN_WORDS = unbroken`
  (?:half|quarters?|fourths?|thirds?|medi[oa]|cuartos?|tercios?|[\d.,/]+) (?:(?:an?|of|de|una?) )*(?:kilos?|
  kg|pounds?|lbs?|libras?|ounces?|onzas?|oz)(?!\p{L})(?! (?:(?:of|de) )?(?:the )?(?:oils?|fats?|aceites?|
  grasas?|total)(?!\p{L}))
`;
/** "That", of which a part is told; the whole of a recipe is told of as well ("half of that, please"), so an oil has to follow. */
const THAT =
  '(?:that|it|this|those|es[oa]s?|est[oa]s?|ello|l[oa] (?:primer[oa]|anterior)|the first|the same)';
const PART = unbroken`
  (?:thirds?|quarters?|fourths?|fifths?|tenths?|tercios?|cuartos?|quintos?|decimos?|(?:tercera|cuarta|
  quinta|decima) parte|0?[.,]\d+|[1-9]/\d|\d{1,3} ?(?:%|percent|por ciento))
`;
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
