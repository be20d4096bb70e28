import { describe, expect, test } from 'vitest';
import { findOil } from '../../../../src/engine/batch/oils/find-oil.ts';
import { OILS } from '../../../../src/engine/batch/oils/index.ts';
import { parseOils } from '../../../../src/engine/batch/oils/lists/oil-list.ts';
import type { Reasons } from '../../../../src/engine/refusal.ts';
import { foldedWords } from '../../../../src/engine/text/fold.ts';
import { refusalOf } from '../asked.ts';

const shares = (text: string) =>
  Object.fromEntries(parseOils(text).shares.map(({ oil, share }) => [oil.id, share]));
describe('the oils', () => {
  test('are at least thirty, over oils, butters, animal fats, waxes and fatty acids', () => {
    expect(OILS.length).toBeGreaterThanOrEqual(30);
    expect(new Set(OILS.map(({ oilClass }) => oilClass)).size).toBe(5);
  });

  test('have an id and names of their own', () => {
    for (const field of ['id', 'en', 'es'] as const) {
      const all = OILS.map(oil => (field === 'id' ? oil.id : oil.names[field]));
      expect(new Set(all).size).toBe(OILS.length);
    }
  });

  test('say where each number comes from', () => {
    for (const { origins } of OILS) {
      for (const { source } of Object.values(origins)) expect(source.length).toBeGreaterThan(10);
    }
  });

  test.for(
    OILS.flatMap(oil => [oil.names.en, oil.names.es, ...oil.synonyms].map(name => [name, oil.id] as const)),
  )('%s is %s, and no other oil answers to it', ([name, id]) => {
    expect(findOil(name).id).toBe(id);
  });

  test('are found whatever the case, order and accents', () => {
    expect(findOil('OLIVE OIL').id).toBe('olive');
    expect(findOil('Manteca de karite').id).toBe('shea');
    expect(findOil('oil, coconut').id).toBe('coconut');
    expect(foldedWords('Karité')).toEqual(['karite']);
  });

  test('name the three nearest when a name is unknown', () => {
    const { id, values } = refusalOf(() => findOil('sunflwer'));
    expect(id).toBe('oil-unknown');
    const { nearest } = values as Reasons['oil-unknown'];
    expect(nearest).toHaveLength(3);
    expect(nearest[0]!.en).toBe('Sunflower oil');
  });
});

describe('a list of oils', () => {
  test('is read in percent', () => {
    expect(shares('coconut 30%, olive 50%, palm 20%')).toEqual({ coconut: 0.3, olive: 0.5, palm: 0.2 });
  });

  test('is read in either order, with decimal commas, in Spanish', () => {
    expect(shares('coco 30,5%; 69,5% de oliva')).toEqual({ coconut: 0.305, olive: 0.695 });
  });

  test('is read without commas where only one meaning is left', () => {
    expect(shares('coconut 30% olive 70%')).toEqual({ coconut: 0.3, olive: 0.7 });
  });

  test('is read in weights, which give the size too', () => {
    expect(parseOils('olive 500 g, 300 g coconut, palm 0.2 kg').totalGrams).toBeCloseTo(1000, 9);
    expect(shares('1 lb olive, 8 oz coconut').olive).toBeCloseTo(2 / 3, 12);
  });

  test('may be a rounding away from 100', () => {
    expect(shares('olive 33%, palm 33%, coconut 33%').olive).toBeCloseTo(1 / 3, 12);
  });

  test('adds an oil that is named twice', () => {
    expect(shares('olive 40%, coconut 20%, olive oil 40%')).toEqual({ olive: 0.8, coconut: 0.2 });
  });

  test.for([
    ['olive 90%', 'oils-percent-sum'],
    ['olive 50%, palm 200 g', 'oils-mixed-units'],
    ['olive 2 cups', 'oil-by-volume'],
    ['olive', 'oil-without-amount'],
    ['olive -30%, coconut 70%', 'oil-without-amount'],
    ['', 'oils-empty'],
    ['unobtainium 100%', 'oil-unknown'],
  ] as const)('%s is refused: %s', ([text, id]) => {
    expect(refusalOf(() => parseOils(text)).id).toBe(id);
  });
});
