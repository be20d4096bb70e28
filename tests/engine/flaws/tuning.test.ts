import { expect, test } from 'vitest';
import { CAUSE_IDS } from '../../../src/engine/flaws/cause.ts';
import { drawn } from '../../walk.ts';
import { figures, outcomes } from './evaluate.ts';
import { EXAMPLES } from './examples.ts';

test('on the descriptions it was tuned to, the right cause comes first in at least 95 of 100', () => {
  const all = EXAMPLES;
  expect(all.length).toBeGreaterThanOrEqual(150);
  expect(new Set(all.map(item => item.cause)).size).toBe(CAUSE_IDS.length);
  const run = outcomes(drawn(all, 400));
  console.info(figures('tuning descriptions', run));
  expect(run.filter(item => item.hit).length / run.length).toBeGreaterThanOrEqual(0.95);
});
