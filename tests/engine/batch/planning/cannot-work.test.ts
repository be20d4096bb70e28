import { describe, expect, test } from 'vitest';
import { planBatch } from '../../../../src/engine/batch/planning/plan.ts';
import type { PlanAnswer } from '../../../../src/engine/batch/planning/plan-answer.ts';
import { type PortionName, portionCalled } from '../../../../src/engine/batch/portions/portion-name.ts';
import { wordsIn } from '../../../../src/words/index.ts';
import { asked, refusalOf, type Written } from '../asked.ts';

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

  test('the oven is warmed to what was asked for', () => {
    const warmedTo = (written: Written) =>
      plan(written).timeline.flatMap(({ step, values }) => (step === 'warm-oven' ? [values] : []));
    expect(warmedTo({ process: 'oven', material: 'wood', oven: '70 C' })).toEqual([{ ovenC: 70 }]);
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

  // A salt bar and one of all coconut are made at 15 to 20 % (common practice).
  test('a salt bar or one of coconut is made at 20 % superfat; more than 25 is a lot in any bar', () => {
    const salted = { oils: 'olive 30%, coconut 70%', additives: 'salt 80%' };
    const coconut = { oils: 'coconut 100%' };
    const high = { oils: 'olive 30%, coconut 70%' };
    expect(warned({ ...coconut, superfat: 20.5 })).not.toContain('superfat-high');
    expect(warned({ ...coconut, superfat: 26 })).toContain('superfat-high');
    expect(warned({ ...salted, superfat: 20.5 })).not.toContain('superfat-high');
    expect(warned({ ...high, superfat: 20.5 })).toContain('superfat-high');
    expect(warned({ ...salted, superfat: 26 })).toContain('superfat-high');
  });

  test('a paste goes into a tub, a bar into its mould', () => {
    const paste = stepsOf({ oils: 'olive 70%, coconut 30%', lye: 'KOH 90%' });
    expect(paste).toContain('into-tub');
    expect(paste.filter(step => step.startsWith('pour-'))).toEqual([]);
    expect(stepsOf({ oils: 'olive 70%, coconut 30%' })).not.toContain('into-tub');
  });

  test.each([
    ['1:2', 'water-turned-round'],
    ['1:3', 'water-turned-round'],
    ['0.8:1', 'lye-too-strong'],
    ['1:9', 'lye-too-strong'],
  ])('water %s', (water, id) => {
    expect(refused({ water })).toBe(id);
  });

  test.each(['en', 'es'] as const)('plain ice neither smells nor turns yellow: %s', language => {
    const said = (liquid: string) => {
      const step = plan({ liquid }).timeline.find(one => one.step === 'mix-lye-frozen')!;
      return wordsIn(language).batch.jug.steps['mix-lye-frozen'](step.values as never);
    };
    expect(said('ice')).not.toMatch(/smell|huele/iu);
    expect(said('goat milk')).toMatch(/smell|huele/iu);
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
    for (const name of [
      'paraffin',
      'mineral oil',
      'candle wax',
      'jalea de petroleo',
      'parafina',
      'silicone oil',
    ])
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

describe('a portion that may be left with lye is told', () => {
  test('of oil dipped for a neighbour, where the whole batch stays fat enough', () => {
    const written = {
      superfat: 5,
      portions: '1 cup gold mica in 1 Tbsp dipped oil; 1 cup ultramarine blue in 1 Tbsp dipped oil; rest',
    };
    const { portions, superfat, warnings } = plan(written);
    const told = warnings.filter(({ id }) => id === 'portion-superfat-negative');
    const low = portions.filter(one => one.superfat - (superfat.band.typical - superfat.band.low) < 0);
    expect(superfat.band.low).toBeGreaterThanOrEqual(0);
    expect(low.length).toBeGreaterThan(0);
    expect(told.map(({ values }) => (values as { name: PortionName }).name)).toEqual(
      low.map(({ name }) => portionCalled(name)),
    );
  });

  test('a salt bar without superfat is told too', () => {
    expect(warned({ oils: 'coconut 100%', additives: 'salt 50%', superfat: 0 })).toContain(
      'superfat-may-go-negative',
    );
  });
});

describe('a batch beyond a household', () => {
  test.each([
    ['10 kg oils', false],
    ['11 kg oils', true],
    ['100 kg oils', true],
  ])('%s: %s', (size, told) => {
    expect(warned({ size }).includes('batch-large')).toBe(told);
  });
});

describe('a sour liquid in the jug heats it', () => {
  test('by its heat of neutralisation', () => {
    const rise = (liquid: string) => plan({ liquid }).lye.mixingRise;
    // 5 % acetic acid, 60.05 g/mol, 56 kJ/mol (CRC Handbook, from memory) over some 500 g of jug: about 9 K.
    const more = rise('vinegar') - plan({}).lye.mixingRise;
    expect(more).toBeGreaterThan(5);
    expect(more).toBeLessThan(12);
  });

  test('its step says so, and plain water’s does not', () => {
    const sour = (written: Written) =>
      plan(written).timeline.find(({ step }) => step === 'mix-lye')?.values as { sour: boolean };
    expect(sour({ liquid: 'vinegar' }).sour).toBe(true);
    expect(sour({ liquid: 'lemon juice' }).sour).toBe(true);
    expect(sour({ liquid: 'tea' }).sour).toBe(false);
  });
});

describe('sugar makes a batch hotter, in numbers too', () => {
  const heatOf = (additives: string) => plan({ ...(additives !== '' && { additives }) }).heat;

  test('50 g of honey raises the chance to overheat, and the core', () => {
    const [plain, honey] = [heatOf(''), heatOf('honey 50 g')];
    expect(honey.overheatChance).toBeGreaterThan(plain.overheatChance);
    expect(honey.peakCoreC).toBeGreaterThan(plain.peakCoreC + 3);
  });

  test('more never cools it: 0, 5, 10, 20, 30, 50 g', () => {
    const cores = ['', 'honey 5 g', 'honey 10 g', 'honey 20 g', 'honey 30 g', 'honey 50 g'].map(
      one => heatOf(one).peakCoreC,
    );
    expect([...cores].sort((a, b) => a - b)).toEqual(cores);
    const sugar = ['', 'sugar 5 g', 'sugar 30 g', 'sugar 50 g'].map(one => heatOf(one).peakCoreC);
    expect([...sugar].sort((a, b) => a - b)).toEqual(sugar);
  });

  test('a core that comes to 100 °C is warned of, one below is not', () => {
    const warned = (written: Parameters<typeof plan>[0]) => {
      const { heat, warnings } = plan(written);
      return { peak: heat.peakCoreC, boils: warnings[0]?.id === 'boils-over' };
    };
    const written = ['38 C', '44 C', '48 C', '52 C', '60 C'].map(start =>
      warned({ oils: 'coconut 100%', additives: 'honey 3%', start }),
    );
    expect(written.some(({ boils }) => boils) && written.some(({ boils }) => !boils)).toBe(true);
    for (const { peak, boils } of written) expect(boils).toBe(peak >= 100);
  });

  test('what would overheat is not wrapped and warmed, whatever was asked', () => {
    for (const process of ['insulated', 'oven'] as const) {
      const hot = plan({ start: '60 C', heat: { process } });
      const steps = hot.timeline.map(({ step }) => step);
      expect(steps).toContain('too-hot-to-wrap');
      expect(steps.filter(step => /^(?:wrap|into-oven|warm-oven)$/.test(step))).toEqual([]);
    }
    const cool = plan({ start: '30 C', oils: 'olive 100%', heat: { process: 'insulated' } });
    expect(cool.heat.peakCoreC).toBeLessThan(100);
    expect(cool.timeline.map(({ step }) => step)).toContain('wrap');
  });

  test('with honey in it, one reply never wraps and forbids wrapping', () => {
    for (const start of ['25 C', '38 C', '50 C'])
      for (const process of ['insulated', 'ambient'] as const) {
        const { timeline, warnings } = plan({ start, additives: 'honey 2%', heat: { process } });
        const isWrapped = timeline.some(({ step }) => step === 'wrap');
        const heats = warnings.find(({ id }) => id === 'additive-heats');
        expect(heats?.values).toMatchObject({ wrapped: isWrapped });
      }
  });

  test('lye that was stirred into frozen milk is not asked to be warm', () => {
    const check = (start: string) =>
      plan({ liquid: 'goat milk', start }).timeline.find(({ step }) => step === 'check-temperatures')?.values;
    expect(check('55 C')).toMatchObject({ coldLye: true });
    expect(check('35 C')).toMatchObject({ coldLye: false });
  });

  test('milk in the place of water runs hotter than water', () => {
    expect(plan({ liquid: 'goat milk' }).heat.peakCoreC).toBeGreaterThan(plan({}).heat.peakCoreC);
  });
});
