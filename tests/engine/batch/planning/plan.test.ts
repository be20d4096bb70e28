import { describe, expect, test } from 'vitest';
import { planClass } from '../../../../src/engine/batch/planning/class-kits.ts';
import { planBatch } from '../../../../src/engine/batch/planning/plan.ts';
import type { PlanAnswer } from '../../../../src/engine/batch/planning/plan-answer.ts';
import { lyeCoolingMinutes } from '../../../../src/engine/batch/planning/timeline.ts';
import { batch as enBatch } from '../../../../src/words/en/batch/batch.ts';
import { asked, ONE_LINE, type Written } from '../asked.ts';

const plan = (written: Written = {}): PlanAnswer => planBatch(asked(written));
const warned = (written: Written) => plan(written).warnings.map(({ id }) => id);
const stepsOf = ({ timeline }: PlanAnswer) => timeline.map(({ step }) => step);

const oneLine = plan(ONE_LINE);

describe('the one-line plan', () => {
  test('weighs its oils, lye and water', () => {
    expect(oneLine.oils).toEqual([
      { id: 'coconut', grams: 300 },
      { id: 'olive', grams: 500 },
      { id: 'palm', grams: 200 },
    ]);
    expect(oneLine.lye).toMatchObject({ kind: 'NaOH', purity: 1 });
    // By hand with typical values 255.7, 190.3 and 197.7: 211.4 g KOH x 0.71289 x 0.95 = 143.2 g.
    expect(oneLine.lye.grams).toBeCloseTo(143.1, 1);
    expect(oneLine.water.ways.lyeStrength).toBeCloseTo(33, 9);
    expect(oneLine.water.lyeConcentration).toBeCloseTo(33, 1);
    expect(oneLine.water.jugConcentration).toBeGreaterThan(34);
    expect(oneLine.water.ways.waterPerLye).toBeCloseTo(67 / 33, 9);
  });

  test('doses each portion as a dose of that portion would be', () => {
    const [blue, white, rest] = oneLine.portions;
    expect(blue!.doses[0]).toMatchObject({
      colourant: { id: 'ultramarine-blue' },
      spoons: { spoons: [{ spoon: '1/2 tsp', count: 1 }] },
    });
    expect(blue!.doses[0]!.carrier).toMatchObject({
      choice: 'oil',
      spoons: { spoons: [{ spoon: '1 Tbsp', count: 1 }] },
      wet: 'soak',
      blend: 'whisk',
    });
    expect(white!.doses.map(({ colourant }) => colourant.id)).toEqual(['titanium-dioxide', 'gold-mica']);
    expect(rest!.doses).toEqual([]);
  });

  test('adds up: portions and reserve are the batter', () => {
    const sum = oneLine.portions.reduce((total, one) => total + one.millilitres, oneLine.reserve.millilitres);
    expect(sum).toBeCloseTo(oneLine.batter.millilitres, 6);
    expect(oneLine.batter.density).toBeCloseTo(oneLine.batter.grams / oneLine.batter.millilitres, 12);
  });

  test('tells superfat over the batch, in the pot and in each portion apart', () => {
    const { superfat, portions } = oneLine;
    expect(superfat.asked).toBe(5);
    expect(superfat.pot).toBeCloseTo(5.04, 1);
    expect(superfat.effective).toBeGreaterThan(6);
    expect(portions[0]!.superfat).toBeGreaterThan(8);
    expect(superfat.band.low).toBeLessThan(superfat.effective);
    expect(superfat.band.high).toBeGreaterThan(superfat.effective);
  });

  test('carries every lye caution, each with its source', () => {
    expect(oneLine.cautions.length).toBeGreaterThanOrEqual(10);
    for (const { id, origin } of oneLine.cautions) {
      expect(origin.source).not.toBe('');
      expect(enBatch.lyeCautions[id]).not.toBe('');
    }
  });

  test('gives the same plan twice', () => {
    expect(plan(ONE_LINE)).toEqual(oneLine);
  });
});

