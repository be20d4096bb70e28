import { expect, test } from 'vitest';
import { wordsOf } from '../../../../../src/engine/questions/found/words-of.ts';
import { isBarredWord } from '../../../../../src/engine/text/spelling/trade/near-barred.ts';

const LETTERS = 'aeiourstnldcmp';

/** Every word with one letter left out, put in, changed or swapped. */
const slipsOf = (word: string): readonly string[] =>
  Array.from(word).flatMap((_, at) => [
    word.slice(0, at) + word.slice(at + 1),
    at === 0 ? word : word.slice(0, at - 1) + word[at] + word[at - 1] + word.slice(at + 1),
    ...LETTERS.split('').flatMap(letter => [
      word.slice(0, at) + letter + word.slice(at),
      word.slice(0, at) + letter + word.slice(at + 1),
    ]),
  ]);

// Colours that Annex II of Regulation (EC) No 1223/2009 or their toxicity keeps out of soap, and alkalis, by their names.
test.each([
  'cadmium',
  'cadmio',
  'cinnabar',
  'cinabrio',
  'vermilion',
  'mercury',
  'mercurio',
  'arsenic',
  'arsenico',
  'realgar',
  'orpiment',
  'litharge',
  'antimony',
  'chromate',
  'hydroxide',
  'caustic',
])('no slip of “%s” becomes a colourant', name => {
  const taken = slipsOf(name).flatMap(typed =>
    wordsOf(typed).corrections.filter(
      ({ to }) =>
        to !== name && !isBarredWord(to) && !['cromo', 'chrome', 'medium'].includes(to) && typed.length > 6,
    ),
  );
  expect(taken).toEqual([]);
});

test('slips of colourants are still put right', () => {
  const read = ['utlramarine', 'charcola', 'titanum', 'spirulna', 'turmerik'].map(
    typed => wordsOf(typed).corrections[0]?.to,
  );
  expect(read).toEqual(['ultramarine', 'charcoal', 'titanium', 'spirulina', 'turmeric']);
});
