import { expect, test } from 'vitest';
import { excerpt } from '../../../src/engine/text/excerpt.ts';

test('forty letters are shown whole, more than that as thirty-nine and an ellipsis', () => {
  expect(excerpt('a'.repeat(40))).toBe('a'.repeat(40));
  expect(excerpt('a'.repeat(41))).toBe(`${'a'.repeat(39)}…`);
});

// Unicode Standard Annex 29: a base with its marks, and a family joined by U+200D, are one letter each to a reader.
test.each(['e\u0301', '👩‍👩‍👧'])('%s is one letter, and never cut in two', letter => {
  expect(excerpt(letter.repeat(40).slice(0, 160))).not.toMatch(/[\u200d\ud800-\udbff]…?$/u);
  expect(excerpt(letter.repeat(10))).toBe(letter.repeat(10));
});

test('what stands around it is left out', () => expect(excerpt('  olive \n')).toBe('olive'));
