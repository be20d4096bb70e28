import { describe, expect, test } from 'vitest';
import {
  kitchenFraction,
  printMixed,
  printNumber,
  readDecimal,
} from '../../../src/engine/quantities/number.ts';
import { practicalSpoons } from '../../../src/engine/quantities/spoons.ts';
import { parseStock, shownSlack, stockDecimals } from '../../../src/engine/quantities/told/stock.ts';
import { measuredBy } from '../../../src/engine/quantities/told-in-two-units.ts';
import { qualifiedUnit } from '../../../src/engine/quantities/unit-words.ts';
import { excerpt } from '../../../src/engine/text/excerpt.ts';

import { refused } from './refused.ts';

describe('how a number is printed', () => {
  test.each([
    [0, '0'],
    [1234.6, '1235'],
    [100, '100'],
    [99.96, '100'],
    [99.94, '99.9'],
    [12.34, '12.3'],
    [10, '10'],
    [9.876, '9.88'],
    [1, '1'],
    [0.999, '0.999'],
    [0.012345, '0.0123'],
    [-12.34, '-12.3'],
    [0.0000001234, '0.000000123'],
  ])('%s in three figures', (value, printed) => {
    expect(printNumber(value)).toBe(printed);
  });
  test.each([Number.NaN, Number.POSITIVE_INFINITY])('%s is none', value => {
    expect(() => printNumber(value)).toThrow(RangeError);
  });

  test.each([
    [0.125, '1/8'],
    [0.5, '1/2'],
    [1.5, '1 1/2'],
    [2.3333, '2 1/3'],
    [2.6667, '2 2/3'],
    [20.75, '20 3/4'],
    // Larger than any spoons are counted, and smaller than any spoon.
    [21.5, '21.5'],
    [0.09, '0.09'],
    [1.45, '1.45'],
    [3, '3'],
  ])('%s as kitchens write it', (value, printed) => {
    expect(printMixed(value)).toBe(printed);
  });
  test('a whole number has no part', () => {
    expect(kitchenFraction(2)).toBeUndefined();
    expect(kitchenFraction(1.5)).toEqual({ whole: 1, over: 1, under: 2 });
  });

  // BIPM SI Brochure 5.4.4: either mark is a decimal one, groups of three are parted by spaces.
  test.each([
    ['1500', [1500]],
    ['1 500', [1500]],
    ["1'500,5", [1500.5]],
    ['1,500', [1.5, 1500]],
    ['1.500', [1.5, 1500]],
    ['0,500', [0.5]],
    ['1,50', [1.5]],
    ['.5', [0.5]],
    ['1,234.5', [1234.5]],
    ['1.234,5', [1234.5]],
    ['1,234,567', [1_234_567]],
    ['1.234.567', [1_234_567]],
    ['1.2.3', []],
    ['a', []],
    ['', []],
  ])('%s may be %o', (text, readings) => {
    expect(readDecimal(text)).toEqual(readings);
  });
});

describe('of a member’s text as much as a sentence holds', () => {
  test.each([
    ['  blue  ', 'blue'],
    ['a'.repeat(40), 'a'.repeat(40)],
    ['a'.repeat(41), `${'a'.repeat(39)}…`],
    ['', ''],
    // A letter of many signs is one as readers see it, but not without end.
    ['👩‍🔬'.repeat(40), '👩‍🔬'.repeat(40)],
    ['👩‍🔬'.repeat(41), `${'👩‍🔬'.repeat(39)}…`],
    [`x${'\u0301'.repeat(300)}`, '…'],
    ['🧼'.repeat(40), '🧼'.repeat(40)],
  ])('%s', (text, seen) => {
    expect(excerpt(text)).toBe(seen);
  });
});

