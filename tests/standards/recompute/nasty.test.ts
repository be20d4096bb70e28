import { expect, test } from 'vitest';
import { compare } from './compare.ts';

test('5,000 random plans spoiled on purpose agree with the published formulas, or say why not', () => {
  const { wrong, refused, planned } = compare('nasty', 1, 5000);
  expect(wrong.slice(0, 5)).toEqual([]);
  expect(planned).toBeGreaterThan(800);
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
