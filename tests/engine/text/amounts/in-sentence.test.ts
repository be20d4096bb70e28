import { expect, test } from 'vitest';
import { massesIn } from '../../../../src/engine/text/amounts/masses-in-sentence.ts';
import { temperaturesIn } from '../../../../src/engine/text/amounts/temperatures-in-sentence.ts';

test.each([
  ['100 g now', [{ is: 'mass', grams: 100, written: '100 g' }, ' now']],
  ['quedan 37,5 g', ['quedan ', { is: 'mass', grams: 37.5, written: '37,5 g' }]],
  ['4 to 12 g', [{ is: 'range', low: 4, joint: 'to', high: 12, written: '4 to 12 g' }]],
  [
    'unos 4 g (de 2,8 a 5,2 g)',
    [
      'unos ',
      {
        is: 'estimate',
        grams: 4,
        figure: '4',
        lead: 'de ',
        range: { low: 2.8, joint: 'a', high: 5.2 },
        written: '4 g (de 2,8 a 5,2 g)',
      },
    ],
  ],
  // With its ounces beside it, a density, and what a member wrote.
  ['143.1 g (5.04 oz) NaOH', ['143.1 g (5.04 oz) NaOH']],
  ['0.95 g/ml', ['0.95 g/ml']],
  ['kept as “500 g loaf”', ['kept as ', '“500 g loaf”']],
] as const)('a sentence holds masses as values: %s', (sentence, pieces) => {
  expect(massesIn(sentence)).toEqual(pieces);
});

test.each([
  ['at 38 °C (100 °F).', ['at ', { celsius: '38', fahrenheit: '100' }, '.']],
  ['30 to 35 °C (86 to 95 °F)', [{ celsius: '30 to 35', fahrenheit: '86 to 95' }]],
  ['-5 a 120 °C (23 a 248 °F)', [{ celsius: '-5 a 120', fahrenheit: '23 a 248' }]],
  ['one unit alone, 38 °C', ['one unit alone, 38 °C']],
] as const)('a sentence holds temperatures in both units as values: %s', (sentence, pieces) => {
  expect(temperaturesIn(sentence)).toEqual(pieces);
});
