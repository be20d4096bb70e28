import { describe, expect, test } from 'vitest';
import { planBatch } from '../../../src/engine/batch/planning/plan.ts';
import { readPlan, type WrittenPlan, withColours } from '../../../src/engine/batch/planning/written-plan.ts';
import { findColourant } from '../../../src/engine/colourants/asked/find-colourant.ts';
import { numbersFor } from '../../../src/engine/flaws/batch-numbers.ts';
import { diagnose } from '../../../src/engine/flaws/diagnose.ts';
import type { FindingId } from '../../../src/engine/flaws/findings.ts';
import { planEvidence } from '../../../src/engine/flaws/plan-evidence.ts';

const told = (written: Partial<WrittenPlan>) =>
  planEvidence(
    planBatch(
      withColours(
        readPlan({ oils: 'olive 50%, coconut 30%, rice bran 20%', size: '1000 g oils', ...written }),
        text => ({ colourant: findColourant(text) }),
      ),
    ),
  );
const chance = (plan: ReturnType<typeof told>, finding: FindingId) =>
  plan.evidence.find(one => one.finding === finding)?.probability;

describe('a plan as evidence', () => {
  const wet = told({ water: '28% lye', portions: '500 ml titanium dioxide 2 tsp per cup; rest plain' });
  const dry = told({ water: '36% lye', portions: '500 ml titanium dioxide 1/4 tsp per cup; rest plain' });

  test('tells water, white pigment and its ceiling from the numbers', () => {
    expect(chance(wet, 'much-water')).toBeGreaterThan(0.9);
    expect(chance(dry, 'much-water')).toBeLessThan(0.1);
    expect(chance(wet, 'white-pigment')).toBeGreaterThan(0.9);
    expect(chance(wet, 'much-white-pigment')).toBeGreaterThan(0.9);
    expect(chance(dry, 'much-white-pigment')).toBeLessThan(0.1);
  });

  test('a plan without scent speaks against vanillin, without white against its crackle', () => {
    const plain = told({});
    const brown = (known?: Parameters<typeof diagnose>[1]) =>
      diagnose('it turned brown', known).causes.find(({ id }) => id === 'vanillin-browning')?.probability ??
      0;
    expect(brown({ evidence: plain.evidence })).toBeLessThan(brown() / 3);
    expect(chance(plain, 'white-pigment')).toBeLessThan(0.1);
  });

  test('an insulated loaf is likelier to have gelled than one in the fridge', () => {
    const cool = told({ process: 'fridge' });
    const warm = told({ process: 'insulated', start: '45 C' });
    expect(chance(cool, 'gelled') ?? 0.5).toBeLessThan(chance(warm, 'gelled') ?? 0.5);
    expect(chance(cool, 'gelled')).toBeLessThan(0.3);
  });

  test('its numbers go with the remedies', () => {
    const [rate] = numbersFor('keep-white-under-ceiling', wet.numbers);
    expect(rate).toMatchObject({ id: 'rate', rate: { colourant: 'titanium-dioxide', full: 0.5, most: 1 } });
    expect(rate?.id === 'rate' && rate.rate.perCup).toBeCloseTo(2, 1);
    const [water] = numbersFor('less-water', wet.numbers);
    // 138 g of lye at 33 % leave 2.03 times as much water.
    expect(water?.id === 'water' && water.atThirdGrams / water.grams).toBeCloseTo(67 / 33 / (72 / 28), 2);
    expect(numbersFor('less-water', dry.numbers)).toEqual([]);
    expect(numbersFor('keep-white-under-ceiling', dry.numbers)).toEqual([]);
  });

  test('makes white-pigment crackle of fine cracks in an overfull, wet, warm batch', () => {
    const without = diagnose('a net of fine lines');
    const { causes } = diagnose('a net of fine lines', { evidence: wet.evidence, batch: wet.numbers });
    const crackle = (all: typeof causes) =>
      all.find(({ id }) => id === 'white-pigment-crackle')?.probability ?? 0;
    expect(crackle(causes)).toBeGreaterThan(crackle(without.causes));
    expect(causes[0]?.because.map(({ via }) => via)).toContain('plan');
  });
});
