import { expect, test } from 'vitest';
import { compare } from './compare.ts';
import { FIRST, PLANS } from './sample.ts';

test(`${PLANS} random plans that a maker could ask for agree with the published formulas, or say why not`, () => {
  const { wrong, planned } = compare('plausible', FIRST, PLANS);
  expect(wrong.slice(0, 5)).toEqual([]);
  // Most are planned, so that agreement is of numbers and not of refusals.
  expect(planned).toBeGreaterThan(0.8 * PLANS);
});
