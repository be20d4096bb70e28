import { describe, expect, test } from 'vitest';
import {
  checkSuperfat,
  hydroxideDemand,
  hydroxideIn,
  scaleStepPoints,
  weighLye,
} from '../../../../src/engine/batch/lye/lye.ts';
import { oilOf, refusalOf } from '../asked.ts';

/** Grams of one mole (CIAAW atomic weights). */
const NAOH = 39.997;
const KOH = 56.105;

const no = (read: () => unknown) => {
  const { id, values } = refusalOf(read);
  return { id, values };
};

describe('the purity of an alkali', () => {
  test('below what dry alkali is sold at it is a solution: 90 % sodium, 80 % potassium (common practice)', () => {
    const weighed = (choice: Parameters<typeof weighLye>[0]) => weighLye(choice, 1, 0.001)[0]!.exactGrams;
    expect(weighed({ kind: 'NaOH', naohPurity: 0.9 })).toBeCloseTo(NAOH / 0.9, 2);
    expect(weighed({ kind: 'KOH', kohPurity: 0.8 })).toBeCloseTo(KOH / 0.8, 2);
    expect(no(() => weighed({ kind: 'NaOH', naohPurity: 0.89 }))).toEqual({
      id: 'purity-out-of-range',
      values: { percent: 89, alkali: 'NaOH', least: 90 },
    });
    expect(no(() => weighed({ kind: 'KOH', kohPurity: 0.5 }))).toEqual({
      id: 'purity-out-of-range',
      values: { percent: 50, alkali: 'KOH', least: 80 },
    });
    expect(no(() => weighed({ kind: 'NaOH', naohPurity: 1.5 })).id).toBe('purity-out-of-range');
  });

  test('potassium hydroxide that says nothing is 90 %; dissolved, its strength is that of the alkali in it', () => {
    expect(weighLye({ kind: 'KOH' }, 1, 0.001)[0]!.purity).toBe(0.9);
    expect(weighLye({ kind: 'KOH', solutionPercent: 45 }, 1, 0.001)[0]!.purity).toBe(1);
  });

  test('what is pure counts, not what is weighed: 62.339 g at 90 % is one mole', () => {
    expect(
      hydroxideIn([{ alkali: 'KOH', grams: KOH / 0.9, exactGrams: KOH / 0.9, purity: 0.9 }]),
    ).toBeCloseTo(1, 4);
  });
});

test('lye that is dissolved is rounded down with its water: 143.5 g in a half solution on a 1 g scale', () => {
  // 143.508 g of alkali are 287.016 g of solution, so 287 g on the scale, which hold 143.5 g.
  const [part] = weighLye({ kind: 'NaOH', solutionPercent: 50 }, 143.508 / NAOH, 1);
  expect(part!.grams).toBe(143.5);
});

test('a step of the scale that is met exactly is not lost to rounding', () => {
  expect(weighLye({ kind: 'NaOH' }, (3 * 0.1) / 39.9968, 0.1)[0]!.grams).toBeCloseTo(0.3, 9);
});

test('shares of the two alkalis lie between nothing and all', () => {
  const share = (kohShare: number) => weighLye({ kind: 'both', kohShare }, 1, 0.001);
  for (const [kohShare, percent] of [
    [0, 0],
    [1, 100],
    [-0.1, -10],
    [1.2, 120],
  ] as const)
    expect(no(() => share(kohShare))).toEqual({ id: 'koh-share-out-of-range', values: { percent } });
  expect(share(0.5)).toHaveLength(2);
});

test('superfat from 0 to 60 % is a soap', () => {
  expect(() => checkSuperfat(0)).not.toThrow();
  expect(() => checkSuperfat(60)).not.toThrow();
  expect(no(() => checkSuperfat(-1))).toEqual({ id: 'superfat-negative', values: { percent: -1 } });
  expect(no(() => checkSuperfat(61))).toEqual({ id: 'superfat-absurd', values: { percent: 61, most: 60 } });
});

test('demand runs from the low to the high end of the saponification range', () => {
  const exact = oilOf('olive', 190);
  const oil = { ...exact, saponification: { low: 184, typical: 190, high: 196 } };
  const demand = hydroxideDemand([{ oil, grams: 1000 }]);
  expect(demand.low).toBeCloseTo(184 / KOH, 3);
  expect(demand.typical).toBeCloseTo(190 / KOH, 3);
  expect(demand.high).toBeCloseTo(196 / KOH, 3);
});

describe('a step of the scale in superfat points', () => {
  // 100 g of oil at 190 mg/g take up 0.33865 mol; a gram of NaOH is 0.025002 mol of it, 7.38 points.
  const demand = hydroxideDemand([{ oil: oilOf('olive', 190), grams: 100 }]).typical;
  const [sodium] = weighLye({ kind: 'NaOH' }, demand, 1);

  test('a gram in 100 g of oil is 7.4 points: refused, 738.3 g would do', () => {
    const told = no(() => scaleStepPoints([sodium!], demand, { stepGrams: 1, oilGrams: 100 }));
    expect(told).toMatchObject({ id: 'scale-too-coarse', values: { stepGrams: 1, leastOilGrams: 739 } });
    expect((told.values as { points: number }).points).toBeCloseTo(7.383, 2);
  });

  test('a weaker alkali moves it less', () => {
    const weak = { ...sodium!, purity: 0.9 };
    expect(scaleStepPoints([weak], demand, { stepGrams: 0.1, oilGrams: 100 })).toBeCloseTo(0.6645, 3);
  });

  test('exactly one point is fine', () => {
    const one = 1 / 39.9968;
    expect(
      scaleStepPoints([{ ...sodium!, purity: 1 }], 100 * one, { stepGrams: 1, oilGrams: 700 }),
    ).toBeCloseTo(1, 3);
  });
});
