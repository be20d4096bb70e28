import { knownOil } from '../../../batch/oils/find-oil.ts';
import { colourantsMeant } from '../../../colourants/find.ts';
import { groupedBy } from '../../../grouped.ts';
import { whenAsked } from '../../../when-asked.ts';
import { COMMON_WORDS, TRADE_WORDS, tradeWords } from './trade-words.ts';

/** Words of the longest name that is looked for around a word. */
const LONGEST_NAME = 4;
/** What an oil's name goes with; other words say nothing about which oil is meant. */
const FAT = /^(?:oil|aceite|butter|manteca|mantequilla)s?$/u;
/** What joins the words of a name. */
const JOINS = /^(?:de|of|del)$/u;
/** Common words that sound like one of the trade's, and are one only as part of its name. */
const HEARD: ReadonlyMap<string, string> = new Map([
  ['caster', 'castor'],
  ['beat', 'beet'],
]);
/** How far a word may be that makes a whole name of its neighbours, and by how much another such word must be farther. */
const MOST = 1.25;
const MARGIN = 0.5;
const SHORTEST_BEGUN = 3;
const SHORTEST_JOINED = 7;
const MOST_JOINED = 0.6;

/** The trade's words by how they begin, in their order. */
const byBeginning = whenAsked(() =>
  groupedBy(
    [...TRADE_WORDS].filter(word => word.length >= SHORTEST_BEGUN),
    word => word.slice(0, SHORTEST_BEGUN),
  ),
);

const isWord = (word: string | undefined): word is string => word !== undefined && /^\p{L}+$/u.test(word);

/** What words together, two at least that tell, may name: the ids of colourants or of an oil; undefined where they name nothing. */
function thingsNamed(span: readonly string[]): string | undefined {
  const text = span.join(' ');
  const colourants = colourantsMeant(text);
  if (colourants.length > 0) return colourants.map(({ id }) => id).join(' ');
  return span.some(word => FAT.test(word)) ? knownOil(text)?.id : undefined;
}

/** What the longest name around a word stands for, with `word` in its place. */
function namedWith(words: readonly string[], at: number, word: string): string | undefined {
  for (let length = LONGEST_NAME; length > 1; length -= 1)
    for (let from = Math.max(0, at - length + 1); from <= at && from + length <= words.length; from += 1) {
      const span = words.slice(from, from + length);
      if (!span.every(isWord) || JOINS.test(span[0]!) || JOINS.test(span.at(-1)!)) continue;
      span[at - from] = word;
      const things = thingsNamed(span);
      if (things !== undefined) return things;
    }
  return undefined;
}

/** One word of the trade, or several that are as near. */
type WordInName = { readonly word: string } | { readonly contested: true };
const CONTESTED = { contested: true } as const;

/**
 * The word of the trade that stands for the one at `at` in the name it is part of: "mader root" is madder root, "caster oil"
 * castor oil, "act charcoal" activated charcoal. Contested where two words make names that are as near; undefined where none
 * does. Words in lower case without accents.
 */
export function wordInName(words: readonly string[], at: number): WordInName | undefined {
  const word = words[at];
  const beside = [words[at - 2], words[at - 1], words[at + 1], words[at + 2]];
  if (!isWord(word) || TRADE_WORDS.has(word) || JOINS.test(word)) return undefined;
  if (!beside.some(one => one !== undefined && TRADE_WORDS.has(one))) return undefined;
  const heard = HEARD.get(word);
  if (COMMON_WORDS.has(word)) return heard && namedWith(words, at, heard) ? { word: heard } : undefined;
  const near = tradeWords
    .near(word, MOST)
    .map(one => ({ ...one, things: namedWith(words, at, one.word) }))
    .filter(({ things }) => things !== undefined);
  const [first, ...others] = near;
  if (first) {
    const isRival = ({ cost, things }: (typeof near)[number]) =>
      cost < first.cost + MARGIN && things !== first.things;
    return others.some(isRival) ? CONTESTED : { word: first.word };
  }
  if (word.length < SHORTEST_BEGUN) return undefined;
  const begun = (byBeginning().get(word.slice(0, SHORTEST_BEGUN)) ?? [])
    .filter(one => one.startsWith(word))
    .map(one => ({ word: one, things: namedWith(words, at, one) }))
    .filter(({ things }) => things !== undefined);
  return new Set(begun.map(({ things }) => things)).size === 1 ? { word: begun[0]!.word } : undefined;
}

/** Whether `word` in the place of the one at `at` makes a name of its neighbours, where what stands there makes none. */
export const completesName = (words: readonly string[], at: number, word: string): boolean =>
  namedWith(words, at, words[at]!) === undefined && namedWith(words, at, word) !== undefined;

/** Two words that are one of the trade's with a space in it: "tea spoons", "coco nut", "beat root". */
export function joinedWord(first: string, second: string): string | undefined {
  const joined = first + second;
  if (joined.length < SHORTEST_JOINED || !isWord(joined)) return undefined;
  if (TRADE_WORDS.has(first) && TRADE_WORDS.has(second)) return undefined;
  if (TRADE_WORDS.has(joined)) return joined;
  if (COMMON_WORDS.has(first) && COMMON_WORDS.has(second) && !HEARD.has(first)) return undefined;
  const [near, other] = tradeWords.near(joined);
  return near !== undefined && other === undefined && near.cost <= MOST_JOINED ? near.word : undefined;
}
