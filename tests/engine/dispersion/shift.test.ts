import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { batterFromOils, oilsIn, TYPICAL_BATTER } from '../../../src/engine/dispersion/batter.ts';
import { heldBackWater, lyeAfterWater, superfatAfterOil } from '../../../src/engine/dispersion/shift.ts';
import { US_CUP_ML } from '../../../src/engine/quantities/units.ts';
import { batterOf } from './batter-of.ts';

describe('a carrier changes the portion it goes into', () => {
  test('the same oil in twice the batter lifts the superfat about half as much', () => {
    const one = superfatAfterOil(TYPICAL_BATTER, US_CUP_ML, 14.79) - 0.05;
    const two = superfatAfterOil(TYPICAL_BATTER, 2 * US_CUP_ML, 14.79) - 0.05;
    expect(two / one).toBeCloseTo(0.5, 1);
  });

  test('with no superfat to begin with, the added oil is all of it', () => {
    const bare = { ...TYPICAL_BATTER, superfat: 0 };
    const oils = oilsIn(1000, bare);
    expect(superfatAfterOil(bare, 1000, 100)).toBeCloseTo(91.5 / (oils + 91.5), 12);
  });

  test('water thins the lye of the portion: by hand, 100 g of 30 % lye and 20 ml of water', () => {
    const batter = { gramsPerMillilitre: 1, oilsShare: 0.6, lyeConcentration: 0.3, superfat: 0.05 };
    expect(lyeAfterWater(batter, 250, 20)).toBeCloseTo(30 / 119.96, 12);
  });

  test('of a batter of 1.05 g/ml, a litre holds 420 g of lye solution: 30 % of it and 80 g of water make 25.2 %', () => {
    const batter = { gramsPerMillilitre: 1.05, oilsShare: 0.6, lyeConcentration: 0.3, superfat: 0.05 };
    expect(lyeAfterWater(batter, 1000, 80 / 0.998)).toBeCloseTo(126 / 500, 9);
  });

  test('water is held back only down to as much water as lye', () => {
    expect(heldBackWater(100, 200, 30)).toBe(30);
    expect(heldBackWater(100, 120, 30)).toBe(20);
    expect(heldBackWater(100, 90, 30)).toBe(0);
  });

  test.prop([
    fc.double({ min: 0, max: 0.3, noNaN: true }),
    fc.double({ min: 1, max: 1e5, noNaN: true }),
    fc.double({ min: 0.1, max: 1e4, noNaN: true }),
  ])('oil only ever raises superfat and water only ever thins lye', (superfat, portion, added) => {
    const batter = { ...TYPICAL_BATTER, superfat };
    const after = superfatAfterOil(batter, portion, added);
    expect(after).toBeGreaterThan(superfat);
    expect(after).toBeLessThan(1);
    expect(lyeAfterWater(batter, portion, added)).toBeLessThan(batter.lyeConcentration);
  });
});

describe('the batter is the recipe’s own when it is known', () => {
  const recipe = { oilsGrams: 1000, lyeGrams: 134, waterGrams: 380, millilitres: 1508, superfat: 0.05 };
  test('its shares come from its masses', () => {
    const batter = batterOf(recipe);
    expect(batter.oilsShare).toBeCloseTo(1000 / 1514, 12);
    expect(batter.lyeConcentration).toBeCloseTo(134 / 514, 12);
    expect(oilsIn(1508, batter)).toBeCloseTo(1000, 9);
    expect(batterFromOils(500, batter)).toBeCloseTo(754, 9);
  });
});
