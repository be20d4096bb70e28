import { describe, expect, test } from 'vitest';
import { estimateHeat, type HotBatter, quickHeat } from '../../../src/engine/heat/estimate.ts';
import { rateTable, SAPONIFICATION, SAPONIFICATION_HEAT } from '../../../src/engine/heat/kinetics.ts';
import { mouldSection } from '../../../src/engine/heat/mould.ts';
import { gelledShare, type LoafDrive, runLoaf } from '../../../src/engine/heat/run.ts';
import { type Layer, sectionOf } from '../../../src/engine/heat/section.ts';
import { USUAL_HEAT } from '../../../src/engine/heat/setting.ts';
import { TRANSFER } from '../../../src/engine/heat/surroundings.ts';
import type { Band } from '../../../src/engine/origin.ts';

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
  test('sugar heats: as many J/g more, as many kelvins over the heat capacity at most', () => {
    const usual = heated();
    const sweet = heated({ sugarHeatPerGram: 0.024 });
    expect(sweet.peakCoreC - usual.peakCoreC).toBeGreaterThan(4);
    // What goes faster also loses less by its peak.
    expect(sweet.peakCoreC - usual.peakCoreC).toBeLessThan(20);
  });

  test('gel may begin six kelvins either side of the likeliest temperature', () => {
    const { low, typical, high } = heated().gelOnset;
    expect([typical - low, high - typical]).toEqual([6, 6]);
  });

  test('a core of just 85 C counts as too hot: what warms no further after such a pour', () => {
    const poured = (startC: number) =>
      estimateHeat(LOAF, { ...BATTER, hydroxidePerGram: 0 }, { ...USUAL_HEAT, startC }).overheatChance;
    expect([poured(85), poured(84.9)]).toEqual([1, 0]);
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
    const usual = heated();
    const { low, typical, high } = usual.peakCoreBand;
    expect(low).toBeLessThan(typical);
    expect(typical).toBeLessThan(high);
    expect(usual.peakCoreC).toBe(typical);
    expect(quickHeat(LOAF, BATTER, USUAL_HEAT).peakCoreC).toBeCloseTo(typical, 9);
  });

  test('the core is warmer than 2.5 mm inside the side, which is warmer than the room', () => {
    const usual = heated();
    expect(usual.peakEdgeC).toBeLessThan(usual.peakCoreC - 1);
    expect(usual.peakEdgeC).toBeGreaterThan(USUAL_HEAT.roomC + 15);
  });

  test('denser batter warms its loaf more: as much heat in every gram, and more grams behind the same walls', () => {
    const usual = heated();
    expect(heated({ density: 1.1 }).peakCoreC).toBeGreaterThan(usual.peakCoreC + 1);
    expect(heated({ density: 0.9 }).peakCoreC).toBeLessThan(usual.peakCoreC - 1);
  });

  test('a ring in a round mould lies between its side and its middle', () => {
    const round = estimateHeat({ shape: 'round', diameterCm: 9, heightCm: 9 }, BATTER, USUAL_HEAT);
    expect(round.ring.chance).toBeGreaterThan(0);
    expect(round.ring.millimetresFromSide).toBeGreaterThan(0);
    expect(round.ring.millimetresFromSide).toBeLessThan(45);
  });

  test('the band of the core leaves one run in ten below it and one in ten above, early and late', () => {
    const bands = {
      heat: threeOf(SAPONIFICATION_HEAT),
      rate: threeOf(SAPONIFICATION.rateAt40C),
      transfer: threeOf(TRANSFER.ambient),
    };
    const runs = bands.transfer.flatMap(([transfer, one]) =>
      bands.heat.flatMap(([kilojoules, two]) =>
        bands.rate.map(([rate, three]) => ({
          weight: one * two * three,
          run: runLoaf({
            section: mouldSection(LOAF, USUAL_HEAT, CAPACITY, transfer),
            startC: USUAL_HEAT.startC,
            wallStartC: USUAL_HEAT.roomC,
            outsideC: () => USUAL_HEAT.roomC,
            heatPerVolume: kilojoules * BATTER.hydroxidePerGram * 1e9,
            rates: rateTable(SAPONIFICATION, rate),
          }),
        })),
      ),
    );
    /** Of the weight of those still going. */
    const shareWhere = (at: number, is: (celsius: number) => boolean) => {
      const going = runs.filter(({ run }) => run.curve.length > at);
      const sum = (some: typeof going) => some.reduce((all, { weight }) => all + weight, 0);
      return sum(going.filter(({ run }) => is(run.curve[at]!))) / sum(going);
    };
    const usual = heated();
    const ends = runs.map(({ run }) => run.curve.length);
    expect(usual.curve.length).toBeGreaterThan(Math.min(...ends) + 5);
    for (const [at, { low, high }] of usual.curve.entries()) {
      expect(shareWhere(at, celsius => celsius < low)).toBeLessThan(0.1);
      expect(shareWhere(at, celsius => celsius <= low)).toBeGreaterThanOrEqual(0.1);
      expect(shareWhere(at, celsius => celsius < high)).toBeLessThan(0.9);
      expect(shareWhere(at, celsius => celsius <= high)).toBeGreaterThanOrEqual(0.9 - 1e-9);
    }
  });
});

