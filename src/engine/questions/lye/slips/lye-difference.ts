import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { CAUSTIC } from '../topics/care-words.ts';

const WEIGHT = String.raw`\d+(?:[.,]\d+)? ?(?:g|gr|grs|grams?|gramos?|oz|ounces?|onzas?)`;
const MORE = '(?:more|extra|too much|over|less|too little|short)';
/** The weight beside the lye is what was too much or too little of it: "15 g de sosa de más", "15 g more lye". */
const DIFFERENCE = new RegExp(
  unbroken`
    (?<![\d.,])(?:${WEIGHT} ${MORE}(?: of)?(?: the)? ${CAUSTIC}|${WEIGHT} (?:of |de )?(?:the |
    la )?${CAUSTIC} (?:${MORE}|de mas|demas|de sobra|de menos)|${WEIGHT} (?:de )?(?:mas|
    menos) (?:de )?(?:la )?${CAUSTIC})(?!\p{L})
  `,
  'u',
);

const WHETHER = new RegExp(
  unbroken`
    (?<!\p{L})(?:is|are|was|were|would|will|isn ?'?t|wasn ?'?t|es|son|era|eran|sera|seran|seria|
    serian) (?:\p{L}+ ){0,2}${WEIGHT} (?:of |de )?(?:the |my |la )?${CAUSTIC} (?:be )?(?:way |far |
    muy )?(?:too|demasiad\p{L}+|poc\p{L}+|much\p{L}+)(?!\p{L})
  `,
  'u',
);
/** "Is 142 g of lye too much for …": the weight is all that was weighed, of which it is asked. Plain text. Pure. */
export const asksWhetherTooMuch = (plain: string): boolean => WHETHER.test(plain);

const IN_ALREADY =
  /(?<!\p{L})(?:put|added|used|poured|weighed|went|did|puse|eche|use|pese|anadi|agregue)(?!\p{L})/u;
const IF =
  /(?<!\p{L})(?:if|(?:can|could|may|should|shall|do|must) (?:i|we)|si (?:pongo|echo|uso)|puedo|podemos|debo)(?!\p{L})/u;
const LESS = /(?<!\p{L})(?:less|too little|short|menos)(?!\p{L})/u;

/** The words that tell how much too much or too little; undefined where none do, or where it is asked of all that was weighed. */
const differenceIn = (plain: string): string | undefined =>
  asksWhetherTooMuch(plain) ? undefined : DIFFERENCE.exec(plain)?.[0];

/** Whether the weight of lye in a text is a difference and not all that was weighed: no recipe can be checked by it. Pure. */
export const tellsDifference = (question: string): boolean =>
  differenceIn(unaccented(question)) !== undefined;

/** The matter of lye that went in too much or too little of, by so much as is told; undefined where none did. Pure. */
export function differenceTopic(question: string): 'too-much-in' | 'too-little-in' | undefined {
  const plain = unaccented(question);
  const told = differenceIn(plain);
  if (told === undefined || !IN_ALREADY.test(plain) || IF.test(plain)) return undefined;
  return LESS.test(told) ? 'too-little-in' : 'too-much-in';
}
