import { describe, expect, test } from 'vitest';
import { AS_ITS_KIND, independent } from '../../../../src/engine/colour/calibration/joint/jar-parameters.ts';
import { type BarPlanAsk, planBars } from '../../../../src/engine/colour/calibration/test-bars/plan-bars.ts';
import { usualTeaspoon } from '../../../../src/engine/colour/jars/colourant-optics.ts';
import { colourantById } from '../../../../src/engine/colourants/catalogue.ts';

describe('test bars for a shelf', () => {
  const jar = (id: string) => {
    const colourant = colourantById(id)!;
    return {
      id,
      jar: { colourant: id },
      gramsPerTeaspoon: usualTeaspoon(colourant),
      fullTspPerCup: colourant.dose.fullTspPerCup,
      ceilingTspPerCup: colourant.dose.ceilingTspPerCup,
    };
  };
  const ask = (ids: readonly string[], more: Partial<BarPlanAsk> = {}): BarPlanAsk => ({
    jars: ids.map(jar),
    shades: [{ shade: 'cream', share: 1 }],
    gelled: false,
    portion: { cups: 0.5, grams: 118.294 },
    reading: 3,
    within: 5,
    mixes: false,
    mostBars: 12,
    ...more,
  });
  const three = ['ultramarine-blue', 'red-iron-oxide', 'ultramarine-violet'];

  test('are fewest: one less leaves a jar unknown', () => {
    const plan = planBars(ask(three));
    expect(plan.reached).toBe(true);
    for (const { after } of plan.jars) expect(after).toBeLessThan(5.05);
    const fewer = planBars(ask(three, { mostBars: plan.bars.length - 1 }));
    expect(fewer.reached).toBe(false);
    expect(Math.max(...fewer.jars.map(({ after }) => after))).toBeGreaterThan(5);
  });

  test('grow with what is asked of them, and shrink with what is known', () => {
    const count = (more: Partial<BarPlanAsk>) => planBars(ask(three, more)).bars.length;
    expect(count({ within: 4.7 })).toBeGreaterThan(count({ within: 6 }));
    expect(count({ within: 50 })).toBe(0);
    const learnt = { parameters: AS_ITS_KIND, covariance: independent([0.03, 0.03, 0.05, 0.05]) };
    const jars = three.map(jar).map((one, at) => (at === 0 ? { ...one, jar: { ...one.jar, learnt } } : one));
    const plan = planBars(ask(three, { jars }));
    expect(plan.bars.length).toBeLessThan(count({}));
    expect(plan.bars.flatMap(({ doses }) => doses.map(({ id }) => id))).not.toContain('ultramarine-blue');
  });

  test('mixes never need more bars than single jars, and stay within the ceilings', () => {
    const plan = planBars(ask(three, { mixes: true }));
    expect(plan.bars.length).toBeLessThanOrEqual(planBars(ask(three)).bars.length);
    for (const { doses } of plan.bars) {
      const fullness = doses.reduce(
        (sum, { id, tspPerCup }) => sum + tspPerCup / colourantById(id)!.dose.ceilingTspPerCup,
        0,
      );
      expect(fullness).toBeLessThanOrEqual(1 + 1e-9);
    }
  });

  test('are of spoons that there are, and each dose once', () => {
    const { bars } = planBars(ask(three, { within: 4.7 }));
    const doses = bars.map(({ doses: [dose] }) => `${dose!.id} ${dose!.teaspoons}`);
    expect(new Set(doses).size).toBe(doses.length);
    for (const {
      doses: [dose],
    } of bars)
      expect((dose!.teaspoons * 32) % 1).toBe(0);
  });
});
