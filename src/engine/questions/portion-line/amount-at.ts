import { unbroken } from '../../over-lines.ts';
import { type Amount, parseAmount } from '../../quantities/amount.ts';
import { parsePortionRange } from '../../quantities/told/portion.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';
import { Refusal, unlessRefused } from '../../refusal.ts';
import { readOnce } from '../../remembered.ts';
import { thousandsPlain } from '../../text/amounts/thousands.ts';

export const SPOONS: ReadonlySet<string> = new Set(['teaspoon', 'tablespoon']);
const COUNT = new RegExp(
  unbroken`
    ^(?:~?\d[\d.,]*(?:\/\d+)?(?:-\d+(?:[.,]\d+)?(?:\/\d+)?)?|\.\d+|an?|one|un|una|uno|half|quarter|third|
    couple|dozen|media|medio|cuarto|tercio|between|entre)$
  `,
  'u',
);
/** What may stand between the first figure of an amount and its last unit. */
const WITHIN =
  /^(?:of|and|n|&|plus|with|an?|de|y|e|con|un|una|to|or|-|o|a|hasta|halves|quarters|thirds|cuartos|tercios|fl|fluid|metric|imperial|us|uk|british)$/u;
/** A part after the unit: "libra y media", "2 cups and a half". */
const PART = /^(?:half|medi[ao]|cuarto|quarter|tercio|third)$/u;
/** Between an amount and what it is of: "840 g entre todos los aceites". */
export const BETWEEN =
  /^(?:of|de|del|my|mi|mis|our|raw|the|in|en|el|la|los|las|total|left|worth|entre|between|all|todos?|todas?|together)$/u;
export const OILS = /^(?:oils?|fats?|aceites?|grasas?)$/u;
export const BATTER = /^(?:batter|soap|mezcla|masa|jabon|pasta|batch|lote|raw|crudo)$/u;
/** A unit after these is what an amount is counted by, and no amount. */
const PER = /^(?:per|por|each|every|cada|the|la|el|this|that|esa|ese|this)$/u;

/** An amount as it stands in the words of a question: the first word of it and the one after the last. */
export type Read = {
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly unit: string;
};
/** `bars` of pieces of so much each: whether they are soap, or what holds a colour. */
export type Pieces = Read & { readonly bars?: boolean };

/** The amount that stands there: so many of so much, or one. */
export const readAt = (words: readonly string[], at: number): Pieces | undefined =>
  piecesAt(words, at) ?? amountAt(words, at);

const isUnit = (word = '') => unitOfWord(word.replace(/\.$/u, '')) !== undefined;
/** One letter is a unit only behind a figure. */
const isUnitAfter = (before: string | undefined, word: string): boolean =>
  isUnit(word) && (word.length > 1 || /\d$/u.test(before ?? ''));
const LONGEST = 8;

/** The longest run of words from there that the options' own grammar reads as one amount. */
function amountAt(words: readonly string[], from: number): Read | undefined {
  const first = words[from] ?? '';
  // "a 1/2 litro": the preposition counts nothing.
  if (/^(?:an?|un|una)$/u.test(first) && /^\d/u.test(words[from + 1] ?? '')) return undefined;
  if (!COUNT.test(first) && !isUnit(first)) return undefined;
  for (let to = Math.min(words.length, from + LONGEST); to > from; to -= 1) {
    const span = words.slice(from, to);
    const last = span.at(-1)!;
    if (!isUnit(last) && !(PART.test(last) && span.some(isUnit))) continue;
    if (!span.every((word, at) => COUNT.test(word) || WITHIN.test(word) || isUnitAfter(span[at - 1], word)))
      continue;
    const text = isUnit(first) && span.length === 1 ? loneUnit(words, from) : written(span, words, to);
    if (isHeat(words, from, span)) continue;
    if (text === undefined || !isOneAmount(span) || amountOf(text) === undefined) continue;
    return { text, from, to, unit: span.findLast(isUnit)! };
  }
  return undefined;
}

/** Nobody measures so many cups at once: "at 20 C" is how warm it is. */
const MOST_CUPS = 15;
const isHeat = (words: readonly string[], from: number, span: readonly string[]): boolean =>
  span.length === 2 &&
  span[1] === 'c' &&
  (Number(span[0]) > MOST_CUPS || /^(?:degrees|grados)$/u.test(words[from + 2] ?? ''));

const BARS =
  /^(?:bars?|soaps?|cakes?|loaves|logs|moulds|molds|slabs|rounds|hearts|barras?|barritas?|pastillas?|jabones|jaboncitos|moldes|panes|groups|grupos)$/u;
const HOLDERS =
  /^(?:jars|tubs|pots|bags|packets|pouches|sachets|tins|botes|frascos|tarros|bolsas|bolsitas|paquetes|sobres|potes)$/u;
