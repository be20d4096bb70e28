import { describe, expect, test } from 'vitest';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';

describe('an amount that is told twice in one breath', () => {
  // Two hands that were read once each had their amounts added up, or a half dropped.
  test.each([
    ['bit under a lb, call it 420 g of batter', { measure: 'mass', grams: 420, of: 'batter' }],
    ['half a kilo, say 520 g', { measure: 'mass', grams: 520, of: 'batter' }],
    ['medio kilo de masa, digamos 520 g', { measure: 'mass', grams: 520, of: 'batter' }],
    ['a cup, well 200 ml', { measure: 'volume', millilitres: 200, of: 'batter' }],
    ['one and a half kilos of oils before the lye water', { measure: 'mass', grams: 1500, of: 'oils' }],
    ['two and a quarter kilos of batter', { measure: 'mass', grams: 2250, of: 'batter' }],
  ])('%s', (text, portion) => expect(parsePortionRange(text).low).toEqual(portion));

  test('two units of one weight are still one sum', () => {
    expect(parsePortionRange('1 lb 4 oz').low).toMatchObject({ grams: expect.closeTo(566.99, 2) });
  });
});

describe('a part of the batter', () => {
  test.each([
    ['half the batch is going purple w/ ultramarine violet. half = roughly 600 ml, how much', '600 ml'],
    [
      'Kids want a green bar, one of them wants it dark, so chrome oxide green and two cups split off from the main pot. how much do i weigh out',
      '2 cups',
    ],
  ])('%s', (question, portion) => expect(readQuestion(question).facts.portion).toBe(portion));
});
