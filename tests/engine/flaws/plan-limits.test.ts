import { describe, expect, test } from 'vitest';
import { planNumbers } from '../../../src/engine/batch/planning/plan.ts';
import type { PlanAnswer } from '../../../src/engine/batch/planning/plan-answer.ts';
import { type BatchNumbers, numbersFor } from '../../../src/engine/flaws/batch-numbers.ts';
import type { FindingId } from '../../../src/engine/flaws/findings.ts';
import { planEvidence } from '../../../src/engine/flaws/plan-evidence.ts';
import { asked, type Written } from '../batch/asked.ts';

/** A plan with a heat that was told instead of worked out. */
function evidenceOf(written: Written, heat: Partial<PlanAnswer['heat']> = {}) {
  const plan = {
    ...planNumbers(asked(written)),
    heat: {
      gel: { none: 0.5, partial: 0.25, full: 0.25 },
      overheatChance: 0.5,
      peakCoreC: 60,
      peakCoreBand: { low: 55, typical: 60, high: 65 },
      crackle: { levers: [] },
      ...heat,
    },
  };
  return planEvidence(plan as unknown as PlanAnswer);
}
const chance = (finding: FindingId, written: Written, heat?: Partial<PlanAnswer['heat']>) =>
  evidenceOf(written, heat).evidence.find(one => one.finding === finding)?.probability;
const isThere = (finding: FindingId, written: Written, heat?: Partial<PlanAnswer['heat']>) => {
  const told = chance(finding, written, heat);
  return told === undefined ? undefined : told > 0.5;
};

// Limits of common practice, each from both sides.
describe('what a plan says of a batch', () => {
  test.each<[FindingId, Written, boolean | undefined]>([
    ['much-water', { water: '29% lye' }, true],
    ['much-water', { water: '29.1% lye' }, undefined],
    ['much-water', { water: '31.9% lye' }, undefined],
    ['much-water', { water: '32% lye' }, false],
    ['low-superfat', { superfat: 1.9, scale: 0.001 }, true],
    ['low-superfat', { superfat: 2.1, scale: 0.001 }, false],
    ['high-superfat', { superfat: 9.9, scale: 0.001 }, false],
    ['high-superfat', { superfat: 10.1, scale: 0.001 }, true],
    ['sugar-or-milk', { additives: 'honey 10 g' }, true],
    ['sugar-or-milk', { additives: 'honey 10 g, salt 2%' }, true],
    ['sugar-or-milk', { liquid: 'coconut milk' }, true],
    ['sugar-or-milk', { additives: 'salt 2%' }, false],
    ['sugar-or-milk', {}, false],
    ['fragrance-added', { fragrance: '3%' }, true],
    ['fragrance-added', {}, false],
    ['fragrance-vanilla', { fragrance: '3%' }, undefined],
    ['fragrance-vanilla', {}, false],
    // Coconut is nine tenths saturated, olive a seventh (Codex CXS 210, CXS 33).
    ['hard-oils', { oils: 'coconut 70%, olive 30%' }, true],
    ['hard-oils', { oils: 'coconut 40%, olive 60%' }, false],
    ['yellow-oils', { oils: 'olive 35%, coconut 65%' }, true],
    ['yellow-oils', { oils: 'olive 25%, coconut 75%' }, false],
    ['white-pigment', { portions: '1 cup titanium dioxide; rest plain' }, true],
    ['white-pigment', { portions: '1 cup gold mica; rest plain' }, false],
    ['much-white-pigment', { portions: '1 cup titanium dioxide 2 tsp per cup; rest' }, true],
    ['much-white-pigment', { portions: '1 cup titanium dioxide 1/2 tsp per cup; rest' }, false],
    ['colour-mica', { portions: '1 cup gold mica; rest plain' }, true],
    ['colour-oxide', { portions: '1 cup gold mica; rest plain' }, false],
    ['colour-oxide', { portions: '1 cup ultramarine blue; rest plain' }, true],
    ['little-colour', { portions: '1 cup gold mica 1/4 tsp per cup; rest' }, true],
    ['little-colour', { portions: '1 cup gold mica 1/2 tsp per cup; rest' }, false],
    ['little-colour', {}, undefined],
    ['glycerin-carrier', { portions: '1 cup gold mica in glycerin; rest plain' }, true],
    ['glycerin-carrier', { portions: '1 cup gold mica in water; rest plain' }, false],
    // Twenty millilitres of liquid soften a cup.
    ['much-carrier', { portions: '1 cup gold mica in 21 ml water; rest plain' }, true],
    ['much-carrier', { portions: '1 cup gold mica in 19 ml water; rest plain' }, false],
  ])('%s of %o: %s', (finding, written, there) => {
    expect(isThere(finding, written)).toBe(there);
  });

  test('an estimate of heat near one half says nothing, and none is believed beyond 85 in 100', () => {
    const gel = (full: number) => ({ gel: { none: 1 - full, partial: 0, full } });
    expect(chance('gelled', {}, gel(0.69))).toBeUndefined();
    expect(chance('gelled', {}, gel(0.71))).toBeCloseTo(0.71, 12);
    expect(chance('gelled', {}, gel(1))).toBe(0.85);
    expect(chance('not-gelled', {}, gel(1))).toBeCloseTo(0.15, 12);
    expect(chance('not-gelled', {}, gel(0.2))).toBeCloseTo(0.8, 12);
    expect(chance('gelled', {}, { gel: { none: 0.2, partial: 0.5, full: 0.3 } })).toBeCloseTo(0.8, 12);
    expect(chance('ran-hot', {}, { overheatChance: 0.8 })).toBeCloseTo(0.8, 12);
    expect(chance('ran-hot', {}, { overheatChance: 0.4 })).toBeUndefined();
  });

  test('and its numbers are those of the plan', () => {
    const { numbers } = evidenceOf({
      portions: 'Sky: 1 cup gold mica 2 tsp per cup in 20 ml water; rest plain',
    });
    expect(numbers.rates).toMatchObject([{ portion: 'Sky', colourant: 'gold-mica', kind: 'mica', most: 1 }]);
    expect(numbers.rates[0]!.perCup).toBeCloseTo(2, 1);
    expect(numbers.carriers).toMatchObject([{ portion: 'Sky', millilitres: 20 }]);
    expect(numbers.carriers![0]!.cups).toBeCloseTo(1, 6);
    // 143 g of lye at 33 % stand in 290 g of water.
    expect(numbers.water?.atThirdGrams).toBeCloseTo(numbers.water!.grams, 0);
    expect(numbers.heat).toMatchObject({ peakC: 60, lowC: 55, highC: 65, gelChance: 0.5 });
  });
});

