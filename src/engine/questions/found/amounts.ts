import { knownOil } from '../../batch/oils/find-oil.ts';
import { unbroken } from '../../over-lines.ts';
import type { Amount } from '../../quantities/amount.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';
import {
  amountOf,
  BATTER,
  BETWEEN,
  OILS,
  type Pieces,
  type Read,
  readAt,
  SPOONS,
} from '../portion-line/amount-at.ts';
import type { NamedThing } from './names/named-thing.ts';
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

const PER_POUND =
  /^(?:(?:ppo|tpo)\b|(?:(?:per|por|a|each|every|cada|por cada|for (?:each|every)|to (?:each|every|the)) (?:1 )?(?:lb|pound|libra)\b))/u;

/** Grams below which a bare mass beside a colourant is of powder: a portion of batter is no spoonful. */
const MOST_POWDER_G = 60;
/** Four tablespoons. */
const MOST_SPOONS_ML = 60;

/** The amounts of a question in order, each with what it is an amount of as far as the words tell. */
export function amountsIn({ words }: Words, things: readonly NamedThing[]): readonly ToldAmount[] {
  const reads: Pieces[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const read = readAt(words, at);
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
  if (OILS.test(next) || isAsideOfOils(words, to) || isOfOils(words, from) || isShortOils(words, to, measure))
    return { ...base, of: 'oils' };
  if (BATTER.test(next)) return { ...base, of: 'batter' };
  if (SPOONS.has(unitOfWord(unit) ?? '') || isRate(amount, words, to)) return { ...base, of: 'powder' };
  if (measure === 'volume') return { ...base, of: 'batter' };
  const grams = amount.measure === 'mass' ? amount.grams : 0;
  return { ...base, of: thing && grams <= MOST_POWDER_G ? 'powder' : 'unsaid' };
}

const ASIDE_OF_OILS = new RegExp(
  unbroken`
  ^(?:(?:batch|loaf|batter|soap|log|portion|lote|tanda|molde|mou?ld|pan|jabon|porcion) (?:(?:of|
  de) (?:the )?(?:soap|batch|jabon) )?)?(?:\( (?:(?:that is|that's|thats|eso es|eso son|es|son|of|de|in|
  all|just|only|solo|en|the|my|los|mis) ){0,3}(?:oils?|fats?|aceites?|grasas?)(?: \p{L}+)? \)|
  , (?:(?:that is|that's|thats|just|only|solo|es|eso es) )?(?:oils?|fats?|aceites?|grasas?)(?: (?:that is|
  that's it|only|alone|weight|nomas|solo|nada mas))?(?= [,.;?!)]|$))
`,
  'u',
);

/** "A 1.5 kg batch (oils)", "900 g loaf, oils that is". */
const isAsideOfOils = (words: readonly string[], to: number): boolean =>
  ASIDE_OF_OILS.test(words.slice(to, to + 8).join(' '));

/** "2 lb o, barely pink": an "o" that joins nothing is how some write oils. */
const isShortOils = (words: readonly string[], to: number, measure: Amount['measure']): boolean =>
  measure === 'mass' &&
  words[to] === 'o' &&
  (words[to + 1] === undefined || /^[,.;:?!)]$/u.test(words[to + 1]!));

/** "1 g per 400 g oils", "4 gramos por kilo de masa": so little to so much. */
const isRate = (amount: Amount, words: readonly string[], to: number): boolean =>
  amount.measure === 'mass' &&
  isPinch(amount) &&
  /^(?:per|por|x|each|every|cada|por cada|for (?:each|every)) (?:\d|(?:a |an |un |una )?(?:half |medio |media )?(?:kilo|kg|lb|pound|libra)s?(?!\p{L}))/u.test(
    words.slice(to, to + 5).join(' '),
  );

/** What is no portion of batter, and no oil that anybody weighs. */
const isPinch = (amount: Amount): boolean =>
  amount.measure === 'mass' ? amount.grams <= MOST_POWDER_G : amount.millilitres <= MOST_SPOONS_ML;

/** "Oils are 100 and that's 900 g": percents of the oils, and what the hundred weighs. */
const ARE_THE_HUNDRED = new RegExp(
  unbroken`
    (?:^| )(?:oils|fats|aceites|grasas) (?:(?:are|is|as|at|being|son|como|al|el|the) )*100 ?(?:%|percent|
    por ciento)? ?,? ?(?:(?:and|y|so|=|,) )*(?:(?:that|that's|thats|which|it|it's|its|is|are|comes|to|
    weighs?|eso|esos?|que|es|son|pesan?) )+$
  `,
  'u',
);

/** What stands before an amount of oils: "my oils are", "los aceites pesan". */
const OILS_BEFORE = new RegExp(
  unbroken`
    (?:^| )(?:(?:oils|fats|aceites|grasas)|(?:oils?|fats?|aceites?|grasas?) (?:(?:are|is|r|weigh|weighs|
    weight|come to|total|totals|all|in|en|sum|suman|son|pesan?|total(?:es)?|de|of|about|:|=|at) ?)+) ?$
  `,
  'u',
);

/** "My oils are 640 g", "los aceites pesan 640 g". */
const isOfOils = (words: readonly string[], from: number): boolean =>
  ARE_THE_HUNDRED.test(`${words.slice(Math.max(0, from - 12), from).join(' ')} `) ||
  OILS_BEFORE.test(`${words.slice(Math.max(0, from - 4), from).join(' ')} `);

/** Past the name of what is measured: "2 teaspoons of madder for every pound". */
function afterName(words: readonly string[], to: number, things: readonly NamedThing[]): number {
  const of = /^(?:of|de)$/u.test(words[to] ?? '') ? to + 1 : to;
  return things.find(({ from }) => from === of)?.to ?? to;
}

/** Whether an oil's own name stands there: "500 g olive oil", "300 g de aceite de coco". */
export function isOil(words: readonly string[], at: number): boolean {
  for (let length = 4; length > 0; length -= 1) {
    const name = words.slice(at, at + length).join(' ');
    // A name ends where a clause does: "1 lb of oils, tallow mostly".
    if (/(?:^| )[,.;:?!()](?: |$)/u.test(name)) continue;
    if (!OILS.test(name) && !BATTER.test(name) && name.length > 3 && knownOil(name) !== undefined)
      return true;
  }
  return false;
}
