import { knownOil } from '../batch/oils/find-oil.ts';
import { type Amount, parseAmount } from '../quantities/amount.ts';
import { parsePortionRange } from '../quantities/portion.ts';
import { unitOfWord } from '../quantities/unit-words.ts';
import { Refusal } from '../refusal.ts';
import { thousandsPlain } from '../text/amounts/thousands.ts';
import type { NamedThing } from './entities.ts';
import type { Words } from './words-of.ts';

/** An amount told in a question, in words that the options' grammars read. */
export type ToldAmount = {
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly of: 'batter' | 'oils' | 'powder' | 'oil' | 'unsaid';
  readonly measure: 'volume' | 'mass';
  /** Per pound of oils. */
  readonly perPound: boolean;
};

const SPOONS: ReadonlySet<string> = new Set(['teaspoon', 'tablespoon']);
const COUNT =
  /^(?:~?\d[\d.,]*(?:\/\d+)?(?:-\d+(?:[.,]\d+)?(?:\/\d+)?)?|\.\d+|an?|one|un|una|uno|half|quarter|third|couple|dozen|media|medio|cuarto|tercio|between|entre)$/u;
/** What may stand between the first figure of an amount and its last unit. */
const WITHIN =
  /^(?:of|and|n|&|plus|with|an?|de|y|e|con|un|una|to|or|-|o|a|hasta|halves|quarters|thirds|cuartos|tercios|fl|fluid|metric|imperial|us)$/u;
/** A part after the unit: "libra y media", "2 cups and a half". */
const PART = /^(?:half|medi[ao]|cuarto|quarter|tercio|third)$/u;
/** Between an amount and what it is of: "840 g entre todos los aceites". */
const BETWEEN =
  /^(?:of|de|del|my|mi|mis|our|raw|the|in|en|el|la|los|las|total|left|worth|entre|between|all|todos?|todas?|together)$/u;
const OILS = /^(?:oils?|fats?|aceites?|grasas?)$/u;
const BATTER = /^(?:batter|soap|mezcla|masa|jabon|pasta|batch|lote|raw|crudo)$/u;
const PER_POUND =
  /^(?:(?:ppo|tpo)\b|(?:(?:per|por|a|each|every|cada|por cada|for (?:each|every)|to (?:each|every|the)) (?:1 )?(?:lb|pound|libra)\b))/u;
/** A unit after these is what an amount is counted by, and no amount. */
const PER = /^(?:per|por|each|every|cada|the|la|el|this|that|esa|ese|this)$/u;

/** Grams below which a bare mass beside a colourant is of powder: a portion of batter is no spoonful. */
const MOST_POWDER_G = 60;
/** Four tablespoons. */
const MOST_SPOONS_ML = 60;

/** The amounts of a question in order, each with what it is an amount of as far as the words tell. */
export function amountsIn({ words }: Words, things: readonly NamedThing[]): readonly ToldAmount[] {
  const reads: Pieces[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const read = piecesAt(words, at) ?? amountAt(words, at);
    if (!read) continue;
    reads.push(read);
    at = read.to - 1;
  }
  const told = reads.map(read => placed(read, words, things));
  const before = reads.map(read => namedBefore(read, words, things));
  return areNamesFirst(reads, before, words)
    ? told.map((one, at) => ({ ...one, of: before[at] ?? one.of }))
    : told;
}

/** What an amount is of by the word right before it: "batter 500 g", "rose clay 5 g". */
function namedBefore(
  { from, unit }: Read,
  words: readonly string[],
  things: readonly NamedThing[],
): ToldAmount['of'] | undefined {
  const before = words[from - 1] ?? '';
  if (BATTER.test(before)) return 'batter';
  // A spoon of oil wets a colour; nobody makes soap of it.
  if (OILS.test(before)) return SPOONS.has(unitOfWord(unit) ?? '') ? 'oil' : 'oils';
  return things.some(({ to, colourants }) => to === from && colourants.length > 0) ? 'powder' : undefined;
}

/** Whether every amount of a question stands behind its name: then none is of the name that follows it. */
function areNamesFirst(
  reads: readonly Pieces[],
  before: readonly (ToldAmount['of'] | undefined)[],
  words: readonly string[],
): boolean {
  const last = reads.at(-1);
  if (!last || before.includes(undefined) || reads.some(({ bars }) => bars !== undefined)) return false;
  // Powder alone may be a portion whose name comes last.
  if (before.every(of => of === 'powder')) return false;
  const next = words[last.to] ?? '';
  return !/^(?:of|de|in|en)$/u.test(next) && !BATTER.test(next) && !OILS.test(next) && !isOil(words, last.to);
}

