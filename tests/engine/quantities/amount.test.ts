import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { type Amount, parseAmount } from '../../../src/engine/quantities/amount.ts';
import { plainText } from '../../../src/engine/quantities/number.ts';
import { parsePortion } from '../../../src/engine/quantities/told/portion.ts';
import { type Unit, unitSize } from '../../../src/engine/quantities/unit-words.ts';
import { MEASURES, US_CUP_ML } from '../../../src/engine/quantities/units.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { refused } from './refused.ts';

const millilitres = (text: string) => {
  const amount = parseAmount(text);
  return amount.measure === 'volume' ? amount.millilitres : Number.NaN;
};
const grams = (text: string) => {
  const amount = parseAmount(text);
  return amount.measure === 'mass' ? amount.grams : Number.NaN;
};

test('signs that look alike and spaces of any kind are one, and none stands at either end', () => {
  expect(plainText('\u00a01\u2044 2\u2009\u2212 cups ')).toBe('1/ 2 - cups');
});

describe('a count and a part of it', () => {
  test.each([
    ['2 y cuarto tazas', 2.25],
    ['2 y media tazas', 2.5],
    ['2 y 1/4 tazas', 2.25],
    ['1 and a quarter cups', 1.25],
    ['2 and a half cups', 2.5],
  ])('%s', (text, cups) => expect(millilitres(text) / US_CUP_ML).toBeCloseTo(cups, 9));

  // NIST Handbook 44, appendix C: a fluid ounce is 29.573 53 ml.
  test.each(['2 onzas líquidas', '2 liquid oz', '2 fl oz'])('%s are a volume', text =>
    expect(millilitres(text)).toBeCloseTo(59.14706, 4),
  );

  test('of a whole by nothing is refused', () => {
    expect(refused(() => parseAmount('1 1/0 cups'))).toBe('amount-unreadable');
  });
  test.each(['2 or a half cups', '2 or half cups'])('%s may be either, and is refused', text =>
    expect(refused(() => parseAmount(text))).toBe('amount-unit-unknown'),
  );
});

describe('a portion is read as makers write it', () => {
  test.each([
    ['2 cups', 2],
    ['2cups', 2],
    ['2c', 2],
    ['2 C', 2],
    ['1/2 cup', 0.5],
    ['1 1/2 cups', 1.5],
    ['1-1/2 cups', 1.5],
    ['1½ cups', 1.5],
    ['1 ½ cups', 1.5],
    ['½c', 0.5],
    ['⅔ cup', 2 / 3],
    ['1⁄2 cup', 0.5],
    ['3/2 cups', 1.5],
    ['.5 cup', 0.5],
    ['0,5 taza', 0.5],
    ['half a cup', 0.5],
    ['a cup', 1],
    ['a quarter cup', 0.25],
    ['one third of a cup', 1 / 3],
    ['dos tercios de taza', 2 / 3],
    ['an eighth of a cup', 0.125],
    ['two and a half cups', 2.5],
    ['three quarters of a cup', 0.75],
    ['media taza', 0.5],
    ['taza y media', 1.5],
    ['una taza y media', 1.5],
    ['un cuarto de taza', 0.25],
    ['tres cuartos de taza', 0.75],
    ['2 tazas', 2],
    ['２ cups', 2],
    ['8 fl oz', 1],
    ['8 fl. oz.', 1],
    ['8 onzas líquidas', 1],
    ['16 T', 1],
    ['16 cdas', 1],
    ['48 t', 1],
    ['48 cdtas.', 1],
    ['1 cup + 2 Tbsp', 1.125],
    ['1 cup and 2 tbsp', 1.125],
    ['1 pint', 2],
    ['1 quart', 4],
    ['1 gallon', 16],
    ['1.125 cups', 1.125],
  ])('%s', (text, cups) => {
    expect(millilitres(text)).toBeCloseTo(cups * US_CUP_ML, 6);
  });

  test.each([
    ['250ml', 250],
    ['250 ML', 250],
    ['0.25 L', 250],
    ['0,25 litros', 250],
    ['100 cc', 100],
    ['100 cm3', 100],
    ['2 dl', 200],
    ['1 metric cup', 250],
    ['1 taza métrica', 250],
    ['1 imperial pint', 568.26125],
    ['20 UK fl oz', 568.26125],
  ])('%s', (text, expected) => {
    expect(millilitres(text)).toBeCloseTo(expected, 6);
  });

  test.each([
    ['500 g', 500],
    ['500gramos', 500],
    ['1,5 kg', 1500],
    ['1 kilo', 1000],
    ['1 lb', 453.59237],
    ['1 lb 4 oz', 566.9904625],
    ['2 libras', 907.18474],
    ['16oz', 453.59237],
    ['1 000,5 g', 1000.5],
    ['1.000,5 g', 1000.5],
    ['1,000.5 g', 1000.5],
  ])('%s', (text, expected) => {
    expect(grams(text)).toBeCloseTo(expected, 6);
  });

  test('T is a tablespoon and t is a teaspoon', () => {
    expect(millilitres('1 T')).toBeCloseTo(3 * millilitres('1 t'), 9);
  });

  test('spoons and cups follow the kitchen, weights and litres do not', () => {
    expect(parseAmount('2 cups', MEASURES.metric)).toEqual({ measure: 'volume', millilitres: 500 });
    expect(parseAmount('1 tsp', MEASURES.label)).toEqual({ measure: 'volume', millilitres: 5 });
    expect(parseAmount('2 l', MEASURES.metric)).toEqual(parseAmount('2 l', MEASURES.us));
  });
});

