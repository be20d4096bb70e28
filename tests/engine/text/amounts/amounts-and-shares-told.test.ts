import { describe, expect, test } from 'vitest';
import { parsePortions } from '../../../../src/engine/batch/portions/portion-list.ts';
import { placedLayers } from '../../../../src/engine/text/amounts/layers/placed-layers.ts';
import { toldAmount } from '../../../../src/engine/text/amounts/told-amount.ts';

/*
 * Amounts, shares and layers among words, as a careful reader takes them. A US cup is 236.588 ml, a fluid ounce 29.5735 ml, an ounce
 * 28.3495 g and a pound 453.592 g (NIST Handbook 44, appendix C); the rest is arithmetic.
 */

describe('one amount', () => {
  test.each([
    ['500 g of batter please', '500 g'],
    ['about 500 g I think', '500 g'],
    ['500 g of something', '500 g'],
    ['500 grams, US', '500 g'],
    ['I had 500 g and spilled 100 g', '400 g'],
    ['half of 500 g', '250 g'],
    ['la mitad de 500 g', '250 g'],
    ['a third of 900 g', '300 g'],
    ['between 400 and 500 g', 'between 400 and 500 g'],
    ['400-500 g of oils', '400-500 g oils'],
    ['500 g, sorry 600 g', '600 g'],
    ['500 g, I mean 600 g', '600 g'],
    ['1 lb, that is 454 g', '454 g'],
    ['1,5 kg de aceites', '1500 g oils'],
    ['1.050 g', '1050 g'],
    ['1.050 kg', '1050 g'],
    ['medio kilo de masa', '500 g'],
    ['kilo y medio de masa', '1500 g'],
    ['tres cuartos de kilo', '750 g'],
    ['2 cups, US cups', '473.18 ml'],
    ['16 fl oz', '473.18 ml'],
    ['16 oz of weight', '453.59 g'],
    ['a cup and a half', '354.88 ml'],
    ['one and a half cups', '354.88 ml'],
    ['2 and 1/4 lb', '1020.58 g'],
  ])('%s: %s', (text, amount) => {
    expect(toldAmount(text)).toBe(amount);
  });

  test.each([
    ['another is put right without a word', '500 g, no 600 g'],
    ['it may be of each', '500 g total, 250 g each'],
    ['it may be of each', '1 kg each, two of them'],
    ['nobody says which of two is left', 'I took 200 g out of 500 g'],
    ['an oil was left out', '500 g of oils, forgot the coconut'],
    ['no unit is told', '500 or so'],
    ['it is another country’s pint', '1 pint imperial'],
    ['it is of two things', '2 lb of oils and 4 oz of water'],
  ])('none where %s: %s', (_, text) => {
    expect(toldAmount(text)).toBeUndefined();
  });
});

/** Each colour with its share: percent, or parts. */
const shares = (text: string): string =>
  parsePortions(text)
    .map(({ colours, share }) => {
      const name = colours.map(({ text: colour }) => colour).join(' ');
      if (share.by === 'percent') return `${name} ${Math.round(10 * share.percent) / 10}%`;
      return share.by === 'parts' ? `${name} ${share.parts}` : `${name} ${share.by}`;
    })
    .join(', ');

describe('shares of a loaf', () => {
  test.each([
    ['50% white, 30% blue, 20% green', 'white 50%, blue 30%, green 20%'],
    ['half white, a quarter blue, rest green', 'white 50%, blue 25%, green rest'],
    ['half white, half blue', 'white 50%, blue 50%'],
    ['white, blue and green in equal parts', 'white 33.3%, blue 33.3%, green 33.3%'],
    ['a third each white, blue, green', 'white 1, blue 1, green 1'],
    ['two thirds white, one third blue', 'white 66.7%, blue 33.3%'],
    ['60% white and the rest split between blue and green', 'white 60%, blue 20%, green 20%'],
    ['1 part white, 2 parts blue', 'white 1, blue 2'],
    ['2 to 1 white and blue', 'white 2, blue 1'],
    ['2:1:1 white, blue, green', 'white 50%, blue 25%, green 25%'],
    ['80 white 20 blue', 'white 80%, blue 20%'],
    ['80/20 white blue', 'white 80%, blue 20%'],
    ['60-40 white blue', 'white 60%, blue 40%'],
    ['sixty white forty blue', 'white 60%, blue 40%'],
    ['80% blanco, el resto azul', 'blanco 80%, azul rest'],
    ['mitad blanco, mitad azul', 'blanco 50%, azul 50%'],
    ['la mitad blanco y lo demás azul y verde a partes iguales', 'blanco 50%, azul 25%, verde 25%'],
    ['un tercio azul, dos tercios blanco', 'azul 33.3%, blanco 66.7%'],
    ['500 g white, 300 g blue', 'white mass, blue mass'],
    ['500 g white and the rest blue', 'white mass, blue rest'],
    ['2 cups white, 1 cup blue', 'white volume, blue volume'],
    ['twice as much white as blue', 'white 2, blue 1'],
    ['white double the blue', 'white 2, blue 1'],
    ['el doble de blanco que de azul', 'blanco 2, azul 1'],
    ['white 70, blue 20, green 10', 'white 70%, blue 20%, green 10%'],
    ['white (70%), blue (30%)', 'white 70%, blue 30%'],
    ['white 60 percent, blue 40 percent', 'white 60%, blue 40%'],
    ['1/2 white, 1/4 blue, 1/4 green', 'white 50%, blue 25%, green 25%'],
    ['3/4 white 1/4 blue', 'white 75%, blue 25%'],
    ['quarter blue, quarter green, half white', 'blue 25%, green 25%, white 50%'],
    ['equal amounts of white and blue', 'white 50%, blue 50%'],
    ['white and blue', 'white 1, blue 1'],
    ['bottom third blue, rest white', 'blue 33.3%, white rest'],
    ['blue bottom half, white top half', 'blue 50%, white 50%'],
    ['capas de azul, blanco y verde', 'azul 1, blanco 1, verde 1'],
    ['three layers: blue, white, green', 'blue 1, white 1, green 1'],
    ['100% white', 'white 100%'],
  ])('%s: %s', (text, told) => {
    expect(shares(text)).toBe(told);
  });

  test('who tells no share is asked', () => {
    expect(() => parsePortions('mostly white with a bit of blue')).toThrow('portion-without-amount');
    expect(() => parsePortions('white')).toThrow('portion-without-amount');
  });

  test.each<readonly [string, readonly string[]]>([
    ['blue at the bottom, white on top', ['blue', 'white']],
    ['white on top, blue at the bottom', ['blue', 'white']],
    ['azul abajo, blanco arriba', ['azul', 'blanco']],
    ['blanco arriba, azul abajo', ['azul', 'blanco']],
    ['blue bottom, white middle, green top', ['blue', 'white', 'green']],
    ['first blue, then white, then green', ['blue', 'white', 'green']],
  ])('layers from the bottom up: %s', (text, layers) => {
    expect(placedLayers(text)).toEqual(layers);
  });
});
