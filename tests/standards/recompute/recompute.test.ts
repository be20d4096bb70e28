import { describe, expect, test } from 'vitest';
import { additiveById, knownAdditive } from '../../../src/engine/batch/additives/additives.ts';
import { findOil } from '../../../src/engine/batch/oils/find-oil.ts';
import { overLaw } from './agreement.ts';
import * as again from './recompute.ts';

describe('the recomputation itself', () => {
  test('gives the examples that were worked by hand', () => {
    const off = again
      .workedExamples()
      .filter(({ got, want, tolerance }) => !(Math.abs(got - want) <= tolerance));
    expect(off).toEqual([]);
  });

  test('would see a colour above its legal share: D&C Green 8 at 0.01 %', () => {
    expect(overLaw(['59040'], 0.05, 1000)).toBeLessThan(1);
    expect(overLaw(['59040'], 0.11, 1000)).toBeGreaterThan(1);
  });
});

describe('its tables and ours', () => {
  test.for(again.SAP_TABLE.map(row => [row.name, row] as const))(
    '%s: our typical value lies in its range',
    ([name, row]) => {
      const { typical } = findOil(name).saponification;
      expect(typical).toBeGreaterThanOrEqual(row.min);
      expect(typical).toBeLessThanOrEqual(row.max);
      // Shea's unsaponifiables and stearic acid sold as a mixture lie farthest from the pure triglyceride or acid.
      expect(Math.abs(typical / (row.computed ?? typical) - 1)).toBeLessThan(0.065);
    },
  );

  test.for(again.LIQUIDS.filter(({ name }) => name !== 'water').map(row => [row.name, row] as const))(
    '%s: our water, fat and acid are its own',
    ([name, row]) => {
      const ours = additiveById(knownAdditive(name)!);
      // Beer and wine are ours once their alcohol is boiled off, which leaves more water in a gram.
      const most = ours.liquid!.alcoholPercent > 0 ? 0.98 : row.waterMax;
      expect(ours.water).toBeGreaterThanOrEqual(row.waterMin);
      expect(ours.water).toBeLessThanOrEqual(most);
      expect(ours.fat?.share ?? 0).toBeCloseTo(row.fatFraction, 2);
      const acid = row.acid ? again.acidKohGrams(row.acid.acid, row.acid.gramsPerGram) : 0;
      expect(ours.acid * again.KOH_MOLAR_MASS).toBeCloseTo(acid, 4);
    },
  );
});
