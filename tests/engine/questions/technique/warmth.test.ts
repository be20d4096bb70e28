import { expect, test } from 'vitest';
import { warmthTold } from '../../../../src/engine/questions/technique/warmth.ts';

/* How warm batter is poured that is to be swirled: below 38 °C (100 °F), and over 46 °C (115 °F) it races. Common practice (no source). */

test.each([
  ['38', undefined],
  ['39', 'a-bit-warm'],
  ['46', 'a-bit-warm'],
  ['47', 'too-warm'],
  ['100 f', undefined],
  ['103 f', 'a-bit-warm'],
  ['117f', 'too-warm'],
])('batter of %s for a swirl is %s', (told, warmth) => {
  expect(warmthTold(told)).toBe(warmth);
});

test.each([
  // No batter is as hot in °C.
  ['poured at 90', undefined],
  ['poured at 110', 'a-bit-warm'],
  ['poured at 65', undefined],
  // Nor as cool in °F.
  ['poured at 64', 'too-warm'],
  ['poured at 40', 'a-bit-warm'],
])('a bare figure is °F from 65 on: “%s” is %s', (told, warmth) => {
  expect(warmthTold(told)).toBe(warmth);
});

test.each([
  ['the oils were at 70c', 'too-warm'],
  ['a 80 °c', 'too-warm'],
  ['at 88 f', undefined],
])('a unit is believed: “%s” is %s', (told, warmth) => {
  expect(warmthTold(told)).toBe(warmth);
});

test.each([
  ['stirred 45 min at 30', undefined],
  ['120 g of mica at 30', undefined],
  ['30 then 120 f', undefined],
  ['19 or so', undefined],
  ['an oven of 200 c', undefined],
])('minutes, grams and ovens are no warmth of batter: “%s”', (told, warmth) => {
  expect(warmthTold(told)).toBe(warmth);
});
