import { expect, test } from 'vitest';
import { tally } from '../../../src/engine/challenges/voting/tally.ts';

/** As many as a group may bring: apart from the small elections, since a changed count that is tried on it takes a minute. */
test('counts a whole group: 500 ballots over 200 entries', () => {
  const candidates = Array.from({ length: 200 }, (_, i) => `entry-${i}`);
  const ballots = Array.from({ length: 500 }, (_, voter) => ({
    count: 1,
    ranking: candidates.map((_, i) => [candidates[(i * 7 + voter * 13) % 200]!]),
  }));
  const counted = tally({ candidates, ballots }, 'schulze', { brokenBySeed: 'loaf' });
  expect(counted.ranking).toHaveLength(200);
  expect(counted.pairwise['entry-0']!['entry-1']! + counted.pairwise['entry-1']!['entry-0']!).toBe(500);
});
