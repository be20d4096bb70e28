import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { parseAmount } from '../../../src/engine/quantities/amount.ts';
import { practicalSpoons, teaspoonsIn } from '../../../src/engine/quantities/spoons.ts';
import { US_TEASPOON_ML } from '../../../src/engine/quantities/units.ts';
import { wordsIn } from '../../../src/words/index.ts';

const { measure } = wordsIn('en').quantities;

describe('a dose is said in spoons that exist', () => {
  test.each([
    [1 / 32, '1/32 tsp'],
    [1 / 16, '1/16 tsp'],
    [3 / 32, '1/16 tsp + 1/32 tsp'],
    [1 / 4, '1/4 tsp'],
    [1 / 2, '1/2 tsp'],
    [3 / 4, '1/2 tsp + 1/4 tsp'],
    [1.5, '1 tsp + 1/2 tsp'],
    [2, '2 tsp'],
    [3, '1 Tbsp'],
    [3.25, '1 Tbsp + 1/4 tsp'],
    [10, '3 Tbsp + 1 tsp'],
  ])('%d tsp is %s', (teaspoons, text) => {
    expect(measure(practicalSpoons(teaspoons))).toBe(text);
  });

  test('one spoon that is within 3 % is better than three that are exact', () => {
    expect(measure(practicalSpoons(0.51))).toBe('1/2 tsp');
    expect(measure(practicalSpoons(0.245))).toBe('1/4 tsp');
  });

  test('a spoon is added only while the sum is still far off', () => {
    expect(measure(practicalSpoons(1 / 3))).toBe('1/4 tsp + 1/16 tsp');
    expect(measure(practicalSpoons(0.45))).toBe('1/4 tsp + 1/8 tsp + 1/16 tsp');
  });

  test('below the smallest spoon, a part of a larger paste', () => {
    const measured = practicalSpoons(1 / 64);
    const { spoons, paste, off } = measured;
    expect(spoons).toEqual([]);
    expect(measure(measured)).toBe('1/8 of 1/8 tsp');
    expect(paste).toEqual({
      powder: '1/8 tsp',
      carrierTeaspoons: 3,
      carrierSpoons: [{ spoon: '1 Tbsp', count: 1 }],
      parts: 8,
      partSpoons: [
        { spoon: '1/4 tsp', count: 1 },
        { spoon: '1/8 tsp', count: 1 },
      ],
      teaspoons: 1 / 64,
    });
    expect(off).toBe(0);
  });

  test('between two small spoons a paste is offered beside the nearest one', () => {
    const measured = practicalSpoons(0.055);
    const { paste } = measured;
    expect(measure(measured)).toBe('1/16 tsp');
    expect(paste?.teaspoons).toBeCloseTo(0.055, 2);
  });

  test('where the nearest spoon is a quarter off or more, the paste stands in its place', () => {
    // A tint of ultramarine for 1 1/2 cups: 1/32 tsp is a third short, 1/16 tsp a third more.
    const { spoons, paste, off } = practicalSpoons(3 / 64);
    expect(spoons).toEqual([]);
    expect(paste?.teaspoons).toBeCloseTo(3 / 64, 2);
    expect(Math.abs(off)).toBeLessThanOrEqual(0.05);
  });

  test('a spoonful short of the ceiling is better than a grain above it', () => {
    expect(practicalSpoons(0.499, 0.499).teaspoons).toBeLessThanOrEqual(0.499);
    expect(practicalSpoons(1 / 32, 0.03).paste).toBeDefined();
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%d is no dose', teaspoons => {
    expect(() => practicalSpoons(teaspoons)).toThrow(RangeError);
  });
});

describe('for any dose', () => {
  const dose = fc.double({ min: 1e-4, max: 5000, noNaN: true });

  test.prop([dose, fc.double({ min: 1, max: 3, noNaN: true })])(
    'spoons never exceed the ceiling',
    (teaspoons, room) => {
      const measured = practicalSpoons(teaspoons, teaspoons * room);
      expect(measured.teaspoons).toBeLessThanOrEqual(teaspoons * room * (1 + 1e-6));
      expect(measured.teaspoons).toBeGreaterThan(0);
    },
  );

  test.prop([fc.double({ min: 1 / 32, max: 5000, noNaN: true })])(
    'spoons add up to what they say',
    teaspoons => {
      const measured = practicalSpoons(teaspoons);
      // Between two of the smallest a paste stands in their place.
      if (measured.spoons.length === 0) {
        expect(measured.paste?.teaspoons).toBe(measured.teaspoons);
        return;
      }
      expect(teaspoonsIn(measured.spoons)).toBeCloseTo(measured.teaspoons, 9);
      const text = measure(measured);
      if (!text.includes(' x ')) {
        const amount = parseAmount(text);
        expect(amount.measure === 'volume' && amount.millilitres / US_TEASPOON_ML).toBeCloseTo(
          measured.teaspoons,
          6,
        );
      }
    },
  );

  test.prop([fc.double({ min: 0.25, max: 5000, noNaN: true })])(
    'from 1/4 tsp up they are within 6.5 %',
    teaspoons => {
      expect(Math.abs(practicalSpoons(teaspoons).off)).toBeLessThanOrEqual(0.065);
    },
  );

  test.prop([fc.double({ min: 1e-4, max: 0.03, noNaN: true })])(
    'a paste is within 5 % and never above',
    teaspoons => {
      const { paste, off } = practicalSpoons(teaspoons);
      expect(paste!.parts).toBeGreaterThanOrEqual(2);
      expect(off).toBeLessThanOrEqual(1e-6);
      expect(off).toBeGreaterThanOrEqual(-0.0501);
    },
  );
});

test('halfway between two sums the smaller one is taken', () => {
  // Colour can be added, not taken out (common practice, no source).
  expect(practicalSpoons(5 / 64).spoons).toEqual([{ spoon: '1/16 tsp', count: 1 }]);
});
