import { expect, test } from 'vitest';
import { deaccented, unaccented } from '../../../src/engine/text/unaccented.ts';

test('an accent goes, and a fraction stays the one character that it was typed as', () => {
  expect(deaccented('½ cdta de ÓXIDO, 2 m²')).toBe('½ cdta de oxido, 2 m²');
  expect(unaccented('½ cdta de ÓXIDO')).toBe('1⁄2 cdta de oxido');
});
