import { describe, expect, test } from 'vitest';
import { planBatch } from '../../../src/engine/batch/planning/plan.ts';
import type { PlanAnswer } from '../../../src/engine/batch/planning/plan-answer.ts';
import { asked, refusalOf, type Written } from './asked.ts';

const plan = (written: Written): PlanAnswer => planBatch(asked(written));
const stepsOf = (written: Written) => plan(written).timeline.map(({ step }) => step);
const warned = (written: Written) => plan(written).warnings.map(({ id }) => id);
const refused = (written: Written) => refusalOf(() => plan(written)).id;

describe('a plan that cannot work says so', () => {
  // Oven of 77 C (170 F) and plastic to 60 C, coconut melting at 24 C: common practice.
  test('an oven is no warmer than soap and its mould bear', () => {
    expect(refused({ process: 'oven', material: 'plastic', oven: '120 C' })).toBe('oven-too-hot');
    expect(refused({ process: 'oven', material: 'plastic', oven: '65 C' })).toBe('oven-too-hot');
    expect(refused({ process: 'oven', material: 'wood', oven: '90 C' })).toBe('oven-too-hot');
    expect(asked({ process: 'oven', material: 'wood', oven: '170 F' }).heat.ovenC).toBeCloseTo(76.7, 1);
    expect(asked({ process: 'oven', material: 'plastic', oven: '60 C' }).heat.ovenC).toBe(60);
    expect(asked({ process: 'oven', material: 'plastic' }).heat.ovenC).toBe(60);
  });

  test('coconut is solid in a cold pour', () => {
    expect(refused({ oils: 'coconut 40%, olive 60%', start: '5 C' })).toBe('blend-sets-before-pour');
    expect(warned({ oils: 'coconut 40%, olive 60%', start: '25 C' })).not.toContain('melts-above-pour');
  });

  test.each([
    ['drain cleaner', 'lye-drain-cleaner'],
    ['crystal drain opener NaOH', 'lye-drain-cleaner'],
    ['desatascador', 'lye-drain-cleaner'],
  ])('lye from %s is refused by name', (lye, id) => {
    expect(refused({ lye })).toBe(id);
  });

  test.each(['bleach', 'hydrogen peroxide', 'lejía', 'half water, half bleach', 'agua oxigenada'])(
    '%s is no liquid for soap',
    liquid => {
      expect(refused({ liquid })).toBe('liquid-is-bleach');
    },
  );

  test('a salt bar is made at 20 % superfat; more than 25 is a lot in any bar', () => {
    const salted = { oils: 'coconut 100%', additives: 'salt 80%' };
    const high = { oils: 'coconut 100%' };
    expect(warned({ ...salted, superfat: 20.5 })).not.toContain('superfat-high');
    expect(warned({ ...high, superfat: 20.5 })).toContain('superfat-high');
    expect(warned({ ...salted, superfat: 26 })).toContain('superfat-high');
  });

  test('beeswax and stearic acid melt above the pour', () => {
    expect(warned({ oils: 'olive 92%, beeswax 8%' })).toContain('melts-above-pour');
    expect(warned({ oils: 'olive 92%, beeswax 8%', start: '70 C' })).not.toContain('melts-above-pour');
    expect(warned({ oils: 'olive 90%, stearic acid 10%' })).toEqual(
      expect.arrayContaining(['melts-above-pour', 'acid-thickens-at-once']),
    );
    expect(refused({ oils: 'stearic acid 50%, coconut 50%' })).toBe('blend-sets-before-pour');
    expect(stepsOf({ oils: 'stearic acid 50%, coconut 50%', start: '75 C' })).toContain('mix-lye');
  });

  test('a wax is half no soap, and paraffin none at all', () => {
    expect(warned({ oils: 'olive 90%, jojoba 10%' })).toContain('wax-stays');
    expect(refused({ oils: 'beeswax 100%', start: '80 C' })).toBe('wax-too-much');
    for (const name of ['paraffin', 'mineral oil', 'candle wax', 'vaselina', 'parafina', 'silicone oil'])
      expect(refused({ oils: `${name} 20%, olive 80%` })).toBe('oil-never-soap');
  });

  test('potassium soap is a paste: nothing is unmoulded or cut', () => {
    const steps = stepsOf({ lye: 'KOH' });
    expect(steps).toEqual(expect.arrayContaining(['keep-paste', 'ready-tub']));
    expect(steps).not.toContain('unmould');
    expect(steps).not.toContain('line-mould');
    expect(warned({ lye: 'KOH' })).toContain('koh-paste');
    expect(warned({ lye: 'NaOH 70% + KOH 30%' })).toContain('koh-soft');
    expect(stepsOf({ lye: 'NaOH 95% + KOH 5%' })).toContain('unmould');
  });

  test('a bar with 50 % salt is cut within hours, not the next day', () => {
    const { timeline } = plan({ additives: 'salt 50%' });
    const cut = timeline.find(({ step }) => step === 'cut-salt-bar')!;
    expect(-cut.minutesBeforePour).toBeLessThanOrEqual(4 * 60);
    expect(timeline.map(({ step }) => step)).not.toContain('unmould');
    expect(stepsOf({ additives: 'salt 5%' })).toContain('unmould');
    expect(warned({ liquid: 'brine 100%', water: '38% of oils' })).not.toContain('salt-bar');
  });

  test.for([
    ['purity:50', { purity: 50 }],
    ['NaOH 50%', { lye: 'NaOH 50%' }],
    ['KOH 70%', { lye: 'KOH 70%' }],
  ] as const)('%s is no purity of dry lye', ([, written]) => {
    expect(refused(written)).toBe('purity-out-of-range');
  });

  test('silicone cavities have no hot moment to watch, a loaf has', () => {
    const cavities = { size: '12 x 100 ml', material: 'silicone' } as const;
    expect(stepsOf(cavities)).toContain('stays-cool');
    expect(stepsOf(cavities)).not.toContain('watch-heat');
    expect(stepsOf({})).toContain('watch-heat');
  });
});

describe('sugar makes a batch hotter, in numbers too', () => {
  const heatOf = (additives: string) => plan({ ...(additives !== '' && { additives }) }).heat;

  test('200 g of honey raises the chance to overheat, and the core', () => {
    const [plain, honey] = [heatOf(''), heatOf('honey 200 g')];
    expect(honey.overheatChance).toBeGreaterThan(plain.overheatChance);
    expect(honey.peakCoreC).toBeGreaterThan(plain.peakCoreC + 3);
  });

  test('more never cools it: 0, 10, 30, 60, 120, 200 g', () => {
    const cores = ['', 'honey 10 g', 'honey 30 g', 'honey 60 g', 'honey 120 g', 'honey 200 g'].map(
      one => heatOf(one).peakCoreC,
    );
    expect([...cores].sort((a, b) => a - b)).toEqual(cores);
    const sugar = ['', 'sugar 5 g', 'sugar 30 g', 'sugar 100 g'].map(one => heatOf(one).peakCoreC);
    expect([...sugar].sort((a, b) => a - b)).toEqual(sugar);
  });

  test('milk in the place of water runs hotter than water', () => {
    expect(plan({ liquid: 'goat milk' }).heat.peakCoreC).toBeGreaterThan(plan({}).heat.peakCoreC);
  });
});
