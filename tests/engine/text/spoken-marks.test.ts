import { expect, test } from 'vitest';
import { withSpokenMarks } from '../../../src/engine/text/spoken-marks.ts';

/* Hands in gloves speak to the telephone, marks and all. */

test.each([
  [
    'sixteen ounces of tallow eight ounces of canola how much lye period thank you period',
    'sixteen ounces of tallow eight ounces of canola how much lye. thank you.',
  ],
  ['from the bottom up comma green comma brown comma tan', 'from the bottom up, green, brown, tan'],
  ['how much mica for two cups question mark', 'how much mica for two cups?'],
  ['cuatro capas coma rojo coma verde coma azul', 'cuatro capas, rojo, verde, azul'],
  ['oliva 500 gramos punto y aparte coco 200 gramos coma sosa', 'oliva 500 gramos. coco 200 gramos, sosa'],
])('“%s”', (spoken, written) => expect(withSpokenMarks(spoken)).toBe(written));

test.each([
  'what happens in the cure period',
  'a period of four weeks',
  'que no coma el perro',
  'Lye for 500 g olive, period.',
  'is it safe period? I think so',
  'dos tazas de masa con rosa coma',
  '',
])('of a sentence with its own marks, or a word that is meant, nothing is changed: “%s”', text =>
  expect(withSpokenMarks(text)).toBe(text),
);
