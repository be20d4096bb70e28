import { expect, test } from 'vitest';
import { hasFigure, readAlone } from '../../../src/engine/quantities/number.ts';

test.each([
  ['5', 5],
  [' 5 % ', 5],
  ['-5%', -5],
  ['0,1 g', 0.1],
  ['.5', 0.5],
  ['1.500', 1.5],
  ['0', 0],
])('“%s” alone in a field is %d', (text, value) => {
  expect(readAlone(text)).toBe(value);
});

test.each(['', '-', '%', 'five', '5 or 6', '5 kg', '--5', '1e3'])('“%s” is no number', text => {
  expect(readAlone(text)).toBeUndefined();
});

test('a figure stands in a text where a digit does', () => {
  expect(hasFigure('1 tsp gold mica')).toBe(true);
  expect(hasFigure('half a tsp of gold mica')).toBe(false);
});
