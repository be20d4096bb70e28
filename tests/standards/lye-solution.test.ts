import { describe, expect, test } from 'vitest';
import {
  dilutionRise,
  iceCooling,
  interpolate,
  lyeMixingRise,
  lyeSolutionDensity,
  neutralisingRise,
} from '../../src/engine/batch/lye/lye-solution.ts';
import { waterGrams, waterWays } from '../../src/engine/batch/lye/water.ts';

/** Grams of one mole (CIAAW atomic weights). */
const NAOH = 39.997;
const KOH = 56.105;
const WATER = 18.015;
/** J/(g K) of a 25 to 35 % solution (Perry's Chemical Engineers' Handbook, from memory). */
const HEAT_CAPACITY = 3.5;

describe('heat of dissolving (Felder and Rousseau, Elementary Principles of Chemical Processes, Table B.11)', () => {
  test.for([
    [3, 28.87],
    [4, 34.43],
    [5, 37.74],
    [10, 42.51],
    [20, 42.84],
    // Half-way between two rows, and beyond both ends of the table.
    [7.5, (37.74 + 42.51) / 2],
    [2, 28.87],
    [50, 42.84],
  ] as const)('a mole of sodium hydroxide in %d moles of water gives off %d kJ', ([moles, kilojoules]) => {
    const water = moles * WATER;
    expect(lyeMixingRise(NAOH, 0, water)).toBeCloseTo(
      (1000 * kilojoules) / ((NAOH + water) * HEAT_CAPACITY),
      1,
    );
  });

  test('half a mole in as many moles of water warms it as far as a whole one: 55.2 K at ten of water', () => {
    expect(lyeMixingRise(NAOH, 0, 10 * WATER)).toBeCloseTo(55.2, 1);
    expect(lyeMixingRise(NAOH / 2, 0, 5 * WATER)).toBeCloseTo(55.2, 1);
  });

  test('a mole of potassium hydroxide gives 55 kJ (CRC Handbook: 57.6 at infinite dilution)', () => {
    expect(lyeMixingRise(0, KOH, 10 * WATER)).toBeCloseTo(55_000 / ((KOH + 10 * WATER) * HEAT_CAPACITY), 1);
  });

  test('of both, each gives its own', () => {
    const kilojoules = 42.51 + 55;
    const grams = NAOH + KOH + 20 * WATER;
    expect(lyeMixingRise(NAOH, KOH, 20 * WATER)).toBeCloseTo(
      (1000 * kilojoules) / (grams * HEAT_CAPACITY),
      1,
    );
  });

  test('nothing dissolved warms nothing', () => {
    expect(lyeMixingRise(0, 0, 100)).toBe(0);
    expect(dilutionRise(0, { waterBefore: 100, waterAfter: 200 })).toBe(0);
  });

  test('thinning a mole from three of water to ten gives the difference, 13.64 kJ', () => {
    const rise = dilutionRise(NAOH, { waterBefore: 3 * WATER, waterAfter: 10 * WATER });
    expect(rise).toBeCloseTo(13_640 / ((NAOH + 10 * WATER) * HEAT_CAPACITY), 1);
    const half = dilutionRise(NAOH / 2, { waterBefore: 1.5 * WATER, waterAfter: 5 * WATER });
    expect(half).toBeCloseTo(rise, 9);
  });

  test('a mole of strong acid gives the lye that takes it 55.8 to 57.3 kJ (CRC Handbook): 15.9 to 16.4 K in 1 kg', () => {
    const rise = neutralisingRise(1, 1000);
    expect(rise).toBeGreaterThan(55_800 / (1000 * HEAT_CAPACITY));
    expect(rise).toBeLessThan(57_300 / (1000 * HEAT_CAPACITY));
    expect(neutralisingRise(0.5, 250)).toBeCloseTo(2 * rise, 9);
    expect(neutralisingRise(0, 250)).toBe(0);
  });

  test('100 g of ice takes 41.8 kJ to become water of 20 C: 334 J/g and 4.18 J/(g K) (CRC Handbook, from memory)', () => {
    expect(iceCooling(100, 500)).toBeCloseTo(41_760 / (500 * HEAT_CAPACITY), 2);
  });
});

describe('density of lye, g/ml', () => {
  test.for([
    [10, 1.0918],
    [20, 1.1884],
    [30, 1.2905],
    [40, 1.3991],
    [50, 1.5143],
    [25, (1.1884 + 1.2905) / 2],
  ] as const)(
    'potassium hydroxide of %d %% at 20 C: %d (CRC Handbook, from memory)',
    ([percent, density]) => {
      expect(lyeSolutionDensity(percent, 1, 20)).toBeCloseTo(density, 4);
    },
  );

  test('of both alkalis it lies between them, by their mass: 30 %, a quarter potassium', () => {
    expect(lyeSolutionDensity(30, 0.25, 20)).toBeCloseTo(0.75 * 1.3277 + 0.25 * 1.2905, 4);
  });

  test('it thins by 1.20866 - 1.18192 from 25 to 70 C (published fit at 19.4 %)', () => {
    expect(lyeSolutionDensity(30, 0, 25) - lyeSolutionDensity(30, 0, 70)).toBeCloseTo(1.20866 - 1.18192, 6);
    expect(lyeSolutionDensity(30, 0, 20)).toBeCloseTo(1.3277, 4);
  });
});

test('a table answers with its own points, and with its ends beyond them', () => {
  const points = [
    [1, 10],
    [3, 30],
    [5, 20],
  ] as const;
  expect([0, 1, 2, 3, 4, 5, 9].map(x => interpolate(points, x))).toEqual([10, 10, 20, 30, 25, 20, 20]);
});

describe('the three ways of writing water (arithmetic)', () => {
  test('100 g of lye and 200 g of water over 1000 g of oils: 33.3 %, 2:1, 20 % of oils', () => {
    const ways = waterWays(200, 100, 1000);
    expect(ways.lyeStrength).toBeCloseTo(100 / 3, 9);
    expect(ways.waterPerLye).toBe(2);
    expect(ways.percentOfOils).toBe(20);
  });
  test('and back', () => {
    expect(waterGrams({ by: 'lye-strength', percent: 25 }, 100, 1000)).toBe(300);
    expect(waterGrams({ by: 'ratio', waterPerLye: 1.5 }, 100, 1000)).toBe(150);
    expect(waterGrams({ by: 'percent-of-oils', percent: 38 }, 100, 1000)).toBe(380);
  });
});
