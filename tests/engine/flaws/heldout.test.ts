import { expect, test } from 'vitest';
import { diagnose } from '../../../src/engine/flaws/diagnose.ts';
import { brier, described, figures, outcomes } from './evaluate.ts';

const all = described('heldout');
const flawed = all.filter(item => item.cause !== null);
const nothing = all.filter(item => item.cause === null);
const run = outcomes(flawed);

test('on descriptions kept out of tuning, the right cause comes first in at least 93 of 100', () => {
  console.info(figures('held-out descriptions', run));
  expect(run.filter(item => item.hit).length / run.length).toBeGreaterThanOrEqual(0.93);
});

test('on descriptions kept out of tuning, stated chances come true: Brier score under 0.05', () => {
  expect(brier(run)).toBeLessThan(0.05);
});

test('words about nothing known get no verdict in at least 22 of 25', () => {
  const told = nothing.filter(({ text }) => diagnose(text).cantTell === undefined).length;
  console.info(`nothing known: no verdict in ${nothing.length - told} of ${nothing.length}`);
  expect(nothing.length).toBeGreaterThanOrEqual(25);
  expect(told / nothing.length).toBeLessThanOrEqual(0.1);
});
