import { describe, expect, test } from 'vitest';
import type { Ballot, Election } from '../../../src/engine/challenges/voting/election.ts';
import { tieOrder } from '../../../src/engine/challenges/voting/lots.ts';
import { tally } from '../../../src/engine/challenges/voting/tally.ts';

const ballot = (count: number, ...ranking: readonly string[][]): Ballot => ({ count, ranking });
const order = (election: Election, seed: string) =>
  [...tieOrder(election, seed)].toSorted(([, a], [, b]) => a - b).map(([candidate]) => candidate);

const pigments: Election = {
  candidates: ['ember', 'clay', 'ash', 'dusk', 'birch'],
  ballots: [
    ballot(2, ['clay', 'birch']),
    { ...ballot(1, ['ember']), omit: ['ash'] },
    ballot(2, ['dusk'], ['ash']),
    // Says the same as the first, the unranked written out.
    ballot(1, ['birch', 'clay'], ['ash', 'ember', 'dusk']),
    ballot(2, ['ash', 'birch'], ['clay', 'dusk']),
    { ...ballot(1, ['clay'], ['ember', 'dusk']), omit: ['birch'] },
    // Cast by nobody: were it drawn, it would settle all.
    ballot(0, ['ash'], ['birch'], ['clay'], ['dusk'], ['ember']),
  ],
};

describe('the order that breaks ties', () => {
  // Worked out in another language from Zavist and Tideman's description and the published generators.
  test.each([
    ['ochre', ['birch', 'clay', 'dusk', 'ash', 'ember']],
    ['madder', ['birch', 'ash', 'clay', 'dusk', 'ember']],
    ['weld', ['birch', 'ash', 'clay', 'dusk', 'ember']],
    ['woad', ['dusk', 'ash', 'birch', 'clay', 'ember']],
    ['indigo', ['birch', 'clay', 'ember', 'dusk', 'ash']],
    ['walnut', ['birch', 'clay', 'ash', 'dusk', 'ember']],
    ['saffron', ['dusk', 'ash', 'birch', 'clay', 'ember']],
    ['lac', ['birch', 'clay', 'dusk', 'ash', 'ember']],
    ['alkanet', ['birch', 'clay', 'ash', 'dusk', 'ember']],
    ['annatto', ['birch', 'clay', 'dusk', 'ash', 'ember']],
  ])('of the seed “%s” is the one that anybody can work out', (seed, expected) => {
    expect(order(pigments, seed)).toEqual(expected);
  });

  // Drawn whole by lot, since the only ballot leaves one of them out; worked out as above.
  test.each([
    ['1', ['b', 'c', 'a']],
    ['2', ['c', 'a', 'b']],
    ['3', ['a', 'c', 'b']],
    ['4', ['a', 'b', 'c']],
  ])('asks no ballot about a group that it leaves one out of: seed %s', (seed, expected) => {
    const own: Election = {
      candidates: ['a', 'b', 'c'],
      ballots: [{ ...ballot(1, ['a'], ['b']), omit: ['c'] }],
    };
    expect(order(own, seed)).toEqual(expected);
  });

  // Two groups that no ballot splits, each shuffled in its turn; worked out as above.
  test.each([
    ['1', ['a', 'b', 'd', 'c']],
    ['2', ['a', 'b', 'd', 'c']],
    ['3', ['b', 'a', 'c', 'd']],
    ['6', ['a', 'b', 'c', 'd']],
  ])('draws lots within each group that is left: seed %s', (seed, expected) => {
    expect(order({ candidates: ['a', 'b', 'c', 'd'], ballots: [ballot(1, ['a', 'b'])] }, seed)).toEqual(
      expected,
    );
  });

  /** How often each comes first over so many seeds. */
  function firsts(election: Election, seeds: number): Readonly<Record<string, number>> {
    const found: Record<string, number> = {};
    for (let seed = 0; seed < seeds; seed++) {
      const [first] = order(election, `seed ${seed}`);
      found[first!] = (found[first!] ?? 0) + 1;
    }
    return found;
  }

  test('draws each ballot as likely as any other: three in four are for a', () => {
    const ballots = [ballot(3, ['a'], ['b']), ballot(1, ['b'], ['a'])];
    const { a, b } = firsts({ candidates: ['a', 'b'], ballots }, 400);
    // Binomial with mean 300 and standard deviation 8.7: within 3.3 of them with probability 0.999.
    expect(a).toBeGreaterThan(271);
    expect(a).toBeLessThan(329);
    expect(a! + b!).toBe(400);
  });

  test('goes on to the next ballot, with the same fairness, where the first likes both alike', () => {
    const ballots = [ballot(7, ['a', 'b']), ballot(3, ['a'], ['b']), ballot(1, ['b'], ['a'])];
    const { a } = firsts({ candidates: ['a', 'b'], ballots }, 400);
    expect(a).toBeGreaterThan(271);
    expect(a).toBeLessThan(329);
  });

  test('is by lot where the only ballot is cast by nobody', () => {
    const { a } = firsts({ candidates: ['a', 'b'], ballots: [ballot(0, ['a'], ['b'])] }, 400);
    // Mean 200, standard deviation 10.
    expect(a).toBeGreaterThan(167);
    expect(a).toBeLessThan(233);
  });

  test('gives each candidate a place from 0', () => {
    expect([...tieOrder(pigments, 'ochre')].toSorted(([, a], [, b]) => a - b)).toEqual([
      ['birch', 0],
      ['clay', 1],
      ['dusk', 2],
      ['ash', 3],
      ['ember', 4],
    ]);
  });

  test('of nobody is nobody', () => {
    expect(order({ candidates: [], ballots: [] }, 'x')).toEqual([]);
  });
});

describe('a tally with its ties broken', () => {
  test('places by votes first, and by the order of ties only among equals', () => {
    // Counted by hand; ash and dusk are level. “indigo” puts dusk before ash, “madder” ash before dusk.
    const { votes, ranking } = tally(pigments, 'approval', { brokenBySeed: 'indigo' });
    expect(votes).toEqual({ ash: 2, birch: 5, clay: 4, dusk: 2, ember: 1 });
    expect(ranking).toEqual([['birch'], ['clay'], ['dusk'], ['ash'], ['ember']]);
    expect(tally(pigments, 'approval', { brokenBySeed: 'madder' }).ranking).toEqual([
      ['birch'],
      ['clay'],
      ['ash'],
      ['dusk'],
      ['ember'],
    ]);
  });

  test('by Schulze takes, of those whom nobody beats, the first of that order', () => {
    // Nobody votes: all are tied, and the order of ties is the ranking.
    const silent: Election = { candidates: ['c', 'b', 'a'], ballots: [] };
    for (const seed of ['1', '2', '3', '4', '5'])
      expect(tally(silent, 'schulze', { brokenBySeed: seed }).ranking.flat()).toEqual(order(silent, seed));
  });

  test('says by which seed', () => {
    expect(tally(pigments, 'schulze', { brokenBySeed: 'woad' }).ties).toEqual({
      brokenBySeed: 'woad',
    });
  });
});
