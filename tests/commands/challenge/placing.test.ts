import { describe, expect, test } from 'vitest';
import { placedBy } from '../../../commands/challenge/placing.ts';
import type { Result } from '../../../src/engine/challenges/result.ts';
import { wordsIn } from '../../../src/words/index.ts';

const say = wordsIn('en');
const tally = (votes: Record<string, number>, pairwise: Record<string, Record<string, number>>) =>
  ({ votes, pairwise, ranking: [], ballots: 5 }) as unknown as Result['tally'];
const result = (more: Partial<Result>): Result => ({
  decidedBy: 'votes',
  ranking: [],
  unplaced: [],
  tally: undefined,
  quorum: { needed: 0, cast: 5, met: true },
  colour: new Map(),
  sums: [],
  ...more,
});
const measured = (score: number) => ({ score: { score, plusMinus: 1 } }) as never;

describe('what put a bar in its place, in words', () => {
  test('is the two places that were added, where vote and colour decide together', () => {
    const both = result({ decidedBy: 'both', sums: [{ entry: 'a', byVotes: 1, byColour: 3 }] });
    expect(placedBy(both, 'a', say)).toBe('1 by vote + 3 by colour = 4');
    expect(placedBy(both, 'b', say)).toBe('');
  });

  test('is its votes where they are counted, else whom more ballots prefer it to', () => {
    expect(placedBy(result({ tally: tally({ a: 4, b: 1 }, {}) }), 'b', say)).toBe('1 vote');
    const pairs = { a: { b: 3, c: 3 }, b: { a: 2, c: 4 }, c: { a: 2, b: 1 } };
    const ranked = result({ tally: tally({}, pairs) });
    expect(placedBy(ranked, 'a', say)).toMatch(/prefer it to every other bar/);
    expect(placedBy(ranked, 'b', say)).toBe('more ballots prefer it to 1 of the 2 others');
    expect(placedBy(ranked, 'c', say)).toMatch(/every other bar is preferred to it/);
  });

  // CIEDE2000: about 1 to 2 is just visible (ISO/CIE 11664-6 and common practice); the wider bands are common practice.
  test.each([
    [1.9, 'the palette, to the eye'],
    [4.9, 'very near the palette'],
    [9.9, 'near the palette'],
    [19.9, 'some way off the palette'],
    [20.1, 'far off the palette'],
  ])('is how near its colour is: %d is “%s”', (score, words) => {
    const near = result({ decidedBy: 'colour', colour: new Map([['a', measured(score)]]) });
    expect(placedBy(near, 'a', say)).toBe(words);
  });

  test('is nothing where too few voted', () => {
    expect(placedBy(result({ decidedBy: 'nothing', tally: tally({ a: 4 }, {}) }), 'a', say)).toBe('');
  });
});
