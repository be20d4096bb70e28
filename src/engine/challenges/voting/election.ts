import { refuse } from '../../refusal.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'tally-candidate-twice': { readonly candidate: string };
    'tally-ballot-unknown': { readonly ballot: number; readonly candidate: string };
    'tally-ballot-twice': { readonly ballot: number; readonly candidate: string };
    'tally-ballot-own-ranked': { readonly ballot: number; readonly candidate: string };
    'tally-ballot-count': { readonly ballot: number; readonly count: number };
  }
}

/**
 * Ballots that say the same thing. `ranking` lists the most liked first, tied ones together; whoever is not
 * ranked stands below all that are, tied with the other unranked. Approval and single choice read the first
 * rank only.
 */
export type Ballot = {
  /** How many members cast it: a whole number from 0. */
  readonly count: number;
  readonly ranking: readonly (readonly string[])[];
  /** The voters' own entries: left out of every pair of this ballot, neither liked nor disliked. */
  readonly omit?: readonly string[] | undefined;
};

/** What is tallied: who stands, and what was said. The order of neither changes a result. */
export type Election = { readonly candidates: readonly string[]; readonly ballots: readonly Ballot[] };

export type Method = 'schulze' | 'approval' | 'single';

/** For each candidate a row of the others: how many ballots put the first above the second. */
export type Pairs = Readonly<Record<string, Readonly<Record<string, number>>>>;

/** A tally as it is shown, kept and rechecked. */
export type Tally = {
  readonly method: Method;
  /** Places from the first; those tied share one, in the order of their ids. */
  readonly ranking: readonly (readonly string[])[];
  /** How many ballots put the row's candidate above the column's, both being on the ballot. */
  readonly pairwise: Pairs;
  /** Schulze only: the strength of the strongest path from row to column, 0 where there is none. */
  readonly strongestPaths: Pairs;
  /** Approval and single choice only: the votes of each. */
  readonly votes: Readonly<Record<string, number>>;
  /** How many ballots were counted. */
  readonly ballots: number;
  /** How ties were broken: not at all, or by the ballots in the order a seed drew them. */
  readonly ties: 'shared' | { readonly brokenBySeed: string };
};

/**
 * Refuses what cannot be tallied: a candidate listed twice, a ballot that ranks somebody unknown, twice, or
 * whom it omits, a count that is no whole number from 0. Ballots are numbered from 1 in the refusal.
 */
export function checkElection({ candidates, ballots }: Election): void {
  const known = new Set<string>();
  for (const candidate of candidates) {
    if (known.has(candidate)) refuse('tally-candidate-twice', { candidate });
    known.add(candidate);
  }
  for (const [index, { count, ranking, omit = [] }] of ballots.entries()) {
    const ballot = index + 1;
    if (!Number.isSafeInteger(count) || count < 0) refuse('tally-ballot-count', { ballot, count });
    const seen = new Set<string>();
    for (const candidate of ranking.flat()) {
      if (!known.has(candidate)) refuse('tally-ballot-unknown', { ballot, candidate });
      if (seen.has(candidate)) refuse('tally-ballot-twice', { ballot, candidate });
      seen.add(candidate);
    }
    for (const candidate of omit) {
      if (!known.has(candidate)) refuse('tally-ballot-unknown', { ballot, candidate });
      if (seen.has(candidate)) refuse('tally-ballot-own-ranked', { ballot, candidate });
    }
  }
}
