import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import type { Election, Method } from '../../../src/engine/challenges/voting/election.ts';
import { tally } from '../../../src/engine/challenges/voting/tally.ts';
import { anyElection, raised } from './ballot-box.ts';

const methods: readonly Method[] = ['schulze', 'approval'];
const anyMethod = fc.constantFrom(...methods);

/** Strongest paths by walking every path there is: slow, and nothing to get wrong. */
function walked(pairwise: Record<string, Record<string, number>>, from: string, to: string): number {
  const step = (a: string, b: string) => {
    const won = pairwise[a]![b]!;
    return won > pairwise[b]![a]! ? won : 0;
  };
  const walk = (at: string, been: readonly string[]): number => {
    if (at === to) return Number.POSITIVE_INFINITY;
    const ways = Object.keys(pairwise).filter(next => !been.includes(next));
    return Math.max(0, ...ways.map(next => Math.min(step(at, next), walk(next, [...been, next]))));
  };
  return walk(from, [from]);
}

const ballot = (count: number, ...ranking: readonly string[][]) => ({ count, ranking });

describe('a tally', () => {
  test.prop([anyElection])('finds the strongest paths that walking all paths finds', election => {
    const { pairwise, strongestPaths } = tally(election);
    for (const from of election.candidates)
      for (const to of election.candidates)
        if (from !== to) expect(strongestPaths[from]![to]).toBe(walked(pairwise as never, from, to));
  });

  test.prop([anyElection, anyMethod, fc.boolean()])(
    'places every candidate once',
    (election, method, broken) => {
      const { ranking } = tally(election, method, broken ? { brokenBySeed: 'x' } : 'shared');
      expect([...ranking.flat()].sort()).toEqual([...election.candidates].sort());
      if (broken) expect(ranking).toHaveLength(election.candidates.length);
    },
  );

  test.prop([anyElection, anyMethod, fc.nat(), fc.boolean()])(
    'does not depend on the order of ballots or candidates, nor on how equal ballots are bundled',
    (election, method, turn, broken) => {
      const ties = broken ? { brokenBySeed: 'lavender' } : ('shared' as const);
      const turned = <Thing>(things: readonly Thing[]) => {
        const by = things.length === 0 ? 0 : turn % things.length;
        return [...things.slice(by), ...things.slice(0, by)].reverse();
      };
      const single = election.ballots.flatMap(({ count, ...one }) =>
        Array.from({ length: count }, () => ({ ...one, count: 1 })),
      );
      const other: Election = { candidates: turned(election.candidates), ballots: turned(single) };
      expect(tally(other, method, ties)).toEqual(tally(election, method, ties));
    },
  );

  test.prop([anyElection, anyMethod, fc.nat()])(
    'never makes a winner lose because somebody ranks it higher',
    (election, method, which) => {
      fc.pre(election.ballots.length > 0);
      const winner = tally(election, method).ranking[0]![0]!;
      const liked = which % election.ballots.length;
      fc.pre(!election.ballots[liked]!.omit?.includes(winner));
      const ballots = election.ballots.map((one, i) => (i === liked ? raised(one, winner) : one));
      expect(tally({ ...election, ballots }, method).ranking[0]).toContain(winner);
    },
  );

  test.prop([anyElection])('puts whoever beats each of the others alone in first place', election => {
    const { pairwise, ranking } = tally(election);
    const beatsAll = election.candidates.find(one =>
      Object.entries(pairwise[one]!).every(([other, won]) => won > pairwise[other]![one]!),
    );
    fc.pre(beatsAll !== undefined);
    expect(ranking[0]).toEqual([beatsAll]);
  });

  test.prop([anyElection, fc.string()])(
    'with ties broken, keeps everybody in the order that shared places gave',
    (election, seed) => {
      const shared = tally(election).ranking[0]!;
      const [first] = tally(election, 'schulze', { brokenBySeed: seed }).ranking[0]!;
      expect(shared).toContain(first);
    },
  );

  test('leaves a voter’s own entry out of that ballot’s pairs, neither first nor last', () => {
    const candidates = ['mine', 'yours', 'theirs'];
    const omitted = { count: 1, ranking: [['yours'], ['theirs']], omit: ['mine'] };
    const { pairwise } = tally({ candidates, ballots: [omitted] });
    expect(pairwise).toEqual({
      mine: { theirs: 0, yours: 0 },
      theirs: { mine: 0, yours: 0 },
      yours: { mine: 0, theirs: 1 },
    });
    const unranked = tally({ candidates, ballots: [ballot(1, ['yours'], ['theirs'])] });
    expect(unranked.pairwise.yours!.mine).toBe(1);
  });

  test('counts a ballot that ranks only its favourite as liking it above all others alike', () => {
    const { pairwise, ranking } = tally({ candidates: ['a', 'b', 'c'], ballots: [ballot(3, ['b'])] });
    expect(ranking).toEqual([['b'], ['a', 'c']]);
    expect(pairwise.a!.c).toBe(0);
  });

  test('shares every place when nobody has voted', () => {
    expect(tally({ candidates: ['b', 'a'], ballots: [] })).toMatchObject({
      ranking: [['a', 'b']],
      ballots: 0,
    });
  });

  test('by approval counts every bar in the first rank, and lists the pairs all the same', () => {
    const counted = tally(
      { candidates: ['a', 'b', 'c'], ballots: [ballot(2, ['a', 'b']), ballot(1, ['b'])] },
      'approval',
    );
    expect(counted).toMatchObject({
      ranking: [['b'], ['a'], ['c']],
      votes: { a: 2, b: 3, c: 0 },
      ballots: 3,
    });
    expect(counted.pairwise.b!.a).toBe(1);
  });

  test('by single choice counts one vote a ballot', () => {
    const election = { candidates: ['a', 'b'], ballots: [ballot(2, ['a']), ballot(3, ['b'])] };
    expect(tally(election, 'single')).toEqual({
      method: 'single',
      ranking: [['b'], ['a']],
      pairwise: { a: { b: 2 }, b: { a: 3 } },
      strongestPaths: {},
      votes: { a: 2, b: 3 },
      ballots: 5,
      ties: 'shared',
    });
  });

  test('by strongest paths counts no votes', () => {
    const election = { candidates: ['b', 'a'], ballots: [ballot(2, ['a']), ballot(3, ['b'])] };
    expect(tally(election)).toEqual({
      method: 'schulze',
      ranking: [['b'], ['a']],
      pairwise: { a: { b: 2 }, b: { a: 3 } },
      strongestPaths: { a: { b: 0 }, b: { a: 3 } },
      votes: {},
      ballots: 5,
      ties: 'shared',
    });
  });

  test.each(['approval', 'single'] as const)(
    'by %s choice a blank ballot is counted and votes for nobody',
    method => {
      const election = { candidates: ['a', 'b'], ballots: [ballot(2), ballot(1, ['b'])] };
      expect(tally(election, method)).toMatchObject({
        ranking: [['b'], ['a']],
        votes: { a: 0, b: 1 },
        ballots: 3,
      });
      expect(Object.keys(tally(election, method).votes)).toEqual(['a', 'b']);
    },
  );

  test('by votes shares a place among those with as many', () => {
    const election = { candidates: ['d', 'c', 'b', 'a'], ballots: [ballot(2, ['a', 'd']), ballot(2, ['b'])] };
    expect(tally(election, 'approval').ranking).toEqual([['a', 'b', 'd'], ['c']]);
  });

  test('breaks a tie by the ballots themselves: three alike ballots decide before any lot', () => {
    const election = { candidates: ['a', 'b', 'c'], ballots: [ballot(3, ['a', 'b'], ['c'])] };
    for (const seed of ['1', '2', '3', '4']) {
      const broken = tally(
        { ...election, ballots: [...election.ballots, ballot(1, ['c'], ['b'], ['a'])] },
        'schulze',
        {
          brokenBySeed: seed,
        },
      );
      // Only one ballot tells a from b, so every draw must come to it.
      expect(broken.ranking).toEqual([['b'], ['a'], ['c']]);
    }
  });

  test('breaks a tie that no ballot breaks by lot, every order as likely', () => {
    const orders = new Map<string, number>();
    for (let seed = 0; seed < 600; seed++) {
      const order = tally({ candidates: ['a', 'b', 'c'], ballots: [] }, 'schulze', {
        brokenBySeed: `${seed}`,
      });
      orders.set(order.ranking.join(), (orders.get(order.ranking.join()) ?? 0) + 1);
    }
    expect(orders.size).toBe(6);
    // 100 each expected; chi-square with 5 degrees of freedom stays under 20.5 with probability 0.999.
    const chiSquare = [...orders.values()].reduce((sum, n) => sum + (n - 100) ** 2 / 100, 0);
    expect(chiSquare).toBeLessThan(20.5);
  });
});

