import { unbroken } from '../../over-lines.ts';
import { UNIT_WORDS } from '../../quantities/unit-words.ts';
import { CORRECTS } from './corrects.ts';

/** Units of two letters and more; "l" and "g" alone only in brackets. */
const UNIT = `(?:${UNIT_WORDS.filter(word => /^[a-z]{2,}$/u.test(word)).join('|')})`;
const LYE_OR_WATER = '(?:lye|caustic|soda|naoh|water|milk|sosa|soda|lej[ií]a|agua|leche)';
const THE = '(?:(?:the|that|any|my|el|la|los|las|mi|del?|counting|including|contar|incluir|ever|que) )*';
export const VESSEL_WORDS = unbroken`
  (?:jug|jar|pot|bowl|bucket|pail|pan|tub|container|beaker|pitcher|mould|mold|cup|tin|lid|jarra|jarrita|
  olla|taz[oó]n|bol|cuenco|balde|cubeta|recipiente|molde|vaso|bote|envase|tapa)
`;

const FLUID = /(?<=\d\s?)fl(?:uid)?\.? ?(?:oz|ounces?)(?!\p{L})\.?/giu;
/** "600. mls sorry": a point that ends nothing. */
const STOPPED = /(?<=\d)\.\s+(?=(?:ml|mls|g|grams?|gramos?|oz|kilos?|kg)(?!\p{L}))/giu;
/** How a mould or a jug was measured is no water in it: "I filled it with water for measure". */
const MEASURED = new RegExp(
  unbroken`
    [\s,;(]*(?<!\p{L})(?:(?:i|we) )?(?:measured|filled|tested|checked|(?:l[oa] )?(?:prob[eé]|med[ií]|
    llen[eé]))(?: (?:it|that|the (?:mou?ld|jug|form)|el molde))? (?:with|con) (?:water|agua)(?: (?:for|to|
    para|to the|until|hasta) [\p{L} ]+)?[\s.)]*$
  `,
  'iu',
);
/** "3-400 ml": the hundreds are told once. */
const HUNDREDS_ONCE = /(?<![\d.,/])([1-9])\s?[-–]\s?([1-9]00)(?=\s?(?:mls?|g|grams?|gramos?)(?!\p{L}))/giu;
const NO_MORE = new RegExp(
  unbroken`
    [\s,]*(?<!\p{L})(?:no|not|nothing|nada|ni|y no) (?:more|less|m[aá]s|menos)(?: (?:and|y|ni|or|
    nor) (?:no |not )?(?:less|more|menos|m[aá]s))?(?: (?:than|dan|que) (?:that|dat|eso|esto))?(?!\p{L})
  `,
  'giu',
);
/** The water is told to be no part of it. */
const APART = new RegExp(
  unbroken`
    [\s,.;(]*(?<!\p{L})(?:the |el )?${LYE_OR_WATER}(?: (?:is|es|va|goes|and lye|
    y sosa))* (?:separate(?:ly)?|apart|aparte|extra|not (?:counted|in it|included)|no (?:cuenta|
    incluida))(?!\p{L})
  `,
  'giu',
);
/** "Not the water", "before ever the water or the caustic comes near them", "sin contar la sosa". */
const WITHOUT_CONTENTS = new RegExp(
  unbroken`
    [\s,;(]*(?<!\p{L})(?:and |y )?(?:no|not|without|sin|before|antes|ni|nor|
    excluding) ${THE}${LYE_OR_WATER}(?: ?(?:and|y|or|o|ni|nor|n|&|\+|
    \/) ?${THE}${LYE_OR_WATER})*(?: ${LYE_OR_WATER})?(?: (?:is|goes?|comes?|are|joins?|added|yet|in|near|it|
    them|on|top|todav[ií]a|a[uú]n|se|eche|echar|ponga))*(?![\p{L}\d])\)?
  `,
  'giu',
);
/** What is weighed without its jug is weighed: "615 g without the jug", "sin la jarra", "tared". */
const TARED = new RegExp(
  unbroken`
    [\s,;(]*(?<!\p{L})(?:(?:without|not (?:counting|including|with)|
    sin(?: contar)?) ${THE}${VESSEL_WORDS}(?:['’]s weight)?|${THE}${VESSEL_WORDS} (?:not (?:included|
    counted)|already (?:taken off|tared(?: off| out)?|off)|no (?:incluid[oa]|cuenta)|aparte)|
    net(?: weight)?|peso neto|net[oa]|tared(?: off| out)?|tarad[oa])(?!\p{L})\)?
  `,
  'giu',
);
/** How many oils they are tells nothing of how much: "900 g between the three oils". */
const BETWEEN_OILS = new RegExp(
  unbroken`
    \s(?:between|among|across|over|entre)(?: (?:the|my|all|both|los|las|mis|todos|todas|ambos|
    ambas))*(?: (?:\d|two|three|four|five|six|dos|tres|cuatro|cinco|seis))?(?= (?:oils?|fats?|aceites?|
    grasas?)(?!\p{L}))
  `,
  'giu',
);
const BETWEEN_THEM = new RegExp(
  unbroken`
    (?<=(?:oils?|fats?|aceites?|grasas?))\s(?:between|among|across|entre)(?: (?:the|all|los|las|todos|
    todas))*(?: (?:\d|two|three|four|five|six|dos|tres|cuatro|cinco|seis|them))?[\s.]*$
  `,
  'iu',
);
/** Another measure that is told not to be meant: "ml that is, not the oz side", "grams not ounces". */
const OTHER_MEASURE = new RegExp(
  unbroken`
    [\s,;(]*(?<!\p{L})(?:and |y )?(?:not|never|no|nunca) (?:(?:in|by|the|en|de|por|el|la|los|las|fluid|
    us) )*${UNIT}(?: (?:side|scale|mark|line|lado|escala))?(?![\p{L}])(?!\s*\d)\)?
  `,
  'giu',
);
/** "650 (grams) oils". */
const IN_BRACKETS = /\(\s*((?:ml|mls|g|gr|grams?|gramos?|oz|ounces?|onzas?|kg|kilos?|lbs?|l))\s*\)/giu;
/** "150 g, no, sorry, ml": the unit is put right, and the figure stays. */
const OTHER_UNIT = new RegExp(
  unbroken`
    (?<=\d\s?)(${UNIT}|g|l)\b[\s,.;–—-]*(?:no\b[\s,.;]*|i )*${CORRECTS.source}[\s,.;]*(?:(?:i mean|i meant|
    en|in|son|eran|it['’]?s|quise decir) )*(${UNIT}|g|l)(?![\p{L}\d])(?!\s*(?:of|de) \d)
  `,
  'giu',
);
/** "ml: 250", "250, mls": the unit away from its figure. */
const UNIT_AHEAD =
  /(?<!\d[\d.,/ ]*)(?<!\p{L})(mls?|g|grs?|grams?|gramos?)(?:\s\p{L}+)?\s?:\s?(\d+(?:[.,]\d+)?)(?!\s?\p{L}|[\d.,/])/giu;
