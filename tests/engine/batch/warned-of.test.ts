import { describe, expect, test } from 'vitest';
import { oilGramsFor } from '../../../src/engine/batch/fit.ts';
import { oilById } from '../../../src/engine/batch/oils/find-oil.ts';
import { planClass } from '../../../src/engine/batch/planning/class-kits.ts';
import { planNumbers } from '../../../src/engine/batch/planning/plan.ts';
import type { PlanWarning, PlanWarnings } from '../../../src/engine/batch/planning/plan-warning.ts';
import { planWarnings } from '../../../src/engine/batch/planning/warnings.ts';
import { fillPortions } from '../../../src/engine/batch/portions/portions.ts';
import { makeRecipe } from '../../../src/engine/batch/recipe.ts';
import { asked, type Written } from './asked.ts';

/** What a plan warns of, without the seconds that its heat takes. */
function warnings(written: Written, peakCoreC = 60): readonly PlanWarning[] {
  const request = asked(written);
  const recipe = makeRecipe(request, oilGramsFor(request));
  const { superfat } = planNumbers(request);
  return planWarnings(request, recipe, fillPortions(recipe, request), { superfat, peakCoreC });
}
const warned = (written: Written, peakCoreC?: number) => warnings(written, peakCoreC).map(({ id }) => id);
function valuesOf<Id extends keyof PlanWarnings>(id: Id, written: Written, peakCoreC?: number) {
  const found = warnings(written, peakCoreC).find(one => one.id === id);
  return found?.values as PlanWarnings[Id] | undefined;
}

