import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { COUNT, decimal, gramsOf, MASS, plainWords, UNIT } from '../amounts/words.ts';
import { CAUSTIC } from '../topics/care-words.ts';
import type { LyeTopic } from '../topics/topic.ts';

const INSTEAD = '(?:instead of|rather than|when it (?:said|says)|en (?:vez|lugar) de|y eran|y era)';
/** Lye that went in, and what should have: "180 g instead of 130". */
const WENT_IN = new RegExp(
  `\\b(${COUNT}) ?(?:${UNIT})?(?: (?:of|de))?(?: (?:the|la))?(?: ${CAUSTIC})? ?,? ?${INSTEAD} (${COUNT})\\b`,
  'u',
);
const LYE_NAMED = new RegExp(`\\b${CAUSTIC}\\b`, 'u');
const ANOTHER_NAMED = new RegExp(
  `${INSTEAD}(?: \\w+){0,3} (?:water|agua|oil|aceite|naoh|koh)\\b|\\b(?:grams|gramos|ounces|oz|onzas)\\b ${INSTEAD}`,
  'u',
);

const SPOON =
  '(?:(?:table ?|tea ?|soup )?spoons?(?:fuls?)?|tbsps?|tsps?|cucharad(?:it)?as?|cucharas?|scoops?|handfuls?|punados?|pizcas?|pinch(?:es)?)';
const MORE_OF_IT = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:another|an extra|one more|(?:a )?(?:few|couple) (?:of )?(?:extra|more)|extra|otras?|
    mas) (?:${COUNT} )?${SPOON}|(?:then|later|luego|despues|encima|ademas) (?:\p{L}+ ){0,3}?(?:an?|${COUNT}|
    unas?|un|two|dos|another|otra) ${SPOON})(?: (?:more|mas))?(?: (?:of|de))?(?: (?:the|
    la))? ${CAUSTIC}(?!\p{L})
  `,
  'u',
);
const ASKED_AHEAD =
  /\b(?:can|could|may|should|shall) (?:i|we)\b|\b(?:puedo|podr[ií]a|debo|si (?:pongo|echo))\b/iu;
/** Lye that went in behind the weighed lye, by the spoon: nobody knows how much, and the weighed lye alone tells too little. Pure. */
export const spoonedOnTop = (question: string): boolean =>
  MORE_OF_IT.test(plainWords(question)) || MORE_OF_IT.test(unaccented(question));

/** A superfat that is written as less than nothing: lye in excess is asked for. */
const BELOW_NOTHING = /\b(?:superfat|sf|sobre ?engrasado|sobregrasa)\s*(?:de|of|at|:)?\s*[-−–]\d/iu;

const WATER_FOR = [
  new RegExp(
    `\\b(?:water|agua) (${MASS})(?: (?:for|to|and|para|con|y|a))? (${MASS})(?: (?:of|de))?(?: (?:the|la))? ${CAUSTIC}\\b`,
    'u',
  ),
  new RegExp(
    `\\b(${MASS})(?: (?:of|de))? (?:water|agua)(?: (?:for|to|in|and|para|con|y|a))? (${MASS})(?: (?:of|de))?(?: (?:the|la))? ${CAUSTIC}\\b`,
    'u',
  ),
  new RegExp(
    `\\b(?:water|agua)\\b.{0,16}?\\b(${MASS}) (?:for|to|para|a) (${MASS})(?: (?:of|de))? ${CAUSTIC}\\b`,
    'u',
  ),
];
const OIL_NAMED = /\b(?:oils?|olive|coconut|lard|palm|sunflower|aceites?|oliva|coco|manteca|girasol)\b/u;

/**
 * The matter of weights that went wrong or are asked for wrongly, told by their own figures: more or less lye went in than
 * should have, a superfat below nothing, less water than lye with no oil beside them. Undefined where none is.
 */
export function putInAmiss(question: string): LyeTopic | undefined {
  // A line of a command says itself what it asks.
  if (BELOW_NOTHING.test(question) && !question.startsWith('/')) return 'extra-lye';
  if (spoonedOnTop(question) && !ASKED_AHEAD.test(question)) return 'too-much-in';
  const plain = plainWords(question);
  if (!LYE_NAMED.test(plain)) return undefined;
  const [, went, meant] = WENT_IN.exec(plain) ?? [];
  if (
    went !== undefined &&
    meant !== undefined &&
    !ANOTHER_NAMED.test(plain) &&
    !/\b(?:water|agua)\b/u.test(plain)
  ) {
    const [over, under] = [decimal(went), decimal(meant)];
    if (over !== under) return over > under ? 'too-much-in' : 'too-little-in';
  }
  if (OIL_NAMED.test(plain)) return undefined;
  for (const pattern of WATER_FOR) {
    const [, water, lye] = pattern.exec(plain) ?? [];
    if (water !== undefined && lye !== undefined && gramsOf(water) < gramsOf(lye)) return 'too-little-water';
  }
  return undefined;
}
