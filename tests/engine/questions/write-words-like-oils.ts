/*
 * Writes the everyday words that lie near an oil's name and are no slip of one ("butcher" for butter):
 *   node tests/engine/questions/write-words-like-oils.ts
 * English and Spanish word lists that are openly licensed (NOTICE.md); what is a single slip away from an oil's word is left out,
 * since that may well be one.
 * Of those single slips the words that are listed as words of their own ("canela", "pavo") are written beside them: they are asked for,
 * and never read as the oil.
 */
import { writeFileSync } from 'node:fs';
import {
  isNearOil,
  nearestOilWord,
  PRODUCTS,
  TURNS,
} from '../../../src/engine/questions/lye/amounts/chat-words.ts';
import { englishWords, spanishWords } from '../text/spelling/common-lists.ts';

/** A letter more, fewer or other; two letters in each other's place cost less. */
const ONE_SLIP = 1.05;
/** Real words that makers also write for an oil. */
const MEANT = new Set(['cacao', 'cocoa', 'lardo', 'oliva', 'argan', 'karite', 'neem', 'jojoba']);
const words = [...new Set([...englishWords([10, 20, 35, 40, 50, 55]), ...spanishWords(60_000)])]
  .filter(word => word.length > 3 && !PRODUCTS.test(word) && !TURNS.has(word) && !MEANT.has(word))
  .filter(word => {
    const cost = nearestOilWord(word);
    return cost !== undefined && cost > ONE_SLIP;
  })
  .sort();
/** "Caster oil" is castor oil to whoever writes it, and a plural is its singular. */
const IS_OIL = /^cast/u;
const isPlural = (word: string): boolean => word.endsWith('s') && nearestOilWord(word.slice(0, -1)) === 0;
const ownWords = [...new Set([...englishWords([10, 20, 35, 40, 50, 55, 60, 70]), ...spanishWords(60_000)])]
  .filter(
    word => isNearOil(word) && (nearestOilWord(word) ?? 0) > 0 && (nearestOilWord(word) ?? 2) <= ONE_SLIP,
  )
  .filter(word => !MEANT.has(word) && !IS_OIL.test(word) && !isPlural(word))
  .sort();
const inRows = (list: readonly string[]): readonly string[] =>
  Array.from({ length: Math.ceil(list.length / 16) }, (_, row) =>
    list.slice(16 * row, 16 * row + 16).join(' '),
  );
writeFileSync(
  new URL('../../../src/engine/questions/lye/amounts/words-like-oils.json', import.meta.url),
  `${JSON.stringify({ source: 'See NOTICE.md', words: inRows(words), own: inRows(ownWords) }, undefined, 2)}\n`,
);
console.info(`${words.length} words, ${ownWords.length} of their own`);
