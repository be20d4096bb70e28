import { expect, test } from 'vitest';
import { amountAlone } from '../../../../src/engine/text/amounts/amount-alone.ts';

// Arithmetic.
test.each([
  ['200 g olive plus 300 g coconut', '500 g oils'],
  ['200 g olive plus 300 g coconut is 500 g', '500 g oils'],
])('%s is %s', (text, sum) => {
  expect(amountAlone(text)).toBe(sum);
});

test.each([
  ['a sum that is another', '200 g olive plus 300 g coconut is 600 g'],
  ['nothing of the first', '0 g olive plus 300 g coconut'],
  ['nothing of the second', '300 g olive plus 0 g coconut'],
])('%s is left as it stands', (_, text) => {
  expect(amountAlone(text) ?? text).toBe(text);
});
