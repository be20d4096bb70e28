import { describe, expect, test } from 'vitest';
import { readRanking } from '../../../src/engine/challenges/voting/written-ballot.ts';
import { refused } from '../quantities/refused.ts';

const bars = new Map([
  [1, 'a'],
  [2, 'b'],
  [3, 'c'],
]);

describe('a written ballot', () => {
  test.each([
    ['2,1,3', [['b'], ['a'], ['c']]],
    ['2 > 1 = 3', [['b'], ['a', 'c']]],
    ['#3 #1', [['c'], ['a']]],
    ['2;1', [['b'], ['a']]],
    [' 1 ', [['a']]],
  ])('“%s” is read as meant', (text, ranking) => {
    expect(readRanking(text, bars)).toEqual(ranking);
  });

  test.each(['', 'first', '1,,2', '1,', '=1', '2-1', '1.5'])('“%s” is refused with an example', text => {
    expect(refused(() => readRanking(text, bars))).toBe('vote-unreadable');
  });

  test('that is refused is quoted, a long one cut at 60 letters', () => {
    expect(() => readRanking('  the   teal one ', bars)).toThrow(
      expect.objectContaining({ id: 'vote-unreadable', values: { text: 'the teal one' } }),
    );
    const long = 'teal '.repeat(40);
    expect(() => readRanking(long, bars)).toThrow(
      expect.objectContaining({ values: { text: `${'teal '.repeat(11).trim()}…` } }),
    );
  });

  test('with a number that no bar has is refused by that number', () => {
    expect(() => readRanking('1,4', bars)).toThrow(
      expect.objectContaining({ id: 'vote-number-unknown', values: { number: 4 } }),
    );
  });
});
