import { describe, expect, test } from 'vitest';
import {
  givesWayToAWeight,
  isOfAnOil,
} from '../../../../../src/engine/questions/lye/topics/beside-weights.ts';

describe('too much of an oil is no lye too much', () => {
  test.each([
    ['se me fue la mano con el girasol, 260 en vez de 200', true],
    ['me pasé con el coco, eché 300', true],
    ['weighed coconut wrong, got 280 instead of 200', true],
    ['se me fue la mano con la soda, 160 en vez de 140', false],
    ['weighed the lye wrong, 160 instead of 140', false],
    ['me pasé de sosa', false],
  ])('%s', (typed, isOil) => {
    expect(isOfAnOil(typed)).toBe(isOil);
    expect(givesWayToAWeight('too-much-in', typed)).toBe(isOil);
  });
  test('what is spilt does not wait', () =>
    expect([
      givesWayToAWeight('clean-up', 'lye on the floor'),
      givesWayToAWeight('clean-up', 'clean lard'),
      givesWayToAWeight('swallowed', 'power went out'),
      givesWayToAWeight('power-cut', 'power went out'),
    ]).toEqual([false, true, false, true]));
});
