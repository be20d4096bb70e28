import { refuse } from '../../refusal.ts';
import { type Challenge, standing } from '../challenge.ts';
import type { Phase } from '../events.ts';
import type { Ballot } from './election.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'challenge-not-now': { readonly phase: Phase; readonly needs: Phase };
    'vote-joined-late': { readonly before: number; readonly zone: string };
    'vote-joined-unknown': Record<never, never>;
    'vote-entry-unknown': { readonly entry: string };
    'vote-entry-twice': { readonly entry: string };
    'vote-one-only': { readonly chosen: number };
    'vote-own-only': Record<never, never>;
    'vote-empty': Record<never, never>;
  }
}

/** Who votes; `joinedAt` is when they joined the group, ms since 1970 UTC. */
export type Voter = { readonly member: string; readonly joinedAt: number | undefined };

/**
 * Refuses a voter who joined the group too late, or whose joining nobody can tell: the rule is there against
 * accounts made for one vote.
 */
export function requireVoter({ terms }: Challenge, { joinedAt }: Voter): void {
  const { joinedBefore, zone } = terms;
  if (joinedBefore === undefined) return;
  if (joinedAt === undefined) refuse('vote-joined-unknown', {});
  if (joinedAt >= joinedBefore) refuse('vote-joined-late', { before: joinedBefore, zone });
}

/** What a voter chose: the ids of entries, the most liked first, equally liked ones together. */
export type Chosen = readonly (readonly string[])[];

/**
 * The choice as it is kept, without the voter's own entries. Refuses entries that are not in the running or
 * chosen twice, more than one in a single choice, and a choice that leaves nothing. In approval and single
 * choice everything chosen counts alike.
 */
export function checkChoice(challenge: Challenge, voter: string, chosen: Chosen): Chosen {
  const running = new Map(standing(challenge).map(bar => [bar.entry, bar.by]));
  const seen = new Set<string>();
  for (const entry of chosen.flat()) {
    if (!running.has(entry)) refuse('vote-entry-unknown', { entry });
    if (seen.has(entry)) refuse('vote-entry-twice', { entry });
    seen.add(entry);
  }
  if (seen.size === 0) refuse('vote-empty', {});
  const others = chosen
    .map(tied => tied.filter(entry => running.get(entry) !== voter))
    .filter(tied => tied.length > 0);
  if (others.length === 0) refuse('vote-own-only', {});
  const { method } = challenge.terms;
  if (method === 'schulze') return others;
  const named = others.flat();
  if (method === 'single' && named.length > 1) refuse('vote-one-only', { chosen: named.length });
  return [named];
}

/** A choice as it was kept, with the member whose it is. */
export type Kept = { readonly member: string; readonly chosen: Chosen };

/**
 * The ballot of a member for the entries now in the running: those withdrawn or disqualified since are gone
 * from it, the member's own are left out of its pairs.
 */
export function ballotOf(challenge: Challenge, { member, chosen }: Kept): Ballot {
  const running = new Map(standing(challenge).map(bar => [bar.entry, bar.by]));
  const own = [...running].filter(([, by]) => by === member).map(([entry]) => entry);
  const ranking = chosen
    .map(tied => tied.filter(entry => running.has(entry) && running.get(entry) !== member))
    .filter(tied => tied.length > 0);
  return { count: 1, ranking, ...(own.length > 0 && { omit: own }) };
}
