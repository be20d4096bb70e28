import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { oilGramsFor } from '../../../../src/engine/batch/fit.ts';
import { scaleStepPoints, superfatPercent } from '../../../../src/engine/batch/lye/lye.ts';
import { makeRecipe } from '../../../../src/engine/batch/recipe.ts';
import type { Reasons } from '../../../../src/engine/refusal.ts';
import { asked, filled, refusalOf, type Written } from '../asked.ts';

const recipeOf = (written: Written) => makeRecipe(asked(written), oilGramsFor(asked(written)));

describe('lye', () => {
  test('rounds down, never up, on any scale', () => {
    for (const scale of [0.1, 1]) {
      const { lye } = recipeOf({ scale });
      expect(lye[0]!.grams).toBeLessThanOrEqual(lye[0]!.exactGrams);
      expect(lye[0]!.exactGrams - lye[0]!.grams).toBeLessThan(scale);
    }
  });

  test('is refused on a scale whose step moves superfat by more than a point', () => {
    const stepPoints = (written: Written) => {
      const recipe = recipeOf(written);
      const scale = { stepGrams: asked(written).scaleStepGrams, oilGrams: recipe.oilGrams };
      return scaleStepPoints(recipe.lye, recipe.demand.typical, scale);
    };
    expect(() => stepPoints({ size: '100 g oils', scale: 1 })).toThrow(
      expect.objectContaining({ id: 'scale-too-coarse', values: expect.objectContaining({ stepGrams: 1 }) }),
    );
    expect(stepPoints({ size: '100 g oils', scale: 0.1 })).toBeLessThan(1);
    expect(stepPoints({ size: '1000 g oils', scale: 1 })).toBeLessThan(1);
  });

  test('the refusal names an oil mass that this scale can serve', () => {
    const recipe = recipeOf({ size: '100 g oils', scale: 1 });
    const { values } = refusalOf(() =>
      scaleStepPoints(recipe.lye, recipe.demand.typical, { stepGrams: 1, oilGrams: 100 }),
    );
    const { leastOilGrams } = values as Reasons['scale-too-coarse'];
    const enough = recipeOf({ size: `${leastOilGrams} g oils`, scale: 1 });
    const scale = { stepGrams: 1, oilGrams: leastOilGrams };
    expect(scaleStepPoints(enough.lye, enough.demand.typical, scale)).toBeLessThanOrEqual(1);
  });

  test('superfat below zero, or beyond any soap, is refused', () => {
    expect(() => recipeOf({ superfat: -1 })).toThrow(expect.objectContaining({ id: 'superfat-negative' }));
    expect(() => recipeOf({ superfat: Number.NaN })).toThrow(
      expect.objectContaining({ id: 'superfat-negative' }),
    );
    expect(() => recipeOf({ superfat: 80 })).toThrow(expect.objectContaining({ id: 'superfat-absurd' }));
    expect(recipeOf({ superfat: 0 }).hydroxide).toBeGreaterThan(0);
  });

  test('above 50 % it is refused; at 1:1 it is not', () => {
    expect(() => recipeOf({ water: '0.9:1' })).toThrow(expect.objectContaining({ id: 'lye-too-strong' }));
    expect(recipeOf({ water: '1:1' }).ways.lyeStrength).toBeCloseTo(50, 9);
  });

  test('a weaker potassium hydroxide weighs more for the same work', () => {
    const [pure, weak] = ['KOH 100%', 'KOH 85%'].map(lye => recipeOf({ lye }).lye[0]!.exactGrams);
    expect(weak! * 0.85).toBeCloseTo(pure!, 9);
  });

  test('a purity that cannot be is refused', () => {
    expect(() => recipeOf({ lye: 'NaOH 20%' })).toThrow(
      expect.objectContaining({ id: 'purity-out-of-range' }),
    );
  });
});

describe('water', () => {
  property.prop([fc.double({ min: 25, max: 50, noNaN: true })])(
    'is the same in all three ways of writing it',
    percent => {
      const { ways } = recipeOf({ water: `${percent.toFixed(3)}% lye` });
      const byRatio = recipeOf({ water: `${ways.waterPerLye.toFixed(12)}:1` });
      const byOils = recipeOf({ water: `${ways.percentOfOils.toFixed(12)}% of oils` });
      expect(byRatio.waterGrams).toBeCloseTo(recipeOf({ water: `${percent.toFixed(3)}% lye` }).waterGrams, 6);
      expect(byOils.waterGrams).toBeCloseTo(byRatio.waterGrams, 6);
    },
  );
});

describe('additives', () => {
  test('citric acid gets lye of its own, so superfat stays as asked', () => {
    const { hydroxide, demand, lyeGrams } = recipeOf({ additives: 'citric acid 10 g', scale: 0.001 });
    expect(superfatPercent(hydroxide, demand.typical)).toBeCloseTo(5, 2);
    expect(lyeGrams - recipeOf({ scale: 0.001 }).lyeGrams).toBeCloseTo(5.71, 2);
  });

  test('milk stands in for part of the water, and its fat raises superfat', () => {
    const plain = filled(asked({}));
    const milk = filled(asked({ additives: 'milk 200 g' }));
    expect(milk.recipe.waterGrams).toBeCloseTo(plain.recipe.waterGrams - 200 * 0.881, 6);
    expect(milk.filled.pot.waterGrams).toBeCloseTo(plain.filled.pot.waterGrams, 6);
    expect(milk.filled.portions[0]!.superfat).toBeGreaterThan(plain.filled.portions[0]!.superfat + 0.3);
  });

  test('more milk than the recipe has water is refused', () => {
    expect(() => recipeOf({ additives: 'milk 600 g' })).toThrow(
      expect.objectContaining({ id: 'milk-more-than-water' }),
    );
  });

  test('salt by percent follows the oils', () => {
    expect(recipeOf({ additives: 'salt 5%' }).additives[0]!.grams).toBe(50);
  });
});
