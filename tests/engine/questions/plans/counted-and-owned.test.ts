import { describe, expect, test } from 'vitest';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { colouredParts } from '../../../../src/engine/questions/plans/coloured-parts.ts';
import { enoughAsked } from '../../../../src/engine/questions/plans/enough-asked.ts';
import { amongNoColours, sharesAsked } from '../../../../src/engine/questions/plans/shares-asked.ts';

/* How makers share a batch among colours and weigh their jars (from memory of how they write); shares are arithmetic. */

const partsOf = (text: string) =>
  colouredParts(wordsOf(text))?.parts.map(({ text: name, share, owned }) => [
    name,
    Number(share.toFixed(3)),
    ...(owned === undefined ? [] : [owned]),
  ]);

describe('so many colours as are counted', () => {
  test('eight layers are an eighth each, and more are planned by hand', () => {
    const eight = partsOf('eight layers red orange yellow green blue purple white black, 900 ml');
    expect(eight?.map(([, share]) => share)).toEqual(Array(8).fill(0.125));
    expect(
      partsOf('red, orange, yellow, green, blue, purple, white, black and pink, 900 ml'),
    ).toBeUndefined();
  });

  test('colours without commas are as many as are counted', () => {
    expect(partsOf('two colours, 900 g: red white')).toEqual([
      ['red', 0.5],
      ['white', 0.5],
    ]);
    expect(partsOf('two colours, red white blue, 900 g')).toBeUndefined();
    expect(partsOf('one colour blue, 900 g batter')).toBeUndefined();
  });

  test('a colourant is no row of hues', () => {
    expect(partsOf('gold mica and white, 800 g batter')).toEqual([
      ['gold mica', 0.5],
      ['white', 0.5],
    ]);
  });

  test('how much “mostly” is nobody knows, and oils by name want their own plan', () => {
    expect(partsOf('mostly white and some blue, 900 g batter')).toBeUndefined();
    expect(partsOf('blue and white, 900 g olive oil')).toBeUndefined();
  });
});

describe('what is at hand', () => {
  test('gives the hue that it has', () => {
    expect(partsOf('blue and white, 900 g batter, I have ultramarine blue')).toEqual([
      ['blue', 0.5, 'ultramarine blue'],
      ['white', 0.5],
    ]);
  });

  test('for two hues at once it leaves the plan open', () => {
    expect(partsOf('blue and navy, 900 g batter, I have ultramarine blue')).toBeUndefined();
  });
});

const enough = (text: string) => enoughAsked(wordsOf(text));

describe('whether a jar is enough for a batch', () => {
  test.each([
    ['have 20 g of ultramarine blue, is it enough for 1 kg of oils', 'ultramarine blue', 20, 1000, 'oils'],
    ['is 1.5 kg of batter enough for 20 g blue mica', 'blue mica', 20, 1500, 'batter'],
    ['tengo 30 g de oxido rojo, me alcanza para 2 kg de masa', 'oxido rojo', 30, 2000, 'batter'],
    // From 100 g on it is a batch.
    ['20 g of blue mica, batch is 100 g, enough?', 'blue mica', 20, 100, 'batter'],
  ])('%s', (text, colourant, has, grams, of) => {
    expect(enough(text)).toEqual({ colourant, has, grams, of });
  });

  test.each([
    '20 g of blue mica, batch is 99 g, enough?',
    '20 g of blue mica and 10 g of red oxide, enough for 1 kg',
    '20 g blue mica enough for 2 cups',
    '20 g blue mica for 1 kg of batter',
    '20 g blue mica and 150 g lye, enough for 1 kg',
    '20 g of glitterdust, enough for 1 kg of batter',
  ])('nothing is weighed up in “%s”', text => {
    expect(enough(text)).toBeUndefined();
  });
});

describe('a pot that is shared', () => {
  test('is weighed from 100 g on', () => {
    expect(sharesAsked(wordsOf('70% white and 30% blue, 100 g of batter, how much of each'))).toEqual({
      grams: 100,
      of: 'batter',
      parts: 2,
      colours: ['titanium dioxide', 'ultramarine blue'],
      shares: [0.7, 0.3],
    });
    expect(sharesAsked(wordsOf('70% white and 30% blue, 99 g of batter, how much of each'))).toBeUndefined();
  });

  test('among a colour and what is none of them is told apart', () => {
    const among = (text: string) => amongNoColours(wordsOf(text));
    expect(among('equal parts: peppermint oil, cinnamon and charcoal')).toEqual({
      colourants: ['charcoal'],
      others: ['peppermint oil', 'cinnamon'],
    });
    expect(among('equal parts of charcoal and oats for 900 g of batter')?.whole).toBe('900 g batter');
    expect(among('equal parts of charcoal and red oxide')).toBeUndefined();
    // A fat in equal parts is a recipe, and beside a plain hue a strange word may be a hue.
    expect(among('equal parts of olive oil and charcoal')).toBeUndefined();
    expect(among('equal parts of white and blibble')).toBeUndefined();
  });
});
