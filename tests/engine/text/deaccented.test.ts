import { expect, test } from 'vitest';
import { deaccented, unaccented } from '../../../src/engine/text/unaccented.ts';

test('an accent goes, and a fraction stays the one character that it was typed as', () => {
  expect(deaccented('½ cdta de ÓXIDO, 2 m²')).toBe('½ cdta de oxido, 2 m²');
});
// One half and eleven halves are apart by the space: “1½ kg” of oils takes 1.5 kg’s lye.
test('words that are compared have a fraction as a plain keyboard writes it, apart from the whole before it', () => {
  expect(unaccented('½ cdta de ÓXIDO')).toBe('1/2 cdta de oxido');
  expect(unaccented('1½ kg, 2 ¾ lb, 3⅓ oz')).toBe('1 1/2 kg, 2 3/4 lb, 3 1/3 oz');
});
