import { expect, test } from 'vitest';
import { readWords } from '../../../src/engine/flaws/reading/read.ts';
import { signsIn } from '../../../src/engine/flaws/signs.ts';

/* What a maker means by it: common practice. */

const found = (words: string) =>
  Object.fromEntries(readWords(words).evidence.map(({ finding, probability }) => [finding, probability]));

test.each([
  'Se me partió arriba, a lo largo. Por qué',
  'se partió por arriba, qué pasó',
  'split open along the top',
])('a crack along the top is told in a few words: %s', words => {
  expect(signsIn(words)).toBeGreaterThan(0);
  expect(found(words)).toHaveProperty('crack-on-top');
});

test('a loaf that cannot be got out of its mould was not taken out too soon', () => {
  for (const words of [
    'van 4 días y no lo puedo sacar del molde',
    'four days on and still in the mould, soft',
  ])
    expect(
      readWords(words).evidence.find(({ finding }) => finding === 'unmoulded-soon')?.probability ?? 0,
    ).toBeLessThan(0.5);
});

test.each(['el morado se me hizo café de un día para otro', 'el azul se me volvió gris'])(
  'a hue that became another in lye is told by what it was and is: %s',
  words => expect(found(words)).toHaveProperty('colour-changed-in-lye'),
);
