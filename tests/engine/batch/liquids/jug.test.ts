import { describe, expect, test } from 'vitest';
import { type Jug, STRONGEST_LYE } from '../../../../src/engine/batch/liquids/jug.ts';
import { planBatch, planNumbers } from '../../../../src/engine/batch/planning/plan.ts';
import { asked, filled, refusalOf, type Written } from '../asked.ts';

const jugOf = (written: Written): Jug => filled(asked(written)).filled.jug;
const refused = (written: Written) => refusalOf(() => planNumbers(asked(written)));

describe('milk never empties the lye jug', () => {
  test('250 g of goat milk: the lye goes into the frozen milk and what water is left', () => {
    const jug = jugOf({ additives: 'goat milk 250 g' });
    expect(jug).toMatchObject({
      method: 'frozen',
      liquids: [{ id: 'goat-milk', grams: 250, into: 'jug', frozen: true }],
    });
    // 143.1 g lye at 33 %: 290.7 g water, of which 0.87 x 250 = 217.5 g is milk's.
    expect(jug.waterGrams).toBeCloseTo(73.1, 0);
    expect(jug.strength).toBeCloseTo(33, 1);
  });

  test('300 g of it still leaves no more than 33 % lye, and 350 g is too much', () => {
    expect(jugOf({ additives: 'goat milk 300 g' }).strength).toBeCloseTo(33, 1);
    expect(refused({ additives: 'goat milk 350 g' }).id).toBe('milk-more-than-water');
  });

  test('as much as leaves water enough goes into the oils, and the lye into plain water', () => {
    const jug = jugOf({ additives: 'goat milk 100 g' });
    expect(jug).toMatchObject({ method: 'split', liquids: [{ into: 'oils', frozen: false }] });
    expect(jug.waterInJugGrams).toBeCloseTo(jug.waterGrams, 9);
    expect(jug.waterGrams).toBeGreaterThanOrEqual(jug.lyeGrams);
  });

  test('a jug stronger than the batch is told: it gets hotter', () => {
    const warnings = planBatch(asked({ liquid: 'half goat milk' })).warnings;
    expect(warnings.find(({ id }) => id === 'jug-strong')?.values).toMatchObject({
      percent: expect.closeTo(49.6, 0),
    });
    expect(planBatch(asked({})).warnings.map(({ id }) => id)).not.toContain('jug-strong');
  });

  test('what is never put into a jug is refused with how much would do', () => {
    const { id, values } = refused({ liquid: 'cream 260 g' });
    expect(id).toBe('jug-too-little-water');
    const { mostGrams } = values as { mostGrams: number };
    expect(jugOf({ liquid: `cream ${mostGrams} g` }).strength).toBeLessThanOrEqual(50);
    expect(jugOf({ liquid: `cream ${mostGrams} g` }).strength).toBeGreaterThan(49.8);
  });

  test('water for colours is held back only as far as the lye allows', () => {
    const jug = jugOf({ water: '1.02:1', portions: '3 cups gold mica in 2 Tbsp water; rest' });
    expect(jug.heldBackGrams).toBeGreaterThan(0);
    expect(jug.strength).toBeCloseTo(50, 6);
  });

  test('honey takes water away only as far as the lye allows', () => {
    const jug = jugOf({ water: '1:1', additives: 'honey 50 g' });
    expect(jug.strength).toBeLessThanOrEqual(50);
    expect(
      planBatch(asked({ water: '1:1', additives: 'honey 50 g' })).warnings.map(({ id }) => id),
    ).toContain('water-over-asked');
  });
});

