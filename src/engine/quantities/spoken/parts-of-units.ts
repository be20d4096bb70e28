import { unbroken } from '../../over-lines.ts';

/** Units that a part or an article stands before, in both languages; short marks only where no word is like them. */
export const UNIT = unbroken`
  (?:teaspoon(?:ful)?s?|tsps?|tablespoon(?:ful)?s?|tbsps?|tbs|cups?|cupfuls?|pints?|quarts?|gallons?|
  lit(?:er|re)s?|ounces?|oz|pounds?|lbs?|kilos?|kgs?|kilograms?|grams?|percent|por ?ciento|cucharaditas?|
  cucharadas?|cdtas?|cditas?|cdas?|tazas?|tacitas?|litros?|libras?|onzas?|kilogramos?|gramos?|pintas?|
  galones|galon)\b
`;
const before = (words: string) => new RegExp(String.raw`\b(?:${words})\s+(?=${UNIT})`, 'giu');

/** "Half the litre", "la mitad del kilo que hice": of a unit that is one. */
const OF_THE_ONE = new RegExp(
  unbroken`
    (?<=\b(?:half|third|quarter|fifth|eighth|mitad|tercio|cuarto|octavo))\s+(?:of (?:the|my|that)|the|del|
    de (?:la|el|mi|ese|esa))\s+(?=(?:lit(?:er|re)|litro|kilo|kg|libra|pound|pint|quart|gallon|taza|
    cup)(?![\p{L}\p{M}]))
  `,
  'giu',
);

/** Parts and articles before a unit, as figures: "half a cup", "un cuarto de taza", "a tsp". */
export const PARTS: readonly (readonly [RegExp, string])[] = [
  [OF_THE_ONE, ' '],
  [before('(?:an? |one |1 )?half(?: of)?(?: an?| one)?|media|medio|(?:la )?mitad(?: de)?(?: una?)?'), '1/2 '],
  // "A half-litre portion", "a quarter-pound of oils".
  [new RegExp(String.raw`\b(?:an? )?half-(?=${UNIT})`, 'giu'), '1/2 '],
  [new RegExp(String.raw`\b(?:an? )?quarter-(?=${UNIT})`, 'giu'), '1/4 '],
  [
    before(
      '(?:three|3)[ -](?:quarter|fourth|qtr|4th)s?(?: of)?(?: an?| one)?|(?:tres|3) cuartos(?: de)?(?: una?)?',
    ),
    '3/4 ',
  ],
  [
    before('(?:an? |one |1 )?(?:quarter|fourth)(?: of)?(?: an?| one)?|(?:un |1 )?cuarto(?: de)?(?: una?)?'),
    '1/4 ',
  ],
  [
    before('(?:two|2)[ -](?:thirds?|3rds?)(?: of)?(?: an?| one)?|(?:dos|2) tercios(?: de)?(?: una?)?'),
    '2/3 ',
  ],
  [
    before('(?:an? |one |1 )?(?:third|3rd)(?: of)?(?: an?| one)?|(?:un |1 )?tercio(?: de)?(?: una?)?'),
    '1/3 ',
  ],
  [
    before('(?:an? |one |1 )?(?:eighth|8th)(?: of)?(?: an?| one)?|(?:un |1 )?octavo(?: de)?(?: una?)?'),
    '1/8 ',
  ],
  [before('(?:an? |one |1 )?(?:sixteenth|16th)(?: of)?(?: an?| one)?'), '1/16 '],
  [before('too'), '2 '],
  [new RegExp(String.raw`(?<=\d\/\d|\d[.,]\d+) (?:(?:of|de) )?(?:an?|un|una) (?=${UNIT})`, 'giu'), ' '],
  [before('another|an?|one|una?|otr[oa]'), '1 '],
  // "A British pint": which measure it is stands before its name.
  [
    new RegExp(
      String.raw`(?<!\b(?:half|thirds?|quarters?|fourths?|eighths?|of) )\b(?:an?|one|una?)\s+(?=(?:us|uk|british|imperial|american|metric) ${UNIT})`,
      'giu',
    ),
    '1 ',
  ],
];