/** Each bound met from both sides (common practice, where the code names no other source). */
describe('a plan warns from where it matters', () => {
  test.each<[keyof PlanWarnings, Written, Written]>([
    ['lye-strong', { water: '40% lye' }, { water: '40.1% lye' }],
    ['lye-weak', { water: '25% lye' }, { water: '24.9% lye' }],
    ['batch-large', { size: '10 kg oils' }, { size: '10.1 kg oils' }],
    ['fragrance-limit', { fragrance: '5%' }, { fragrance: '5.1%' }],
    ['superfat-high', { superfat: 19.9 }, { superfat: 20.1 }],
    // Soap of coconut, and bars full of salt, are made at 20 %.
    ['superfat-high', { oils: 'coconut 100%', superfat: 24.9 }, { oils: 'coconut 100%', superfat: 25.1 }],
    ['superfat-high', { additives: 'salt 25%', superfat: 24.9 }, { additives: 'salt 25%', superfat: 25.1 }],
    ['salt-bar', { additives: 'salt 19.9%' }, { additives: 'salt 20%' }],
    [
      'acid-thickens-at-once',
      { oils: 'olive 97.5%, stearic acid 2.5%' },
      { oils: 'olive 97%, stearic acid 3%' },
    ],
    ['wax-stays', { oils: 'olive 95.5%, beeswax 4.5%' }, { oils: 'olive 95%, beeswax 5%' }],
    ['melts-above-pour', { oils: 'olive 98%, beeswax 2%' }, { oils: 'olive 97%, beeswax 3%' }],
    ['fragrance-browns', { fragrance: '3%, vanillin 0%' }, { fragrance: '3%, vanillin 0.1%' }],
  ])('%s: not of %o, but of %o', (id, quiet, told) => {
    expect(warned(quiet)).not.toContain(id);
    expect(warned(told)).toContain(id);
  });

  test.each([
    [0.9, 'slight'],
    [1, 'tan'],
    [4.9, 'tan'],
    [5, 'brown'],
    [9.9, 'brown'],
    [10, 'dark'],
  ] as const)('%s percent of vanillin in the scent turns a bar %s', (vanillin, level) => {
    const told = valuesOf('fragrance-browns', { fragrance: `4%, vanillin ${vanillin}%` });
    expect(told?.level).toBe(level);
    // Four parts in a hundred of the oils, of which so much is vanillin.
    expect(told?.percentOfOils).toBeCloseTo((4 * vanillin) / 100, 12);
  });

  test('lye is told by its strength, a batch by its weight', () => {
    expect(valuesOf('lye-strong', { water: '45% lye' })?.percent).toBeCloseTo(45, 9);
    expect(valuesOf('lye-weak', { water: '22% lye' })?.percent).toBeCloseTo(22, 9);
    expect(valuesOf('batch-large', { size: '12 kg oils' })).toEqual({ kilograms: 12, most: 10 });
    expect(valuesOf('superfat-high', { superfat: 25, scale: 0.001 })?.percent).toBeCloseTo(25, 1);
    expect(valuesOf('fragrance-limit', { fragrance: '5.5%' })).toEqual({ percentOfOils: 5.5 });
    expect(valuesOf('start-hot', { start: '62 C', oils: 'olive 95%, beeswax 5%' })).toEqual({ startC: 62 });
  });

  test('a loaf that comes to where water boils erupts, and is not wrapped', () => {
    expect(valuesOf('boils-over', {}, 99)).toBeUndefined();
    expect(valuesOf('boils-over', {}, 101)).toMatchObject({ peakC: 101, sweet: false });
    expect(valuesOf('boils-over', { additives: 'honey 20 g' }, 101)).toMatchObject({ sweet: true });
    const wrapped = (process: 'ambient' | 'insulated' | 'oven' | 'fridge', peakC: number) =>
      valuesOf('additive-heats', { additives: 'honey 20 g', heat: { process } }, peakC)?.wrapped;
    expect([wrapped('insulated', 70), wrapped('oven', 70)]).toEqual([true, true]);
    expect([wrapped('ambient', 70), wrapped('fridge', 70)]).toEqual([false, false]);
    expect(wrapped('insulated', 101)).toBe(false);
  });

  test('a scale that steps coarsely weighs less lye, and by how much is told', () => {
    const values = valuesOf('lye-rounded-down', { scale: 1 });
    const { lye } = planNumbers(asked({ scale: 1 }));
    const { lye: exact } = planNumbers(asked({ scale: 0.000001 }));
    expect(values?.grams).toBeCloseTo(exact.grams - lye.grams, 3);
    // 95 points of the demand are what the lye of a 5 % superfat takes.
    expect(values?.points).toBeCloseTo((95 * (exact.grams - lye.grams)) / exact.grams, 3);
    expect(valuesOf('lye-rounded-down', { scale: 0.01 })).toBeUndefined();
  });

  test('a purity is assumed for each alkali of which none is told', () => {
    const assumed = (lye: string) =>
      warnings({ lye }).flatMap(({ id, values }) => (id === 'purity-assumed' ? [values] : []));
    expect(assumed('NaOH')).toEqual([{ alkali: 'NaOH', percent: 100 }]);
    expect(assumed('NaOH 98%')).toEqual([]);
    expect(assumed('50% NaOH 50% KOH').map(one => (one as { alkali: string }).alkali)).toEqual([
      'NaOH',
      'KOH',
    ]);
    expect(assumed('masterbatch 50%')).toEqual([]);
  });

  test('the oil that makes superfat uncertain is the one whose range weighs most in the blend', () => {
    const oil = (oils: string) => valuesOf('superfat-may-go-negative', { oils, superfat: 0.5 })?.oil;
    expect(oil('olive 90%, shea 10%')).toEqual(oilById('olive').names);
    expect(oil('olive 10%, shea 90%')).toEqual(oilById('shea').names);
    const values = valuesOf('superfat-may-go-negative', { oils: 'olive 100%', superfat: 0.5 });
    const { low, high } = oilById('olive').saponification;
    expect(values).toMatchObject({ low, high });
    expect(values!.lowest).toBeLessThan(0);
  });

  test('who asked for one superfat hears of another from a point on', () => {
    const shifted = (portions: string) =>
      valuesOf('superfat-shifted', { portions, superfat: 5, scale: 0.001 });
    const much = shifted('rest gold mica in 2 Tbsp olive');
    expect(much?.asked).toBe(5);
    // 27 g of olive oil in a kilogram of oils: 2.6 % more fat, of which all stays fat.
    expect(much!.comes).toBeCloseTo(5 + 2.4, 0);
    expect(shifted('rest gold mica in 1 tsp olive')).toBeUndefined();
  });

  test('a portion is spoken of by name, with its own figure', () => {
    const fat = valuesOf('portion-superfat-high', { portions: 'Sky: 1 cup gold mica in 3 Tbsp olive; rest' });
    expect(fat?.name).toEqual({ told: 'Sky' });
    expect(fat!.percent).toBeGreaterThan(20);
    // Where the whole pot is that fat, it is said of the batch.
    expect(warned({ superfat: 21, portions: 'Sky: 1 cup gold mica in 3 Tbsp olive; rest' })).not.toContain(
      'portion-superfat-high',
    );
    const wet = { portions: 'Sky: 1 cup gold mica in 3 Tbsp water; rest' };
    expect(valuesOf('portion-lye-weak', { ...wet, water: '27% lye' })?.name).toEqual({ told: 'Sky' });
    expect(warned({ ...wet, water: '24% lye' })).not.toContain('portion-lye-weak');
  });

  test('a scent that speeds is worse where the batter is drawn or layered', () => {
    const drawn = (swirl: 'in-the-pot' | 'drop' | 'layered' | 'hanger' | 'single') =>
      valuesOf('fragrance-speeds', { fragrance: '3% accelerating', swirl })?.drawn;
    expect([drawn('hanger'), drawn('drop'), drawn('layered')]).toEqual([true, true, true]);
    expect([drawn('in-the-pot'), drawn('single')]).toEqual([false, false]);
    expect(valuesOf('fragrance-speeds', { fragrance: '3% jasmine' })?.name).toBe('jasmine');
    expect(valuesOf('fragrance-speeds', { fragrance: '3% jasmine accelerating' })?.name).toBeUndefined();
    expect(valuesOf('fragrance-unknown', { fragrance: '3% xyzzy' })?.text).toBe('xyzzy');
  });

  // Citric acid: three protons in 192.12 g dry, 210.14 g with its water (molar masses, CRC Handbook); NaOH 39.997 g.
  test.each([
    ['citric acid 10 g', 'monohydrate', 210.14],
    ['anhydrous citric acid 10 g', 'anhydrous', 192.12],
  ] as const)('%s eats lye by its protons', (additives, form, molar) => {
    const values = valuesOf('citric-eats-lye', { additives });
    expect(values?.form).toBe(form);
    expect(values?.grams).toBe(10);
    expect(values?.lyeGrams).toBeCloseTo((10 * 3 * 39.997) / molar, 1);
    // The other of the two would be off by the difference, in points of the lye.
    const apart = Math.abs((30 * 39.997) / 192.12 - (30 * 39.997) / 210.14);
    const { lye } = planNumbers(asked({ additives }));
    expect(values?.points).toBeCloseTo((95 * apart) / (lye.grams - values!.lyeGrams), 1);
  });

  test('a salty water is told by its salt', () => {
    const salt = valuesOf('liquid-salt', { liquid: 'sea water 200 g' });
    // The sea holds 3.5 % of salt (UNESCO 1981).
    expect(salt?.grams).toBeCloseTo(7, 0);
    expect(salt?.percent).toBeCloseTo(salt!.grams / 10, 9);
  });
});