describe('a jar on the shelf', () => {
  // Scales for such jars step in a milligram, a hundredth or a tenth (common practice).
  test.each([
    [0.5, 3, 0.0005],
    [1, 2, 0.005],
    [99.9, 2, 0.005],
    [100, 1, 0.05],
  ])('of %s g is shown to %s decimals', (grams, decimals, slack) => {
    expect(stockDecimals(grams)).toBe(decimals);
    expect(shownSlack(grams)).toBeCloseTo(slack, 12);
  });

  test.each([
    ['25', { measure: 'mass', grams: 25 }],
    [' 25 ', { measure: 'mass', grams: 25 }],
    ['25 g', { measure: 'mass', grams: 25 }],
    ['0.001 g', { measure: 'mass', grams: 0.001 }],
    ['100 kg', { measure: 'mass', grams: 100_000 }],
    ['10 ml', { measure: 'volume', millilitres: 10 }],
    ['le puse 20 gramos, che', { measure: 'mass', grams: 20 }],
  ])('%s', (text, amount) => {
    expect(parseStock(text)).toEqual(amount);
  });
  test.each([
    ['101 kg', 'amount-out-of-range'],
    ['0', 'amount-out-of-range'],
    ['a lot', 'amount-unit-unknown'],
    [`I think that there may be ${'very '.repeat(20)}little of it, 20 gramos`, 'amount-unreadable'],
  ])('%s is refused', (text, id) => {
    expect(refused(() => parseStock(text))).toBe(id);
  });
});

describe('two amounts side by side', () => {
  const metric = (value: number) => ({ value, isMetric: true });
  const kitchen = (value: number) => ({ value, isMetric: false });
  test('are one where they are about the same, the metric one where a household’s measure may be larger', () => {
    expect(measuredBy(kitchen(454), metric(450))).toEqual(kitchen(454));
    expect(measuredBy(kitchen(237), metric(250))).toEqual(metric(250));
    expect(measuredBy(metric(250), kitchen(237))).toEqual(metric(250));
  });
  test('are two things where they are apart, or both of one kind', () => {
    expect(measuredBy(kitchen(237), metric(350))).toBeUndefined();
    expect(measuredBy(metric(237), metric(250))).toBeUndefined();
    expect(measuredBy(kitchen(237), kitchen(250))).toBeUndefined();
  });

  // A metric cup is 250 ml, an imperial pint 568.26 ml: the US has neither by these names.
  test.each([
    ['cup', 'metric', 'metric-cup'],
    ['pint', 'metric', undefined],
    ['teaspoon', 'metric', undefined],
    ['pint', 'imperial', 'imperial-pint'],
    ['fluid-ounce', 'imperial', 'imperial-fluid-ounce'],
    ['cup', 'imperial', undefined],
    ['gram', 'imperial', undefined],
  ] as const)('a %s that is %s', (unit, qualifier, named) => {
    expect(qualifiedUnit(unit, qualifier)).toBe(named);
  });
});

// A level spoon repeats to about a tenth (common practice): what lies farther off is offered as a paste too.
describe('a dose in spoons', () => {
  test.each([
    [0.75, ['1/2 tsp', '1/4 tsp'], false],
    [1 / 32, ['1/32 tsp'], false],
    [0.035, ['1/32 tsp'], true],
    [1 / 64, [], true],
    [3, ['1 Tbsp'], false],
  ] as const)('%s tsp', (dose, spoons, isPaste) => {
    const measured = practicalSpoons(dose);
    expect(measured.spoons.map(({ spoon }) => spoon)).toEqual(spoons);
    expect(measured.paste !== undefined).toBe(isPaste);
    expect(measured.off).toBeCloseTo((measured.teaspoons - dose) / dose, 6);
  });
  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s tsp is none', dose => {
    expect(() => practicalSpoons(dose)).toThrow(RangeError);
  });
  test('never more than may be taken', () => {
    const measured = practicalSpoons(0.99, 0.95);
    expect(measured.teaspoons).toBeLessThanOrEqual(0.95);
    expect(practicalSpoons(0.5, 0.01).spoons).toEqual([]);
  });
});
