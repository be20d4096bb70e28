import { describe, expect, test } from 'vitest';
import { parseStrength, printStrength, splitStrength } from '../../../src/engine/quantities/strength.ts';
import { ofKindTold, tellsKind } from '../../../src/engine/quantities/told/kind-told.ts';
import { oilsTold } from '../../../src/engine/quantities/told/oils-told.ts';
import { parsePortion, parsePortionRange } from '../../../src/engine/quantities/told/portion.ts';
import { MEASURES } from '../../../src/engine/quantities/units.ts';
import { refused } from './refused.ts';

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
