/*
 * Writes the everyday words that lie near an oil's name and are no slip of one ("butcher" for butter):
 *   node tests/engine/questions/write-words-like-oils.ts
 * English and Spanish word lists that are openly licensed (NOTICE.md); what is a single slip away from an oil's word is left out,
 * since that may well be one.
 */
import { writeFileSync } from 'node:fs';
import { nearestOilWord, PRODUCTS, TURNS } from '../../../src/engine/questions/lye/chat-words.ts';
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
const rows: string[] = [];
for (let at = 0; at < words.length; at += 16) rows.push(words.slice(at, at + 16).join(' '));
writeFileSync(
  new URL('../../../src/engine/questions/lye/words-like-oils.json', import.meta.url),
  `${JSON.stringify({ source: 'See NOTICE.md', words: rows }, undefined, 2)}\n`,
);
console.info(`${words.length} words`);
