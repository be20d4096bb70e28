import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { combinePlaces, meanPlaces } from '../../../src/engine/challenges/voting/combine.ts';

describe('votes and measured colour together', () => {
  test('those who share a place get the mean of the places they take', () => {
    // Source: Kendall, Biometrika 33 (1945): members tied for places 2 and 3 have 2 1/2 each.
    expect(Object.fromEntries(meanPlaces([['a'], ['b', 'c'], ['d']]))).toEqual({
      a: 1,
      b: 2.5,
      c: 2.5,
      d: 4,
    });
  });

  test('add the two places of each bar, the lowest sum first', () => {
    expect(combinePlaces([['a'], ['b'], ['c']], [['b'], ['c'], ['a']]).ranking).toEqual([
      ['b'],
      ['a'],
      ['c'],
    ]);
  });

  test('give the vote and the colour the same say', () => {
    const [one, other] = [
      [['a'], ['b', 'c'], ['d']],
      [['d'], ['c'], ['a', 'b']],
    ];
    expect(combinePlaces(one, other).ranking).toEqual(combinePlaces(other, one).ranking);
  });

  test('put a bar that could not be measured last by colour, together with its like', () => {
    const { sums } = combinePlaces([['neon'], ['a'], ['pearl']], [['a']]);
    expect(sums).toEqual([
      { entry: 'a', byVotes: 2, byColour: 1 },
      { entry: 'neon', byVotes: 1, byColour: 2.5 },
      { entry: 'pearl', byVotes: 3, byColour: 2.5 },
    ]);
  });

  test('share a place where the sums are equal, in the order of their ids', () => {
    // By hand: a 1 + 4, b 2.5 + 2.5, c 2.5 + 2.5, d 4 + 1.
    const { ranking, sums } = combinePlaces([['a'], ['c', 'b'], ['d']], [['d'], ['b', 'c'], ['a']]);
    expect(ranking).toEqual([['a', 'b', 'c', 'd']]);
    expect(sums.map(({ entry }) => entry)).toEqual(['a', 'b', 'c', 'd']);
  });

  test('order sums as numbers: 10 comes behind 9', () => {
    const order = ['a', 'b', 'c', 'd', 'e', 'f'].map(entry => [entry]);
    // Twice the place: 2, 4, 6, 8, 10, 12.
    expect(combinePlaces(order, order).ranking).toEqual(order);
  });

  test('put last by votes whom no vote placed', () => {
    // By hand: a 1 + 2, b 2.5 + 1, c 2.5 + 3.
    expect(combinePlaces([['a']], [['b'], ['a'], ['c']]).ranking).toEqual([['a'], ['b'], ['c']]);
  });

  test('of nobody are nothing', () => {
    expect(combinePlaces([], [])).toEqual({ ranking: [], sums: [] });
  });

  const entries = ['a', 'b', 'c', 'd', 'e'];
  const anyOrder = fc.shuffledSubarray(entries, { minLength: 5 }).map(order => order.map(entry => [entry]));
  test.prop([anyOrder, anyOrder])(
    'never place a bar behind one that it beats by votes and by colour',
    (votes, colour) => {
      const places = new Map(
        combinePlaces(votes, colour).ranking.flatMap((tied, place) =>
          tied.map(entry => [entry, place] as const),
        ),
      );
      const at = (order: readonly (readonly string[])[], entry: string) =>
        order.findIndex(tied => tied.includes(entry));
      for (const one of entries)
        for (const other of entries)
          if (at(votes, one) < at(votes, other) && at(colour, one) < at(colour, other))
            expect(places.get(one)).toBeLessThan(places.get(other)!);
    },
  );
});
