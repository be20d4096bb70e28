import { expect, test } from 'vitest';
import { WHOLE } from '../../walk.ts';
import { compare } from './compare.ts';

const PLANS = WHOLE ? 5000 : 1000;

test(`${PLANS} random plans that a maker could ask for agree with the published formulas, or say why not`, () => {
  const { wrong, planned } = compare('plausible', 1, PLANS);
  expect(wrong.slice(0, 5)).toEqual([]);
  // Most are planned, so that agreement is of numbers and not of refusals.
  expect(planned).toBeGreaterThan(0.8 * PLANS);
});
