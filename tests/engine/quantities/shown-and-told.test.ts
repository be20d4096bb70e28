import { describe, expect, test } from 'vitest';
import { printAmount } from '../../../src/engine/quantities/amount.ts';
import { excerpt } from '../../../src/engine/quantities/excerpt.ts';
import { ofKindTold, tellsKind } from '../../../src/engine/quantities/kind-told.ts';
import {
  kitchenFraction,
  printMixed,
  printNumber,
  readDecimal,
} from '../../../src/engine/quantities/number.ts';
import { oilsTold } from '../../../src/engine/quantities/oils-told.ts';
import { parsePortion, parsePortionRange } from '../../../src/engine/quantities/portion.ts';
import { practicalSpoons } from '../../../src/engine/quantities/spoons.ts';
import { parseStock, shownSlack, stockDecimals } from '../../../src/engine/quantities/stock.ts';
import { parseStrength, printStrength, splitStrength } from '../../../src/engine/quantities/strength.ts';
import { measuredBy } from '../../../src/engine/quantities/told-in-two-units.ts';
import { qualifiedUnit } from '../../../src/engine/quantities/unit-words.ts';
import { MEASURES } from '../../../src/engine/quantities/units.ts';
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

  test.each([
    ['teaspoon', MEASURES.us.teaspoon * 1.5, '1 1/2 tsp'],
    ['tablespoon', MEASURES.us.tablespoon * 0.5, '1/2 Tbsp'],
    ['cup', MEASURES.us.cup * 2.25, '2 1/4 cup'],
    // No kitchen counts millilitres or pints by thirds.
    ['millilitre', 0.3333, '0.333 ml'],
    ['pint', MEASURES.us.cup * 3, '1.5 pint'],
  ] as const)('of %s', (unit, millilitres, printed) => {
    expect(printAmount({ measure: 'volume', millilitres }, unit)).toBe(printed);
  });
  test('a mass has no cups', () => {
    expect(() => printAmount({ measure: 'mass', grams: 5 }, 'cup')).toThrow(RangeError);
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

describe('what a weight is of', () => {
  const kind = (text: string, of: 'batter' | 'oils' = 'batter') =>
    ofKindTold({ measure: 'mass', grams: 700, of }, text).of;
  test.each([
    ['700 g, that is just the oils', 'oils'],
    ['700 g counting the lard', 'oils'],
    ['700 g de oliva', 'oils'],
    ['700 g', 'batter'],
    ['700 g of batter from 500 g oils', 'batter'],
    ['700 g, batter not oils', 'batter'],
    ['700 g, not the oils', 'batter'],
    ['700 g of gravel', 'batter'],
  ])('%s: %s', (text, of) => {
    expect(kind(text)).toBe(of);
  });
  test('what was read as oils stays so, but where it says that it is none', () => {
    expect(kind('700 g', 'oils')).toBe('oils');
    expect(kind('700 g of soap', 'oils')).toBe('oils');
    expect(kind('700 g, batter, not oils', 'oils')).toBe('batter');
    expect(kind('700 g, not oils', 'oils')).toBe('batter');
    // "Without oils" beside a list of oils says nothing.
    expect(kind('700 g de oliva, sin grasas', 'oils')).toBe('oils');
  });
  test('a volume stays what it is', () => {
    const cup = { measure: 'volume', millilitres: 240, of: 'batter' } as const;
    expect(ofKindTold(cup, 'one cup of oils')).toBe(cup);
  });
  test.each([
    ['700 g of batter', true],
    ['700 g oils', true],
    ['700 g, not oils', true],
    ['700 g de oliva', true],
    ['700 g', false],
    ['700 g in the red cup', false],
  ])('%s tells it: %s', (text, tells) => {
    expect(tellsKind(text)).toBe(tells);
  });

  test.each([
    ['400 g de oliva y 200 g de coco', '600 g oils'],
    ['400 de oliva y 200 de coco en gramos, o sea 600', '600 g oils'],
    ['400 g olive and 200 g coconut, so 606 in all', '600 g oils'],
    ['400 g olive and 200 g coconut, so 650 in all', undefined],
    ['400 g olive and 200 g coconut, so whatever that comes to', '600 g oils'],
    ['400 g olive', undefined],
    ['400 g olive, 200 g gravel', undefined],
    ['60% olive 40% coconut', undefined],
    [`400 g olive and 200 g coconut${' '.repeat(200)}`, undefined],
  ])('a list of oils comes to what it comes to: %s', (text, told) => {
    expect(oilsTold(text)).toBe(told);
  });
});

describe('a portion', () => {
  test.each([
    ['500 g', { measure: 'mass', grams: 500, of: 'batter' }],
    ['500 g oils', { measure: 'mass', grams: 500, of: 'oils' }],
    ['500 g of white batter', { measure: 'mass', grams: 500, of: 'batter' }],
    ['500 g of my oils', { measure: 'mass', grams: 500, of: 'oils' }],
    ['250 ml pot of batter', { measure: 'volume', millilitres: 250, of: 'batter' }],
    ['1 ml', { measure: 'volume', millilitres: 1, of: 'batter' }],
    ['200 kg', { measure: 'mass', grams: 200_000, of: 'batter' }],
  ])('%s', (text, portion) => {
    expect(parsePortion(text)).toEqual(portion);
    expect(parsePortionRange(text)).toEqual({ low: portion, about: false });
  });
  test.each([
    ['500 g white', 'amount-unit-unknown'],
    ['500 g my', 'amount-unit-unknown'],
    ['half a pail', 'amount-vessel'],
    ['0.5 ml', 'amount-out-of-range'],
    ['201 kg', 'amount-out-of-range'],
    ['500', 'amount-without-unit'],
    ['500 zorks', 'amount-unit-unknown'],
  ])('%s is refused', (text, id) => {
    expect(refused(() => parsePortion(text))).toBe(id);
  });
  test.each([
    ['2-3 cups', 2, 3, false],
    ['about 2-3 cups', 2, 3, true],
  ])('%s has two ends', (text, low, high, about) => {
    const range = parsePortionRange(text);
    const cups = (portion: (typeof range)['low'] | undefined) =>
      portion?.measure === 'volume' && portion.millilitres / MEASURES.us.cup;
    expect(cups(range.low)).toBeCloseTo(low, 9);
    expect(cups(range.high)).toBeCloseTo(high, 9);
    expect(range.about).toBe(about);
  });
  test.each([
    ['615 g with the jug', 'amount-gross'],
    ['700 gramos con la jarra y todo', 'amount-gross'],
    ['615 g with the jug, the jug is 200 g', 'answered'],
  ])('%s: %s', (text, id) => {
    const got = refused(() => parsePortionRange(text));
    expect(id === 'answered' ? got !== 'amount-gross' : got === id).toBe(true);
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

describe('a strength', () => {
  test.each([
    ['pastel', { by: 'name', name: 'pastel' }],
    ['a medium tono', { by: 'name', name: 'medium' }],
    ['double', { by: 'share', ofFull: 2 }],
    ['very pale', { by: 'share', ofFull: 1 / 8 }],
    ['25% of full', { by: 'share', ofFull: 0.25 }],
    ['0.5%', { by: 'percent-of-oils', percent: 0.5 }],
    ['2 % del aceite', { by: 'percent-of-oils', percent: 2 }],
    ['6%', { by: 'percent-of-oils', percent: 6 }],
    ['1/4 tsp per cup', { by: 'cup', tspPerCup: 0.25 }],
    ['  1/4 tsp per cup  ', { by: 'cup', tspPerCup: 0.25 }],
    ['1 Tbsp/cup', { by: 'cup', tspPerCup: 3 }],
    ['0.5', { by: 'cup', tspPerCup: 0.5 }],
    ['1 tsp ppo', { by: 'pound-of-oils', tspPerPound: 1 }],
    ['  1 tsp ppo  ', { by: 'pound-of-oils', tspPerPound: 1 }],
    ['1 tsp per pound of oils', { by: 'pound-of-oils', tspPerPound: 1 }],
    ['48 tsp per cup', { by: 'cup', tspPerCup: 48 }],
    ['1000% of full', { by: 'share', ofFull: 10 }],
  ])('%s', (text, strength) => {
    expect(parseStrength(text)).toEqual(strength);
  });
  test.each([
    ['6.1%', 'strength-percent-large'],
    ['49 tsp per cup', 'strength-out-of-range'],
    ['-1 tsp per cup', 'strength-out-of-range'],
    ['1100% of full', 'strength-out-of-range'],
    ['0%', 'strength-out-of-range'],
    ['1 cup per cup', 'strength-unreadable'],
    ['1 tsp per cup per cup', 'strength-unreadable'],
    ['1 tsp per cup ppo', 'strength-unreadable'],
    ['1 tsp per bar', 'strength-unreadable'],
    ['green', 'strength-unreadable'],
  ])('%s is refused', (text, id) => {
    expect(refused(() => parseStrength(text))).toBe(id);
  });
  test.each([
    ['gold mica pastel', 'gold mica', 'pastel'],
    ['  gold mica   pastel ', 'gold mica', 'pastel'],
    ['pastel', 'pastel', undefined],
    ['verde oscuro', 'verde oscuro', undefined],
    ['mica verde oscuro', 'mica verde', 'full'],
    ['gold mica', 'gold mica', undefined],
  ])('stands last in %s', (text, rest, name) => {
    expect(splitStrength(text)).toEqual({ rest, ...(name && { strength: { by: 'name', name } }) });
  });
  test('is printed as it is read', () => {
    for (const text of ['pastel', '25% of full', '0.5% of oils', '1 1/2 tsp/cup', '1/4 tsp/lb oils'])
      expect(printStrength(parseStrength(text))).toBe(text);
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
