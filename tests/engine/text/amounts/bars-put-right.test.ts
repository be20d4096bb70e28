import { expect, test } from 'vitest';
import { parsePortion } from '../../../../src/engine/quantities/told/portion.ts';
import { MEASURES } from '../../../../src/engine/quantities/units.ts';
import { barsPutRight } from '../../../../src/engine/text/amounts/bars-put-right.ts';

test.each([
  ['10 bars of 100 g, sorry, 12 bars', '12 bars of 100 g'],
  ['for 10 bars of 100 g each, no wait, 8 bars', 'for 8 bars of 100 g'],
  ['12 bars of 100 g, sorry 90 g', '12 bars of 90 g'],
  ['12 bars at 4 oz. Actually they’re 3.5 oz', '12 bars at 3.5 oz'],
  ['10 jabones de 100 g, perdón, 12 jabones', '12 jabones de 100 g'],
  ['12 pastillas de 100 gramos, digo de 90 gramos', '12 pastillas de 90 gramos'],
  ['6 barras de 110 g cada una, mejor dicho 8 barras', '8 barras de 110 g'],
])('%s: the batch that is meant is %s', (told, meant) => {
  expect(barsPutRight(told).replace(/ (?:each|cada una)$/u, '')).toBe(meant);
});

test.each([
  // Another batch, whole; the whole of it; nothing put right.
  '10 bars of 100 g, sorry, 12 bars of 90 g',
  '12 bars of 100 g, sorry, 1100 g in all',
  '12 bars of 100 g, sorry, 1100 g',
  '10 bars of 100 g, and 12 bars of oatmeal soap are done',
  '12 bars of 100 g, 90 g of blue',
])('%s: stays as it is', told => {
  expect(barsPutRight(told)).toBe(told);
});

test('a portion that is put right is that many grams', () => {
  expect(parsePortion('10 bars of 100 g, sorry, 12 bars', MEASURES.us)).toMatchObject({ grams: 1_200 });
  expect(parsePortion('12 bars of 100 g, sorry 90 g', MEASURES.us)).toMatchObject({ grams: 1_080 });
});
