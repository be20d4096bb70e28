import { expect, test } from 'vitest';
import { wordInName } from '../../../../../src/engine/text/spelling/trade/in-names.ts';

test.each([
  ['spirul powder', 0, 'spirulina'],
  ['sunfl oil', 0, 'sunflower'],
  ['avoc oil', 0, 'avocado'],
  ['activ charcoal', 0, 'activated'],
  ['titanium diox', 1, 'dioxide'],
])('%s: a word that was only begun is the one that makes a name of its neighbour', (text, at, word) =>
  expect(wordInName(text.split(' '), at)).toEqual({ word }),
);

test('begun words that make names of different oils are contested or left alone', () => {
  expect(wordInName(['cocon', 'oil'], 0)).toEqual({ contested: true });
  expect(wordInName(['ultra', 'blue'], 0)).toBeUndefined();
});