describe('a plan warns', () => {
  test.for<[string, Written, string]>([
    ['of a high superfat', { superfat: 25 }, 'superfat-high'],
    ['of an uncertain oil at a low superfat', { oils: 'shea 100%' }, 'superfat-may-go-negative'],
    ['of strong lye', { water: '45% lye' }, 'lye-strong'],
    ['of weak lye', { water: '22% lye' }, 'lye-weak'],
    ['of lye rounded down', { scale: 1, size: '900 g oils' }, 'lye-rounded-down'],
    ['of a purity it had to assume', {}, 'purity-assumed'],
    [
      'of water that cannot all be held back',
      { water: '1:1', portions: '1 cup gold mica in 1 Tbsp water; rest' },
      'hold-back-short',
    ],
    [
      'of a pot lowered by dipping',
      { portions: '1 cup gold mica in 1 tsp dipped oil; rest' },
      'dip-lowers-pot',
    ],
    ['of a portion too fat', { portions: '1 cup gold mica in 3 Tbsp olive; rest' }, 'portion-superfat-high'],
    [
      'of a portion too wet',
      { water: '27% lye', portions: '1 cup gold mica in 3 Tbsp water; rest' },
      'portion-lye-weak',
    ],
    ['of vanillin', { fragrance: '3%, vanillin 8%' }, 'fragrance-browns'],
    ['of a scent that speeds', { fragrance: '3% accelerating' }, 'fragrance-speeds'],
    ['of a flower', { fragrance: '3% jasmine' }, 'fragrance-speeds'],
    ['of words that say nothing', { fragrance: '3% xyzzy' }, 'fragrance-unknown'],
    ['of oil that colours bring', { portions: 'all gold mica' }, 'superfat-shifted'],
    ['of much fragrance', { fragrance: '5.5%' }, 'fragrance-limit'],
    ['of honey’s heat', { additives: 'honey 20 g' }, 'additive-heats'],
    ['that honey browns with lye', { additives: 'honey 20 g' }, 'additive-browns'],
    [
      'of milk that goes into the oils',
      { liquid: 'coconut milk 100 g in the oils' },
      'liquid-goes-into-oils',
    ],
    ['to keep milk cold', { additives: 'milk 200 g' }, 'milk-keep-cold'],
    ['that clay drinks', { additives: 'clay 20 g' }, 'additive-drinks-water'],
    ['that salt hardens', { additives: 'salt 5%' }, 'additive-hardens'],
    ['that citric acid eats lye', { additives: 'citric acid 10 g' }, 'citric-eats-lye'],
  ])('%s', ([, written, id]) => {
    expect(warned(written)).toContain(id);
  });

  test('of nothing but the stated purity when all is usual', () => {
    expect(warned({ superfat: 8, lye: 'NaOH 99%' })).toEqual([]);
  });
});

