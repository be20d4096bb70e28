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
const numbers = new Map(['a', 'b', 'c', 'd'].map((entry, at) => [entry, { number: at + 1 }]));
const measured = (score: number) => ({ score: { score, plusMinus: 1 } }) as never;

describe('what put a bar in its place, in words', () => {
  test('is the two places that were added, where vote and colour decide together', () => {
    const both = result({ decidedBy: 'both', sums: [{ entry: 'a', byVotes: 1, byColour: 3 }] });
    expect(placedBy(both, 'a', numbers, say)).toBe('1 by vote + 3 by colour = 4');
    expect(placedBy(both, 'b', numbers, say)).toBe('');
  });

  test('is its votes where they are counted, else whom more ballots prefer it to', () => {
    expect(placedBy(result({ tally: tally({ a: 4, b: 1 }, {}) }), 'b', numbers, say)).toBe('1 vote');
    const pairs = { a: { b: 3, c: 3 }, b: { a: 2, c: 4 }, c: { a: 2, b: 1 } };
    const ranked = result({ tally: tally({}, pairs) });
    expect(placedBy(ranked, 'a', numbers, say)).toMatch(/prefer it to every other bar/);
    expect(placedBy(ranked, 'b', numbers, say)).toBe('more ballots prefer it to 1 of the 2 others');
    expect(placedBy(ranked, 'c', numbers, say)).toMatch(/every other bar is preferred to it/);
  });

  // Worked by hand: a and b each beat two of three (a: b, c; b: c, d; d beats a), and a beats b by 4 to 2.
  test('tells two bars apart that won as many pairs, by the pair of both', () => {
    const pairs = {
      a: { b: 4, c: 5, d: 2 },
      b: { a: 2, c: 4, d: 5 },
      c: { a: 1, b: 2, d: 3 },
      d: { a: 3, b: 1, c: 3 },
    };
    const counted = tally({}, pairs);
    const ranked = result({ tally: { ...counted, ranking: [['a'], ['b'], ['d'], ['c']] } as never });
    expect(placedBy(ranked, 'a', numbers, say)).toBe(
      'more ballots prefer it to 2 of the 3 others; 4 to 2 against bar 2',
    );
    expect(placedBy(ranked, 'b', numbers, say)).toBe('more ballots prefer it to 2 of the 3 others');
    expect(placedBy(ranked, 'a', numbers, wordsIn('es'))).toMatch(/; 4 a 2 frente a la barra 2$/);
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
    expect(placedBy(near, 'a', numbers, say)).toBe(words);
  });

  test('is nothing where too few voted', () => {
    expect(placedBy(result({ decidedBy: 'nothing', tally: tally({ a: 4 }, {}) }), 'a', numbers, say)).toBe(
      '',
    );
  });
});
