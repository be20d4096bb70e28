import { describe, expect, test } from 'vitest';
import { isOneFigureForOils } from '../../../../../src/engine/questions/lye/sums/one-figure.ts';
import { rateOfLye } from '../../../../../src/engine/questions/lye/sums/rate-told.ts';

/** Lye that a rate comes to, grams. */
const comesTo = (question: string) => {
  const rate = rateOfLye(question);
  return rate?.isOfOils ? rate.asked.weighed?.grams : rate && 'of no oils';
};

// Arithmetic: 160 g a kilogram are 80 g for 500 g, and 10 oz a pound for 2 lb are 20 oz, 567 g (an ounce is 28.35 g: NIST SP 811).
describe('lye told as a rate is reckoned for the oils that are weighed', () => {
  test.each([
    [
      '650 g olive + 350 g coconut. friend says 160g lye for any kilo of oils. is that ok for mine at 5%?',
      160,
    ],
    ['300 g olive, 200 g coconut, is 160 g lye per kilo right', 80],
    ['lye at 160 g per kilo of oils, mine is 300 g olive and 200 g coconut', 80],
    ['1 lb olive, 1 lb lard. 10 oz lye for every pound of fat, they say', 567],
    [
      'tengo 300 g de oliva y 200 g de coco. mi amiga dice 160 g de sosa por cada kilo de aceites, ¿vale?',
      80,
    ],
    ['250 g de oliva, 180 g de sosa por kilo, ¿está bien?', 45],
  ])('%s', (question, grams) => {
    expect(comesTo(question)).toBeCloseTo(grams, 0);
  });
  test('of potash as it was told', () => {
    const rate = rateOfLye('300 g olive and 200 g coconut, 200 g koh per kilo of oils ok?');
    expect(rate?.asked.weighed).toMatchObject({ alkali: 'KOH', grams: 100 });
  });
});

test.each([
  'my friend says 160 g lye for any kilo of oils, is that right',
  'mi tía dice 180 g de sosa por kilo, ¿es verdad?',
])('a rate beside no oils hangs on which they are: %s', question =>
  expect(comesTo(question)).toBe('of no oils'),
);

test.each([
  '140 g lye per kilo of olive, I have 500 g olive',
  '160 g lye per kilo. 300 g olive; some castor',
  'how much lye for a kilo of oils',
  '500 g olive, 68 g lye',
  '500 g olive, 200 g coconut, 30 g kaolin per kilo of oils, lye?',
])('no rate to any oil that could be reckoned: %s', question => expect(rateOfLye(question)).toBeUndefined());

describe('one figure of lye beside weighed oils is held against them', () => {
  test.each([
    '650 g olive and 350 g coconut. the book says 160 g lye',
    'la tabla dice 160 g de sosa, 650 g oliva y 350 g coco',
  ])('%s', question => expect(isOneFigureForOils(question)).toBe(true));
  test.each([
    '650 g olive and 350 g coconut. the book says 160 g lye and you say 144 g lye',
    'the book says 160 g lye',
    'my book gives 70 g, you say 64 g',
    '650 g olive and 350 g coconut, how much lye',
  ])('not %s', question => expect(isOneFigureForOils(question)).toBe(false));
});
