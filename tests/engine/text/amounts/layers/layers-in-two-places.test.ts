import { describe, expect, test } from 'vitest';
import { parsePortions } from '../../../../../src/engine/batch/portions/portion-list.ts';

const read = (text: string) =>
  parsePortions(text).map(({ share, colours }) => [
    share.by === 'percent' ? share.percent : share.by === 'parts' ? share.parts : share.by,
    colours.map(colour => colour.text).join('+'),
  ]);

describe('a colour may lie at the bottom and on top', () => {
  test.each([
    'white at the bottom and top, red between',
    'white at the botom and top, red between',
    'white top and bottom, red in the middle',
    'red in the middle, white top & bottom',
  ])('“%s”', text => {
    expect(read(text)).toEqual([
      [1, 'white'],
      [1, 'red'],
      [1, 'white'],
    ]);
  });

  test('in Spanish “entre medio” is a place, and no half', () => {
    expect(read('abajo y arriba blanco, rojo entre medio')).toEqual([
      [1, 'blanco'],
      [1, 'rojo'],
      [1, 'blanco'],
    ]);
  });
});

test.each([
  ['mitad blanco y lo otro a partes iguales rojo y negro', [50, 25, 25]],
  ['half white, the rest in equal parts red and black', [50, 25, 25]],
])('“%s”: equal parts are no part of their own', (text, shares) => {
  expect(read(text).map(([share]) => share)).toEqual(shares);
});
