import { chatSpelt } from './chat-spelling.ts';
import { figuresOf } from './number-words.ts';

/** Units that a part or an article stands before, in both languages; short marks only where no word is like them. */
const UNIT = String.raw`(?:teaspoon(?:ful)?s?|tsps?|tablespoon(?:ful)?s?|tbsps?|tbs|cups?|cupfuls?|pints?|quarts?|gallons?|lit(?:er|re)s?|ounces?|oz|pounds?|lbs?|kilos?|kgs?|kilograms?|grams?|percent|por ?ciento|cucharaditas?|cucharadas?|cdtas?|cditas?|cdas?|tazas?|tacitas?|litros?|libras?|onzas?|kilogramos?|gramos?|pintas?|galones|galon)\b`;
const before = (words: string) => new RegExp(String.raw`\b(?:${words})\s+(?=${UNIT})`, 'giu');

/** Parts and articles before a unit, as figures: "half a cup", "un cuarto de taza", "a tsp". */
const PARTS: readonly (readonly [RegExp, string])[] = [
  [before('(?:an? |one |1 )?half(?: of)?(?: an?| one)?|media|medio'), '1/2 '],
  [before('three[ -]quarters(?: of)?(?: an?| one)?|tres cuartos(?: de)?(?: una?)?'), '3/4 '],
  [before('(?:an? |one |1 )?quarter(?: of)?(?: an?| one)?|(?:un |1 )?cuarto(?: de)?(?: una?)?'), '1/4 '],
  [before('two[ -]thirds(?: of)?(?: an?| one)?|(?:dos|2) tercios(?: de)?(?: una?)?'), '2/3 '],
  [before('(?:an? |one |1 )?third(?: of)?(?: an?| one)?|(?:un |1 )?tercio(?: de)?(?: una?)?'), '1/3 '],
  [before('(?:an? |one |1 )?eighth(?: of)?(?: an?| one)?|(?:un |1 )?octavo(?: de)?(?: una?)?'), '1/8 '],
  [before('an?|one|una?'), '1 '],
];

/** Between a figure and its unit these tell only how a spoon is levelled, or which spoon. */
const LEVEL =
  /(?<=\d\s)(?:level(?:led|ed)?|scant|measuring|standard|flat)\s+(?=\p{L})|(?<=\p{L})\s+(?:rasas?|rasos?|al ras|soperas?|level)\b(?=\s|$)/giu;

/** Units as phones and hurry spell them. */
const SLIPS: readonly (readonly [RegExp, string])[] = [
  [/\b(?:cps|cupps?|cus|cpus)\b/giu, 'cups'],
  [/\b(?:tasas?|tzas?|tazaz)\b/giu, 'tazas'],
  [/\b(?:tea ?sp|tspn|teasp|teaspons?|teespoons?|teaspooms?|tspoons?)\b/giu, 'tsp'],
  [/\b(?:tablesp|tblspn|tblspoons?|tablespons?|table spoons?)\b/giu, 'tbsp'],
  [/\b(?:tea spoons?)\b/giu, 'tsp'],
  [/\b(?:cucharitas?|cuharaditas?|cucharadtias?|cucharaditaz|cucharditas?)\b/giu, 'cucharaditas'],
  [/\b(?:onsas?)\b/giu, 'onzas'],
  [/\b(?:gramoz|grmos|gramso)\b/giu, 'gramos'],
  [/\b(?:ounzes|onces|ouces|ounces?s)\b/giu, 'ounces'],
  [/\b(?:ponds|puonds|pouns)\b/giu, 'pounds'],
  [/(?<=\d\s?)mils\b/giu, 'ml'],
];

/** "A cup and three quarters", "2 tazas y 3/4". */
const UNIT_AND_PART = new RegExp(
  String.raw`\b(\d{1,3}) (${UNIT}) (?:and|n|y|&) (?:(?:an?|un|una) )?(?:([1-7])\s?\/\s?([2-8])|(3|three|tres) (?:quarters|cuartos)|(2|two|dos) (?:thirds|tercios))\b`,
  'giu',
);
const unitAndPart = (_: string, whole: string, unit: string, over?: string, under?: string, three?: string) =>
  `${whole} ${over === undefined ? (three === undefined ? '2/3' : '3/4') : `${over}/${under}`} ${unit}`;

const DOZENS = /\b(\d{1,2}) (?:dozens?|docenas?)(?: de| of)?\b/giu;
/** "2 x 3 cups": two portions alike, in measures that no mould is told in. */
const TIMES =
  /(?<![\d.,/] ?|[x×] ?)(\d{1,2}) ?(?:x|×|times|veces|por) ?(\d+(?:[.,]\d+)?|\d+\/\d+) ?(?=(?:cups?|tazas?|pints?|pintas?)\b)/giu;
const product = (count: string, size: string): string => {
  const [over = 0, under = 1] = size.replace(',', '.').split('/').map(Number);
  return `${Number(((Number(count) * over) / under).toFixed(4))} `;
};
/** "un kilo doscientos": the grams go without saying, as in "2 kilos 300". */
const KILOS = /\b(\d{1,3}) (?:kilos?|kgs?) (?:y |and |con )?(\d{3})(?!\s*(?:g|ml|\d))/giu;

/** Where a pound is 500 g, makers say so: "dos libras de aceite, de las de 500 gramos". */
const METRIC_POUNDS =
  /(\d+(?:[.,]\d+)?) (?:libras?|pounds?|lbs?)( (?:de |of )?(?:aceites?|oils?|mezcla|masa|batter))?\b[^\d]*\b500 ?(?:g|gr|gramos|grams)\b.*$/iu;

/**
 * An amount as it is spoken, in figures: spellings of chats, spelt numbers, parts and articles before a unit, slips in units, dozens, and "un kilo
 * doscientos". Names beside it stay as they are.
 * @example spokenAmounts('doce jabones de cien gramos') // '12 jabones de 100 gramos'
 * @example spokenAmounts('a tsp n a half') // '1 tsp n a half'
 */
export function spokenAmounts(text: string): string {
  let said = figuresOf(chatSpelt(text));
  for (const [pattern, right] of SLIPS) said = said.replace(pattern, right);
  said = said.replace(LEVEL, '');
  for (const [pattern, figure] of PARTS) said = said.replace(pattern, figure);
  return said
    .replace(TIMES, (_, count: string, size: string) => product(count, size))
    .replace(UNIT_AND_PART, unitAndPart)
    .replace(DOZENS, (_, count: string) => `${Number(count) * 12} `)
    .replace(KILOS, (_, kilos: string, grams: string) => `${Number(kilos) * 1000 + Number(grams)} g`)
    .replace(METRIC_POUNDS, (_, count: string, of = '') => `${Number(count.replace(',', '.')) * 500} g${of}`)
    .replace(/\s+/gu, ' ')
    .trim();
}