describe('the timeline', () => {
  test('counts down to the pour and on', () => {
    const minutes = oneLine.timeline.map(({ minutesBeforePour }) => minutesBeforePour);
    expect([...minutes].sort((a, b) => b - a)).toEqual(minutes);
    expect(minutes).toContain(0);
    expect(minutes.at(-1)).toBeLessThan(0);
  });

  test('puts gear before lye, soaking before weighing, lye before oils, the split before colour', () => {
    const steps = stepsOf(oneLine);
    const order = [
      'gear-on',
      'soak-colour',
      'mix-lye',
      'weigh-oils',
      'lye-into-oils',
      'split',
      'whisk-portion',
    ];
    const places = order.map(step => steps.indexOf(step as (typeof steps)[number]));
    expect(places).not.toContain(-1);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  test('stick-blends last, since that thickens', () => {
    const steps = stepsOf(
      plan({
        portions: '1 cup titanium dioxide in water; 1 cup gold mica; 1 cup red oxide in glycerin; rest',
      }),
    );
    expect(steps.indexOf('stick-blend-portion')).toBeGreaterThan(steps.lastIndexOf('whisk-portion'));
    expect(steps.filter(step => step === 'stick-blend-portion')).toHaveLength(2);
  });

  test('dips oil before any lye meets it, and only then soaks colours in it', () => {
    const steps = stepsOf(plan({ portions: '1 cup ultramarine blue in 1 tsp dipped oil; rest' }));
    expect(steps.indexOf('dip-oil')).toBeLessThan(steps.indexOf('lye-into-oils'));
    expect(steps.indexOf('dip-oil')).toBeLessThan(steps.indexOf('soak-colour'));
  });

  test.for([
    ['in-the-pot', 'pour-in-the-pot', 'light'],
    ['drop', 'pour-drop', 'light'],
    ['layered', 'pour-layered', 'medium'],
    ['hanger', 'pour-hanger', 'light'],
  ] as const)('blends for a %s swirl as it needs', ([swirl, pour, trace]) => {
    const answer = plan({ ...ONE_LINE, swirl });
    expect(stepsOf(answer)).toContain(pour);
    const blending = answer.timeline.find(({ step }) => step === 'lye-into-oils');
    expect(blending!.values).toEqual({ trace });
  });

  test('covers or cools as the loaf is kept', () => {
    const kept = (process: 'ambient' | 'insulated' | 'oven' | 'fridge') =>
      stepsOf(plan({ heat: { process, startC: 30 } }));
    expect(kept('insulated')).toContain('wrap');
    expect(kept('oven')).toEqual(expect.arrayContaining(['warm-oven', 'into-oven']));
    expect(kept('fridge')).toContain('into-fridge');
    expect(kept('ambient')).toContain('leave-open');
  });

  test('keeps a white loaf that runs hot cool', () => {
    const hot = plan({ portions: 'rest titanium dioxide full', water: '27% lye', heat: { startC: 50 } });
    expect(hot.heat.crackleRisk).toBe('high');
    expect(stepsOf(hot)).toContain('keep-cool');
  });

  test('gives more lye water longer to cool', () => {
    expect(lyeCoolingMinutes(2000, 80, { startC: 38, roomC: 21 })).toBeGreaterThan(
      lyeCoolingMinutes(400, 80, { startC: 38, roomC: 21 }),
    );
    expect(lyeCoolingMinutes(400, 80, { startC: 21, roomC: 21 })).toBeGreaterThan(
      lyeCoolingMinutes(400, 80, { startC: 45, roomC: 21 }),
    );
  });
});

describe('a class', () => {
  test('gets a kit a station, and its lye is weighed for each', () => {
    const kits = planClass(asked({ size: '3 kg oils' }), { people: 10, stations: 3, planIsFor: 'class' });
    expect(kits.peopleAt).toEqual([4, 3, 3]);
    expect(kits.station.oils.reduce((sum, { grams }) => sum + grams, 0)).toBeCloseTo(1000, 6);
    expect(kits.totals.lyeGrams).toBeCloseTo(3 * kits.station.lye.grams, 9);
    expect(kits.totals.gear).toBe(11);
    expect(kits.steps.map(({ id }) => id)).toContain('lye-weighed-by-leader');
  });

  test('may repeat the plan at each station instead', () => {
    const kits = planClass(asked({ size: '1 kg oils' }), { people: 4, stations: 2, planIsFor: 'station' });
    expect(kits.station.lye.grams).toBe(plan({}).lye.grams);
    expect(kits.totals.oils.reduce((sum, { grams }) => sum + grams, 0)).toBeCloseTo(2000, 6);
  });

  test('is told each colour in all, in the spoons that its stations take one by one', () => {
    const portions = '2 cups ultramarine blue; 1 cup ultramarine blue pastel + gold mica pastel; rest plain';
    const { totals, station } = planClass(asked({ size: '1 kg oils', portions }), {
      people: 12,
      stations: 4,
      planIsFor: 'station',
    });
    // 4 x (1/2 + 1/16) tsp of blue, 4 x 1/4 tsp of mica.
    expect(totals.colours).toMatchObject([
      { colourant: 'ultramarine-blue', spoons: { teaspoons: 2.25 } },
      { colourant: 'gold-mica', spoons: { spoons: [{ spoon: '1 tsp', count: 1 }] } },
    ]);
    const [blue] = station.portions[0]!.doses;
    const [other] = station.portions[1]!.doses;
    expect(totals.colours[0]!.grams).toBeCloseTo(4 * (blue!.grams.typical + other!.grams.typical), 9);
  });

  test('too small for the scale once divided, it is refused rather than guessed', () => {
    expect(() =>
      planClass(asked({ size: '2 kg oils', scale: 1 }), { people: 20, stations: 20, planIsFor: 'class' }),
    ).toThrow(expect.objectContaining({ id: 'scale-too-coarse' }));
  });

  test.for([
    [0, 1],
    [5, 6],
    [2.5, 1],
    [61, 3],
  ])('%d people at %d stations are refused', ([people, stations]) => {
    expect(() => planClass(asked({}), { people: people!, stations: stations!, planIsFor: 'class' })).toThrow(
      expect.objectContaining({ id: 'class-out-of-range' }),
    );
  });
});
