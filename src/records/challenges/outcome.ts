import { type Challenge, standing } from '../../engine/challenges/challenge.ts';
import { scoreColours } from '../../engine/challenges/measured.ts';
import { type Measured, type Result, resultOf } from '../../engine/challenges/result.ts';
import type { Election, Method, Tally } from '../../engine/challenges/voting/election.ts';
import { ballotOf } from '../../engine/challenges/voting/voting.ts';
import { challengeEnd, challengePost, placing, placings, under } from '../keys.ts';
import { type RecordOf, read, readable, written } from '../record.ts';
import { add, drop, everything, put } from '../store.ts';
import { closingGrace } from './due.ts';
import { standingBars } from './entries.ts';
import { asOf, type Bar, type ChallengeScope, readChallenge, type StoredChallenge } from './queries.ts';
import { endKind, placingKind, postKind } from './schema.ts';
import { ballotsOf } from './votes.ts';

/**
 * Closes a challenge whose vote is over: from here on no ballot comes in. True when it is closed now, whoever
 * closed it; false when it is not yet time, or it was cancelled. Safe to run in several processes at once.
 */
export async function closeChallenge(
  scope: ChallengeScope,
  challenge: StoredChallenge,
  now: number,
): Promise<boolean> {
  const { phase, terms } = asOf(challenge, now);
  if (phase === 'closed') return true;
  if (phase !== 'counting' || now < terms.votesUntil + closingGrace) return false;
  const endKey = challengeEnd(scope.group, challenge.id);
  const { done } = await scope.store.commit([add(endKey, written(endKind, { how: 'closed', at: now }))]);
  if (done) return true;
  const [end] = await scope.store.get([endKey]);
  return read(endKind, endKey, end).how === 'closed';
}

/** The measured colour of a bar against the palette of its challenge. */
export function measuredOf({ colour }: Bar, { terms }: Challenge): Measured {
  if ('unscored' in colour) return colour;
  const score = scoreColours(terms.palette, colour.colours);
  return score ? { score } : { unscored: 'no-colours' };
}

/** How a challenge stands as of a time: its result once it is closed, the count so far before that. */
export async function resultAt(
  scope: ChallengeScope,
  challenge: StoredChallenge,
  time: number,
): Promise<Result> {
  const now = asOf(challenge, time);
  const colour = new Map(
    standingBars(challenge, time).map(({ entry, bar }) => [entry, measuredOf(bar, now)]),
  );
  return resultOf({ challenge: now, ballots: await ballotsOf(scope, challenge.id, now), colour });
}

/** Everything `npm run -s tally` needs to count the vote again. */
export type ExportedElection = Election & {
  readonly title: string;
  readonly method: Method;
  readonly ties: Tally['ties'];
};

/**
 * The vote as a file of ballots without names, equal ones in one, sorted by what they say. A ballot that leaves
 * out an entry still tells that its voter made that entry: it is for stewards.
 */
export async function exportElection(
  scope: ChallengeScope,
  challenge: StoredChallenge,
  time: number,
): Promise<ExportedElection> {
  const now = asOf(challenge, time);
  const ballots = (await ballotsOf(scope, challenge.id, now)).map(kept => ballotOf(now, kept));
  const equal = Map.groupBy(ballots, ({ ranking, omit }) => JSON.stringify({ ranking, omit }));
  return {
    title: now.terms.title,
    method: now.terms.method,
    ties: now.terms.ties,
    candidates: standing(now).map(({ entry }) => entry),
    ballots: [...equal.keys()].sort().map(said => ({ count: equal.get(said)!.length, ...JSON.parse(said) })),
  };
}

/** What became of a member's entry in a challenge. */
export type Placing = RecordOf<typeof placingKind>;

/** Keeps what became of every entry; once more after a steward took one out, when places have moved. */
export async function keepPlacings(
  scope: ChallengeScope,
  challenge: StoredChallenge,
  result: Result,
): Promise<void> {
  const { entries, closedAt = 0, terms } = asOf(challenge, Number.MAX_SAFE_INTEGER);
  const bars = new Map(standingBars(challenge, Number.MAX_SAFE_INTEGER).map(one => [one.entry, one.bar]));
  const places = new Map<string, number>();
  for (const tied of result.ranking) {
    const place = places.size + 1;
    for (const entry of tied) places.set(entry, place);
  }
  const writes = [...entries.values()].map(({ entry, by }) => {
    const key = placing(scope.group, by, challenge.id, entry);
    const bar = bars.get(entry);
    if (!bar) return drop(key);
    return put(
      key,
      written(placingKind, {
        challenge: challenge.id,
        title: terms.title,
        entry,
        bar: bar.title,
        ...(places.has(entry) && { place: places.get(entry) }),
        of: bars.size,
        closedAt,
      }),
    );
  });
  await scope.store.commit(writes);
}

/**
 * Closes a challenge whose time is over and keeps what became of its entries, as whoever tells the group also does;
 * gives it as it is then, or undefined when it is not yet time.
 */
export async function settleChallenge(
  scope: ChallengeScope,
  challenge: StoredChallenge,
  now: number,
): Promise<StoredChallenge | undefined> {
  if (!(await closeChallenge(scope, challenge, now))) return undefined;
  const closed = await readChallenge(scope, challenge.id);
  if (closed) await keepPlacings(scope, closed, await resultAt(scope, closed, Number.MAX_SAFE_INTEGER));
  return closed;
}

/** What became of all entries of a member in this group, the newest first. */
export async function placingsOf(
  { store, group }: ChallengeScope,
  member: string,
): Promise<readonly Placing[]> {
  const kept = await everything(store, under(placings(group, member)));
  return readable(placingKind, kept)
    .map(({ fields }) => fields)
    .sort((a, b) => b.closedAt - a.closedAt);
}

/** A message in which the group was told something. */
export type Post = RecordOf<typeof postKind>;
/** Short news while a challenge runs. */
export type Notice = 'open' | 'entries-soon' | 'vote' | 'votes-soon';
export type PostOf =
  | Notice
  | 'announcement'
  | 'results'
  | 'cancelled'
  // Not a message: the thread of the announcement, and its deadlines in the calendar of the group.
  | 'thread'
  | 'entries-event'
  | 'votes-event';

/** The message in which the group was told this; undefined when it was not yet told. */
export async function postOf(
  { store, group }: ChallengeScope,
  id: string,
  what: PostOf,
): Promise<Post | undefined> {
  const key = challengePost(group, id, what);
  const [stored] = await store.get([key]);
  return stored === undefined ? undefined : read(postKind, key, stored);
}

/** Keeps the message in which the group was told this. */
export async function keepPost(
  { store, group }: ChallengeScope,
  id: string,
  what: PostOf,
  post: Post,
): Promise<void> {
  await store.commit([put(challengePost(group, id, what), written(postKind, post))]);
}

/** Forgets where that was: it is there no longer. */
export async function forgetPost({ store, group }: ChallengeScope, id: string, what: PostOf): Promise<void> {
  await store.commit([drop(challengePost(group, id, what))]);
}