type Read = { readonly text: string; readonly from: number; readonly to: number; readonly unit: string };
type Pieces = Read & { readonly bars?: boolean };

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
    if (text === undefined || !isOneAmount(span) || amountOf(text) === undefined) continue;
    return { text, from, to, unit: span.findLast(isUnit)! };
  }
  return undefined;
}

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
  const each = amountAt(words, next);
  if (!each || !/^\d/u.test(each.text) || amountOf(each.text)?.measure !== 'mass') return undefined;
  const text = `${count} x ${each.text}`;
  return amountOf(text) === undefined
    ? undefined
    : { text, from, to: each.to, unit: each.unit, bars: BARS.test(nameAt(at)) };
}

/** "kilo of oils" is one; "per kilo" and "the pound" are none. */
const loneUnit = (words: readonly string[], at: number): string | undefined =>
  words[at]!.length > 2 &&
  !PER.test(words[at - 1] ?? '') &&
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
  if (!larger || !smaller || larger.unit === smaller.unit) return true;
  if (TOGETHER.some(([one, other]) => one === larger.unit && other === smaller.unit))
    return Number(span[smaller.at - 1]) >= (smaller.unit === 'ounce' ? 1 : 50);
  return SPOONS.has(smaller.unit) && /^(?:and|y|n|&|plus|con|mas)$/u.test(span[larger.at + 1] ?? '');
}

/** What an amount comes to at least; undefined where the grammar does not read it. */
export function amountOf(text: string): Amount | undefined {
  try {
    return parsePortionRange(text).low;
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    // A pinch is no portion that could be poured, and an amount all the same.
    return refusal.id === 'amount-out-of-range' ? smallAmount(text) : undefined;
  }
}

function smallAmount(text: string): Amount | undefined {
  try {
    return parseAmount(text);
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

function placed(
  { text, from, to, unit, bars }: Pieces,
  words: readonly string[],
  things: readonly NamedThing[],
): ToldAmount {
  const amount = amountOf(text)!;
  const { measure } = amount;
  const after = words.slice(to, to + 5);
  const skip = after.findIndex(word => !BETWEEN.test(word));
  const next = after[Math.max(skip, 0)] ?? '';
  const perPound = PER_POUND.test(words.slice(afterName(words, to, things), to + 8).join(' '));
  const thing = things.find(
    one =>
      one.from >= to &&
      one.from <= to + 2 &&
      !words.slice(to, one.from).some(word => !/^(?:of|de|the)$/u.test(word)),
  );
  const base = { text, from, to, measure, perPound };
  if (bars !== undefined) return { ...base, of: bars ? 'batter' : 'powder' };
  if (perPound) return { ...base, of: 'powder' };
  // "2 cups in olive oil": the oil is what the colour is wetted in.
  const isIn = words[to] === 'in' || words[to] === 'en';
  // Cocoa is a colour by the spoon, whatever its butter is.
  const isColour = thing !== undefined && thing.colourants.length > 0 && isPinch(amount);
  if (!isIn && !isColour && isOil(words, to + Math.max(skip, 0))) return { ...base, of: 'oil' };
  if (OILS.test(next) || isOfOils(words, from)) return { ...base, of: 'oils' };
  if (BATTER.test(next)) return { ...base, of: 'batter' };
  if (SPOONS.has(unitOfWord(unit) ?? '')) return { ...base, of: 'powder' };
  if (measure === 'volume') return { ...base, of: 'batter' };
  const grams = amount.measure === 'mass' ? amount.grams : 0;
  return { ...base, of: thing && grams <= MOST_POWDER_G ? 'powder' : 'unsaid' };
}

/** What is no portion of batter, and no oil that anybody weighs. */
const isPinch = (amount: Amount): boolean =>
  amount.measure === 'mass' ? amount.grams <= MOST_POWDER_G : amount.millilitres <= MOST_SPOONS_ML;

/** "My oils are 640 g", "los aceites pesan 640 g". */
const isOfOils = (words: readonly string[], from: number): boolean =>
  /(?:^| )(?:(?:oils|fats|aceites|grasas)|(?:oils?|fats?|aceites?|grasas?) (?:(?:are|is|r|weigh|weighs|weight|come to|total|totals|all|in|en|sum|suman|son|pesan?|total(?:es)?|de|of|about|:|=|at) ?)+) ?$/u.test(
    `${words.slice(Math.max(0, from - 4), from).join(' ')} `,
  );

/** Past the name of what is measured: "2 teaspoons of madder for every pound". */
function afterName(words: readonly string[], to: number, things: readonly NamedThing[]): number {
  const of = /^(?:of|de)$/u.test(words[to] ?? '') ? to + 1 : to;
  return things.find(({ from }) => from === of)?.to ?? to;
}

/** Whether an oil's own name stands there: "500 g olive oil", "300 g de aceite de coco". */
export function isOil(words: readonly string[], at: number): boolean {
  for (let length = 4; length > 0; length -= 1) {
    const name = words.slice(at, at + length).join(' ');
    if (!OILS.test(name) && !BATTER.test(name) && name.length > 3 && knownOil(name) !== undefined)
      return true;
  }
  return false;
}
