import { groupedBy } from '../../grouped.ts';
import { type Chance, chanceFrom } from './chance.ts';
import { inOrder, ranksOn } from './count.ts';
import type { Ballot, Election } from './election.ts';

type Pile = { readonly ballot: Ballot; readonly key: string; readonly count: number };

/** Equal ballots in one pile, in an order that depends on nothing but what they say. */
function piles({ candidates, ballots }: Election): readonly Pile[] {
  const found = new Map<string, Pile>();
  for (const ballot of ballots) {
    const omit = new Set(ballot.omit);
    const ranked = new Set(ballot.ranking.flat());
    const rest = candidates.filter(candidate => !ranked.has(candidate) && !omit.has(candidate));
    const ranking = [...ballot.ranking, rest].filter(tied => tied.length > 0).map(inOrder);
    const key = JSON.stringify([ranking, inOrder([...omit])]);
    const count = (found.get(key)?.count ?? 0) + ballot.count;
    found.set(key, { ballot: { ...ballot, ranking }, key, count });
  }
  const order = inOrder([...found.keys()]);
  return order.map(key => found.get(key)!).filter(pile => pile.count > 0);
}

/** Takes piles one after the other, each ballot as likely as any other to come next. */
function* drawn(from: readonly Pile[], chance: Chance): Generator<Ballot> {
  const left = [...from];
  let total = left.reduce((sum, pile) => sum + pile.count, 0);
  while (left.length > 0) {
    let at = chance.below(total);
    const next = left.findIndex(pile => {
      at -= pile.count;
      return at < 0;
    });
    const [pile] = left.splice(next, 1);
    total -= pile!.count;
    yield pile!.ballot;
  }
}

/** Splits each tied group by a ballot, unless the ballot leaves out one of the group. */
function split(groups: readonly (readonly number[])[], ranks: Int32Array): readonly (readonly number[])[] {
  return groups.flatMap(group => {
    if (group.length === 1 || group.some(candidate => ranks[candidate]! < 0)) return [group];
    const byRank = groupedBy(group, candidate => ranks[candidate]!);
    return [...byRank.keys()].sort((a, b) => a - b).map(rank => byRank.get(rank)!);
  });
}

/**
 * A full order of the candidates to break ties with: ballots are drawn one by one and each splits what is
 * still tied; what no ballot splits is drawn by lot. Source: the random voter hierarchy of T. M. Zavist and
 * T. N. Tideman, "Complete independence of clones in the ranked pairs rule", Social Choice and Welfare 6
 * (1989), which Schulze's paper takes up for his method. The same seed and the same ballots, in whatever
 * order, always give the same. Gives each candidate's number its place, from 0.
 */
export function tieOrder(election: Election, seed: string): ReadonlyMap<string, number> {
  const candidates = inOrder(election.candidates);
  const numbers = new Map(candidates.map((candidate, number) => [candidate, number]));
  const chance = chanceFrom(seed);
  let groups: readonly (readonly number[])[] = [candidates.map((_, number) => number)];
  for (const ballot of drawn(piles(election), chance)) {
    if (groups.length === candidates.length) break;
    groups = split(groups, ranksOn(ballot, numbers));
  }
  const order = groups.flatMap(group => shuffled(group, chance));
  return new Map(order.map((number, place) => [candidates[number]!, place]));
}

/** Fisher and Yates's shuffle. */
function shuffled<Thing>(things: readonly Thing[], chance: Chance): readonly Thing[] {
  const order = [...things];
  for (let last = order.length - 1; last > 0; last--) {
    const other = chance.below(last + 1);
    [order[last], order[other]] = [order[other]!, order[last]!];
  }
  return order;
}
