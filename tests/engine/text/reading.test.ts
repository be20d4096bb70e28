import { describe, expect, test } from 'vitest';
import { amountPhrase } from '../../../src/engine/quantities/spoken/amount-phrases.ts';
import { parsePortionRange } from '../../../src/engine/quantities/told/portion.ts';
import { readQuestion } from '../../../src/engine/questions/read.ts';
import { sharesPhrase } from '../../../src/engine/text/amounts/shares/share-phrases.ts';
import { colourNamed } from '../../../src/engine/text/colours/colour-name.ts';
import { fold } from '../../../src/engine/text/fold.ts';
import { distance, slipsIn } from '../../../src/engine/text/spelling/edit-distance.ts';
import { wordsIn } from '../../../src/words/index.ts';
import { leastCpu } from '../../cpu-time.ts';

test.each(['en', 'es'] as const)('every word the assistant uses for a colour is read (%s)', language => {
  const names = Object.values(wordsIn(language).colour.names);
  expect(names.filter(name => colourNamed(name) === undefined)).toEqual([]);
});

describe('six thousand characters', () => {
  // U+FDFA unfolds into eighteen letters (Unicode Character Database, compatibility decomposition).
  test.each(['\ufdfa', 'a', '1 ', '🧼', 'ﬃ'])(
    'of %j are read in under 50 ms of processor time',
    async sign => {
      const text = sign.repeat(6000 / sign.length);
      expect(fold(text).length).toBeLessThanOrEqual(6000);
      const read = () => [fold(text), amountPhrase(text.slice(0, 101))];
      expect(await leastCpu(read, 50)).toBeLessThan(50);
    },
  );
});

test('a name every object has is no colour, oil or number', () => {
  expect(colourNamed('constructor')).toBeUndefined();
  expect(fold('constructor')).toBe('constructor');
  expect(readQuestion('constructor __proto__ toString').readings).toEqual([]);
});

test('a swap of neighbours is one slip (Damerau 1964)', () => {
  expect([distance('utlramarine', 'ultramarine'), distance('ca', 'abc'), distance('', 'abc')]).toEqual([
    1, 3, 3,
  ]);
  expect([4, 5, 7, 8].map(slipsIn)).toEqual([0, 1, 1, 2]);
});

test.each([
  ['1/3 of 3 lb oils', 453.59237],
  ['10 bars of 4 oz', 1133.980925],
  ['half of 1300 g', 650],
  ['kilo y cuarto de grasas', 1250],
  ['2 kilos 300', 2300],
])('%s', (text, grams) => {
  expect(parsePortionRange(text).low).toMatchObject({ measure: 'mass', grams: expect.closeTo(grams, 6) });
});

test('a range has both ends, a mixed number one value', () => {
  expect(amountPhrase('2-3 cups')).toEqual({ low: '2 cups', high: '3 cups', about: false });
  expect(amountPhrase('1-1/2 cups').high).toBeUndefined();
  expect(amountPhrase('about 2 cups')).toEqual({ low: '2 cups', about: true });
});

test.each([
  ['half blue half white', '50% blue; 50% white'],
  ['60/40 pink and purple', '60% pink; 40% purple'],
  ['two thirds green 1 third cream', '66.666667% green; 33.333333% cream'],
  ['4 layers: red, orange, yellow, green', '1 parts red; 1 parts orange; 1 parts yellow; 1 parts green'],
  ['2 cups red mica full in 1 Tbsp olive', '2 cups red mica full in 1 Tbsp olive'],
])('%s', (text, portions) => expect(sharesPhrase(text)).toBe(portions));

test.each([
  ['how much ultramarine for 2 cups?', 'dose', { colourant: 'ultramarine', portion: '2 cups' }],
  ['dose ultramarine blue 2 cups', 'dose', { colourant: 'ultramarine blue', portion: '2 cups' }],
  ['will this pink survive lye: mica, CI 45410', 'survives-lye', { ingredients: 'mica, ci 45410' }],
  ['what purple can I make from my shelf', 'mix', { target: 'purple', from: 'shelf' }],
  ['is titanium dioxide allowed in Europe?', 'law', { item: 'titanium dioxide' }],
  ['16 oz olive and 8 oz coconut, superfat 5', 'lye', { superfat: '5' }],
  ['how much lye for 500 g olive oil', 'lye', { oils: '500 g olive oil' }],
])('%s', (question, job, given) => {
  expect(readQuestion(question).readings[0]).toMatchObject({ job, given });
});
