import { test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import { TYPICAL_BATTER } from '../../src/engine/dispersion/batter.ts';
import { carrierFor } from '../../src/engine/dispersion/carrier.ts';
import { heldBackWater, superfatAfterOil } from '../../src/engine/dispersion/shift.ts';
import { answerDose } from '../../src/engine/dosing/answer.ts';
import { STRENGTH_SHARES } from '../../src/engine/quantities/strength.ts';
import { US_CUP_ML, US_TEASPOON_ML } from '../../src/engine/quantities/units.ts';
import { batterOf } from '../engine/dispersion/batter-of.ts';
import { refused } from '../engine/quantities/refused.ts';

/** Everything here is `common practice`: what makers do and nobody has published. */

const cup = { measure: 'volume', millilitres: US_CUP_ML, of: 'batter' } as const;
const jar = (id: string) => colourantById(id)!;
const dosed = (id: string, tspPerCup?: number) =>
  answerDose({
    portion: cup,
    colourants: [
      {
        colourant: jar(id),
        strength: tspPerCup === undefined ? { by: 'name', name: 'full' } : { by: 'cup', tspPerCup },
      },
    ],
  });

describe('common practice: level US teaspoons per US cup of raw batter, full colour and the most', () => {
  test.each([
    ['red-iron-oxide', 1 / 4, 1 / 2, '1/4 tsp', '1/2 tsp'],
    ['yellow-iron-oxide', 1 / 4, 1 / 2, '1/4 tsp', '1/2 tsp'],
    ['black-iron-oxide', 1 / 4, 1 / 2, '1/4 tsp', '1/2 tsp'],
    ['chromium-oxide-green', 1 / 4, 1 / 2, '1/4 tsp', '1/2 tsp'],
    ['chromium-hydroxide-green', 1 / 4, 1 / 2, '1/4 tsp', '1/2 tsp'],
    ['ultramarine-blue', 1 / 4, 1 / 2, '1/4 tsp', '1/2 tsp'],
    ['ultramarine-violet', 1 / 4, 1 / 2, '1/4 tsp', '1/2 tsp'],
    ['gold-mica', 1, 1, '1 tsp', '1 tsp'],
    ['neon-pink', 1 / 2, 1 / 2, '1/2 tsp', '1/2 tsp'],
    ['titanium-dioxide', 1 / 2, 1, '1/2 tsp', '1 tsp'],
    ['red-30-lake', 1, 1, '1 tsp', '1 tsp'],
  ])('%s', (id, full, most, fullSpoon, mostSpoon) => {
    const one = (spoon: string) => ({ spoons: [{ spoon, count: 1 }] });
    expect(dosed(id).doses[0]).toMatchObject({
      teaspoons: full,
      ceilingTeaspoons: most,
      spoons: one(fullSpoon),
    });
    const beyond = dosed(id, 3).doses[0]!;
    expect(beyond).toMatchObject({ teaspoons: most, spoons: one(mostSpoon), askedTeaspoons: 3 });
  });

  test('other lakes start far lower than the red 30 lake', () => {
    for (const id of ['red-40-lake', 'yellow-5-lake', 'blue-1-lake']) {
      expect(dosed(id).doses[0]!.teaspoons).toBeLessThanOrEqual(1 / 4);
    }
  });
});

describe('common practice: strengths', () => {
  test('tint an eighth, pastel a quarter, medium a half, full all of it', () => {
    expect(STRENGTH_SHARES).toEqual({ tint: 0.125, pastel: 0.25, medium: 0.5, full: 1 });
  });
  test('a tint of an oxide in a cup is the smallest spoon, and in half a cup a part of a paste', () => {
    const tint = (millilitres: number) =>
      answerDose({
        portion: { ...cup, millilitres },
        colourants: [{ colourant: jar('red-iron-oxide'), strength: { by: 'name', name: 'tint' } }],
      }).doses[0]!.spoons;
    expect(tint(US_CUP_ML).spoons).toEqual([{ spoon: '1/32 tsp', count: 1 }]);
    expect(tint(US_CUP_ML / 2).paste).toMatchObject({ powder: '1/8 tsp', parts: 8 });
  });
});

describe('common practice: carriers', () => {
  test('about 1 tsp of colourant to 1 Tbsp of carrier', () => {
    expect(
      carrierFor({ colourant: jar('gold-mica'), powderMillilitres: US_TEASPOON_ML }).millilitres,
    ).toBeCloseTo(3 * US_TEASPOON_ML, 9);
  });
  test('micas go in water, oil or glycerin; neons and lakes in oil or glycerin only', () => {
    expect([...jar('gold-mica').carriers].sort()).toEqual(['glycerin', 'oil', 'water']);
    for (const id of ['neon-pink', 'red-30-lake']) {
      expect([...jar(id).carriers].sort()).toEqual(['glycerin', 'oil']);
      expect(refused(() => carrierFor({ colourant: jar(id), powderMillilitres: 1, asked: 'water' }))).toBe(
        'carrier-cannot-work',
      );
    }
  });
  test('1 Tbsp of oil in one cup takes a 5 % superfat to about 12 %', () => {
    const tablespoon = 3 * US_TEASPOON_ML;
    expect(100 * superfatAfterOil(TYPICAL_BATTER, US_CUP_ML, tablespoon)).toBeCloseTo(12, 0);
    expect(dosed('gold-mica').superfatShift).toMatchObject({ fromPercent: 5, toPercent: 12.3 });
    // A real recipe: 1000 g oils, 134 g lye in twice its weight of water.
    const strong = batterOf({
      oilsGrams: 1000,
      lyeGrams: 134,
      waterGrams: 268,
      millilitres: 1400,
      superfat: 0.05,
    });
    expect(100 * superfatAfterOil(strong, US_CUP_ML, tablespoon)).toBeCloseTo(12, 0);
  });
  test('water held back never leaves less water than lye', () => {
    expect(heldBackWater(134, 150, 60)).toBe(16);
  });
});

describe('common practice: several colours in one portion stay at or below 1, whites counted together', () => {
  test('half a full mica and half a full neon fill the portion exactly', () => {
    const { cautions } = answerDose({
      portion: cup,
      colourants: ['gold-mica', 'neon-pink'].map(id => ({
        colourant: jar(id),
        strength: { by: 'name', name: 'medium' } as const,
      })),
    });
    expect(cautions.map(({ id }) => id)).not.toContain('mix-scaled');
  });
  test('a teaspoon of white in all, whatever it is made of', () => {
    const { doses } = answerDose({
      portion: cup,
      colourants: ['titanium-dioxide', 'zinc-oxide'].map(id => ({
        colourant: jar(id),
        strength: { by: 'cup', tspPerCup: 1 } as const,
      })),
    });
    expect(doses.reduce((sum, { teaspoons }) => sum + teaspoons, 0)).toBeCloseTo(1, 9);
  });
});

describe('from memory: the typical batter, 1000 g oils at 0.905 g/ml and 134 g lye at 30 %', () => {
  test('its density and oil share follow from the densities of its parts', () => {
    expect(TYPICAL_BATTER.lyeConcentration).toBe(0.3);
    const solution = 134 / TYPICAL_BATTER.lyeConcentration;
    const millilitres = 1000 / 0.905 + solution / 1.3277;
    expect(TYPICAL_BATTER.gramsPerMillilitre).toBeCloseTo((1000 + solution) / millilitres, 2);
    expect(TYPICAL_BATTER.oilsShare).toBeCloseTo(1000 / (1000 + solution), 2);
  });
});
