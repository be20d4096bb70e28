import { describe, expect, test } from 'vitest';
import { parseSize } from '../../../../src/engine/batch/batch-size.ts';
import { parseOils } from '../../../../src/engine/batch/oils/lists/oil-list.ts';
import { parsePortions } from '../../../../src/engine/batch/portions/portion-list.ts';
import { parseAmount } from '../../../../src/engine/quantities/amount.ts';
import { figuresOf } from '../../../../src/engine/quantities/spoken/number-words.ts';
import { POUND_G, US_TEASPOON_ML } from '../../../../src/engine/quantities/units.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import { readPowder } from '../../../../src/engine/text/amounts/powders/powder-phrase.ts';
import { apart, colourNamed } from '../../../../src/engine/text/colours/colour-name.ts';

test.each([
  ['two hundred and fifty ml', '250 ml'],
  ['mil doscientos gramos', '1200 gramos'],
  ['treinta y cinco gramos', '35 gramos'],
  ['twenty-five grams', '25 grams'],
  ['doce jabones de cien gramos', '12 jabones de 100 gramos'],
  // Parts, articles and percents are no counts.
  ['two thirds of a cup', 'two thirds of a cup'],
  ['al 2 por ciento', 'al 2 por ciento'],
  ['once more', 'once more'],
  ['once barras', '11 barras'],
])('%s is %s', (spelt, figures) => expect(figuresOf(spelt)).toBe(figures));

test.each([
  ['un kilo doscientos', 1200],
  ['25% of 2 kg', 500],
  ['2000 g / 4', 500],
  ['dos libras de las de 500 gramos', 1000],
  ['three quarters of a pound', 0.75 * POUND_G],
])('%s is %d g', (text, grams) =>
  expect(parseAmount(text)).toMatchObject({ measure: 'mass', grams: expect.closeTo(grams, 3) }),
);

test('half of what may be 1,500 or 1.5 is asked, never guessed', () => {
  expect(() => parseAmount('half of 1,500 g')).toThrow(Refusal);
});

test.each([
  ['1 tsp per kilo of oils', US_TEASPOON_ML * 0.45359237],
  ['una cucharadita por cada medio kilo de aceite', (US_TEASPOON_ML * POUND_G) / 500],
  ['1 tsp ppo', US_TEASPOON_ML],
])('%s is told to the pound of oils', (text, millilitres) =>
  expect(readPowder(text)).toMatchObject({
    perPound: true,
    low: { millilitres: expect.closeTo(millilitres, 4) },
  }),
);
test('half an ounce of a colour is no dose to the ounce', () =>
  expect(readPowder('1/2 ounce of gold mica')).toMatchObject({ perPound: false, name: 'gold mica' }));

test.each([
  ['25 cm x 9 cm x 2 in', 25 * 9 * 5.08],
  ['25cm long 9cm wide 7cm high', 25 * 9 * 7],
])('%s is a mould of %d ml', (text, volume) => {
  const size = parseSize(text);
  if (size.by !== 'mould' || size.mould.shape !== 'loaf') throw new Error('no loaf');
  expect(size.mould.lengthCm * size.mould.widthCm * size.mould.heightCm).toBeCloseTo(volume, 3);
});

const shares = (text: string) =>
  parsePortions(text).map(({ share, colours }) => [
    colours.map(one => one.text).join(' '),
    share.by === 'percent' ? Math.round(share.percent) : share.by === 'parts' ? share.parts : share.by,
  ]);
describe('shares', () => {
  test.each([
    [
      'half white, other half split between blue and green',
      [
        ['white', 50],
        ['blue', 25],
        ['green', 25],
      ],
    ],
    [
      'white to blue 70:30',
      [
        ['white', 70],
        ['blue', 30],
      ],
    ],
    [
      'half white and a quarter each of blue and green',
      [
        ['white', 50],
        ['blue', 25],
        ['green', 25],
      ],
    ],
    [
      'blue on top, white on the bottom',
      [
        ['blue', 1],
        ['white', 1],
      ].reverse(),
    ],
    [
      '1/3 each white blue green',
      [
        ['white', 33],
        ['blue', 33],
        ['green', 33],
      ],
    ],
  ])('%s', (text, wanted) => expect(shares(text)).toEqual(wanted));
});

test('oils by ratio, and figures without a unit are asked', () => {
  expect(parseOils('50/30/20 olive coconut palm').shares.map(({ share }) => Math.round(share * 100))).toEqual(
    [50, 30, 20],
  );
  expect(parseOils('400 de oliva 300 de coco y 300 de palma todo en gramos').totalGrams).toBe(1000);
  expect(() => parseOils('500 de oliva, 300 de coco y 200 de palma')).toThrow(Refusal);
});

test.each([
  ['slime green', '#7fd61a'],
  ['prickly pear pink', '#c2185b'],
  ['somewhere between teal and navy', '#1d4f66'],
  ['cobre oxidado', '#6fa08b'],
  ['gorse', '#f2c318'],
])('%s is about %s', (text, hex) => expect(apart(colourNamed(text)!.hex, hex)).toBeLessThan(20));