describe('numbers that make a remedy plain', () => {
  const rate = (colourant: string, kind: 'white' | 'mica', perCup: number) => ({
    colourant,
    kind,
    perCup,
    full: 1,
    most: 2,
  });
  const batch: BatchNumbers = {
    rates: [
      rate('a', 'white', 2),
      rate('b', 'white', 1),
      rate('c', 'mica', 2),
      rate('d', 'mica', 0.5),
      rate('e', 'mica', 1),
    ],
    carriers: [1, 2, 3, 4].map(at => ({ portion: `${at}`, cups: 1, millilitres: at, superfat: 5 })),
    water: { grams: 300, strength: 30, atThirdGrams: 290 },
    superfat: 6,
    heat: {
      peakC: 80,
      lowC: 75,
      highC: 85,
      gelChance: 0.9,
      overheatChance: 0.3,
      levers: ['cooler-start', 'less-water'] as never,
    },
  };
  const told = (remedy: Parameters<typeof numbersFor>[0], more: Partial<BatchNumbers> = {}) =>
    numbersFor(remedy, { ...batch, ...more }).map(one =>
      one.id === 'rate' ? one.rate.colourant : one.id === 'carrier' ? one.portion : one.id,
    );
  test.each([
    ['keep-white-under-ceiling', ['a']],
    ['less-white-pigment', ['a']],
    ['dose-down-to-ceiling', ['c']],
    ['dose-up-stepwise', ['d']],
    // At most three.
    ['less-carrier', ['1', '2', '3']],
    ['less-water', ['water']],
    ['steeper-water-discount', ['water']],
    ['fresh-oils-lower-superfat', ['superfat']],
    ['less-heat', ['heat', 'lever']],
    ['no-insulation-for-hot-recipe', ['heat']],
    ['all-gel-or-no-gel', ['heat']],
    ['only-looks', []],
  ] as const)('%s: %o', (remedy, ids) => {
    expect(told(remedy)).toEqual(ids);
  });
  test('none where there is nothing to lower', () => {
    expect(told('fresh-oils-lower-superfat', { superfat: 5 })).toEqual([]);
    expect(told('less-water', { water: { grams: 290, strength: 33, atThirdGrams: 290 } })).toEqual([]);
    expect(numbersFor('less-heat', { rates: [] })).toEqual([]);
    expect(numbersFor('less-carrier', { rates: [] })).toEqual([]);
  });
});
