import { describe, expect, test } from 'vitest';
import { rescale } from '../../../../src/engine/batch/planning/rescale.ts';
import { parseRescale } from '../../../../src/engine/batch/planning/rescale-ask.ts';
import type { PlanRequest } from '../../../../src/engine/batch/request.ts';
import { US_CUP_ML } from '../../../../src/engine/quantities/units.ts';
import { refused } from '../../quantities/refused.ts';
import { asked } from '../asked.ts';

describe('how a recipe is to be rescaled', () => {
  test.each([
    ['2', 2],
    ['x3', 3],
    ['3x', 3],
    ['1/2', 0.5],
    ['3/4 times', 0.75],
    ['1.5 veces', 1.5],
    ['150%', 1.5],
    ['50 por ciento', 0.5],
  ])('%s is so many times', (text, factor) => expect(parseRescale(text)).toEqual({ by: 'factor', factor }));

  test.each([
    ['1500 g oils', { by: 'oils', grams: 1500 }],
    ['mould 25x9x7 cm', { by: 'mould', mould: { shape: 'loaf', lengthCm: 25, widthCm: 9, heightCm: 7 } }],
  ])('%s is a size', (text, size) => expect(parseRescale(text)).toEqual({ by: 'size', size }));

  test.each(['0', '1/0', '0%', 'bigger'])('%s is neither', text =>
    expect(refused(() => parseRescale(text))).toBe('factor-unreadable'),
  );
});

describe('a recipe three times as big', () => {
  const plan = { additives: 'honey 10 g, salt 2%', liquid: 'goat milk 50 g' };
  const request = asked({
    ...plan,
    oils: 'coconut 300 g, olive 700 g',
    size: '1000 g oils',
    portions:
      '1 cup ultramarine blue 2 g in 1 Tbsp olive; 200 g gold mica 1 tsp in glycerin; rest red iron oxide pastel',
  });
  // Worked out in each test: what is made while a file is loaded tells nothing of a change.
  const larger = () => rescale(request, 3);

  test('has three times every mass and volume of it', () => {
    expect(larger().oils.totalGrams).toBeCloseTo(3000, 9);
    expect(larger().size).toEqual({ by: 'oils', grams: 3000 });
    expect(larger().liquids.map(({ amount }) => amount)).toEqual([{ grams: 150 }]);
    const [cup, grams] = larger().portions;
    expect(cup!.share).toMatchObject({ by: 'volume', millilitres: 3 * US_CUP_ML });
    expect(grams!.share).toMatchObject({ by: 'mass', grams: 600 });
  });

  test('has three times the colour and the carrier that were told', () => {
    const [cup, grams] = larger().portions;
    expect(cup!.colours[0]!.asked.strength).toMatchObject({ by: 'amount', amount: { grams: 6 } });
    // A tablespoon of 14.79 ml, a teaspoon of a third of it: NIST Handbook 44, appendix C.
    expect(cup!.colours[0]!.carrier!.millilitres).toBeCloseTo(3 * 14.7868, 3);
    const teaspoons = grams!.colours[0]!.asked.strength;
    expect(
      teaspoons.by === 'amount' && 'millilitres' in teaspoons.amount && teaspoons.amount.millilitres,
    ).toBeCloseTo(14.7868, 3);
    expect(grams!.colours[0]!.carrier!.millilitres).toBeUndefined();
  });

  test('keeps its percents, its shares, its strengths and what is left', () => {
    expect(larger().oils.shares).toEqual(request.oils.shares);
    expect(larger().additives[1]).toEqual(request.additives[1]);
    expect(larger().additives[0]!.amount).toEqual({ grams: 30 });
    expect(larger().portions[2]).toEqual(request.portions[2]);
  });
});

const sized = (size: string): PlanRequest => asked({ oils: 'olive 100%', size });

describe('a mould', () => {
  test.each([
    ['mould 25x9x7 cm', 2, { shape: 'loaf', lengthCm: 50, widthCm: 9, heightCm: 7 }],
    ['12 x 100 ml', 2, { shape: 'cavities', count: 24, eachMillilitres: 100 }],
    ['5 x 100 ml', 0.5, { shape: 'cavities', count: 5, eachMillilitres: 50 }],
  ])('%s, %s times, grows in length or in number', (size, factor, mould) =>
    expect(rescale(sized(size), factor).size).toEqual({ by: 'mould', mould }),
  );
});

test.each([
  ['1.2 l batter', { by: 'batter-volume', millilitres: 600 }],
  ['900 g batter', { by: 'batter-mass', grams: 450 }],
])('half of %s is half of it', (size, half) => expect(rescale(sized(size), 0.5).size).toEqual(half));

test.each([100, 0.01])('%s times is still the same batch', factor =>
  expect(rescale(sized('1000 g oils'), factor).size).toEqual({ by: 'oils', grams: 1000 * factor }),
);
test.each([100.1, 0.0099])('%s times is another batch', factor =>
  expect(refused(() => rescale(sized('1000 g oils'), factor))).toBe('rescale-out-of-range'),
);
