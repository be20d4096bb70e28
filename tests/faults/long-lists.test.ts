import { expect, test, vi } from 'vitest';
import { checkIngredients } from '../../src/engine/stability/check.ts';
import * as edits from '../../src/engine/text/spelling/edit-distance.ts';

// Counted, not timed; in a file of its own, since a spy needs modules that nobody has loaded.
vi.mock('../../src/engine/text/spelling/edit-distance.ts', { spy: true });

test('twice the text takes twice the comparisons, not four times', () => {
  const distance = vi.mocked(edits.distance);
  const comparisons = (length: number): number => {
    const list = Array.from(
      { length: length / 10 },
      (_, at) => `qzw${String(at).replace(/\d/g, d => 'abcdefghij'[Number(d)] ?? '')}xy`,
    );
    distance.mockClear();
    checkIngredients(list.join(', '));
    return distance.mock.calls.length;
  };
  const ratio = comparisons(10_000) / comparisons(5_000);
  expect(ratio).toBeGreaterThan(1.5);
  expect(ratio).toBeLessThan(2.5);
});
