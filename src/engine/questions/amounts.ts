import { knownOil } from '../batch/oils/find-oil.ts';
import { parsePortionRange } from '../quantities/amount.ts';
import { Refusal } from '../refusal.ts';
import type { NamedThing, Words } from './entities.ts';

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

const UNIT =
  /^(?:tsps?|teaspoons?|cdtas?|cditas?|cucharaditas?|tbsps?|tablespoons?|cdas?|cucharadas?|cups?|c|tazas?|pints?|pts?|pintas?|quarts?|qts?|gallons?|ml|l|lts?|lit(?:er|re|ro)s?|mililitros?|g|gr|grs|grams?|gramos?|kg|kilos?|kilogramos?|kilograms?|oz|ounces?|onzas?|lbs?|pounds?|libras?)\.?$/u;
const SPOON =
  /^(?:t|tsps?|teaspoons?|cdtas?|cditas?|cucharaditas?|tbsps?|tablespoons?|cdas?|cucharadas?)\.?$/u;
const COUNT =
  /^(?:~?\d+(?:[.,]\d+)?(?:\/\d+)?(?:-\d+(?:[.,]\d+)?(?:\/\d+)?)?|\.\d+|[½¼¾⅓⅔⅛]|an?|one|two|three|four|five|six|eight|ten|half|quarter|third|couple|dozen|un|una|uno|dos|tres|cuatro|cinco|seis|ocho|diez|media|medio|cuarto|tercio)$/u;
const JOIN = /^(?:of|and|n|a|an|de|y|un|una|to|or|-|o)$/u;
const OILS = /^(?:oils?|fats?|aceites?|grasas?)$/u;
const BATTER = /^(?:batter|soap|mezcla|masa|jabon|pasta|batch|lote|raw|crudo)$/u;
const PER_POUND = /^(?:ppo|tpo)$/u;

/** Grams below which a bare mass beside a colourant is of powder: a portion of batter is no spoonful. */
const MOST_POWDER_G = 60;

/** The amounts of a question in order, each with what it is an amount of as far as the words tell. */
export function amountsIn({ words }: Words, things: readonly NamedThing[]): readonly ToldAmount[] {
  const told: ToldAmount[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const read = amountAt(words, at);
    if (!read) continue;
    told.push(placed(read, words, things));
    at = read.to - 1;
  }
  return told;
}

type Read = { readonly text: string; readonly from: number; readonly to: number; readonly unit: string };

function amountAt(words: readonly string[], from: number): Read | undefined {
  // "a 1/2 litro": the preposition counts nothing.
  if (/^(?:an?|un|una)$/u.test(words[from] ?? '') && /^\d/u.test(words[from + 1] ?? '')) return undefined;
  if (!COUNT.test(words[from] ?? '')) {
    // "taza y media" counts one without a figure.
    if (
      !UNIT.test(words[from] ?? '') ||
      !/^y$/u.test(words[from + 1] ?? '') ||
      !/^medi[ao]$/u.test(words[from + 2] ?? '')
    )
      return undefined;
    return { text: words.slice(from, from + 3).join(' '), from, to: from + 3, unit: words[from]! };
  }
  for (let to = from + 1; to < Math.min(words.length, from + 7); to += 1) {
    const word = words[to]!;
    if (UNIT.test(word) && readable(words.slice(from, to + 1).join(' '))) {
      let end = to + 1;
      if (/^(?:and|n|y)$/u.test(words[end] ?? '') && /^(?:a|half|medi[ao])$/u.test(words[end + 1] ?? '')) {
        const more = words[end + 1] === 'a' ? 3 : 2;
        const longer = words
          .slice(from, end + more)
          .join(' ')
          .replace(/ n /u, ' and ');
        if (/(?:half|medi[ao])$/u.test(longer) && readable(longer)) end += more;
      }
      const text = words.slice(from, end).join(' ').replace(/ n /gu, ' and ');
      return { text, from, to: end, unit: word };
    }
    if (!COUNT.test(word) && !JOIN.test(word)) return undefined;
  }
  return undefined;
}

function readable(text: string): boolean {
  try {
    parsePortionRange(text);
    return true;
  } catch (refusal) {
    if (refusal instanceof Refusal) return false;
    throw refusal;
  }
}

function placed(
  { text, from, to, unit }: Read,
  words: readonly string[],
  things: readonly NamedThing[],
): ToldAmount {
  const { low } = parsePortionRange(text);
  const { measure } = low;
  const after = words.slice(to, to + 4);
  const skip = after.findIndex(word => !/^(?:of|de|del|my|mi|raw|the|in|total|left|worth)$/u.test(word));
  const next = after[Math.max(skip, 0)] ?? '';
  const perPound =
    PER_POUND.test(after[0] ?? '') || /^(?:per|por|a) (?:lb|pound|libra)/u.test(after.slice(0, 2).join(' '));
  const thing = things.find(
    one =>
      one.from >= to &&
      one.from <= to + 2 &&
      !words.slice(to, one.from).some(word => !/^(?:of|de|the)$/u.test(word)),
  );
  const base = { text, from, to, measure, perPound };
  if (perPound) return { ...base, of: 'powder' };
  // "2 cups in olive oil": the oil is what the colour is wetted in.
  const isIn = words[to] === 'in' || words[to] === 'en';
  if (!isIn && isOil(words, to + Math.max(skip, 0))) return { ...base, of: 'oil' };
  if (OILS.test(next)) return { ...base, of: 'oils' };
  if (BATTER.test(next)) return { ...base, of: 'batter' };
  if (SPOON.test(unit)) return { ...base, of: 'powder' };
  if (measure === 'volume') return { ...base, of: 'batter' };
  const grams = low.measure === 'mass' ? low.grams : 0;
  return { ...base, of: thing && grams <= MOST_POWDER_G ? 'powder' : 'unsaid' };
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