describe('a tally refuses', () => {
  const refused: readonly (readonly [string, Election, Method, string, Record<string, unknown>])[] = [
    [
      'a candidate listed twice',
      { candidates: ['a', 'b', 'b'], ballots: [] },
      'schulze',
      'tally-candidate-twice',
      { candidate: 'b' },
    ],
    [
      'an unknown name',
      { candidates: ['a'], ballots: [ballot(1, ['a']), ballot(1, ['b'])] },
      'schulze',
      'tally-ballot-unknown',
      { ballot: 2, candidate: 'b' },
    ],
    [
      'an unknown name that is left out',
      { candidates: ['a'], ballots: [{ count: 1, ranking: [['a']], omit: ['z'] }] },
      'schulze',
      'tally-ballot-unknown',
      { ballot: 1, candidate: 'z' },
    ],
    [
      'a name ranked twice',
      { candidates: ['a'], ballots: [ballot(1, ['a'], ['a'])] },
      'schulze',
      'tally-ballot-twice',
      { ballot: 1, candidate: 'a' },
    ],
    [
      'half a ballot',
      { candidates: ['a'], ballots: [ballot(0.5, ['a'])] },
      'schulze',
      'tally-ballot-count',
      { ballot: 1, count: 0.5 },
    ],
    [
      'less than no ballot',
      { candidates: ['a'], ballots: [ballot(1, ['a']), ballot(-1, ['a'])] },
      'schulze',
      'tally-ballot-count',
      { ballot: 2, count: -1 },
    ],
    [
      'a name both ranked and left out',
      { candidates: ['a'], ballots: [{ count: 1, ranking: [['a']], omit: ['a'] }] },
      'schulze',
      'tally-ballot-own-ranked',
      { ballot: 1, candidate: 'a' },
    ],
    [
      'two names in a single choice',
      { candidates: ['a', 'b'], ballots: [ballot(1, ['a']), ballot(1, ['a', 'b'])] },
      'single',
      'tally-ballot-not-single',
      { ballot: 2, chosen: 2 },
    ],
  ];
  test.each(refused)('%s', (_, election, method, id, values) => {
    expect(() => tally(election, method)).toThrow(expect.objectContaining({ id, values }));
  });
});
