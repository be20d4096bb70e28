import { fc } from '@fast-check/vitest';
import type { Ballot, Election } from '../../../src/engine/challenges/voting/election.ts';

/** Any ranking of some of the candidates, with ties and with some left out. */
export const anyBallot = (candidates: readonly string[]): fc.Arbitrary<Ballot> =>
  fc
    .record({
      count: fc.integer({ min: 0, max: 9 }),
      ranks: fc.array(fc.integer({ min: 0, max: candidates.length }), {
        minLength: candidates.length,
        maxLength: candidates.length,
      }),
      own: fc.option(fc.constantFrom(...candidates), { freq: 3 }),
    })
    .map(({ count, ranks, own }) => {
      const ranked = candidates.filter((one, i) => one !== own && ranks[i]! < candidates.length);
      const byRank = Map.groupBy(ranked, one => ranks[candidates.indexOf(one)]!);
      const ranking = [...byRank.keys()].sort((a, b) => a - b).map(rank => byRank.get(rank)!);
      return { count, ranking, ...(own !== null && { omit: [own] }) };
    });

/** Any election of one to five candidates. */
export const anyElection: fc.Arbitrary<Election> = fc.integer({ min: 1, max: 5 }).chain(size => {
  const candidates = ['ash', 'birch', 'clay', 'dusk', 'ember'].slice(0, size);
  return fc.record({
    candidates: fc.constant(candidates),
    ballots: fc.array(anyBallot(candidates), { maxLength: 8 }),
  });
});

/** Ranks one candidate a step higher on a ballot: level with whom it stood under, then above them. */
export function raised(ballot: Ballot, candidate: string): Ballot {
  const at = ballot.ranking.findIndex(tied => tied.includes(candidate));
  const others = ballot.ranking.map(tied => tied.filter(one => one !== candidate));
  if (at === -1) return { ...ballot, ranking: [...ballot.ranking, [candidate]] };
  if (ballot.ranking[at]!.length > 1)
    return { ...ballot, ranking: [...others.slice(0, at), [candidate], ...others.slice(at)] };
  if (at === 0) return ballot;
  return {
    ...ballot,
    ranking: others
      .map((tied, i) => (i === at - 1 ? [...tied, candidate] : tied))
      .filter(tied => tied.length > 0),
  };
}