describe('the jug warns', () => {
  test('of lye that stands stronger in it than in the batch', () => {
    const strong = { water: '33% lye', liquid: 'coconut milk 150 g in the oils' };
    expect(valuesOf('jug-strong', strong)!.percent).toBeGreaterThan(40);
    expect(warned({ water: '33% lye' })).not.toContain('jug-strong');
    expect(valuesOf('liquid-goes-into-oils', strong)).toEqual({ additive: 'coconut-milk', grams: 150 });
  });

  test.each([
    ['beer', true],
    ['wine', false],
  ] as const)('of %s, whose alcohol is boiled off', (liquid, fizzes) => {
    const told = valuesOf('boil-off-alcohol', { liquid });
    expect(told).toMatchObject({ additive: liquid, fizzes });
    expect(told!.percent).toBeGreaterThan(3);
  });

  test('of what has to stay cold, and not of ice', () => {
    expect(valuesOf('milk-keep-cold', { liquid: 'frozen goat milk' })?.additive).toBe('goat-milk');
    expect(warned({ liquid: 'ice 50%' })).not.toContain('milk-keep-cold');
    expect(warned({ liquid: 'aloe juice' })).not.toContain('milk-keep-cold');
  });

  test('of a label that is to be read', () => {
    expect(warned({ liquid: 'hydrosol' })).toContain('liquid-read-label');
    expect(warned({ liquid: 'tea' })).not.toContain('liquid-read-label');
  });

  test('of the fat in a liquid from a third of a point on', () => {
    expect(valuesOf('liquid-fat', { liquid: 'coconut milk' })!.points).toBeGreaterThan(0.3);
    expect(warned({ liquid: 'coconut milk 5 g in the oils' })).not.toContain('liquid-fat');
    expect(warned({ liquid: 'tea' })).not.toContain('liquid-fat');
  });

  test('of acid that eats a tenth of a gram and more', () => {
    expect(valuesOf('liquid-eats-lye', { liquid: 'vinegar 100 g' })!.lyeGrams).toBeGreaterThan(3);
    expect(warned({ liquid: 'tea' })).not.toContain('liquid-eats-lye');
  });

  test('of what potassium makes of a bar', () => {
    expect(valuesOf('koh-paste', { lye: 'KOH' })?.percent).toBeCloseTo(100, 6);
    expect(warned({ lye: '5% KOH 95% NaOH' })).not.toContain('koh-soft');
    expect(warned({ lye: '20% KOH 80% NaOH' })).toContain('koh-soft');
    expect(warned({ lye: '20% KOH 80% NaOH' })).not.toContain('koh-paste');
    expect(warned({ lye: 'KOH', additives: 'salt 25%' })).not.toContain('salt-bar');
  });
});

