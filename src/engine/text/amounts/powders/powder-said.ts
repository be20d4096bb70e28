import { unbroken } from '../../../over-lines.ts';

/** "Weighed it twice": how it was measured tells nothing of how much it is. */
const MEASURED = new RegExp(
  unbroken`
    [\s,;.(-]*(?<!\p{L})(?:(?:i|and|lo|la|los|yo) )*(?:weighed|measured|checked|scooped|pes[eé]|pesad[oa]s?|
    med[ií]|medid[oa]s?|revis[eé])(?: (?:it|them|that|out|lo|la))* (?:twice|two times|2 times|dos veces|
    2 veces)(?!\p{L})[^\d]*$
  `,
  'iu',
);
/** "Al uno por ciento". */
const ONE_PERCENT = /(?<!\p{L})(?:un[oa]?|one) (?=(?:por ?ciento|per ?cent|percent|%))/giu;
/** "One gram per hundred gram oils". */
const PER_HUNDRED =
  /(?<=(?<!\p{L})(?:per|each|every|por(?: cada)?|cada) )(?:a hundred|hundred|cien)(?= (?:g|grams?|gramos?)(?!\p{L}))/giu;
const SPOON = '(?:tsps?|tbsps?|teaspoons?|tablespoons?|g|grams?|cdtas?|cdas?|cucharad(?:it)?as?|gramos?)';
/** "1 tsp, then put in another half": both are in. */
const ANOTHER_HALF = new RegExp(
  unbroken`
    (?<![\d.,/])(\d+|an?|one|una?) (${SPOON})((?: (?:of |de )?\p{L}+){0,3}?)[\s,]+(?:(?:and|then|y|luego|
    thought|naw|no|put|in|add(?:ed)?|eche|eché|puse|le|otra vez|i|was not enough|looked puny|
    ,) ?)*(?:another|otr[oa]) (?:half|medi[oa])(?!\p{L})(?: (?:${SPOON}|of it))?
  `,
  'iu',
);
/** "So two of turmeric all told": what is in all, in the unit told before. */
const ALL_TOLD = new RegExp(
  unbroken`
    ^.*?(?<!\p{L})(${SPOON})(?!\p{L}).*[.,;]\s*(?:so|o sea|as[ií] que|makes?|son) (?:that['’]?s )?(\p{L}+|
    \d[\d.,/]*) (of|de) (.+?),? (?:all told|in all|altogether|in total|en total|total|all in)[\s.!]*$
  `,
  'iu',
);
/** "Media cucharada... ponle una cucharadita y media": what is said last is what is wished. */
const RATHER = new RegExp(
  unbroken`
    ^[^\n]*?(?:\.{2,}|…|,|;)\s*(?:no,? (?=\p{L}{2,4} |mejor )|mejor |o )*?(?:ponle|ponme|pon|pongamos|
    dej[eé]moslo en|mejor(?= \d| una?| media)|make it|make that|call it|(?<=\.{2,}\s*|…\s*)no,?)\s+(?=(?:\d|
    una?|medi[oa]|half|an?|one|two|three|dos|tres) )
  `,
  'iu',
);

/** "2 heaping... no, I levelled them. 2 tsp": how full they were was taken back, and all of it is told anew. */
const LEVELLED = new RegExp(
  unbroken`
    ^(?:\d+|an?|one|two|three|four|una?|dos|tres|cuatro)(?: \p{L}+)?(?: (?:heap(?:ed|ing)|rounded|scant|
    full|colmad[oa]s?|copetead[oa]s?|escas[oa]s?|llen[oa]s?))?(?: (?:of|de) \p{L}+)?\s*(?:\.{2,}|…|
    [,;–-])\s*(?:no|nope|wait|espera|perd[oó]n|sorry)[\s,]+(?:(?:no|wait|espera)[\s,]+)?(?:(?:i|they|it|
    that|those|yo|las?|los?|est[aá]n?|eran?|son) )?[^\d,.;]*?(?<!\p{L})(?:level(?:led|ed)?|
    flat(?:ten(?:ed)?)?|scraped|rounded|ras(?:as?|os?|[eé]|adas?|ados?)|alis[eé]|
    al ras)(?!\p{L})[^\d,.;]*[,.;:]\s*(?=(?:\d|an? |one |half |una? |medi[oa] )[^\d]*$)
  `,
  'iu',
);

/**
 * How much of a colourant was said, with what was added or said instead of it told as one amount; as it was where none of that is said.
 * Pure.
 * @example powderSaid('6 g, weighed it twice') // '6 g'
 */
export const powderSaid = (text: string): string =>
  text
    .replace(MEASURED, '')
    .replace(ONE_PERCENT, '1 ')
    .replace(PER_HUNDRED, '100')
    .replace(LEVELLED, '')
    .replace(RATHER, '')
    .replace(ALL_TOLD, '$2 $1 $3 $4')
    .replace(
      ANOTHER_HALF,
      (_, count: string, unit: string, name: string) =>
        `${/^\d/u.test(count) ? count : 1} 1/2 ${unit}${name}`,
    );
