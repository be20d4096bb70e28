import { expect, test } from 'vitest';
import { cut } from '../../../src/engine/text/excerpt.ts';
import { pieceCounts, wordCounts } from '../../../src/engine/text/learned/hashes.ts';
import { questionWords, stemmed, wordFeatures } from '../../../src/engine/text/learned/question-words.ts';
import { quotedValue } from '../../../src/engine/text/lines/option-line.ts';
import { percentsMarked, ratioIn } from '../../../src/engine/text/names/listed-names.ts';
import { respelt } from '../../../src/engine/text/spelling/trade/respelt.ts';
import { tokenise } from '../../../src/engine/text/tokens.ts';
import { unaccented } from '../../../src/engine/text/unaccented.ts';

/* What is too long is cut where it is told, and no reader looks beyond. */

test.each([
  ['rose clay', 20, 'rose clay'],
  ['rose clay for soap', 12, 'rose clay…'],
  ['aaaaaaaaaaaaaaaaaaaa', 10, 'aaaaaaaaa…'],
  ['a bbbbbbbbbbbbbbbbbbb', 10, 'a bbbbbbb…'],
  ['🇪🇸🇪🇸🇪🇸', 9, '🇪🇸🇪🇸…'],
])('“%s” in %i signs is “%s”', (text, most, shown) => {
  expect(cut(text, most)).toBe(shown);
});
test('a text is compared up to its bound, accents or none', () => {
  expect(unaccented('ABCDEF', 3)).toBe('abc');
  // An accent is a sign of its own while it is taken off.
  expect(unaccented('ÁBCDEF', 3)).toBe('ab');
});
test('slips are put right in texts of at most 600 signs', () => {
  const long = (length: number) => `micca ${'a'.repeat(length - 6)}`;
  expect(respelt(long(600)).text).toContain('mica ');
  expect(respelt(long(601)).text).toBe(long(601));
});
test('a line break is a mark of its own, and blank pieces are none', () => {
  expect(tokenise('a\nb').map(({ text }) => text)).toEqual(['a', '\n', 'b']);
});
test('nothing is shared in shares of nothing, nor by one alone', () => {
  const knows = (name: string) => /^(?:blue|white)$/u.test(name);
  expect(ratioIn('0:0 blue white', knows)).toBeUndefined();
  expect(ratioIn('equal parts blue', knows)).toBeUndefined();
  expect(percentsMarked('rest blue 70')).toBe('rest blue 70%');
});
test('a value that no quote opens ends at a plain one', () => {
  expect(quotedValue('xrose" rest', 0)).toEqual({ text: 'rose', end: 6, closed: true });
});
test('a question is weighed by its words, their stems and the pieces of those that are no figures', () => {
  const words = questionWords('curing 3 layers');
  expect(words).toEqual(['curing', '<figure>', 'layers']);
  const lengths = { words: 1, stems: 2, pieces: 3 };
  expect(wordFeatures(words, lengths)).toEqual([
    { counts: wordCounts(words), length: 1 },
    { counts: wordCounts(words.map(stemmed)), length: 2 },
    { counts: pieceCounts(['curing', 'layers']), length: 3 },
  ]);
});
// Runs of three to five letters of " ab ": the word with its ends, four runs of a word of three letters and six.
test('a word of n letters has its runs of three, four and five signs, ends included', () => {
  const runs = (length: number) =>
    [3, 4, 5].reduce((sum, size) => sum + Math.max(0, length + 2 - size + 1), 0);
  const many = (word: string) => [...pieceCounts([word]).values()].reduce((sum, one) => sum + one, 0);
  for (const word of ['a', 'ab', 'abc', 'mica', 'oxide', 'turmeric'])
    expect(many(word)).toBe(runs(word.length));
});
