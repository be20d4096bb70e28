import { describe, expect, test } from 'vitest';
import { parseAmount } from '../../../src/engine/quantities/amount.ts';
import { parseColour } from '../../../src/engine/quantities/colour.ts';
import { parseStrength } from '../../../src/engine/quantities/strength.ts';
import { parsePortion, parsePortionRange } from '../../../src/engine/quantities/told/portion.ts';
import { parseStock } from '../../../src/engine/quantities/told/stock.ts';
import { MEASURES } from '../../../src/engine/quantities/units.ts';
import { Refusal } from '../../../src/engine/refusal.ts';

/** The id of a refusal with the values that its sentence quotes. */
function told(read: () => unknown): readonly [string, unknown] {
  try {
    return ['answered', read()];
  } catch (refusal) {
    if (refusal instanceof Refusal) return [refusal.id, refusal.values];
    throw refusal;
  }
}

describe('what an amount is refused for is quoted', () => {
  const most = { low: { value: 0.001, unit: 'g' }, high: { value: 200, unit: 'kg' } };
  test.each([
    ['5 zorks of blue', 'amount-unit-unknown', { unit: 'zorks blue' }],
    ['1 cup 500 g', 'amount-unreadable', { text: '1 cup 500 g' }],
    ['500 g, 600 g', 'amount-unreadable', { text: '500 g, 600 g' }],
    ['1 cup, 2 cups, 3 cups', 'amount-unreadable', { text: '1 cup, 2 cups, 3 cups' }],
    ['5 6', 'amount-unreadable', { text: '5 6' }],
    ['cups', 'amount-unreadable', { text: 'cups' }],
    ['720', 'amount-without-unit', { text: '720' }],
    ['201 kg', 'amount-out-of-range', { text: '201 kg', ...most }],
    ['-5 g', 'amount-out-of-range', { text: '-5 g', ...most }],
    ['0.0001 g', 'amount-out-of-range', { text: '0.0001 g', ...most }],
    ['1,500 ml', 'amount-ambiguous', { text: '1,500 ml', small: '1.5', large: '1500' }],
    ['1 1/2-2 cups', 'amount-range', { text: '1 1/2-2 cups', low: '1 1/2 cups', high: '2 cups' }],
  ])('%s', (text, id, values) => {
    expect(told(() => parseAmount(text))).toEqual([id, values]);
  });
  test('a bound under a thousand is told in grams or millilitres', () => {
    const bounds = { low: 1, high: 999 };
    expect(told(() => parseAmount('1 kg', MEASURES.us, bounds))[1]).toMatchObject({
      low: { value: 1, unit: 'g' },
      high: { value: 999, unit: 'g' },
    });
    expect(told(() => parseAmount('2 l', MEASURES.us, { low: 1, high: 1000 }))[1]).toMatchObject({
      low: { value: 1, unit: 'ml' },
      high: { value: 1, unit: 'l' },
    });
    expect(parseAmount('999 g', MEASURES.us, bounds)).toEqual({ measure: 'mass', grams: 999 });
    expect(parseAmount('1 g', MEASURES.us, bounds)).toEqual({ measure: 'mass', grams: 1 });
  });
  test('a portion by its strange words, or by the jug that nobody knows', () => {
    expect(told(() => parsePortion('500 g zork blue'))).toEqual([
      'amount-unit-unknown',
      { unit: 'zork blue' },
    ]);
    expect(told(() => parsePortion('two jugs'))).toEqual(['amount-vessel', { vessel: 'jugs' }]);
    expect(told(() => parsePortion('half a pail of batter'))).toEqual(['amount-vessel', { vessel: 'pail' }]);
  });
  test('a text is read up to a hundred signs, a colour up to sixty, a strength up to two hundred', () => {
    expect(told(() => parseAmount('500 g'.padStart(100)))[0]).toBe('answered');
    expect(told(() => parseAmount('500 g'.padStart(101)))[0]).toBe('amount-unreadable');
    expect(parseColour('red'.padEnd(60))).toBe('#ff0000');
    expect(told(() => parseColour('red'.padEnd(61)))[0]).toBe('colour-unreadable');
    expect(parseStrength(`${' '.repeat(194)}pastel`)).toEqual({ by: 'name', name: 'pastel' });
    expect(told(() => parseStrength(`${' '.repeat(200)}pastel`))[0]).toBe('strength-unreadable');
  });
  test('a jar from a milligram on', () => {
    expect(parseStock('0.001 g')).toEqual({ measure: 'mass', grams: 0.001 });
    expect(parseStock('1 mg')).toEqual({ measure: 'mass', grams: 0.001 });
    expect(told(() => parseStock('0.00099 g'))[0]).toBe('amount-out-of-range');
  });
});

const millilitres = (text: string) => {
  const amount = parseAmount(text);
  return amount.measure === 'volume' ? Math.round(amount.millilitres * 100) / 100 : Number.NaN;
};

// A US cup is 236.588 ml, a US fluid ounce 29.574, an imperial pint 568.261 (NIST Handbook 44, appendix C; 4546.09 ml a gallon).
describe('an amount in words', () => {
  test.each([
    ['half of a cup', 118.29],
    ['half of cup', 118.29],
    ['half a cup', 118.29],
    ['half cup', 118.29],
    ['un cuarto de un litro', 250],
    ['un cuarto de una taza', 59.15],
    ['medio litro', 500],
    ['2 y medio litros', 2500],
    ['taza y media', 354.88],
    ['1 and a half cups', 354.88],
    ['1 and a quarter cups', 295.74],
    ['2 imperial pints', 1136.52],
    ['1 pint imperial', 568.26],
    ['2 metric cups', 500],
    ['3 us cups', 709.76],
    ['3 cups us', 709.76],
    ['2 fluid oz', 59.15],
    ['a cup less a tablespoon', 221.8],
    ['1 cup plus a tablespoon', 251.38],
    ['250 ml, 1 cup', 250],
    ['1 cup, 250 ml', 250],
    ['1 cup 2 Tbsp', 266.16],
    ['1234/2 ml', 617],
  ])('%s', (text, volume) => {
    expect(millilitres(text)).toBe(volume);
  });
  test.each([
    '12345/2 cups',
    '1/12345 cups',
    '1/0 cups',
    '1 and b cups',
    'one and a cups',
    'half un cup',
    'media de una taza',
    'half a of cup',
    '1 metric gram',
    '2 imperial cups',
    '1.5.5 cups',
    '1 cup - 2 Tbsp g',
  ])('%s is none', text => {
    expect(told(() => parseAmount(text))[0]).toMatch(/^amount-un/u);
  });
});

describe('an amount among other words', () => {
  test.each([
    ['oil weight 720', { measure: 'mass', grams: 720, of: 'oils' }],
    ['oliva 400 coco 200', { measure: 'mass', grams: 600, of: 'oils' }],
    ['500 g zork blue', { measure: 'mass', grams: 500, of: 'batter' }],
  ])('%s', (text, low) => {
    expect(parsePortionRange(text)).toEqual({ low, about: false });
  });
  test('a bare figure of no oils has no unit', () => {
    for (const text of ['720', 'batter 720'])
      expect(told(() => parsePortionRange(text))[0]).toBe('amount-without-unit');
  });
});
