import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { nearestColourants } from '../../../../src/engine/colourants/find.ts';
import { nearestOilWord } from '../../../../src/engine/questions/lye/amounts/chat-words.ts';
import { byNearness, nearestFew } from '../../../../src/engine/text/spelling/closest-name.ts';
import { distance } from '../../../../src/engine/text/spelling/edit-distance.ts';

const words = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 9 });

describe('what is compared only as far as it may count', () => {
  test.prop([words, words, fc.integer({ min: -1, max: 8 })])(
    'a distance within the bound is the very one, any other is beyond it',
    (one, other, most) => {
      const whole = distance(one, other);
      const within = distance(one, other, most);
      if (whole <= most) expect(within).toBe(whole);
      else expect(within).toBeGreaterThan(most);
    },
  );

  test('a swap reaches over a row that is beyond the bound', () => {
    expect(distance('abcd', 'badc', 2)).toBe(2);
  });

  const scored = fc.array(fc.record({ thing: fc.nat({ max: 6 }), far: fc.nat({ max: 5 }) }), {
    maxLength: 30,
  });
  test.prop([scored, fc.integer({ min: 1, max: 5 })])(
    'the nearest few are the first of all by nearness, equals in their order',
    (rows, most) => {
      const few = nearestFew(rows, most, ({ thing, far }, within) => ({
        thing,
        far: far < within ? far : Number.POSITIVE_INFINITY,
      }));
      const all = byNearness(rows).slice(0, most);
      expect(few).toEqual(all.map(({ thing }) => thing));
    },
  );

  // From memory of what is typed for these.
  test.each([
    ['ultramrine blu', 'ultramarine-blue'],
    ['rojo oxido', 'red-iron-oxide'],
    ['turmerc powder', 'turmeric'],
  ])('%s is nearest to %s', (typed, id) => {
    expect(nearestColourants(typed, 3)[0]?.id).toBe(id);
  });

  test('a word as long as an oil’s and three letters more or fewer is still compared, a longer one not', () => {
    expect(nearestOilWord('coconut')).toBe(0);
    expect(nearestOilWord('cocnut')).toBeGreaterThan(0);
    expect(nearestOilWord('coooconnut')).toBeGreaterThan(0);
    expect(nearestOilWord('coconut'.repeat(5))).toBeUndefined();
    // Asked again, the same is told.
    expect(nearestOilWord('cocnut')).toBe(nearestOilWord('cocnut'));
  });
});
