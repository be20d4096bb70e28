import { refuse } from '../../refusal.ts';
import { countFirsts, countPairs, inOrder, named, type Table } from './count.ts';
import { checkElection, type Election, type Method, type Tally } from './election.ts';
import { tieOrder } from './lots.ts';
import { above, strongestPaths } from './schulze.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'tally-ballot-not-single': { readonly ballot: number; readonly chosen: number };
  }
}

/** True when the first stands above the second, by the candidates' numbers. Without cycles. */
type Stands = (first: number, second: number) => boolean;

/**
 * Places, from the first: those above whom nobody is left share the next one. A pair that is neither above
 * nor below one another (Schulze's order leaves such) may so come to lie in different places. Throws where the order goes
 * in a circle, which neither Schulze's nor that of votes does.
 */
function places(size: number, stands: Stands): readonly (readonly number[])[] {
  const found: (readonly number[])[] = [];
  let left = Array.from({ length: size }, (_, number) => number);
  while (left.length > 0) {
    const next = left.filter(one => !left.some(other => stands(other, one)));
    // Else it would look for ever.
    if (next.length === 0) throw new Error('an order in a circle has no first place');
    found.push(next);
    const taken = new Set(next);
    left = left.filter(one => !taken.has(one));
  }
  return found;
}

/** One a place: of those above whom nobody is left, always the one who comes first in the order for ties. */
function singlePlaces(
  size: number,
  stands: Stands,
  order: readonly number[],
): readonly (readonly number[])[] {
  const found: (readonly number[])[] = [];
  const left = Array.from({ length: size }, (_, number) => number).sort((a, b) => order[a]! - order[b]!);
  while (left.length > 0) {
    const next = left.findIndex(one => !left.some(other => stands(other, one)));
    found.push(left.splice(next, 1));
  }
  return found;
}

function checkSingle({ ballots }: Election): void {
  for (const [index, { ranking }] of ballots.entries()) {
    const chosen = ranking[0]?.length ?? 0;
    if (chosen > 1) refuse('tally-ballot-not-single', { ballot: index + 1, chosen });
  }
}

/** Nobody's paths: approval and single choice know none. */
const pathless: Table = { size: 0, cells: new Float64Array(0) };

/**
 * Counts an election. Schulze ranks by strongest paths of winning votes; approval and single choice by how many
 * ballots name a candidate in their first rank. Ties are shared, or broken by a seed (see `lots.ts`). The order
 * of ballots and candidates, and how equal ballots are bundled, change nothing. Throws a Refusal for an
 * election that cannot be counted.
 * @example tally({ candidates: ['a', 'b'], ballots: [{ count: 2, ranking: [['a'], ['b']] }, { count: 1, ranking: [['b'], ['a']] }] }).ranking // [['a'], ['b']]
 */
export function tally(given: Election, method: Method = 'schulze', ties: Tally['ties'] = 'shared'): Tally {
  checkElection(given);
  if (method === 'single') checkSingle(given);
  const candidates = inOrder(given.candidates);
  const election = { candidates, ballots: given.ballots };
  const size = candidates.length;
  const pairs = countPairs(election);
  const paths = method === 'schulze' ? strongestPaths(pairs) : pathless;
  const votes = method === 'schulze' ? new Map<string, number>() : countFirsts(election);
  const votesOf = candidates.map(candidate => votes.get(candidate) ?? 0);
  const stands: Stands =
    method === 'schulze' ? (a, b) => above(paths, a, b) : (a, b) => votesOf[a]! > votesOf[b]!;
  return {
    ranking: ranked(election, stands, ties).map(tied => tied.map(number => candidates[number]!)),
    pairwise: named(pairs, candidates),
    strongestPaths: named(paths, method === 'schulze' ? candidates : []),
    method,
    votes: Object.fromEntries(votes),
    ballots: given.ballots.reduce((sum, { count }) => sum + count, 0),
    ties,
  };

  function ranked(of: Election, by: Stands, broken: Tally['ties']) {
    if (broken === 'shared') return places(size, by);
    const order = tieOrder(of, broken.brokenBySeed);
    return singlePlaces(
      size,
      by,
      candidates.map(candidate => order.get(candidate)!),
    );
  }
}
