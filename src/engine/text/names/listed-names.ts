import { unbroken } from '../../over-lines.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';

/** Whether some words together are the name of one thing of the kind that is listed. */
export type Knows = (name: string) => boolean;

const JOINED = /\s*(?:[,;/&+]|\b(?:and|y|e|n|plus|mas|más|with|con)\b)\s*/iu;
const LONGEST_NAME = 5;
const MOST_WORDS = 40;

/**
 * The names in a list as people write it: apart by commas, "and", "y", "n", slashes, or by nothing at all ("pink white blue"), where
 * what is known tells how far a name goes. `count` where the writer told how many there are.
 * @example namesIn('light blue dark blue white n teal', knowsColour, 4) // four names
 */
export function namesIn(text: string, knows: Knows, count?: number): readonly string[] {
  const pieces = text
    .split(JOINED)
    .map(piece => piece.trim())
    .filter(piece => piece !== '');
  if (pieces.length === count) return pieces;
  const names = pieces.flatMap(piece => apart(piece, knows));
  const words = pieces.flatMap(piece => piece.split(/\s+/u));
  return count !== undefined && names.length !== count && words.length === count ? words : names;
}

/** Two plain hues side by side in a list are two colours, though "blue green" alone is one. */
const HUE = new RegExp(
  unbroken`
    ^(?:red|orange|yellow|green|blue|purple|violet|pink|white|black|brown|gr[ae]y|rojo|roja|naranja|
    amarillo|verde|azul|morado|violeta|rosa|rosado|blanco|negro|marr[oó]n|gris)$
  `,
  'iu',
);
/** Whether words together are one name that is known, and no run of plain hues. */
export const isName = (words: readonly string[], knows: Knows): boolean =>
  (words.length === 1 || !words.every(word => HUE.test(word))) && knows(words.join(' '));

/** One name, or the known names that a run of words is made of; a run that holds anything unknown is one name. */
function apart(piece: string, knows: Knows): readonly string[] {
  const words = piece.split(/\s+/u);
  if (words.length === 1 || words.length > MOST_WORDS || knows(piece)) return [piece];
  const names: string[] = [];
  for (let at = 0; at < words.length; ) {
    let length = Math.min(LONGEST_NAME, words.length - at);
    while (length > 0 && !isName(words.slice(at, at + length), knows)) length -= 1;
    if (length === 0) return [piece];
    names.push(words.slice(at, at + length).join(' '));
    at += length;
  }
  return names;
}

/** Shares of a whole with what has them; `percent` as it is to be written. */
export type Ratio = readonly { readonly percent: number; readonly name: string }[];

const FIGURES = String.raw`\d{1,3}(?:\s?[/:-]\s?\d{1,3}){1,7}`;
const FIRST = new RegExp(
  String.raw`^(${FIGURES})(?:\s+(?:split|mix|blend|of|de|mezcla))*(?:\s*:)?\s+(.+)$`,
  'iu',
);
const LAST = new RegExp(
  unbroken`
    ^(.+?)[\s,:]+(?:(?:in|at) (?:the |a )?(?:ratio|proportions?)(?: of)? |en (?:la )?(?:proporci[oó]n|
    relaci[oó]n)(?: de)? |ratio |in |at |a |al |en )?(${FIGURES})(?:\s+(?:split|mix|ratio))?$
  `,
  'iu',
);
const HALVES =
  /^(?:half and half|half n half|half & half|mitad y mitad|mitad mitad|a medias)[\s,:]+(?:of |de )?(.+)$/iu;
const HALVES_LAST = /^(.+?)[\s,]+(?:half and half|half n half|half & half|mitad y mitad|a medias)$/iu;
const EACH_FIRST = new RegExp(
  unbroken`
    ^(?:an? |one |un |una |1 )?(third|quarter|half|fifth|tercio|cuarto|quinto|mitad|\d\/\d|
    \d{1,2} ?%)\s+(?:each|apiece|de cada(?: un[oa]| color)?|cada(?: un[oa]| color)?)(?:\s+(?:of|
    de))?[\s:,]+(.+)$
  `,
  'iu',
);
const EVEN_FIRST = new RegExp(
  unbroken`
    ^(?:(?:in |en |a )?(?:equal|even|same) (?:parts?|amounts?|shares?|portions?)|(?:a |en |por )?(?:partes|
    cantidades|porciones) iguales|split (?:evenly|equally)|evenly|equally)(?:\s+(?:of|de|between|among|
    entre|split|into))*[\s:,]+(.+)$
  `,
  'iu',
);
const EVEN_LAST = new RegExp(
  unbroken`
    ^(.+?)[\s,]*\b(?:(?:in|a|en|por|de)\s+)?(?:(?:equal|even) (?:parts?|amounts?|shares?|portions?|split)|
    same amounts?|(?:partes|cantidades|porciones) iguales|igual cantidad|por igual|iguales|split (?:evenly|
    equally)|evenly|equally)$
  `,
  'iu',
);

