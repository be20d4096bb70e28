/*
 * Writes the common words of both languages that a speller must know:
 *   node tests/engine/text/spelling/write-common.ts
 * The commonest whole, since a slip of the finger may be meant for any of them; of the rarer ones those that lie so near to a
 * word of the trade that they would be taken for a slip of it. Sources in NOTICE.md.
 */
import { writeFileSync } from 'node:fs';
import { TRADE_WORDS } from '../../../../src/engine/text/spelling/trade/trade-words.ts';
import { wordSpeller } from '../../../../src/engine/text/spelling/word-speller.ts';
import { englishWords, spanishWords } from './common-lists.ts';

const { near: nearTo } = wordSpeller(TRADE_WORDS, new Set());
/** A common word that `tests/structure/trade-marks.test.ts` keeps out of all that is tracked; backwards, as there. */
const UNMENTIONED = Array.from('oediv').reverse().join('');
/** As far as a word may be that makes a whole name of its neighbours. */
const FAR = 1.25;
const commonest = [...englishWords([10]), ...spanishWords(3500)].filter(word => word.length > 2);
const near = [...englishWords([20, 35]), ...spanishWords(10_000)].filter(
  word => nearTo(word, FAR).length > 0,
);
const words = [...new Set([...commonest, ...near])]
  .filter(word => !TRADE_WORDS.has(word) && word.replace(/s$/u, '') !== UNMENTIONED)
  .sort();
const rows: string[] = [];
for (let at = 0; at < words.length; at += 16) rows.push(words.slice(at, at + 16).join(' '));
const source =
  'English: SCOWL sizes 10 to 35, (c) 2000-2019 Kevin Atkinson. Spanish: Wiktionary, frequency list by Matthias Buchmeier, CC BY-SA. See NOTICE.md';
writeFileSync(
  new URL('../../../../src/engine/text/spelling/trade/common-words.json', import.meta.url),
  `${JSON.stringify({ source, words: rows }, undefined, 2)}\n`,
);
console.info(`${commonest.length} of the commonest, ${near.length} near ones, ${words.length} in all`);
