import { expect, test } from 'vitest';
import { readQuestion } from '../../../src/engine/questions/read.ts';

/* Who weighs oils tells a whole batch; less than 100 g of one oil wets a colour (common practice, no source). */
test.each([
  ['400 g olive and 100 g coconut', '500 g oils'],
  ['60 g olive and 30 g coconut', '90 g oils'],
  ['100 g olive', '100 g oils'],
  ['99 g olive', undefined],
  ['olive 60% coconut 40%', undefined],
  ['2 cups, 400 g olive 100 g coconut', '2 cups'],
  ['333.33 g olive and 100.11 g coconut', '433.4 g oils'],
  // 16 oz of 28.349523 g (NIST Handbook 44, appendix C).
  ['12 oz olive 4 oz coconut', '453.6 g oils'],
])('how much ultramarine for %s', (told, portion) => {
  expect(readQuestion(`how much ultramarine for ${told}`).facts.portion).toBe(portion);
});
