import { describe, expect, test } from 'vitest';
import { checkIngredients } from '../../../src/engine/stability/check.ts';
import type { ListCase } from './lists/case.ts';
import { heldOut } from './lists/held-out.ts';
import { tuned } from './lists/tuned.ts';

const told = ({ list }: ListCase) => {
  const { components, kind, verdict, unknown } = checkIngredients(list);
  return { ids: components.map(({ id }) => id).toSorted(), kind, verdict, unknown };
};
const expected = ({ ids, kind, verdict, unknown }: ListCase) => ({
  ids: ids.toSorted(),
  kind,
  verdict,
  unknown,
});
const isRight = (listed: ListCase): boolean =>
  JSON.stringify(told(listed)) === JSON.stringify(expected(listed));

describe('ingredient lists are read', () => {
  test.each(tuned.map(listed => [listed.product, listed] as const))('%s', (_, listed) => {
    expect(told(listed)).toEqual(expected(listed));
  });

  test('at least 60 lists, half of them kept out of tuning', () => {
    expect(heldOut.length + tuned.length).toBeGreaterThanOrEqual(60);
    expect(heldOut.length).toBeGreaterThanOrEqual(30);
  });

  test('of the lists kept out of tuning, at least nine in ten are read without any fault', () => {
    const right = heldOut.filter(isRight);
    const faulty = heldOut.filter(listed => !isRight(listed)).map(({ product }) => product);
    console.info(
      `ingredient lists kept out of tuning: ${right.length} of ${heldOut.length} fully right` +
        (faulty.length > 0 ? ` (not: ${faulty.join(', ')})` : ''),
    );
    expect(right.length / heldOut.length).toBeGreaterThanOrEqual(0.9);
  });
});
