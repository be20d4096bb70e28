import { describe, expect, test } from 'vitest';
import { poursFrom } from '../../../src/engine/batch/blend-limits.ts';
import { knownOil } from '../../../src/engine/batch/oils/find-oil.ts';

const blend = (...oils: readonly (readonly [name: string, grams: number])[]) =>
  oils.map(([name, grams]) => ({ oil: knownOil(name)!, grams }));

// European Pharmacopoeia, stearic acid 50: it freezes at 54 to 58 C (from memory).
describe('a shaving soap pours where its stearic acid is melted', () => {
  test('half of it stearic acid', () => {
    const from = poursFrom(blend(['stearic acid', 250], ['coconut oil', 250]), 38)!;
    expect(from).toBeGreaterThanOrEqual(54);
    expect(from).toBeLessThanOrEqual(58);
  });
  // Beeswax 61 to 66 C (European Pharmacopoeia, from memory): the last to melt counts.
  test('with beeswax in it too', () =>
    expect(
      poursFrom(blend(['stearic acid', 250], ['beeswax', 60], ['coconut oil', 190]), 38),
    ).toBeGreaterThanOrEqual(61));
  test('a tenth of it does not hinder', () =>
    expect(poursFrom(blend(['stearic acid', 50], ['coconut oil', 450]), 38)).toBeUndefined());
  test('poured that hot it pours', () =>
    expect(poursFrom(blend(['stearic acid', 250], ['coconut oil', 250]), 60)).toBeUndefined());
});
