import { describe, expect, test } from 'vitest';
import { chanceFrom } from '../../../src/engine/challenges/voting/chance.ts';

const times = <Thing>(count: number, draw: () => Thing): readonly Thing[] =>
  Array.from({ length: count }, () => draw());

// Worked out in another language from the published algorithms (RFC 9923; Steele, Lea and Flood 2014; Blackman and
// Vigna 2021): the first word of a pair gives the upper 21 of 53 bits, the second the lower 32.
describe('the draws of the seed “lavender”', () => {
  test('are these fractions', () => {
    const chance = chanceFrom('lavender');
    expect(times(4, () => chance.fraction())).toEqual([
      0.6981303526984162, 0.8346197076258556, 0.7386271088603473, 0.020639667627407876,
    ]);
  });

  test('are these throws of a die', () => {
    const chance = chanceFrom('lavender');
    expect(times(20, () => chance.below(6))).toEqual([
      4, 3, 2, 0, 4, 1, 3, 1, 0, 5, 4, 3, 5, 1, 2, 3, 0, 5, 5, 3,
    ]);
  });

  test('are all 53 bits where so many are asked for', () => {
    const chance = chanceFrom('lavender');
    expect(times(2, () => chance.below(2 ** 53))).toEqual([6288199192537240, 7517586008519751]);
  });

  test('are drawn again beyond the last whole multiple of the bound', () => {
    // 2^53 holds 2^52 + 1 once: of the first eight numbers five lie beyond.
    const chance = chanceFrom('lavender');
    expect(times(3, () => chance.below(2 ** 52 + 1))).toEqual([
      185905598871690, 2362559303034676, 1474126997277223,
    ]);
  });
});

test('where there is one choice it is taken', () => {
  const chance = chanceFrom('one');
  expect(times(3, () => chance.below(1))).toEqual([0, 0, 0]);
});
