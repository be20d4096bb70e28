import { expect, test } from 'vitest';
import { compare } from './compare.ts';
import { FIRST, PLANS } from './sample.ts';

test(`${PLANS} random plans spoiled on purpose agree with the published formulas, or say why not`, () => {
  const { wrong, refused, planned } = compare('nasty', FIRST, PLANS);
  expect(wrong.slice(0, 5)).toEqual([]);
  expect(planned).toBeGreaterThan(0.16 * PLANS);
  // The reasons that keep lye out of harm's way are all met.
  expect([...refused.keys()]).toEqual(
    expect.arrayContaining([
      'jug-too-little-water',
      'lye-too-strong',
      'superfat-negative',
      'purity-out-of-range',
      'solution-too-weak',
    ]),
  );
});
