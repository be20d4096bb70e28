import { describe, expect, test } from 'vitest';
import { lyeMixingRise, lyeSolutionDensity } from '../../src/engine/batch/lye/lye-solution.ts';
import { OILS } from '../../src/engine/batch/oils/index.ts';
import { NOTHING_TAKEN, oilDensity, potOf } from '../../src/engine/batch/portions/pot.ts';
import { makeRecipe } from '../../src/engine/batch/recipe.ts';
import { asked, oilOf } from '../engine/batch/asked.ts';

describe('density of sodium hydroxide solutions at 20 C (engineering reference table, as in CRC and Perry)', () => {
  test.for([
    [5, 1.0538],
    [10, 1.1089],
    [20, 1.2192],
    [30, 1.3277],
    [40, 1.4299],
    [50, 1.5253],
  ])('%d %% weighs %d g/ml', ([percent, density]) => {
    expect(lyeSolutionDensity(percent!, 0, 20)).toBeCloseTo(density!, 4);
  });

  test('a third by mass is 1.362 g/ml, between the printed 30 and 35 %', () => {
    expect(lyeSolutionDensity(33.33, 0, 20)).toBeCloseTo(1.3623, 3);
  });

  test('6 mol in a kilogram of water: 1.2087 g/ml at 25 C, 1.1819 at 70 C (published fit), within 0.3 %', () => {
    const percent = (100 * 6 * 39.9968) / (1000 + 6 * 39.9968);
    expect(lyeSolutionDensity(percent, 0, 25) / 1.20866).toBeCloseTo(1, 2.5);
    expect(lyeSolutionDensity(percent, 0, 70) / 1.18192).toBeCloseTo(1, 2.5);
  });
});

test('1000 g of oils at 0.905 with 134 g of NaOH in 380 g of water make batter of 1.004 g/ml at 40 C, by hand', () => {
  // 1000 / 0.905 = 1104.97 ml; 514 g of 26.07 % lye at 1.2855 - 0.0119 = 1.2736 g/ml = 403.6 ml; 1514 / 1508.6 = 1.0036
  const oil = oilOf('mixed', 190, 0.905, 40);
  const request = {
    ...asked({ water: '26.07% lye', heat: { startC: 40 } }),
    oils: { shares: [{ oil, share: 1 }], totalGrams: 1000 },
  };
  const recipe = makeRecipe({ ...request, superfatPercent: 1.07 }, 1000);
  expect(recipe.lyeGrams).toBeCloseTo(134, 0);
  const pot = potOf(recipe, NOTHING_TAKEN, 40);
  expect(pot.grams / pot.millilitres).toBeCloseTo(1.004, 2);
});

test('134 g of NaOH dissolving in 380 g of water could warm it by about 71 K (Felder and Rousseau, Table B.11)', () => {
  expect(lyeMixingRise(134, 0, 380)).toBeGreaterThan(68);
  expect(lyeMixingRise(134, 0, 380)).toBeLessThan(76);
});

test('an oil thins by 0.65 to 0.70 g/l for each degree (oil handbooks)', () => {
  const olive = OILS.find(({ id }) => id === 'olive')!;
  const slope = (oilDensity(olive, 20) - oilDensity(olive, 60)) / 40;
  expect(slope * 1000).toBeGreaterThanOrEqual(0.65);
  expect(slope * 1000).toBeLessThanOrEqual(0.7);
});

test('melted oils and butters at 40 C lie between 0.86 and 0.96 g/ml (oil handbooks)', () => {
  for (const oil of OILS.filter(({ oilClass }) => oilClass !== 'wax')) {
    expect(oilDensity(oil, 40)).toBeGreaterThan(0.86);
    expect(oilDensity(oil, 40)).toBeLessThan(0.96);
  }
});
