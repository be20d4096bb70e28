import { describe, expect, test } from 'vitest';
import { parseAmount } from '../../../src/engine/quantities/amount.ts';
import { printMixed } from '../../../src/engine/quantities/number.ts';
import { teaspoonsIn, timesSpoons } from '../../../src/engine/quantities/spoons.ts';
import { readWritten } from '../../../src/engine/quantities/written.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { refused } from './refused.ts';

const millilitres = (text: string) => (parseAmount(text) as { millilitres: number }).millilitres;
/** What a refusal says beside its id. */
function saidOf(text: string): unknown {
  try {
    return parseAmount(text);
  } catch (problem) {
    if (problem instanceof Refusal) return problem.values;
    throw problem;
  }
}

describe('an amount as recipes write it', () => {
  // A US customary cup is 236.588 ml and a teaspoon 4.929 ml (NIST Handbook 44, appendix C); a metric cup is 250 ml.
  test.each([
    ['1 cup and a quarter', 1.25 * 236.588],
    ['1 taza y cuarto', 1.25 * 236.588],
    ['2 and 3/4 cups', 2.75 * 236.588],
    ['1 metric cup 1 tsp', 250 + 4.929],
    ['1 cup metric 1 tsp', 250 + 4.929],
  ])('%s', (text, expected) => {
    expect(millilitres(text)).toBeCloseTo(expected, 2);
  });

  test('a part behind "and" or "y" is on top of the count before it', () => {
    const countOf = (text: string) => readWritten(text)?.terms.map(({ counts, unit }) => [counts, unit]);
    for (const text of ['1 taza y cuarto', '1 y cuarto tazas', '1 and a quarter cups'])
      expect(countOf(text)).toEqual([[[1.25], 'cup']]);
    for (const text of ['2 and a half cups', '2 and half cups', '2 y media tazas', '2 y medio tazas'])
      expect(countOf(text)).toEqual([[[2.5], 'cup']]);
  });

  test('five quarters on top of a whole number are no way to write an amount', () => {
    for (const text of ['1 5/4 cups', '2 and 5/4 cups'])
      expect(refused(() => parseAmount(text))).toBe('amount-unreadable');
  });

  test('kilograms go on in grams, beside a comma or not', () => {
    for (const text of ['1 kg 250 g', '1 kg, 250 g'])
      expect(parseAmount(text)).toEqual({ measure: 'mass', grams: 1250 });
  });

  test('what is too much is told in the unit of its kind: weights in grams and kilograms, room in millilitres and litres', () => {
    expect(saidOf('900000 kg')).toMatchObject({ low: { unit: 'g' }, high: { value: 200, unit: 'kg' } });
    expect(saidOf('900000 l')).toMatchObject({ low: { unit: 'ml' }, high: { value: 200, unit: 'l' } });
  });
});

test('kitchen fractions are for what is counted in a kitchen: up to twenty and a half, 30.25 is a figure', () => {
  expect(printMixed(20.5)).toBe('20 1/2');
  expect(printMixed(30.25)).toBe('30.3');
});

test('three times a teaspoon is a tablespoon, and eight times an eighth a teaspoon', () => {
  expect(timesSpoons([{ spoon: '1 tsp', count: 1 }], 3)).toEqual([{ spoon: '1 Tbsp', count: 1 }]);
  expect(timesSpoons([{ spoon: '1/8 tsp', count: 1 }], 8)).toEqual([{ spoon: '1 tsp', count: 1 }]);
  const owned = ['1 tsp', '1/2 tsp'] as const;
  expect(timesSpoons([{ spoon: '1/2 tsp', count: 3 }], 2, owned)).toEqual([{ spoon: '1 tsp', count: 3 }]);
  expect(teaspoonsIn(timesSpoons([{ spoon: '1 tsp', count: 2 }], 4))).toBe(8);
});