const UNIT_BEHIND = /(?<![\d.,/])(\d{2,4}),\s(mls?|grams|gramos)(?!\p{L})/giu;

/** "150 g, no, sorry, ml" with the unit that is meant. Pure. */
export const unitPutRight = (text: string): string =>
  text.replace(OTHER_UNIT, (_, _unit: string, right: string) => right);

/**
 * What is said of an amount that leaves it as it is taken out: how it was measured, what is no part of it, which measure is not meant; a
 * unit away from its figure, or put right behind it, is put beside it. Takes an amount in figures. Pure.
 * @example withoutAsides('615 g without the jug') // '615 g'
 */
export const withoutAsides = (text: string): string =>
  unitPutRight(text)
    .replace(FLUID, 'floz')
    .replace(STOPPED, ' ')
    .replace(IN_BRACKETS, ' $1 ')
    .replace(MEASURED, '')
    .replace(HUNDREDS_ONCE, (_, low: string, high: string) => `${low}00-${high}`)
    .replace(NO_MORE, '')
    .replace(APART, '')
    .replace(WITHOUT_CONTENTS, '')
    .replace(TARED, '')
    .replace(OTHER_MEASURE, '')
    .replace(BETWEEN_OILS, ' of')
    .replace(BETWEEN_THEM, '')
    .replace(UNIT_AHEAD, '$2 $1')
    .replace(UNIT_BEHIND, '$1 $2')
    .replace(/\s+/gu, ' ');
