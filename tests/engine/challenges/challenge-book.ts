import type { ChallengeEvent, EntryEvent } from '../../../src/engine/challenges/events.ts';
import type { Terms } from '../../../src/engine/challenges/terms.ts';

export const day = 86_400_000;
export const opens = Date.UTC(2026, 10, 1, 17);
export const entriesEnd = opens + 7 * day;
export const votesEnd = opens + 10 * day;

export const terms: Terms = {
  title: 'Dusk over the lagoon',
  brief: 'Violet into teal',
  palette: [],
  constraint: 'none',
  class: 'open',
  zone: 'Europe/Madrid',
  opensAt: opens,
  entriesUntil: entriesEnd,
  votesUntil: votesEnd,
  method: 'schulze',
  decides: 'votes',
  ties: 'shared',
  entriesPerMember: 1,
  anonymous: true,
  runningTotals: false,
};

let ids = 1000;
const made = (at: number, by: string) => ({ id: String(ids++), at, by });

export const opened = (more: Partial<Terms> = {}): ChallengeEvent => ({
  ...made(opens - day, 'steward'),
  kind: 'opened',
  terms: { ...terms, ...more },
});
export const entered = (entry: string, by: string, at = opens + day): EntryEvent => ({
  ...made(at, by),
  kind: 'entered',
  entry,
});
export const withdrawn = (entry: string, by: string, at = opens + 2 * day): EntryEvent => ({
  ...made(at, by),
  kind: 'withdrawn',
  entry,
});
export const replaced = (entry: string, by: string, at = opens + 2 * day): EntryEvent => ({
  ...made(at, by),
  kind: 'replaced',
  entry,
});
export const disqualified = (entry: string, at = opens + 3 * day): ChallengeEvent => ({
  ...made(at, 'steward'),
  kind: 'disqualified',
  entry,
  reason: 'bought, not made',
});
export const cancelled = (at: number): ChallengeEvent => ({
  ...made(at, 'steward'),
  kind: 'cancelled',
  reason: 'storm',
});
export const extended = (at: number, to: { entriesUntil?: number; votesUntil?: number }): ChallengeEvent => ({
  ...made(at, 'steward'),
  kind: 'extended',
  reason: 'post is slow',
  ...to,
});
export const closed = (at: number): ChallengeEvent => ({ ...made(at, 'assistant'), kind: 'closed' });
