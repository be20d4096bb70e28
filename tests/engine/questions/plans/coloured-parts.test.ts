import { describe, expect, test } from 'vitest';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { colouredParts } from '../../../../src/engine/questions/plans/coloured-parts.ts';

/* How makers tell a batch of several colours before they tell its oils (from memory of how they write). */

const sharesOf = (text: string) =>
  colouredParts(wordsOf(text))?.parts.map(({ text: name, share }) => `${name} ${Math.round(share * 100)}`);

describe('the coloured parts of a batch whose oils are not told', () => {
  test.each<readonly [string, readonly string[] | undefined]>([
    [
      'rainbow loaf, six equal layers red orange yellow green blue purple, 1200 ml',
      ['red 17', 'orange 17', 'yellow 17', 'green 17', 'blue 17', 'purple 17'],
    ],
    ['coral and mint in equal parts, 3 kg of oils', ['coral 50', 'mint 50']],
    ['1 kg batter: half navy, 30% white, rest gold mica', ['navy 50', 'white 30', 'gold mica 20']],
    ['lote de 900 g de masa en rojo, blanco y verde', ['rojo 33', 'blanco 33', 'verde 33']],
    ['800 g de masa: blanquito, negras y verdes', ['blanco 33', 'negra 33', 'verde 33']],
    // A touch is a twentieth of the whole (common practice): it is taken off what the others share.
    [
      'molde de 2 litros, mitad negro mitad cobre y encima tantito dorado',
      ['negro 48', 'cobre 48', 'dorado 5'],
    ],
    ['white with a hint of blue, 1 kg of batter', ['white 95', 'blue 5']],
    ['verde, blanco y colorado, parejos, 1500 g de masa', ['verde 33', 'blanco 33', 'colorado 33']],
    [
      '900 g batter: half #1f3a5f, a quarter plain white, a quarter #c9a227. navy and gold',
      ['#1f3a5f 50', 'white 25', '#c9a227 25'],
    ],
    // Four are counted and three are named.
    ['four colours, 900 g of batter: red, white and green', undefined],
    // How much a dot takes nobody tells.
    ['900 g de masa, base roja y lunares blancos', undefined],
    ['a watermelon loaf: red, white and green, 800 g batter', ['red 33', 'white 33', 'green 33']],
    ['red, white and green', undefined],
    ['three equal layers: red, white, hair dye blue, 900 ml of batter', undefined],
    ['tres capas iguales: rojo, blanco y azul de tinte para el pelo, 900 ml', undefined],
    ['red and white, 900 g olive oil and lye for it', undefined],
    ['all of it blue, 900 g of batter', undefined],
  ])('%s', (text, parts) => {
    expect(sharesOf(text)).toEqual(parts);
  });

  test('the whole is told as it was: oils, batter or a volume', () => {
    expect(colouredParts(wordsOf('blue and white, 1200 ml'))?.whole).toMatchObject({ millilitres: 1200 });
    expect(colouredParts(wordsOf('blue and white, 900 g of oils'))?.whole).toMatchObject({
      grams: 900,
      of: 'oils',
    });
    expect(colouredParts(wordsOf('blue and white, 900 g of batter'))?.whole).toMatchObject({
      grams: 900,
      of: 'batter',
    });
  });

  test('shares that are alike are none that were told', () => {
    expect(colouredParts(wordsOf('blue and white, 900 g of batter'))?.isTold).toBe(false);
    expect(colouredParts(wordsOf('half blue and half white, 900 g of batter'))?.isTold).toBe(false);
    expect(colouredParts(wordsOf('70% blue and 30% white, 900 g of batter'))?.isTold).toBe(true);
  });

  test('what is at hand gives its hue, and what gives none leaves the plan open', () => {
    const own = (text: string) =>
      colouredParts(wordsOf(text))?.parts.map(({ text: name, owned }) => [name, owned]);
    expect(own('900 g of batter, white and blue, I have titanium dioxide and ultramarine blue')).toEqual([
      ['white', 'titanium dioxide'],
      ['blue', 'ultramarine blue'],
    ]);
    expect(
      own('900 g of batter, white and red, I have titanium dioxide and chromium oxide green'),
    ).toBeUndefined();
  });
});
