import { describe, expect, test } from 'vitest';
import { crackleRisk } from '../../../src/engine/heat/crackle.ts';
import { estimateHeat, type HotBatter } from '../../../src/engine/heat/estimate.ts';
import { gelKind, gelOnset, ONSET_OFFSETS } from '../../../src/engine/heat/gel.ts';
import { rateFrom, rateTable, SAPONIFICATION } from '../../../src/engine/heat/kinetics.ts';
import type { HeatShape } from '../../../src/engine/heat/mould.ts';
import { gelledShare, type LoafRun } from '../../../src/engine/heat/run.ts';
import { type HeatSetting, USUAL_HEAT } from '../../../src/engine/heat/setting.ts';
import { outsideTemperature } from '../../../src/engine/heat/surroundings.ts';
import { parseTemperature } from '../../../src/engine/heat/temperature.ts';

const LOAF: HeatShape = { shape: 'loaf', widthCm: 9, heightCm: 7 };
/** A common recipe at 33 % lye: 1000 g oils, 143 g NaOH, 291 g water. */
const BATTER: HotBatter = {
  density: 1,
  heatCapacity: 2.42,
  hydroxidePerGram: 0.0025,
  waterPercent: 23,
  speed: 1,
};
const WET: HotBatter = { ...BATTER, waterPercent: 31, hydroxidePerGram: 0.00225 };
const heated = (setting: Partial<HeatSetting> = {}, batter = BATTER, shape: HeatShape = LOAF) =>
  estimateHeat(shape, batter, { ...USUAL_HEAT, ...setting });

describe('saponification', () => {
  test('goes about twice as fast 12 C warmer (50 kJ/mol, Arrhenius)', () => {
    const table = rateTable(SAPONIFICATION, 1.2);
    const ratio = rateFrom(table, 52) / rateFrom(table, 40);
    expect(ratio).toBeCloseTo(Math.exp((50 / 8.314462618e-3) * (1 / 313.15 - 1 / 325.15)), 3);
    expect(rateFrom(table, 40)).toBeCloseTo(1.2 / 3600, 9);
  });
});

