import { describe, expect, test } from 'vitest';
import { colourants } from '../../../src/engine/colourants/catalogue.ts';
import { checkIngredients } from '../../../src/engine/stability/check.ts';
import { checkColourant } from '../../../src/engine/stability/check-colourant.ts';
import {
  chemistryOf,
  identified,
  identitiesAlike,
  identityOf,
} from '../../../src/engine/stability/identity.ts';

const ofList = (text: string) => identityOf(checkIngredients(text));

describe('what reports on a colour are filed under', () => {
  test.each(colourants.map(colourant => [colourant.id, colourant] as const))(
    '%s is itself',
    (id, colourant) => {
      expect(identityOf(checkColourant(colourant), colourant)).toBe(id);
      expect(identitiesAlike(id)).toContain(id);
    },
  );

  test.each([
    ['in another order', 'Titanium Dioxide (CI 77891), Mica (CI 77019), Carmine (CI 75470)'],
    ['by numbers', 'CI 77019, CI 77891, CI 75470'],
    ['with a filler', 'Mica, Titanium Dioxide, Carmine, Silica'],
  ])('a list %s is the same powder', (_, text) => {
    expect(ofList(text)).toBe(ofList('Mica, Titanium Dioxide, Carmine'));
  });

  test('a list with something nobody knows is another powder', () => {
    expect(ofList('Mica, Titanium Dioxide, Xyzzyol')).not.toBe(ofList('Mica, Titanium Dioxide'));
  });

  test('a list that is exactly one catalogue entry is that entry', () => {
    expect(ofList('Mica (CI 77019), Titanium Dioxide (CI 77891), Ferric Ferrocyanide (CI 77510)')).toBe(
      'iron-blue-mica',
    );
  });

  test('a list that contradicts what its owner called it goes by the list', () => {
    const violet = colourants.find(({ id }) => id === 'gold-mica');
    expect(identityOf(checkIngredients('Mica, Manganese Violet'), violet)).not.toBe('gold-mica');
  });

  test('nothing recognised is no colour', () => {
    expect(ofList('🧼🧼')).toBeUndefined();
  });

  test('the chemistry is known from the identity alone', () => {
    expect(chemistryOf('of:ferric-ferrocyanide+mica')).toMatchObject({ behaviour: 'destroyed' });
    expect(chemistryOf('ultramarine-blue')).toMatchObject({ behaviour: 'stable' });
    expect(chemistryOf('of:mica+titanium-dioxide+?xyzzyol')).toEqual({
      behaviour: 'unknown',
      confidence: 'low',
    });
    expect(identified('of:mica+?xyzzyol')).toEqual({ names: ['Mica'], unknown: 'xyzzyol' });
  });
});
