import { expect, test } from 'vitest';
import { CAUSE_IDS } from '../../../src/engine/flaws/cause.ts';
import written from '../../../src/engine/flaws/reading/wording.json' with { type: 'json' };
import { readWording } from '../../../src/engine/flaws/reading/wording.ts';
import { learnedWording, writeWording } from './learned.ts';

test('the wording on disk is that of the examples: else run npx node tests/engine/flaws/write-wording.ts', () => {
  expect(written).toEqual(learnedWording());
});

test('wording reads back as it was written', () => {
  expect(writeWording(readWording(written))).toEqual(written);
});

test('every cause has descriptions to learn from, and no word is counted oftener than its cause is told', () => {
  expect(written.cases).toHaveLength(CAUSE_IDS.length);
  expect(Math.min(...written.cases)).toBeGreaterThan(0);
  for (const row of readWording(written).seen.values())
    for (const [cause, count] of row) expect(count).toBeLessThanOrEqual(written.cases[cause] ?? 0);
});