describe('gel', () => {
  test('needs more heat with less water', () => {
    expect(gelOnset(40)).toBe(62);
    expect(gelOnset(20)).toBe(88);
    expect(gelOnset(32.5)).toBeCloseTo(68.5, 9);
  });

  test('onsets are weighed evenly about the typical one', () => {
    expect(ONSET_OFFSETS.reduce((sum, [, weight]) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(ONSET_OFFSETS.reduce((sum, [offset, weight]) => sum + offset * weight, 0)).toBeCloseTo(0, 12);
  });

  test('has come to a part that just reached its onset', () => {
    const reached = [
      { celsius: 70, share: 0.25, at: 0 },
      { celsius: 62, share: 0.5, at: 1 },
      { celsius: 61.9, share: 0.25, at: 2 },
    ];
    const run = { reached } as unknown as LoafRun;
    expect([70, 62, 61, 71].map(onset => gelledShare(run, onset))).toEqual([0.25, 0.75, 1, 0]);
  });

  test('is a ring when part of the section got there', () => {
    expect([0, 0.5, 1].map(gelKind)).toEqual(['none', 'partial', 'full']);
  });
});

describe('a loaf in its first day', () => {
  test('has odds that add up to one, and bands about what is typical', () => {
    for (const process of ['ambient', 'insulated', 'oven', 'fridge'] as const) {
      const { gel, peakCoreBand, peakEdgeBand } = heated({ process });
      expect(gel.none + gel.partial + gel.full).toBeCloseTo(1, 9);
      expect(peakCoreBand.low).toBeLessThanOrEqual(peakCoreBand.typical);
      expect(peakCoreBand.high).toBeGreaterThanOrEqual(peakCoreBand.typical);
      expect(peakEdgeBand.typical).toBeLessThanOrEqual(peakCoreBand.typical);
    }
  });

  test('gels when wrapped, and does not in the fridge', () => {
    expect(heated({ process: 'insulated', startC: 45 }, WET).verdict).toBe('full');
    expect(heated({ process: 'oven' }, WET).verdict).toBe('full');
    expect(heated({ process: 'fridge', startC: 30 }).verdict).toBe('none');
  });

  test('says so where it cannot tell', () => {
    const { verdict, gel } = heated({}, WET);
    expect(verdict).toBe('uncertain');
    expect(Math.max(gel.none, gel.partial, gel.full)).toBeLessThan(0.65);
  });

  test('peaks higher when poured warmer, kept in a warmer room, or wrapped', () => {
    const { peakCoreC } = heated();
    expect(heated({ startC: 48 }).peakCoreC).toBeGreaterThan(peakCoreC + 3);
    expect(heated({ roomC: 30 }).peakCoreC).toBeGreaterThan(peakCoreC);
    expect(heated({ process: 'insulated' }).peakCoreC).toBeGreaterThan(peakCoreC + 3);
  });

  test('warms more in a wide loaf than in a bar-sized cavity', () => {
    const cavity: HeatShape = { shape: 'round', diameterCm: 5, heightCm: 5 };
    expect(heated({}, BATTER, cavity).peakCoreC).toBeLessThan(heated().peakCoreC - 5);
  });

  test('never gets hotter than its own heat can make it', () => {
    // All of it at once and nothing lost: 78 kJ/mol x 0.0025 mol/g x 0.9 / 2.42 J/(g K) = 72.5 K.
    const most = 38 + (78_000 * BATTER.hydroxidePerGram * 0.9) / BATTER.heatCapacity;
    expect(heated({ process: 'insulated', roomC: 38 }).peakCoreBand.high).toBeLessThan(most);
  });

  test('shows a ring where the core gels and the edge does not', () => {
    const { ring, gel } = heated({}, WET);
    expect(ring.chance).toBe(gel.partial);
    expect(ring.millimetresFromSide).toBeGreaterThan(2);
    expect(ring.millimetresFromSide).toBeLessThan(45);
    expect(heated({ process: 'fridge', startC: 15, roomC: 10 }).ring).toEqual({
      chance: 0,
      millimetresFromSide: undefined,
    });
  });

  test('gives the same answer twice', () => {
    expect(heated()).toEqual(heated());
  });
});

test('a switched-off oven falls back to the room', () => {
  const outside = outsideTemperature({ ...USUAL_HEAT, process: 'oven', ovenC: 77 });
  expect(outside(0)).toBe(77);
  expect(outside(12 * 3600)).toBeLessThan(22);
});

describe('a temperature', () => {
  test.for([
    ['38 C', 38],
    ['100F', (100 - 32) / 1.8],
    ['-1 °C', -1],
    ['37,5 grados C', 37.5],
  ] as const)('%s', ([text, degrees]) => {
    expect(parseTemperature(text)).toBeCloseTo(degrees, 9);
  });

  test.for([
    ['60', 'temperature-without-unit'],
    ['warm', 'temperature-without-unit'],
    ['400 F', 'temperature-out-of-range'],
  ] as const)('%s is refused: %s', ([text, id]) => {
    expect(() => parseTemperature(text)).toThrow(expect.objectContaining({ id }));
  });
});

describe('white pigment', () => {
  const setting: HeatSetting = { ...USUAL_HEAT, process: 'insulated', startC: 45 };
  const loaf = { shape: LOAF, batter: WET, setting, drier: () => BATTER };
  const { gel } = estimateHeat(LOAF, WET, setting);

  test('crackles where the loaf runs hot, and each lever says what it brings', () => {
    const { risk, levers } = crackleRisk({ ceilingShare: 0.5, lyeStrength: 27 }, gel, loaf);
    expect(risk).toBe('high');
    expect(levers.map(({ id }) => id).sort()).toEqual([
      'fridge',
      'less-water',
      'no-insulation',
      'start-cooler',
    ]);
    for (const { gelChance } of levers.filter(({ id }) => id !== 'less-water')) {
      expect(gelChance).toBeLessThan(gel.partial + gel.full);
    }
    expect(levers[0]!.gelChance).toBeLessThanOrEqual(levers.at(-1)!.gelChance);
  });

  test('is no risk when there is none of it', () => {
    expect(crackleRisk({ ceilingShare: 0, lyeStrength: 27 }, gel, loaf)).toEqual({
      risk: 'none',
      score: 0,
      levers: [],
    });
  });

  test('scores lower with less white and with less water', () => {
    const score = (ceilingShare: number, lyeStrength: number) =>
      crackleRisk({ ceilingShare, lyeStrength }, gel, loaf).score;
    expect(score(0.2, 27)).toBeLessThan(score(1, 27));
    expect(score(1, 36)).toBeLessThan(score(1, 27));
  });
});

describe('the curve of the core', () => {
  test.each([
    ['left to itself', {}],
    ['wrapped', { process: 'insulated' }],
    ['in the fridge', { process: 'fridge', roomC: 18, startC: 34 }],
  ] satisfies readonly (readonly [string, Partial<HeatSetting>])[])(
    'begins at the pour, has the peak that is told, and lies within its band (%s)',
    (_, setting) => {
      const { curve, peakCoreC, peakHours } = heated(setting);
      expect(curve[0]).toMatchObject({ hours: 0, typical: { ...USUAL_HEAT, ...setting }.startC });
      const hottest = curve.reduce((best, one) => (one.typical > best.typical ? one : best));
      expect(Math.abs(hottest.typical - peakCoreC)).toBeLessThan(1);
      expect(Math.abs(hottest.hours - peakHours)).toBeLessThan(0.4);
      for (const { low, typical, high } of curve) {
        expect(low).toBeLessThanOrEqual(high);
        expect(Number.isFinite(typical)).toBe(true);
      }
      // The typical run is one of those the band is made of, early on, before any of them has ended.
      const early = curve.filter(({ hours }) => hours <= peakHours / 2);
      for (const { low, typical, high } of early) {
        expect(typical).toBeGreaterThanOrEqual(low - 1e-9);
        expect(typical).toBeLessThanOrEqual(high + 1e-9);
      }
      for (const [at, { hours }] of curve.entries()) expect(hours).toBeCloseTo(at / 6, 9);
    },
  );
});
