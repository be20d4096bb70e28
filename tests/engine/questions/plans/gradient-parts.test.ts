import { expect, test } from 'vitest';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { colouredParts } from '../../../../src/engine/questions/plans/coloured-parts.ts';
import { gradientParts } from '../../../../src/engine/questions/plans/gradient-parts.ts';

const told = (text: string) => gradientParts(wordsOf(text));

test.each([
  ['three greens light to dark in 900 g', 'green', ['pastel', 'medium', 'full']],
  [
    'un degradé de verde, oscuro abajo, mediano, y clarito arriba, en 1800 ml',
    'verde',
    ['full', 'medium', 'pastel'],
  ],
  ['blue ombre, 4 layers, 2 kg of oils', 'blue', ['full', 'medium', 'pastel', 'tint']],
  ['degradado de azul en dos capas, 1 kg de masa', 'azul', ['full', 'pastel']],
] as const)('%s: one colourant, weaker from part to part', (text, hue, strengths) => {
  const parts = told(text)?.parts ?? [];
  expect(parts.map(({ strength }) => strength)).toEqual(strengths);
  expect(parts.every(part => part.text === hue)).toBe(true);
  expect(parts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1);
});

test('a powder that is named is the one that is made weaker', () => {
  expect(told('ombre of ultramarine blue in 900 g batter')?.parts[0]).toMatchObject({
    text: 'ultramarine blue',
    isThing: true,
    strength: 'full',
  });
});

test.each([
  'three greens in 900 g',
  'ombre from red to blue in 900 g',
  'blue gradient, how do I pour it',
  'blue gradient in 900 g, how much lye',
])('no gradient of one hue whose size is told: %s', text => {
  expect(told(text)).toBeUndefined();
});

test.each([
  ['jabón rojo, blanco y azul, 3 kg de aceites', 3],
  ['a red, white and blue soap, 3 kg of oils', 3],
])('the first or last of a list of colours beside the word soap is one of them: %s', (text, count) => {
  expect(colouredParts(wordsOf(text))?.parts).toHaveLength(count);
});