/** The ends and the middle of a band, with a quarter, a half and a quarter of the weight. */
const threeOf = ({ low, typical, high }: Band) =>
  [
    [low, 0.25],
    [typical, 0.5],
    [high, 0.25],
  ] as const;

describe('a run', () => {
  const slow = rateTable(SAPONIFICATION, 1e-6);

  test('of a loaf that nothing warms peaks when it is poured', () => {
    const { peakCoreC, peakHours } = sealed({ heatPerVolume: 0 });
    expect([peakCoreC, peakHours]).toEqual([40, 0]);
  });

  test('that does not cool lasts a day: a point at the pour, and one every ten minutes to the end', () => {
    expect(sealed().curve).toHaveLength(24 * 6 + 1);
  });

  test('counts no heat as gel while there is no soap', () => {
    const hot = sealed({ startC: 90, wallStartC: 90, outsideC: () => 90, heatPerVolume: 0, rates: slow });
    expect(hot.peakCoreC).toBeCloseTo(90, 6);
    expect(hot.converted).toBeLessThan(0.4);
    expect(gelledShare(hot, 62)).toBe(0);
    expect(gelledShare(sealed({ startC: 90, wallStartC: 90, outsideC: () => 90 }), 62)).toBeCloseTo(1, 9);
  });

  test('goes on while it cools, until there is soap', () => {
    const section = mouldSection(LOAF, USUAL_HEAT, CAPACITY, 8);
    const cooling = { section, outsideC: () => 5, heatPerVolume: 0 };
    // Without soap to wait for it ends once it is six kelvins below its peak, within some hours.
    expect(sealed({ ...cooling, rates: rateTable(SAPONIFICATION, 50) }).curve.length).toBeLessThan(6 * 6);
    expect(sealed({ ...cooling, rates: slow }).curve).toHaveLength(24 * 6 + 1);
  });

  test('measures its edge at one depth, whatever the width of its cells', () => {
    const edgeOf = (cell: number) =>
      sealed({
        section: mouldSection(LOAF, USUAL_HEAT, CAPACITY, 8, cell),
        startC: 20,
        wallStartC: 20,
        outsideC: seconds => (seconds < 7200 ? 70 : 20),
        heatPerVolume: 0,
        rates: slow,
      }).peakEdgeC;
    expect(Math.abs(edgeOf(0.0075) - edgeOf(0.0025))).toBeLessThan(0.3);
  });

  test('measures its edge 2.5 mm inside: with cells of 5 mm, in the middle of an outermost one', () => {
    const section = mouldSection(LOAF, USUAL_HEAT, CAPACITY, 8, 0.005);
    const { reached, peakEdgeC } = sealed({ section });
    // The last column is the wall.
    const outermost = reached.filter(({ at }) => at % section.columns === section.columns - 2);
    expect(Math.min(...outermost.map(({ celsius }) => Math.abs(celsius - peakEdgeC)))).toBeLessThan(1e-6);
  });

  test('measures its edge half way up, far from a cold top', () => {
    const soap = (thickness: number, cells: number): Layer => ({
      thickness,
      cells,
      substance: { conductivity: 0.3, capacity: CAPACITY },
      soap: true,
    });
    const edgeUnder = (top: number) =>
      sealed({
        section: sectionOf({
          shape: 'plane',
          outward: [soap(0.04, 5)],
          upward: [soap(0.4, 10)],
          faces: { side: 2, top, bottom: 0 },
        }),
        startC: 20,
        outsideC: () => 20,
      }).peakEdgeC;
    expect(Math.abs(edgeUnder(1000) - edgeUnder(0))).toBeLessThan(0.5);
  });
});
