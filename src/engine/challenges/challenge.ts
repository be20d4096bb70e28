import type { ChallengeEvent, EntryEvent, Phase, StewardEvent } from './events.ts';
import { type Terms, votesFollow } from './terms.ts';

/** Where an entry stands: in the running, taken back by its maker, or taken out by a steward. */
export type EntryState =
  | { readonly state: 'standing' }
  | { readonly state: 'withdrawn' }
  | { readonly state: 'disqualified'; readonly reason: string };

export type EnteredBar = EntryState & {
  readonly entry: string;
  /** Who entered it. */
  readonly by: string;
  /** When it was entered or last replaced, ms since 1970 UTC. */
  readonly at: number;
};

/** A challenge as its events made it up to a time. */
export type Challenge = {
  /** As opened, with the deadlines that extensions moved. */
  readonly terms: Terms;
  readonly phase: Phase;
  readonly entries: ReadonlyMap<string, EnteredBar>;
  /** When the assistant closed it, ms since 1970 UTC. */
  readonly closedAt: number | undefined;
  readonly cancelled: { readonly by: string; readonly at: number; readonly reason: string } | undefined;
  /** What stewards did, oldest first. */
  readonly audit: readonly StewardEvent[];
};

/** Earlier first; of those made in one millisecond, the lower id (ids are whole numbers in decimal). */
const inTime = (a: ChallengeEvent, b: ChallengeEvent) =>
  a.at - b.at || a.id.length - b.id.length || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/**
 * The challenge as it stood at a time (ms since 1970 UTC). Every event counts at the time its interaction was
 * made, however late it was processed, and only if it was allowed then: an entry while entries were taken, an
 * extension before the deadline it moves. The order of the events in the list does not matter. Throws an Error
 * when none of them opened the challenge.
 */
export function challengeAt(events: readonly ChallengeEvent[], time: number): Challenge {
  const past = events.filter(({ at }) => at <= time).sort(inTime);
  const opened = past.find(event => event.kind === 'opened');
  if (!opened) throw new Error('a challenge without the event that opened it');
  const start: Challenge = {
    terms: opened.terms,
    phase: 'announced',
    entries: new Map(),
    closedAt: undefined,
    cancelled: undefined,
    audit: [opened],
  };
  const last = past.reduce((now, event) => (event === opened ? now : after(now, event)), start);
  return { ...last, phase: phaseOf(last, time) };
}

/** Intervals include the instant they start with and exclude the one they end with. */
function phaseOf({ terms, cancelled, closedAt }: Challenge, time: number): Phase {
  if (cancelled) return 'cancelled';
  if (closedAt !== undefined) return 'closed';
  if (time < terms.opensAt) return 'announced';
  if (time < terms.entriesUntil) return 'entering';
  return time < terms.votesUntil ? 'voting' : 'counting';
}

function after(now: Challenge, event: ChallengeEvent): Challenge {
  const phase = phaseOf(now, event.at);
  switch (event.kind) {
    case 'opened':
      return now;
    case 'extended':
      return mayExtend(now, event)
        ? {
            ...now,
            audit: [...now.audit, event],
            terms: {
              ...now.terms,
              entriesUntil: event.entriesUntil ?? now.terms.entriesUntil,
              votesUntil: event.votesUntil ?? now.terms.votesUntil,
            },
          }
        : now;
    case 'cancelled':
      if (phase === 'closed' || phase === 'cancelled') return now;
      return { ...now, audit: [...now.audit, event], cancelled: event };
    case 'disqualified': {
      const entry = now.entries.get(event.entry);
      if (!entry || phase === 'cancelled') return now;
      const out: EnteredBar = { ...bare(entry), state: 'disqualified', reason: event.reason };
      return { ...now, audit: [...now.audit, event], entries: new Map(now.entries).set(event.entry, out) };
    }
    case 'closed':
      return phase === 'counting' ? { ...now, closedAt: event.at } : now;
    default:
      return phase === 'entering' ? afterEntry(now, event) : now;
  }
}

const bare = ({ entry, by, at }: EnteredBar) => ({ entry, by, at });

function afterEntry(now: Challenge, event: EntryEvent): Challenge {
  const before = now.entries.get(event.entry);
  if ((before === undefined) !== (event.kind === 'entered')) return now;
  // Whoever is out stays out: a disqualified bar does not come back by being replaced.
  if (before && (before.by !== event.by || before.state !== 'standing')) return now;
  const bar: EnteredBar =
    before && event.kind === 'withdrawn'
      ? { ...bare(before), state: 'withdrawn' }
      : { entry: event.entry, by: event.by, at: event.at, state: 'standing' };
  return { ...now, entries: new Map(now.entries).set(event.entry, bar) };
}

/** True when an extension moves deadlines later, each before it has passed, and leaves them in order. */
export function mayExtend(
  now: Challenge,
  {
    at,
    entriesUntil,
    votesUntil,
  }: { at: number; entriesUntil?: number | undefined; votesUntil?: number | undefined },
): boolean {
  const { terms, cancelled, closedAt } = now;
  if (cancelled || closedAt !== undefined) return false;
  const moves = (to: number | undefined, from: number) => to === undefined || (at < from && to > from);
  if (!moves(entriesUntil, terms.entriesUntil) || !moves(votesUntil, terms.votesUntil)) return false;
  if (entriesUntil === undefined && votesUntil === undefined) return false;
  return votesFollow({
    decides: terms.decides,
    entriesUntil: entriesUntil ?? terms.entriesUntil,
    votesUntil: votesUntil ?? terms.votesUntil,
  });
}

/** The entries in the running, in the order of their ids. */
export const standing = ({ entries }: Challenge): readonly EnteredBar[] =>
  [...entries.values()]
    .filter(({ state }) => state === 'standing')
    .sort((a, b) => (a.entry < b.entry ? -1 : 1));
