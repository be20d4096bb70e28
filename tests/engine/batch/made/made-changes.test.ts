import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { applyChanges } from '../../../../src/engine/batch/made/apply-changes.ts';
import { parseChanges } from '../../../../src/engine/batch/made/changes.ts';
import type { MadePortion } from '../../../../src/engine/batch/made/made.ts';
import { MEASURES } from '../../../../src/engine/quantities/units.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';

const violet = { name: 'Dusk', colourant: 'ultramarine-violet', teaspoons: 1, grams: 2.5, pigment: 0.5 };
const gold = { name: 'Old gold', colourant: 'gold-mica', teaspoons: 0.25, grams: 0.4, pigment: 0.17 };
const planned: readonly MadePortion[] = [
  { name: 'Dusk', grams: 500, colours: [violet] },
  { name: 'Gold', grams: 240, colours: [gold] },
];
const made = (text: string, portions = planned) =>
  applyChanges(portions, parseChanges(text, MEASURES.us), MEASURES.us);
const spoons = (text: string) =>
  made(text).portions.map(({ colours }) => colours.map(one => [one.name, Number(one.teaspoons.toFixed(4))]));
const refusal = (text: string) => {
  try {
    made(text);
  } catch (error) {
    if (error instanceof Refusal) return error.id;
    throw error;
  }
  return undefined;
};

describe('what was made otherwise', () => {
  test.each([
    ['2 tsp instead of 1, no gel, fridge', [[['Dusk', 2]], [['Old gold', 0.25]]]],
    ['2 tsp instead of 1 tsp', [[['Dusk', 2]], [['Old gold', 0.25]]]],
    ['1/2 tsp rather than 1/4', [[['Dusk', 1]], [['Old gold', 0.5]]]],
    ['2 tsp Dusk', [[['Dusk', 2]], [['Old gold', 0.25]]]],
    ['old gold: 1/2 tsp', [[['Dusk', 1]], [['Old gold', 0.5]]]],
    ['gold 1 tsp', [[['Dusk', 1]], [['Old gold', 1]]]],
    ['5 g of Dusk', [[['Dusk', 2]], [['Old gold', 0.25]]]],
    ['no dusk', [[], [['Old gold', 0.25]]]],
    ['1 Tbsp instead of 1 tsp', [[['Dusk', 3]], [['Old gold', 0.25]]]],
    ['2 cdta en vez de 1', [[['Dusk', 2]], [['Old gold', 0.25]]]],
  ])('“%s”', (text, wanted) => {
    expect(spoons(text)).toEqual(wanted);
  });

  test('pigment and grams go with the spoons', () => {
    const [portion] = made('2 tsp instead of 1').portions;
    expect(portion?.colours[0]).toMatchObject({ grams: 5, pigment: 1 });
  });

  test.each([
    ['no gel', false, undefined],
    ['did not gel', false, undefined],
    ['sin gel', false, undefined],
    ['gelled', true, undefined],
    ['full gel', true, undefined],
    ['se gelificó', true, undefined],
    ['fridge', undefined, 'fridge'],
    ['en la nevera', undefined, 'fridge'],
    ['wrapped in towels', undefined, 'insulated'],
    ['oven', undefined, 'oven'],
  ])('“%s” is heard', (text, gelled, process) => {
    expect(made(text)).toMatchObject({ gelled, process, notes: [], portions: planned });
  });

  test('what cannot be counted is kept as a note, never dropped', () => {
    expect(made('smelled of roses, olive instead of castor, no gel').notes).toEqual([
      'smelled of roses',
      'olive instead of castor',
    ]);
  });

  test.each([
    ['3 tsp instead of 7', 'batch-change-unclear'],
    ['3 tsp', 'batch-change-unclear'],
    ['2 tsp indigo', 'batch-change-unclear'],
    ['-2 tsp Dusk', 'batch-change-unclear'],
    ['2000 tsp Dusk', 'batch-amount-absurd'],
    [Array(30).fill('fridge').join(', '), 'batch-changes-many'],
  ])('“%s” is asked back', (text, id) => {
    expect(refusal(text)).toBe(id);
  });

  test('a colour planned alike in two portions is changed in both; unlike, only where it was that much', () => {
    const twice = [planned[0]!, { name: 'Again', grams: 500, colours: [violet] }];
    const changed = made('2 tsp instead of 1', twice).portions;
    expect(changed.map(({ colours }) => colours[0]?.teaspoons)).toEqual([2, 2]);
    const half = { ...violet, teaspoons: 0.5, grams: 1.25, pigment: 0.25 };
    const unlike = [planned[0]!, { name: 'Again', grams: 500, colours: [half] }];
    expect(made('2 tsp instead of 1', unlike).portions.map(one => one.colours[0]?.teaspoons)).toEqual([
      2, 0.5,
    ]);
  });

  test.prop([fc.string({ maxLength: 80 })])('any text is read or refused', text => {
    const outcome = refusal(text);
    expect(outcome === undefined || typeof outcome === 'string').toBe(true);
  });
});
