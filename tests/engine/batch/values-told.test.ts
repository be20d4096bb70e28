import { describe, expect, test } from 'vitest';
import { dryingOf } from '../../../src/engine/batch/curing/weight-loss.ts';
import { lyeMixingRise, lyeSolutionDensity } from '../../../src/engine/batch/lye/lye-solution.ts';
import { applyChanges } from '../../../src/engine/batch/made/apply-changes.ts';
import { parseChanges } from '../../../src/engine/batch/made/changes.ts';
import { parseOils } from '../../../src/engine/batch/oils/lists/oil-list.ts';
import { afterPour } from '../../../src/engine/batch/planning/after-pour.ts';
import { planNumbers } from '../../../src/engine/batch/planning/plan.ts';
import type { TimelineFacts } from '../../../src/engine/batch/planning/timeline-facts.ts';
import { parseWetting } from '../../../src/engine/batch/portions/carrier.ts';
import { oilMillilitres } from '../../../src/engine/batch/portions/pot.ts';
import { MEASURES } from '../../../src/engine/quantities/units.ts';
import { refused } from '../quantities/refused.ts';
import { asked, filled, refusalOf } from './asked.ts';

/** What is done after a pour, with the values that its sentences quote. */
const hoursAfter = (more: Partial<TimelineFacts>, start = '40 C') =>
  Object.fromEntries(
    afterPour(asked({ start, process: 'insulated' }), {
      kohShare: 0,
      saltPercent: 0,
      ovenC: 77,
      peakHours: 3,
      peakCoreC: 70,
      keepCool: false,
      ...more,
    } as TimelineFacts).map(({ step, values }) => [step, values]),
  );

describe('the hours after a pour are told in numbers', () => {
  test('how hot and when', () => {
    expect(hoursAfter({ peakCoreC: 71, peakHours: 2.6 })['watch-heat']).toEqual({ hours: 2.5, peakC: 71 });
    expect(hoursAfter({ peakCoreC: 42 })['stays-cool']).toEqual({ peakC: 42 });
    expect(hoursAfter({ peakCoreC: 103 })['too-hot-to-wrap']).toEqual({ peakC: 103 });
    expect(hoursAfter({}).unmould).toEqual({ hours: 24 });
    expect(hoursAfter({ saltPercent: 30 })['cut-salt-bar']).toEqual({
      percent: 30,
      fromHours: 1,
      toHours: 4,
    });
  });
});

describe('potash', () => {
  const potash = asked({ lye: 'KOH' });
  test('warms its jug by its own heat of solution', () => {
    const { lye, jug } = planNumbers(potash);
    expect(lye.mixingRise).toBeCloseTo(lyeMixingRise(0, lye.grams, jug.waterInJugGrams), 9);
    expect(lye.mixingRise).toBeGreaterThan(20);
  });
  test('makes a denser solution, so that a pot of it is measured by that', () => {
    for (const [request, share] of [
      [potash, 1],
      [asked({}), 0],
    ] as const) {
      const { recipe, filled: batch } = filled(request);
      const { pot } = batch;
      const solution = recipe.lyeGrams + pot.waterGrams;
      const density = lyeSolutionDensity((100 * recipe.lyeGrams) / solution, share, request.heat.startC);
      expect(pot.millilitres).toBeCloseTo(
        oilMillilitres(pot.oils, request.heat.startC) + solution / density,
        6,
      );
    }
  });
});

describe('what a colour is wetted in', () => {
  const portion = (portions: string) => filled(asked({ portions })).filled.portions[0]!;
  // A tablespoon of 14.79 ml; glycerin 1.26 g/ml, water 0.998 (CRC Handbook).
  test('weighs in its own portion, and glycerin thins no lye', () => {
    const dry = portion('1 cup plain; rest');
    const glycerin = portion('1 cup gold mica in 1 Tbsp glycerin; rest');
    expect(glycerin.lyeConcentration).toBeCloseTo(dry.lyeConcentration, 6);
    const water = portion('1 cup gold mica in 1 Tbsp water; rest');
    expect(water.lyeConcentration).toBeLessThan(dry.lyeConcentration - 2);
    const brought = (one: typeof dry) => one.pouredGrams - one.grams;
    expect(brought(glycerin) - brought(water)).toBeCloseTo(14.787 * (1.26 - 0.998), 0);
  });
  test.each([
    ['water', 'water', undefined],
    ['1 tsp agua destilada', 'water', 4.93],
    ['vegetable glycerin', 'glycerin', undefined],
    ['1 Tbsp of olive', 'oil', 14.79],
    ['oil', 'oil', undefined],
  ])('%s', (text, choice, millilitres) => {
    const carrier = parseWetting(text);
    expect(carrier).toMatchObject({ choice, dipped: false });
    expect(carrier.millilitres && Math.round(carrier.millilitres * 100) / 100).toBe(millilitres);
  });
  test('dipped oil is the batch’s own, of all of it or of one', () => {
    expect(parseWetting('1 tsp dipped oil')).toMatchObject({ choice: 'oil', oil: undefined, dipped: true });
    expect(parseWetting('1 tsp dipped olive')).toMatchObject({ oil: { id: 'olive' }, dipped: true });
    expect(refused(() => parseWetting('10 g olive'))).toBe('carrier-by-mass');
    expect(refused(() => parseWetting('gravel'))).toBe('oil-unknown');
  });
});

test('weighings are put in order of time, however they were noted', () => {
  const week = 7 * 86_400_000;
  const noted = [
    { at: 2 * week, grams: [94] },
    { at: 0, grams: [100] },
    { at: week, grams: [96] },
  ];
  expect(dryingOf(noted)).toEqual(dryingOf(noted.toSorted((a, b) => a.at - b.at)));
  expect(dryingOf(noted)!.lostInAll).toBeCloseTo(0.06, 9);
});

test('what was left out and never planned is a note, what was planned is gone', () => {
  const colour = { name: 'Dusk', colourant: 'ultramarine-violet', teaspoons: 1, grams: 2.5, pigment: 0.5 };
  const planned = [{ name: 'Dusk', grams: 500, colours: [colour] }];
  const made = (text: string) => applyChanges(planned, parseChanges(text, MEASURES.us), MEASURES.us);
  expect(made('no gravel')).toMatchObject({ notes: ['no gravel'], portions: planned });
  expect(made('no dusk')).toMatchObject({ notes: [], portions: [{ colours: [] }] });
});

test('an oil without its amount is quoted, and so is one by the cup', () => {
  expect(refusalOf(() => parseOils('olive 500 g, castor')).values).toEqual({ text: 'castor' });
  expect(refusalOf(() => parseOils('olive 2 cups')).values).toEqual({ text: 'olive 2 cups' });
  expect(refusalOf(() => parseOils('olive 60%, coconut 20%')).values).toEqual({ sum: 80 });
  expect(refusalOf(() => parseOils('olive 600, coconut 200')).values).toEqual({ sum: 800 });
});
