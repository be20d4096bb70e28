import { expect, test } from 'vitest';
import { knownOil } from '../../../../src/engine/batch/oils/find-oil.ts';
import { colourantsMeant } from '../../../../src/engine/colourants/find.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { respelt } from '../../../../src/engine/text/spelling/trade/respelt.ts';
import { TRADE_WORDS } from '../../../../src/engine/text/spelling/trade/trade-words.ts';
import { englishWords, spanishWords } from './common-lists.ts';

/** So many of each language: SCOWL's size 10 is not ranked, so they are taken evenly over the alphabet. */
const MOST = 3000;
const english = englishWords([10]);
const LISTS = [
  ['English', Array.from({ length: MOST }, (_, at) => english[Math.floor((at * english.length) / MOST)]!)],
  ['Spanish', spanishWords(MOST + 200).slice(0, MOST)],
] as const;

test.each(LISTS)('no common word is read as a colourant, an oil or a carrier (%s)', (_language, words) => {
  expect(words.length).toBeGreaterThanOrEqual(MOST - 200);
  const taken = words.filter(word => !TRADE_WORDS.has(word) && respelt(word).text !== word);
  expect(taken).toEqual([]);
});

test.each(LISTS)('nor beside a word of the trade (%s)', (_language, words) => {
  const frames = [
    (word: string) => `${word} oil`,
    (word: string) => `aceite de ${word}`,
    (word: string) => `${word} clay`,
    (word: string) => `${word} oxide`,
    (word: string) => `the ${word} mica`,
  ];
  const taken = words
    .filter(word => !TRADE_WORDS.has(word))
    .filter((_, at) => at % 3 === 0)
    .flatMap(word => frames.map(frame => frame(word)))
    .filter(text => respelt(text).text !== text);
  // "Caster oil" and "beat root" are how the trade's own names are heard.
  expect(taken.filter(text => !/\b(?:caster|beat)\b/u.test(text))).toEqual([]);
});

test.each(LISTS)('nor in a question (%s)', (_language, words) => {
  const known = (text: string) => colourantsMeant(text).length > 0 || knownOil(text) !== undefined;
  const taken = words.filter(
    (word, at) =>
      at % 20 === 0 &&
      word.length > 3 &&
      !TRADE_WORDS.has(word) &&
      !known(word) &&
      readQuestion(`how much ${word} for 2 cups`).corrections.length > 0,
  );
  expect(taken).toEqual([]);
});