describe('a portion may be counted by its oils', () => {
  test.each(['1 lb oils', '1 lb of oils', '1 lb. oil', '16 oz oils', '1 libra de aceites', '1 lb fats'])(
    '%s',
    text => {
      expect(parsePortion(text)).toEqual({ measure: 'mass', grams: 453.59237, of: 'oils' });
    },
  );
  test.each(['1 lb', '1 lb batter', '1 lb of raw batter', '1 libra de masa'])('%s is batter', text => {
    expect(parsePortion(text)).toEqual({ measure: 'mass', grams: 453.59237, of: 'batter' });
  });
});

describe('what cannot be meant is refused with its reason', () => {
  test.each([
    ['2', 'amount-without-unit'],
    ['500', 'amount-without-unit'],
    ['2 1/2', 'amount-without-unit'],
    ['2 bananas', 'amount-unit-unknown'],
    ['half a pail', 'amount-vessel'],
    ['una jarrita de masa', 'amount-vessel'],
    ['3 bowls', 'amount-vessel'],
    ['2 🧼', 'amount-unit-unknown'],
    ['🧼', 'amount-unreadable'],
    ['', 'amount-unreadable'],
    ['cups', 'amount-unreadable'],
    ['NaN ml', 'amount-unreadable'],
    ['Infinity cups', 'amount-unreadable'],
    ['1e3 g', 'amount-unreadable'],
    ['1.5.2 g', 'amount-unreadable'],
    ['1/0 cup', 'amount-unreadable'],
    ['1 cup 500 g', 'amount-unreadable'],
    ['1 cup - 2 Tbsp', 'amount-unreadable'],
    ['1-2 cups', 'amount-range'],
    ['0 cups', 'amount-out-of-range'],
    ['-2 cups', 'amount-out-of-range'],
    ['−2 cups', 'amount-out-of-range'],
    ['0.5 ml', 'amount-out-of-range'],
    ['201 l', 'amount-out-of-range'],
    ['201 kg', 'amount-out-of-range'],
    [`${'9'.repeat(80)} g`, 'amount-out-of-range'],
    ['1,500 oz', 'amount-ambiguous'],
    ['12.500 g', 'amount-ambiguous'],
  ])('%s: %s', (text, id) => {
    expect(refused(() => parsePortion(text))).toBe(id);
  });

  test('200 l is the most, and is allowed', () => {
    expect(parsePortion('200 l')).toEqual({ measure: 'volume', millilitres: 200_000, of: 'batter' });
  });

  test('a figure that could be thousands is settled by range when only one reading fits', () => {
    expect(grams('1.250 kg')).toBe(1250);
    expect(grams('1,250 kg')).toBe(1250);
  });

  test('of two readings the one that is too small for what is asked is none', () => {
    const within = (low: number, high: number) => parseAmount('1,500 g', MEASURES.us, { low, high });
    expect(within(2, 200_000)).toEqual({ measure: 'mass', grams: 1500 });
    expect(within(1.5, 1499)).toEqual({ measure: 'mass', grams: 1.5 });
    expect(refused(() => within(1.5, 1500))).toBe('amount-ambiguous');
  });

  test('a refusal quotes no more than a line of what was written', () => {
    try {
      parsePortion('👩‍🔬'.repeat(1000));
      expect.unreachable();
    } catch (problem) {
      expect(problem).toBeInstanceOf(Refusal);
      const { text } = (problem as Refusal<'amount-unreadable'>).values;
      expect([...new Intl.Segmenter().segment(text)].length).toBeLessThanOrEqual(40);
      expect(text).not.toContain('\uFFFD');
    }
  });
});

const sizeOf = (amount: Amount) => (amount.measure === 'volume' ? amount.millilitres : amount.grams);

describe('for any amount', () => {
  test.prop([
    fc.double({ min: 1, max: 190_000, noNaN: true }),
    fc.constantFrom<Unit>('cup', 'litre', 'fluid-ounce', 'quart'),
  ])('swapping the unit does not change the amount', (volume, unit) => {
    const { size } = unitSize(unit, MEASURES.us);
    const word = { cup: 'cups', litre: 'l', 'fluid-ounce': 'fl oz', quart: 'qt' }[unit as 'cup'];
    const written = (volume / size).toFixed(9);
    fc.pre(Number(written) > 0);
    expect(millilitres(`${written} ${word}`)).toBeCloseTo(volume, 2);
  });

  test.prop([fc.oneof(fc.string({ maxLength: 120 }), fc.string({ unit: 'grapheme', maxLength: 60 }))])(
    'any text at all is an amount in range or a refusal, never NaN and never a fault',
    text => {
      try {
        const size = sizeOf(parsePortion(text));
        expect(size).toBeGreaterThanOrEqual(1);
        expect(size).toBeLessThanOrEqual(200_000);
      } catch (problem) {
        expect(problem).toBeInstanceOf(Refusal);
      }
    },
  );

  const piece = fc.constantFrom(
    '1',
    '2',
    '1/2',
    '½',
    ',',
    '.',
    '-',
    '+',
    ' ',
    'cup',
    'T',
    't',
    'oz',
    'lb',
    'oils',
    'y media',
    'and',
    'de',
    '0',
    '1,500',
    '🧼',
  );
  test.prop([fc.array(piece, { maxLength: 14 })])('nor any jumble of its own words', pieces => {
    try {
      expect(Number.isFinite(sizeOf(parsePortion(pieces.join(' '))))).toBe(true);
    } catch (problem) {
      expect(problem).toBeInstanceOf(Refusal);
    }
  });

  test.prop([fc.constantFrom('1', '1 ', '½', '1/', ',', '1,', 'a ', 'cup ', '🧼', '-')])(
    'five thousand characters are refused unread',
    piece5 => {
      expect(refused(() => parsePortion(piece5.repeat(5000)))).toBe('amount-unreadable');
    },
  );
});
