import { expect, test, vi } from 'vitest';
import { findColourant } from '../../src/engine/colourants/asked/find-colourant.ts';
import { Refusal } from '../../src/engine/refusal.ts';
import * as edits from '../../src/engine/text/spelling/edit-distance.ts';

// Counted, not timed; in a file of its own, since a spy needs modules that nobody has loaded.
vi.mock('../../src/engine/text/spelling/edit-distance.ts', { spy: true });

function refusalOf(text: string): Refusal {
  try {
    findColourant(text);
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal;
    throw refusal;
  }
  throw new Error(`${text} was found`);
}

test('a text that is no colourant is compared with the names when somebody asks what is near, and once', () => {
  const distance = vi.mocked(edits.distance);
  distance.mockClear();
  const refusal = refusalOf('gold mica pastel');
  expect(refusal.id).toBe('colourant-unknown');
  // Poisons and prohibited colours are looked for whatever else it is: their names are few.
  const looked = distance.mock.calls.length;
  expect(looked).toBeLessThan(100);
  const values = refusal.values as { readonly nearest: readonly { readonly id: string }[] };
  expect(values.nearest.map(({ id }) => id)).toContain('gold-mica');
  const compared = distance.mock.calls.length;
  expect(compared).toBeGreaterThan(looked + 1_000);
  expect(values.nearest).toHaveLength(3);
  expect(distance).toHaveBeenCalledTimes(compared);
});
