import { expect, test } from 'vitest';
import { compare } from './compare.ts';

test('5,000 random plans that a maker could ask for agree with the published formulas, or say why not', () => {
  const { wrong, planned } = compare('plausible', 1, 5000);
  expect(wrong.slice(0, 5)).toEqual([]);
  // Most are planned, so that agreement is of numbers and not of refusals.
  expect(planned).toBeGreaterThan(4000);
});
