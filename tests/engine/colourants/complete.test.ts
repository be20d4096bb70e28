import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { completeColourants } from '../../../src/engine/colourants/complete.ts';

const first = (typed: string, language: 'en' | 'es') => completeColourants(typed, language)[0]?.value;

describe('what a member has typed is continued', () => {
  test.each([
    ['ultra', 'en', 'ultramarine-blue'],
    ['violeta u', 'es', 'ultramarine-violet'],
    ['oxido de hierro r', 'es', 'red-iron-oxide'],
    ['titan', 'en', 'titanium-dioxide'],
    ['77288', 'en', 'chromium-oxide-green'],
    ['ci 77288', 'en', 'chromium-oxide-green'],
    ['charc', 'en', 'activated-charcoal'],
    ['haem', 'en', 'red-iron-oxide'],
    ['blue ultra', 'en', 'ultramarine-blue'],
    ['utramarin', 'en', 'ultramarine-blue'],
  ] as const)('%s (%s) with %s first', (typed, language, id) => {
    expect(first(typed, language)).toBe(id);
  });

  test('nothing typed shows a full menu in the member’s language', () => {
    const menu = completeColourants('', 'es', 25);
    expect(menu).toHaveLength(25);
    expect(menu[0]).toEqual({ value: 'ultramarine-blue', name: 'Azul ultramar' });
  });

  property.prop([fc.string({ maxLength: 120 }), fc.integer({ min: 0, max: 60 })])(
    'a menu holds at most 25 entries, each once, each findable, each name fit for the platform',
    (typed, limit) => {
      const menu = completeColourants(typed, 'en', limit);
      expect(menu.length).toBeLessThanOrEqual(Math.min(limit, 25));
      expect(new Set(menu.map(({ value }) => value)).size).toBe(menu.length);
      for (const { value, name } of menu) {
        expect(colourantById(value)).toBeDefined();
        expect(name.length).toBeLessThanOrEqual(100);
      }
    },
  );
});