describe('a class buys for all its stations', () => {
  const plan = asked({
    liquid: 'goat milk 100 g',
    additives: 'honey 10 g',
    portions: '1 cup gold mica; rest plain',
  });

  test('what each takes, so many times', () => {
    const { station, totals } = planClass(plan, { people: 6, stations: 3, planIsFor: 'station' });
    for (const { id, grams } of station.additives)
      expect(totals.additives.find(one => one.id === id)?.grams).toBeCloseTo(3 * grams, 9);
    expect(totals.additives).toHaveLength(2);
    expect(totals.waterGrams).toBeCloseTo(3 * station.water.grams, 9);
    expect(totals.lyeGrams).toBeCloseTo(3 * station.lye.grams, 9);
  });

  test('of dissolved lye the whole solution', () => {
    const dissolved = planClass(asked({ lye: 'NaOH masterbatch 50%' }), {
      people: 2,
      stations: 2,
      planIsFor: 'station',
    });
    // Half of it is water.
    expect(dissolved.totals.lyeGrams).toBeCloseTo(4 * dissolved.station.lye.grams, 6);
  });

  test('as many people at each as come, one more at the first ones', () => {
    const at = (people: number, stations: number) =>
      planClass(plan, { people, stations, planIsFor: 'station' }).peopleAt;
    expect(at(7, 3)).toEqual([3, 2, 2]);
    expect(at(3, 3)).toEqual([1, 1, 1]);
  });
});