const WORTH = /^(?:['’]|s|worth|of|de|wet|raw|fresh|mix|batter|soap|masa|mezcla|my|the|mi|la)$/u;
const OF_EACH = /^(?:of|de|at|@|x|,|:|each|cada|uno|una|a|con|with|in|en|weighing)$/u;
const JOINTS = 4;

/** "12 jabones de 100 g", "10 bars, 100 g each", "2 botes de 30 g": so many of so much. */
function piecesAt(words: readonly string[], from: number): (Read & { readonly bars: boolean }) | undefined {
  const count = words[from] ?? '';
  if (!/^\d{1,3}$/u.test(count)) return undefined;
  const nameAt = (at: number) => (words[at] ?? '').replace(/['’]$/u, '');
  const at = [from + 1, from + 2].find(one => BARS.test(nameAt(one)) || HOLDERS.test(nameAt(one)));
  if (at === undefined) return undefined;
  let next = at + 1;
  // "Ten bars' worth of wet mix, 100 g apiece".
  const isWorth = words.slice(next, next + 2).includes('worth');
  while (isWorth && next <= at + LONGEST && WORTH.test(words[next] ?? '')) next += 1;
  const last = next + JOINTS;
  while (next < last && OF_EACH.test(words[next] ?? '')) next += 1;
  // "12 bars, 1.2 kg of batter": whether it is each one's is told by other words.
  if (!isWorth && BARS.test(nameAt(at)) && words.slice(at + 1, next).every(word => word === ','))
    return undefined;
  const each = amountAt(words, next);
  if (!each || !/^\d/u.test(each.text) || amountOf(each.text)?.measure !== 'mass') return undefined;
  const text = `${count} x ${each.text}`;
  return amountOf(text) === undefined
    ? undefined
    : { text, from, to: each.to, unit: each.unit, bars: BARS.test(nameAt(at)) };
}

/** "kilo of oils" is one; "per kilo" and "the pound" are none, nor the cup in "a 250 ml cup of soap", whose size is told. */
const loneUnit = (words: readonly string[], at: number): string | undefined =>
  words[at]!.length > 2 &&
  !PER.test(words[at - 1] ?? '') &&
  !isUnitAfter(words[at - 2], words[at - 1] ?? '') &&
  /^(?:of|de)$/u.test(words[at + 1] ?? '') &&
  (OILS.test(words[at + 2] ?? '') || BATTER.test(words[at + 2] ?? ''))
    ? `1 ${words[at]}`
    : undefined;

/** What may be counted before its size: "2 500 g loaves" are two. */
const PIECES =
  /^(?:bars|loaves|logs|batches|moulds|molds|slabs|barras|pastillas|moldes|lotes|tandas|panes)$/u;

/** As it stands, "n" and "&" as the grammar spells them; thousands and pieces apart from decimals and thousands. */
function written(span: readonly string[], words: readonly string[], to: number): string {
  const text = span.join(' ').replace(/ (?:n|&|plus) /gu, ' and ');
  const next = words.slice(to).find(word => !BETWEEN.test(word)) ?? '';
  const [, count, each] = /^(\d{1,2}) (\d{3} \p{L}+)$/u.exec(text) ?? [];
  if (count !== undefined && PIECES.test(words[to] ?? '')) return `${count} x ${each}`;
  return OILS.test(next) || BATTER.test(next) ? thousandsPlain(text) : text;
}

/** Larger and smaller units that are said in one breath. */
const TOGETHER: readonly (readonly [larger: string, smaller: string])[] = [
  ['kilogram', 'gram'],
  ['pound', 'ounce'],
  ['litre', 'millilitre'],
];

/** "1 lb 8 oz" is one amount; "1 kg 5 g" and "2 cups 1 tsp" are two, unless "and" joins spoons and cups. */
function isOneAmount(span: readonly string[]): boolean {
  const units = span.flatMap((word, at) => (isUnit(word) ? [{ unit: unitOfWord(word)!, at }] : []));
  const [larger, smaller, third] = units;
  if (third) return false;
  if (!larger || !smaller) return true;
  if (larger.unit === smaller.unit) return !isInto(span, larger.at, smaller.at);
  if (TOGETHER.some(([one, other]) => one === larger.unit && other === smaller.unit))
    return Number(span[smaller.at - 1]) >= (smaller.unit === 'ounce' ? 1 : 50);
  return SPOONS.has(smaller.unit) && /^(?:and|y|n|&|plus|con|mas)$/u.test(span[larger.at + 1] ?? '');
}

/** Nobody is so unsure of an amount. */
const WIDEST_RANGE = 20;
/** "4 g to 450 g oils" is so much powder in so much, and no range. */
function isInto(span: readonly string[], first: number, second: number): boolean {
  const [low, high] = [Number(span[first - 1]), Number(span[second - 1])];
  return /^(?:to|a)$/u.test(span[first + 1] ?? '') && high / low > WIDEST_RANGE;
}

/** What an amount comes to at least; undefined where the grammar does not read it. */
export const amountOf = readOnce((text): Amount | undefined => {
  try {
    return parsePortionRange(text).low;
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    // A pinch is no portion that could be poured, and an amount all the same.
    return refusal.id === 'amount-out-of-range' ? smallAmount(text) : undefined;
  }
});

const smallAmount = (text: string): Amount | undefined => unlessRefused(() => parseAmount(text));