/** How many each share of a kind makes up the whole. */
const EACH_COUNT: readonly (readonly [RegExp, number])[] = [
  [/half|mitad|^1\/2/iu, 2],
  [/third|tercio|^1\/3|^33/iu, 3],
  [/quarter|cuarto|^1\/4|^25/iu, 4],
  [/fifth|quinto|^1\/5|^20/iu, 5],
];
/** A list that tells a share of its own is no list of equals. */
const OTHER_SHARE = /\d|\b(?:half|mitad|third|tercio|quarter|cuarto|rest|resto|remainder|demas|demás)\b/iu;

/**
 * Shares that are told apart from what has them: "50/30/20 olive coconut palm", "white to blue 70:30", "half and half white and blue",
 * "a third each: red, white, blue", "equal parts olive, coconut and palm". Undefined where the figures and the names are not as many.
 */
export function ratioIn(text: string, knows: Knows): Ratio | undefined {
  const halves = (HALVES.exec(text) ?? HALVES_LAST.exec(text))?.[1];
  if (halves !== undefined) return evenly(namesIn(halves, knows, 2), 2);
  const each = EACH_FIRST.exec(text);
  const count = EACH_COUNT.find(([pattern]) => each !== null && pattern.test(each[1]!))?.[1];
  if (each) return evenly(namesIn(each[2]!, knows, count), count);
  const even = (EVEN_FIRST.exec(text) ?? EVEN_LAST.exec(text))?.[1];
  if (even !== undefined && !OTHER_SHARE.test(even)) return evenly(namesIn(even, knows));
  const [first, last] = [FIRST.exec(text), LAST.exec(text)];
  const [written, list] = first ? [first[1]!, first[2]!] : [last?.[2], last?.[1]];
  if (written === undefined || list === undefined || /\d/u.test(list)) return undefined;
  const figures = written.split(/[/:-]/u).map(Number);
  const sum = figures.reduce((total, figure) => total + figure, 0);
  const isPercents = sum === 100 || (/:/u.test(written) && sum > 0);
  const names = namesIn(list.replaceAll(/\s+(?:to|a|vs)\s+|\s*:\s*/giu, ', '), knows, figures.length);
  if (!isPercents || names.length !== figures.length || figures.includes(0)) return undefined;
  return figures.map((figure, at) => ({ percent: (100 * figure) / sum, name: names[at]! }));
}

const evenly = (names: readonly string[], wanted = names.length): Ratio | undefined =>
  names.length > 1 && names.length === wanted
    ? names.map(name => ({ percent: 100 / names.length, name }))
    : undefined;

/** Whether any figure has a unit. */
const isMeasured = (text: string): boolean =>
  [...text.matchAll(/\d ?(\p{L}+)/gu)].some(({ 1: word = '' }) => unitOfWord(word) !== undefined);
const LEFT_OVER =
  /(?<!\p{L})(?:rest|remainder|resto|lo dem[aá]s|lo que (?:queda|quede|sobra|sobre)|lo otro|the others?)(?!\p{L})/iu;

/** A figure that can be a share: none with a unit, and no part of a longer one. */
const FIGURE_OF_A_SHARE = new RegExp(
  unbroken`
    (?<![\d.,\p{L}])\d{1,2}(?:[.,]\d)?(?!\d|[.,]\d)(?!\s*(?:parts?|partes?|layers?|capas?|g|gr|grams?|
    gramos?|kgs?|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)\b)
  `,
  'gu',
);

/** "70 white 30 blue", "olive 50 coconut 30 palm 20": bare figures that make up a hundred are percents. */
export function percentsMarked(text: string): string {
  const said = text.replace(/(?<=\d) ?(?:percent|per cent|pct|por ?ciento)\b/giu, '%');
  if (/\d\s*[/:-]\s*\d/u.test(said)) return text;
  const figures = [...said.matchAll(FIGURE_OF_A_SHARE)];
  const sum = figures.reduce((total, [figure]) => total + Number(figure.replace(',', '.')), 0);
  const all = said.match(/\d+(?:[.,]\d+)?/gu)?.length;
  // "Rosa 70 y el resto beige": what one figure leaves of a hundred is told beside it.
  const isWhole =
    Math.abs(sum - 100) < 1e-9
      ? figures.length > 1
      : sum >= 5 && sum < 100 && LEFT_OVER.test(said) && !isMeasured(said);
  if (figures.length !== all || !isWhole) return text;
  return said.replace(/(\d(?:[.,]\d)?)(?!\d|[.,]\d|\s*%)/gu, '$1%');
}
