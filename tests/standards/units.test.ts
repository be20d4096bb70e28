import { test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { parseAmount } from '../../src/engine/quantities/amount.ts';
import {
  celsius,
  fahrenheit,
  MEASURES,
  OUNCE_G,
  POUND_G,
  US_CUP_ML,
  US_TEASPOON_ML,
} from '../../src/engine/quantities/units.ts';

const INCH_CM = 2.54;

describe('NIST Handbook 44, Appendix C: the US gallon is 231 cubic inches, the inch 2.54 cm', () => {
  const gallon = 231 * INCH_CM ** 3;
  test('a cup is a sixteenth of a gallon, 236.5882365 ml', () => {
    expect(US_CUP_ML).toBe(236.5882365);
    expect(US_CUP_ML).toBeCloseTo(gallon / 16, 9);
  });
  test('a teaspoon is 1/768 of a gallon, 4.92892159375 ml', () => {
    expect(US_TEASPOON_ML).toBe(4.92892159375);
    expect(US_TEASPOON_ML).toBeCloseTo(gallon / 768, 9);
  });
  test.each([
    ['1 tsp', 768],
    ['1 Tbsp', 256],
    ['1 fl oz', 128],
    ['1 cup', 16],
    ['1 pint', 8],
    ['1 quart', 4],
    ['1 gallon', 1],
  ])('%s is 1/%d of a gallon', (text, parts) => {
    const amount = parseAmount(text);
    expect(amount.measure === 'volume' && amount.millilitres).toBeCloseTo(gallon / parts, 6);
  });
});

describe('international yard and pound agreement of 1959: the pound is 0.45359237 kg', () => {
  test('a pound and an ounce', () => {
    expect(POUND_G).toBe(453.59237);
    expect(OUNCE_G).toBe(28.349523125);
  });
});

describe('21 CFR 101.9(b)(5)(viii): a label teaspoon is 5 ml, tablespoon 15 ml, cup 240 ml', () => {
  test('the label kitchen', () => {
    expect(MEASURES.label).toMatchObject({ teaspoon: 5, tablespoon: 15, cup: 240 });
  });
});

describe('metric cup 250 ml (AS 1325-1972, from memory), imperial pint 568.26125 ml (Weights and Measures Act 1985, schedule 1)', () => {
  test('the metric kitchen and the imperial pint', () => {
    expect(MEASURES.metric.cup).toBe(250);
    const pint = parseAmount('1 imperial pint');
    expect(pint.measure === 'volume' && pint.millilitres).toBeCloseTo(568.26125, 9);
  });
});

describe('ITS-90 fixed points as printed in both scales: ice 0 C is 32 F, boiling 100 C is 212 F', () => {
  test.each([
    [0, 32],
    [100, 212],
    [-40, -40],
    [37, 98.6],
  ])('%d C is %d F', (c, f) => {
    expect(fahrenheit(c)).toBeCloseTo(f, 9);
    expect(celsius(f)).toBeCloseTo(c, 9);
  });
});