describe('liquids instead of water', () => {
  test.for([
    ['goat milk', 'frozen'],
    ['beer', 'frozen'],
    ['tea', 'water'],
    ['coffee', 'water'],
    ['aloe juice', 'water'],
    ['vinegar 20%', 'water'],
    ['rose water', 'water'],
    ['half goat milk, half water', 'split'],
    ['half goat milk half coffee', 'split'],
    ['50% water 50% milk', 'split'],
    ['goat milk instead of water', 'frozen'],
    ['half goat milk frozen', 'frozen'],
    ['wine 30% in the oils', 'split'],
    ['pumpkin puree 60 g', 'split'],
    ['ice 80 g', 'water'],
    ['leche de cabra', 'frozen'],
    ['mitad café, mitad agua', 'water'],
    ['nata 60 g en los aceites', 'split'],
  ] as const)('%s: lye by way of %s', ([liquid, method]) => {
    const jug = jugOf({ liquid });
    expect(jug.method).toBe(method);
    expect(jug.strength).toBeLessThanOrEqual(STRONGEST_LYE);
  });

  test.for(['constructor', '__proto__', '🥛', 'milk -50 g', 'mercury 5 g', 'x'.repeat(5000)])(
    'what is no liquid is refused: %s',
    liquid => {
      expect(['liquid-unknown', 'additive-without-amount']).toContain(refused({ liquid }).id);
    },
  );

  test('in the place of all water it brings all of it', () => {
    const jug = jugOf({ liquid: 'goat milk' });
    expect(jug.waterGrams).toBeCloseTo(0, 6);
    expect(jug.waterInJugGrams).toBeCloseTo(jug.liquids[0]!.grams * 0.87, 6);
  });

  test('vinegar of 5 % eats 0.0333 g of NaOH a gram, and gets it', () => {
    const exact = (written: Written) => filled(asked(written)).recipe.lye[0]!.exactGrams;
    // Acetic acid 60.052 g/mol, NaOH 39.997 g/mol: 0.05 / 60.052 x 39.997.
    expect((exact({ additives: 'vinegar 100 g' }) - exact({})) / 100).toBeCloseTo(0.0333, 4);
  });

  test('the alcohol is boiled off the day before', () => {
    const { timeline } = planBatch(asked({ liquid: 'half beer' }));
    const steps = timeline.map(({ step }) => step);
    expect(steps.indexOf('boil-off')).toBe(0);
    expect(timeline[0]!.minutesBeforePour).toBeGreaterThan(24 * 60);
  });

  test('fat of coconut milk counts in the superfat and is told', () => {
    const told = planBatch(asked({ liquid: 'coconut milk' }));
    const warning = told.warnings.find(({ id }) => id === 'liquid-fat');
    const { points } = warning!.values as { points: number };
    expect(told.superfat.effective - points).toBeCloseTo(5, 0);
  });
});

describe('lye kept dissolved', () => {
  test.for([
    '50% lye solution',
    'masterbatch lye 1:1',
    'NaOH 50% solution',
    'masterbatch',
    'solución al 50%',
  ])('%s: twice the lye in solution, and the batch keeps its own water', lye => {
    const jug = jugOf({ lye });
    const plain = jugOf({});
    expect(jug.solution!.grams).toBeCloseTo(2 * jug.lyeGrams, 6);
    expect(jug.lyeGrams).toBeCloseTo(plain.lyeGrams, 0);
    expect(jug.waterGrams).toBeCloseTo(plain.waterGrams - jug.lyeGrams, 0);
    expect(jug.strength).toBeCloseTo(33, 0);
  });

  test('where the water is written it is how the lye comes, not a 1:1 batch', () => {
    expect(jugOf({ water: 'masterbatch 1:1' }).strength).toBeCloseTo(33, 0);
    expect(jugOf({ water: 'masterbatch lye 1:1, 30% lye' }).strength).toBeCloseTo(30, 0);
  });

  test('carriers’ water is taken off what is added', () => {
    const portions = '1 cup gold mica in 2 Tbsp water; rest';
    const jug = jugOf({ lye: 'masterbatch', portions });
    expect(jug.heldBackGrams).toBeCloseTo(2 * 14.786765 * 0.998, 1);
  });

  test('one weaker than the batch is refused, one over 50 % too', () => {
    expect(refused({ lye: '30% lye solution' }).id).toBe('solution-too-weak');
    expect(refused({ lye: '60% lye solution' }).id).toBe('lye-too-strong');
  });
});
