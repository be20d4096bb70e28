import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { colourantById, colourants } from '../../../src/engine/colourants/catalogue.ts';
import type { Colourant } from '../../../src/engine/colourants/colourant.ts';
import { byLanguage } from '../../../src/engine/language.ts';
import * as en from '../../../src/words/en/colourants/colourants.ts';
import * as es from '../../../src/words/es/colourants/colourants.ts';

const kinds = [
  'oxide',
  'ultramarine',
  'chromium',
  'mica',
  'neon',
  'white',
  'lake',
  'dye',
  'carbon',
  'clay',
  'botanical',
] as const;
const carrier = z.enum(['water', 'oil', 'glycerin']);
const band = z
  .strictObject({ low: z.number().positive(), typical: z.number().positive(), high: z.number().positive() })
  .refine(({ low, typical, high }) => low <= typical && typical <= high, 'low <= typical <= high');
const origin = z.strictObject({
  trust: z.enum(['published', 'common practice', 'from memory', 'computed']),
  source: z.string().min(5),
});
const word = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);

const row = z.strictObject({
  id: word,
  kind: z.enum(kinds),
  names: z.strictObject(byLanguage(() => z.string().min(3).max(60))),
  called: z.strictObject(byLanguage(() => z.string().min(3))).optional(),
  synonyms: z.array(z.string().min(2).max(60)).min(3),
  ci: z.array(z.string().regex(/^\d{5}(:\d)?$/)),
  inci: z.string().min(3).optional(),
  density: band,
  bulkDensity: band,
  dose: z
    .strictObject({
      fullTspPerCup: z.number().positive(),
      ceilingTspPerCup: z.number().positive().max(4),
      usual: z.enum(['pastel', 'medium']).optional(),
    })
    .refine(dose => dose.fullTspPerCup <= dose.ceilingTspPerCup, 'a full dose stays at or below its ceiling'),
  carriers: z.array(carrier).min(1),
  dishTestDecides: z.boolean(),
  alkali: z.strictObject({
    behaviour: z.enum(['stable', 'conditional', 'shifts', 'destroyed', 'bleeds', 'unknown']),
    towards: word.optional(),
    on: word.optional(),
  }),
  light: z.enum(['holds', 'fades-slowly', 'fades']),
  hex: z.string().regex(/^#[0-9a-f]{6}$/),
  gradeOf: word.optional(),
  hints: z.array(word),
  origins: z.strictObject({
    identity: origin,
    dose: origin,
    carriers: origin,
    density: origin,
    bulkDensity: origin,
    alkali: origin,
    light: origin,
  }),
});

describe('the catalogue', () => {
  test.each(colourants.map(colourant => [colourant.id, colourant] as const))(
    '%s is complete',
    (_, colourant) => {
      row.parse(colourant);
    },
  );

  test('holds at least 60 colourants over every kind, under ids of their own', () => {
    expect(colourants.length).toBeGreaterThanOrEqual(60);
    expect(new Set(colourants.map(({ id }) => id)).size).toBe(colourants.length);
    expect(new Set(colourants.map(({ kind }) => kind))).toEqual(new Set(kinds));
  });

  test('a loose powder is lighter than its particles', () => {
    for (const { bulkDensity, density } of colourants) expect(bulkDensity.high).toBeLessThan(density.low);
  });

  const idsWhere = (wrong: (colourant: Colourant) => boolean) => colourants.filter(wrong).map(({ id }) => id);

  test('what changes in lye says toward what, and what is conditional says on what', () => {
    expect(
      idsWhere(
        ({ alkali }) => ['shifts', 'destroyed'].includes(alkali.behaviour) && alkali.towards === undefined,
      ),
    ).toEqual([]);
    expect(idsWhere(({ alkali }) => alkali.behaviour === 'conditional' && alkali.on === undefined)).toEqual(
      [],
    );
  });

  test('a grade names the general entry it belongs to', () => {
    const grades = colourants.flatMap(({ gradeOf }) => (gradeOf === undefined ? [] : [gradeOf]));
    expect(grades.length).toBeGreaterThan(0);
    expect(grades.map(colourantById).filter(general => general?.gradeOf !== undefined || !general)).toEqual(
      [],
    );
  });

  test('a dose that is said to be spooned by the pound of oils comes to those spoons', () => {
    // A pound of oils makes 2.78 cups of typical batter (453.6 g / 0.69 at 1 g/ml, 236.6 ml a cup).
    const cups = 453.592 / 0.69 / 236.588;
    const SPOONS: readonly (readonly [RegExp, low: number, high: number])[] = [
      [/about a tablespoon of .* a pound of oils/, 3, 3],
      [/one to two teaspoons of .* a pound of oils/, 1, 2],
      [/start at a sixteenth of a teaspoon a cup/, cups / 16, cups / 16],
      [/start at half a teaspoon a cup/, cups / 2, cups / 2],
    ];
    const off = colourants.filter(({ dose, origins }) => {
      const [, low = 0, high = Number.POSITIVE_INFINITY] =
        SPOONS.find(([said]) => said.test(origins.dose.source)) ?? [];
      const perPound = dose.fullTspPerCup * cups;
      return perPound < low * 0.9 || perPound > high * 1.1;
    });
    expect(off.map(({ id }) => id)).toEqual([]);
    expect(
      colourants.filter(({ origins }) => SPOONS.some(([said]) => said.test(origins.dose.source))).length,
    ).toBeGreaterThan(40);
    expect(colourantById('indigo')!.origins.dose.source).toMatch(/a quarter of that dose/);
  });

  test('neons and lakes never go in water', () => {
    expect(idsWhere(({ kind, carriers }) => /neon|lake/.test(kind) && carriers.includes('water'))).toEqual(
      [],
    );
  });

  test.each([
    ['English', en.colourants.hints],
    ['Spanish', es.colourants.hints],
  ])('every hint has a sentence in %s, and every sentence is used', (_, sentences) => {
    const used = new Set(colourants.flatMap(({ hints }) => hints));
    expect(new Set(Object.keys(sentences))).toEqual(used);
  });
});
