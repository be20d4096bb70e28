import { unbroken } from '../../../over-lines.ts';
import { figureText } from '../../../quantities/for-readers.ts';
import { plainText } from '../../../quantities/number.ts';
import { spokenAmounts } from '../../../quantities/spoken/spoken-amounts.ts';
import { percentsMarked, ratioIn } from '../../../text/names/listed-names.ts';
import { knownOil } from '../find-oil.ts';

/**
 * A list of oils put plainly, as the list's own grammar wants it: spoken amounts in figures, a unit that is told once with every
 * figure, a mark between any two oils. What it does not know it leaves as it stands.
 */
export const plainList = (text: string): string => withBreaks(asSpoken(text));

const knowsOil = (name: string): boolean => knownOil(name) !== undefined;
/** "todo en gramos": the unit of every bare figure is told once, at the end. */
const ALL_GRAMS =
  /[\s,;(]*\b(?:(?:all|everything|todo|todos|todas|cada uno|weights?|pesos?)\s+)?(?:in|en)\s+(?:grams?|gramos|g)\b(?:\s+(?:all|each|todo|todos))?\)?[\s.]*$/iu;
/** "olive 400 coconut 200 castor 40 grams": the unit stands behind the last figure alone. */
const GRAMS_LAST = /^(?:[^\d]*\p{L}[\s:=-]*\d+){2,}\s*(?:grams|gramos)$/iu;
/** One oil alone: "all olive oil", "solo aceite de oliva, 800 g". */
const ONLY =
  /^(?:(?:it['’]?s|it is|es|son) )?(?:all|only|just|pure|straight|solo|s[oó]lo|solamente|puro|pura|todo|nada mas que|nada más que)\s+(?:de\s+)?/iu;
const ONLY_LAST = /[\s,]*\b(?:only|nothing else|nada m[aá]s|[uú]nicamente|solamente|y ya)$/iu;
/** "un kilo de oliva y medio de coco": the unit goes without saying. */
const HALF_OF_IT = /\b(kilo|kg|libra|lb|pound)s?\b(.*?)\b(?:y|and)\s+(?:medio|media|half)\s+(?:de|of)\s+/iu;

/** A courtesy at the end of a list is no oil. */
const COURTESY =
  /[\s,.]+(?:please|pls|plz|thanks?(?: you)?|thx|ty|cheers|por favor|porfa|gracias|xfa)[\s.!]*$/iu;

/** A list of oils as it is spoken, in the list's own grammar: amounts in figures, ratios as percents, what is left out put in. */
function asSpoken(text: string): string {
  const plain = spokenAmounts(plainText(text.replaceAll('\n', ';')))
    .replace(/\((\s*\d[^()]*)\)/gu, ' $1')
    .replace(/(?<=\p{L}|\d|%)\s+\/\s+(?=\p{L}|\d)/gu, '; ')
    .replace(HALF_OF_IT, '$1$2; 1/2 $1 de ')
    .replace(/(?:(?<=^|[\s,;])(?:un|una|one|an?)\s+|^)(?=(?:kilo|kg|libra|lb|pound)\b)/giu, '1 ')
    .trim()
    .replace(COURTESY, '');
  const listed = inGrams(plain);
  const shared = sharedInWords(listed);
  if (shared !== undefined) return shared;
  const alone = listed.replace(ONLY, '').replace(ONLY_LAST, '');
  if (knowsOil(alone) && alone !== listed) return `100% ${alone}`;
  const ratio = ratioIn(listed, knowsOil);
  if (ratio) return ratio.map(({ percent, name }) => `${percent}% ${name}`).join('; ');
  return percentsMarked(alone).replace(/^(\p{L}[\p{L} ]*?),\s*(\d[^,;]*)$/u, '$1 $2');
}

const PARTS_OF_WHOLE: readonly (readonly [RegExp, number])[] = [
  [/^(?:two|2|dos)/iu, 200 / 3],
  [/^(?:three|3|tres)/iu, 75],
  [/half$|mitad$/iu, 50],
  [/(?:third|tercio)$/iu, 100 / 3],
  [/./u, 25],
];
const PART_OF_WHOLE = new RegExp(
  unbroken`
    [\s,;]*(?:\b(?:and|y|the other|la otra)\s+)?\b((?:(?:two|2|dos)[ -](?:thirds|tercios))|(?:three|3|
    tres)[ -](?:quarters|cuartos)|(?:(?:an?|one|un|una|la|1)\s+)?(?:half|mitad|third|tercio|quarter|
    cuarto))\b(?:\s+(?:of|de))?\s+
  `,
  'giu',
);

/** "half olive quarter coconut quarter shea": parts in words that make a whole; undefined where they make none. */
function sharedInWords(text: string): string | undefined {
  const parts = [...text.matchAll(PART_OF_WHOLE)].map(
    ({ 1: part = '' }) => PARTS_OF_WHOLE.find(([pattern]) => pattern.test(part))![1],
  );
  const sum = parts.reduce((total, part) => total + part, 0);
  if (parts.length < 2 || Math.abs(sum - 100) > 0.1 || /\d/u.test(text.replace(PART_OF_WHOLE, '')))
    return undefined;
  let at = 0;
  return text.replace(PART_OF_WHOLE, () => `; ${figureText(parts[at++]!)}% `);
}

/** Every bare figure in grams, where the unit is told once at the end. */
function inGrams(text: string): string {
  if (!ALL_GRAMS.test(text) && !GRAMS_LAST.test(text)) return text;
  const bare = text.replace(ALL_GRAMS, '').replace(/\s*(?:grams|gramos)$/iu, '');
  return bare.replace(/\d+(?:[.,]\d+)?(?!\s*(?:%|g\b|kg|oz|lb))(?![\d.,])/gu, '$& g');
}

const COUNT = String.raw`\d[\d.,/]*(?: \d+\/\d+)?`;
const WEIGHT = unbroken`
  (?:%|percent|por ciento|(?:g|gr|grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?|cups?|
  tazas?|ml|l|litros?|lit(?:er|re)s?|tsps?|tbsps?|cdas?|cdtas?)\b)
`;
const COCONUT_GRADE_BEHIND = new RegExp(
  String.raw`(${COUNT}\s*${WEIGHT}\s*(?:of |de )?(?:coconut|coco)(?: oil)?) (?:76|92)\b`,
  'giu',
);
const NAME_FIRST = new RegExp(
  String.raw`(\p{L}[\s:=]*${COUNT}(?:\s*${WEIGHT}|(?!\s*${WEIGHT})(?=\s)))\s*(?=\p{L})`,
  'giu',
);
const COUNT_FIRST = new RegExp(
  String.raw`(?<=\p{L})\s+(?=${COUNT}\s*${WEIGHT}|\d[\d.,]*\s+(?:de|of)\s+\p{L})`,
  'giu',
);
const AND = /\s+(?:and|y|n|&|e|con|with)\s+/iu;

/** `coconut 30% olive 70%`, `olive 50 coconut 30 palm 20`, `16 oz olive and 8 oz coconut`: no commas, yet only one meaning. */
function withBreaks(text: string): string {
  const percents = text
    .replace(/\b(?:la |the )?(?:other |otra )?(?:mitad|half)\b/giu, '50%')
    .replace(/\b(?:un cuarto|a quarter|quarter|cuarto)\b/giu, '25%');
  // The melting point in the trade's name is no amount, where one follows or stands before.
  const isShared = /%|\brest|\bresto|\b(?:half|mitad)\b.*\b(?:half|mitad)\b/iu.test(text);
  const named = (isShared ? percents : text)
    .replace(/\b(coconut|coco)((?: oil)?) (?:76|92)(?: ?(?:deg(?:rees)?|f|°f?))?(?=[\s:=-]+\d)/giu, '$1$2')
    .replace(COCONUT_GRADE_BEHIND, '$1');
  const joined = named
    .split(AND)
    .reduce(
      (all, piece) =>
        all === '' ? piece : /\d|\brest|\bresto/u.test(piece) ? `${all}; ${piece}` : `${all} ${piece}`,
      '',
    );
  return /^\p{L}/u.test(joined) ? joined.replace(NAME_FIRST, '$1;') : joined.replace(COUNT_FIRST, ';');
}
