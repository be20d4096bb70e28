import { describe, expect, test } from 'vitest';
import { estimateHeat, type HotBatter, quickHeat } from '../../../src/engine/heat/estimate.ts';
import { rateTable, SAPONIFICATION } from '../../../src/engine/heat/kinetics.ts';
import { mouldSection } from '../../../src/engine/heat/mould.ts';
import { type LoafDrive, runLoaf } from '../../../src/engine/heat/run.ts';
import { USUAL_HEAT } from '../../../src/engine/heat/setting.ts';

const LOAF = { shape: 'loaf', widthCm: 9, heightCm: 7 } as const;
const BATTER: HotBatter = {
  density: 1,
  heatCapacity: 2.4,
  hydroxidePerGram: 0.0025,
  waterPercent: 25,
  speed: 1,
};
/** J/(m3 K): 1 g/ml, 2.4 J/(g K). */
const CAPACITY = 2.4e6;
const heated = (batter: Partial<HotBatter> = {}) => estimateHeat(LOAF, { ...BATTER, ...batter }, USUAL_HEAT);

/** A loaf whose walls let as good as nothing through. */
const sealed = (more: Partial<LoafDrive> = {}) =>
  runLoaf({
    section: mouldSection(LOAF, USUAL_HEAT, CAPACITY, 1e-9),
    startC: 40,
    wallStartC: 40,
    outsideC: () => 40,
    heatPerVolume: 120e6,
    rates: rateTable(SAPONIFICATION, 1.2),
    ...more,
  });

describe('a loaf that loses no heat (first law of thermodynamics)', () => {
  test('warms by the heat of what has become soap, over its own heat capacity, its wall warming along', () => {
    const { peakCoreC, converted } = sealed();
    const all = (120e6 * (1 - SAPONIFICATION.convertedAtPour)) / CAPACITY;
    expect(converted).toBeGreaterThan(0.99);
    expect(converted).toBeLessThanOrEqual(1);
    expect(peakCoreC - 40).toBeLessThan(all * 1.01);
    expect(peakCoreC - 40).toBeGreaterThan(all * 0.75);
  });

  test('twice the heat warms it twice as far, and a little more: it is all spent sooner', () => {
    const [once, twice] = [60e6, 120e6].map(heatPerVolume => sealed({ heatPerVolume }).peakCoreC - 40);
    expect(twice! / once!).toBeGreaterThan(1.98);
    expect(twice! / once!).toBeLessThan(2.2);
  });
});

test('what each part of the section got to is told hottest first, and the parts make a whole', () => {
  const { reached, peakCoreC } = sealed();
  const degrees = reached.map(({ celsius }) => celsius);
  expect(degrees).toEqual([...degrees].sort((a, b) => b - a));
  expect(degrees[0]).toBeCloseTo(peakCoreC, 6);
  expect(reached.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
});

test('in a warm cupboard, without heat of its own, a loaf is warmer near its side than in its core', () => {
  const section = mouldSection(LOAF, USUAL_HEAT, CAPACITY, 8);
  const run = runLoaf({
    section,
    startC: 20,
    wallStartC: 20,
    outsideC: seconds => (seconds < 7200 ? 70 : 20),
    heatPerVolume: 0,
    rates: rateTable(SAPONIFICATION, 1.2),
  });
  const core = run.curve[12]!;
  expect(run.peakEdgeC).toBeGreaterThan(core - 8);
  expect(run.peakEdgeC).toBeLessThan(70);
});

describe('the estimate over its bands', () => {
  const usual = heated();

  test('sugar heats: as many J/g more, as many kelvins over the heat capacity at most', () => {
    const sweet = heated({ sugarHeatPerGram: 0.024 });
    expect(sweet.peakCoreC - usual.peakCoreC).toBeGreaterThan(4);
    // What goes faster also loses less by its peak.
    expect(sweet.peakCoreC - usual.peakCoreC).toBeLessThan(20);
  });

  test('gel may begin six kelvins either side of the likeliest temperature', () => {
    const { low, typical, high } = usual.gelOnset;
    expect([typical - low, high - typical]).toEqual([6, 6]);
  });

  test('the chance to overheat is none in a thin cool loaf and nearly sure in a hot and sweet one', () => {
    expect(estimateHeat({ ...LOAF, heightCm: 2 }, BATTER, USUAL_HEAT).overheatChance).toBe(0);
    const hot = heated({ sugarHeatPerGram: 0.12 });
    expect(hot.overheatChance).toBeGreaterThan(0.9);
    expect(hot.overheatChance).toBeLessThanOrEqual(1);
    const between = heated({ sugarHeatPerGram: 0.04 }).overheatChance;
    expect(between).toBeGreaterThan(0);
    expect(between).toBeLessThan(1);
  });

  test('its likeliest loaf is the one in the middle of every band, in the quick look as in the whole', () => {
    const { low, typical, high } = usual.peakCoreBand;
    expect(low).toBeLessThan(typical);
    expect(typical).toBeLessThan(high);
    expect(usual.peakCoreC).toBe(typical);
    expect(quickHeat(LOAF, BATTER, USUAL_HEAT).peakCoreC).toBeCloseTo(typical, 9);
  });

  test('the core is warmer than 2.5 mm inside the side, which is warmer than the room', () => {
    expect(usual.peakEdgeC).toBeLessThan(usual.peakCoreC - 1);
    expect(usual.peakEdgeC).toBeGreaterThan(USUAL_HEAT.roomC + 15);
  });
});
