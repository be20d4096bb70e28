import { expect, test } from 'vitest';
import { wrongShares } from '../../../sets/wrong-shares.ts';

test.each([
  ['2 parts green 1 yellow', { green: 2 / 3, yellow: 1 / 3 }],
  ['3 partes de celeste 1 de naranja', { celeste: 3 / 4, naranja: 1 / 4 }],
  ['1 part white 2 parts blue 3 parts black', { white: 1 / 6, blue: 1 / 3, black: 1 / 2 }],
])('parts need no word between them: %s', (text, shares) => {
  expect(wrongShares(text, shares)).toBeUndefined();
});
