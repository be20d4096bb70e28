import type { Ballot, Election, Pairs } from './election.ts';

/** A whole-number table of candidates against candidates, row by row. */
export type Table = { readonly size: number; readonly cells: Float64Array };

/** Marks a candidate whom a ballot leaves out. */
const OMITTED = -1;

/** The candidates, none of them twice, in the order of their ids, so that the order they were given in decides nothing. */
export const inOrder = (candidates: readonly string[]): readonly string[] =>
  [...candidates].sort((a, b) => (a < b ? -1 : 1));

/** The rank each candidate has on a ballot, from 0; the unranked share the rank below all others. */
export function ranksOn(ballot: Ballot, numbers: ReadonlyMap<string, number>): Int32Array {
  const ranks = new Int32Array(numbers.size).fill(ballot.ranking.length);
  for (const [rank, tied] of ballot.ranking.entries())
    for (const candidate of tied) ranks[numbers.get(candidate)!] = rank;
  for (const candidate of ballot.omit ?? []) ranks[numbers.get(candidate)!] = OMITTED;
  return ranks;
}

/** How many ballots put the row's candidate above the column's; pairs with an omitted one are not compared. */
export function countPairs({ candidates, ballots }: Election): Table {
  const size = candidates.length;
  const cells = new Float64Array(size * size);
  const numbers = new Map(candidates.map((candidate, number) => [candidate, number]));
  for (const ballot of ballots) {
    const ranks = ranksOn(ballot, numbers);
    for (let row = 0; row < size; row++) {
      const rank = ranks[row]!;
      if (rank === OMITTED) continue;
      for (let column = 0; column < size; column++)
        if (rank < ranks[column]!) cells[row * size + column]! += ballot.count;
    }
  }
  return { size, cells };
}

/** A table with the candidates' names on it, without its diagonal. */
export function named({ size, cells }: Table, candidates: readonly string[]): Pairs {
  const row = (of: number) =>
    candidates.flatMap((candidate, column) =>
      column === of ? [] : [[candidate, cells[of * size + column]!]],
    );
  return Object.fromEntries(candidates.map((candidate, of) => [candidate, Object.fromEntries(row(of))]));
}

/** The votes of each candidate: the ballots on which it stands in the first rank. */
export function countFirsts({ candidates, ballots }: Election): ReadonlyMap<string, number> {
  const votes = new Map(candidates.map(candidate => [candidate, 0]));
  for (const { count, ranking } of ballots)
    for (const candidate of ranking[0] ?? []) votes.set(candidate, votes.get(candidate)! + count);
  return votes;
}
