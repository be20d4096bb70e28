import { expect, test } from 'vitest';
import { parseSize } from '../../../../src/engine/batch/batch-size.ts';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { US_TEASPOON_ML } from '../../../../src/engine/quantities/units.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import { readPowder } from '../../../../src/engine/text/amounts/powders/powder-phrase.ts';

/* Amounts with what is said of them; a US gallon by NIST Handbook 44, appendix C. */

test.each([
  ['380 grams of it, weighed twice', { measure: 'mass', grams: 380, of: 'batter' }],
  ['it was 700 g but I spilt 60 so what is left of that', { measure: 'mass', grams: 640, of: 'batter' }],
  ['tenía 700 g y se me cayeron 60', { measure: 'mass', grams: 640, of: 'batter' }],
  ['oils: 840', { measure: 'mass', grams: 840, of: 'oils' }],
  ['620 de aceites, sin contar el agua', { measure: 'mass', grams: 620, of: 'oils' }],
  ['400 of olive plus 100 coconut so half a kilo of oil', { measure: 'mass', grams: 500, of: 'oils' }],
] as const)('%s', (text, low) => expect(parsePortionRange(text).low).toEqual(low));

test('both ends of a range that is typed in haste', () => {
  const { low, high } = parsePortionRange('somewhere btwn 300 and 400 mls');
  expect([low, high]).toEqual([
    { measure: 'volume', millilitres: 300, of: 'batter' },
    { measure: 'volume', millilitres: 400, of: 'batter' },
  ]);
});

test.each([
  // So few may be ounces, or how many oils there are; a sum that is another; more gone than there was.
  '65 oils',
  'oils: 99',
  '3 aceites',
  '400 of olive plus 200 coconut so half a kilo of oil',
  '60 g and I spilt 700',
])('%s is asked', text => expect(() => parsePortionRange(text)).toThrow(Refusal));

test.each([
  ['three qtr tsp cocoa', 3 / 4],
  ['an 8th of a tsp cocoa', 1 / 8],
  ['16th tsp cocoa', 1 / 16],
  ['1 t. cocoa', 1],
  ['2 T. cocoa', 6],
])('%s is %d tsp', (text, teaspoons) =>
  expect(readPowder(text).low).toEqual({
    measure: 'volume',
    millilitres: expect.closeTo(teaspoons * US_TEASPOON_ML, 3),
  }),
);

test('a gram told by its parts', () =>
  expect(readPowder('0.6 of a gram').low).toEqual({ measure: 'mass', grams: 0.6 }));

test.each([
  ['gallon bucket batch', 3785.41],
  ['brik de leche, un litro', 1000],
])('%s', (text, millilitres) =>
  expect(parseSize(text)).toEqual({ by: 'batter-volume', millilitres: expect.closeTo(millilitres, 1) }),
);
