import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { parseOwnedSpoons } from '../../../src/engine/quantities/owned-spoons.ts';
import { practicalSpoons, SPOONS, teaspoonsIn } from '../../../src/engine/quantities/spoons.ts';
import { refused } from './refused.ts';

describe('the spoons somebody owns', () => {
  test.each([
    ['1 tsp, 1/2, 1/4, 1/8', ['1 tsp', '1/2 tsp', '1/4 tsp', '1/8 tsp']],
    ['1/4 tsp and 1 Tbsp', ['1 Tbsp', '1/4 tsp']],
    ['1 cdta, 1/2 y 1/4', ['1 tsp', '1/2 tsp', '1/4 tsp']],
    ['tsp; ½ tsp; ⅛', ['1 tsp', '1/2 tsp', '1/8 tsp']],
    ['1/8, 1/8', ['1/8 tsp']],
    ['ALL', [...SPOONS]],
    ['todas', [...SPOONS]],
  ])('are read from “%s”', (text, spoons) => {
    expect(parseOwnedSpoons(text)).toEqual(spoons);
  });

  test.each([
    '',
    ' , ',
    '1/3 tsp',
    '2 tsp',
    '-1',
    'a big one',
    '1/4 cup',
    'constructor',
    '😀',
    'x'.repeat(5_000),
  ])('are asked for again where “%s” is no list of them', text => {
    expect(refused(() => parseOwnedSpoons(text))).toBe('spoons-owned-unreadable');
  });
});

describe('a dose in the spoons that are there', () => {
  test('is the nearest they make, and a paste where they are too coarse', () => {
    const owned = ['1 tsp', '1/2 tsp', '1/4 tsp'] as const;
    expect(practicalSpoons(0.75, undefined, owned).spoons).toEqual([
      { spoon: '1/2 tsp', count: 1 },
      { spoon: '1/4 tsp', count: 1 },
    ]);
    // 3/8 tsp lies half way between a quarter and a half: either would be a third off, so a paste stands in their place.
    const coarse = practicalSpoons(0.375, undefined, owned);
    expect(coarse.spoons).toEqual([]);
    expect(Math.abs(coarse.off)).toBeLessThan(0.12);
    expect(coarse.paste).toMatchObject({ powder: '1 tsp', parts: 3 });
    // Less than the smallest of them is a share of a paste.
    expect(practicalSpoons(0.125, undefined, owned)).toMatchObject({
      spoons: [],
      paste: { powder: '1/4 tsp', parts: 2 },
    });
  });

  test('too small for them, it is a spoon of a paste, and a spoon that is there', () => {
    // A tint for a quarter cup: 1/128 tsp. One part in 32 of a tablespoon was less than any of these spoons.
    const owned = ['1 tsp', '1/2 tsp', '1/4 tsp'] as const;
    expect(practicalSpoons(1 / 128, undefined, owned).paste).toMatchObject({
      powder: '1/4 tsp',
      parts: 32,
      partSpoons: [{ spoon: '1/4 tsp', count: 1 }],
      carrierSpoons: [{ spoon: '1 tsp', count: 8 }],
    });
  });

  test.prop([fc.double({ min: 1e-4, max: 2, noNaN: true }), fc.subarray([...SPOONS], { minLength: 1 })])(
    'of a paste all parts together are its carrier, a tablespoon at least and three times the powder',
    (dose, owned) => {
      const { paste } = practicalSpoons(dose, undefined, owned);
      if (!paste) return;
      const { parts, partSpoons, carrierSpoons, carrierTeaspoons, powder } = paste;
      expect(teaspoonsIn(partSpoons) * parts).toBeCloseTo(carrierTeaspoons, 9);
      expect(teaspoonsIn(carrierSpoons)).toBeCloseTo(carrierTeaspoons, 9);
      expect(carrierTeaspoons).toBeGreaterThanOrEqual(
        Math.max(3, 3 * teaspoonsIn([{ spoon: powder, count: 1 }])) - 1e-9,
      );
      for (const { spoon } of [...partSpoons, ...carrierSpoons]) expect(owned).toContain(spoon);
      expect(partSpoons.length).toBeLessThanOrEqual(2);
    },
  );

  test('is as before where every spoon is there', () => {
    for (const dose of [0.03125, 0.1, 0.375, 0.75, 1.3, 3.9])
      expect(practicalSpoons(dose, undefined, SPOONS)).toEqual(practicalSpoons(dose));
  });

  test.prop([
    fc.double({ min: 0.02, max: 20, noNaN: true }),
    fc.subarray([...SPOONS], { minLength: 1 }),
    fc.double({ min: 0.02, max: 20, noNaN: true }),
  ])('uses no other spoon, and never goes above the most', (dose, owned, most) => {
    const { spoons, teaspoons, paste } = practicalSpoons(dose, most, owned);
    for (const { spoon, count } of spoons) {
      expect(owned).toContain(spoon);
      expect(count).toBeGreaterThan(0);
    }
    if (paste) expect(owned).toContain(paste.powder);
    if (spoons.length > 0) expect(teaspoons).toBeLessThanOrEqual(most * (1 + 1e-6));
  });
});
