import type { Challenge } from '../../engine/challenges/challenge.ts';
import { type Chosen, checkChoice, type Kept, requireVoter } from '../../engine/challenges/voting/voting.ts';
import { refuse } from '../../engine/refusal.ts';
import { challengeBallot, challengeBallots, challengeBallotsOf, challengeEnd, under } from '../keys.ts';
import { type RecordOf, read, written } from '../record.ts';
import { absent, add, drop, type Entry, everything } from '../store.ts';
import {
  dropOutlivedUndoables,
  notUndone,
  takeBack,
  UNDO_MINUTES,
  type Undone,
  undoable,
} from '../undo/index.ts';
import { inPhase, requireChallenge } from './mutations.ts';
import type { ChallengeScope, Made } from './queries.ts';
import { ballotKind, endKind } from './schema.ts';

type StoredBallot = RecordOf<typeof ballotKind>;

/** What a member cast; `superseded` when a later vote of theirs had already come in. */
export type Cast = { readonly chosen: Chosen; readonly changed: boolean; readonly superseded: boolean };

const stored = ({ key, value }: Entry) => ({ key, ballot: read(ballotKind, key, value) });

const isLater = (one: StoredBallot, other: Made) =>
  one.at - other.at ||
  one.id.length - other.id.length ||
  (one.id > other.id ? 1 : one.id < other.id ? -1 : 0);

/**
 * Casts a ballot, or changes it. Each is a record of its own and the one whose interaction was made last counts,
 * so votes that arrive at once, twice or out of order come out right in every process. Once this resolves the
 * vote is in the tally: it was written before the challenge was closed, or it was refused.
 */
export async function castBallot(
  { store, group }: ChallengeScope,
  id: string,
  { chosen, joinedAt }: { readonly chosen: Chosen; readonly joinedAt: number | undefined },
  made: Made,
): Promise<Cast> {
  const now = inPhase(await requireChallenge({ store, group }, id), made, 'voting');
  requireVoter(now, { member: made.by, joinedAt });
  const kept = checkChoice(now, made.by, chosen);
  const before = (await everything(store, under(challengeBallotsOf(group, id, made.by)))).map(stored);
  if (before.some(({ ballot }) => isLater(ballot, made) > 0))
    return { chosen: kept, changed: true, superseded: true };
  const endKey = challengeEnd(group, id);
  const ballotKey = challengeBallot(group, id, made.by, made.at, made.id);
  const older = before.filter(({ ballot }) => ballot.id !== made.id);
  const value = written(ballotKind, { ...made, chosen: kept });
  const change = { cause: made.id, at: new Date(made.at) };
  const back = older.map(({ key, ballot }) => ({ key, value: written(ballotKind, ballot) }));
  await dropOutlivedUndoables({ store, member: made.by }, change.at);
  const result = await store.commit([
    absent(endKey),
    notUndone(made.by, change),
    add(ballotKey, value),
    undoable(made.by, change, {
      what: 'ballot',
      name: now.terms.title,
      back,
      made: [{ key: ballotKey, value }],
      absent: [endKey],
    }),
    ...older.map(({ key }) => drop(key)),
  ]);
  const changed = older.length > 0;
  // The same interaction once more: it is in already.
  if (result.done || result.clash !== endKey) return { chosen: kept, changed, superseded: false };
  const [end] = await store.get([endKey]);
  return refuse('challenge-not-now', { phase: read(endKind, endKey, end).how, needs: 'voting' });
}

/**
 * Takes a ballot back while the vote runs: the one before it counts again, or none. Throws the Refusals of
 * `takeBack`, and `challenge-not-now`.
 */
export async function undoBallot(
  { store, group }: ChallengeScope,
  id: string,
  { cause, made }: { readonly cause: string; readonly made: Made },
): Promise<Undone> {
  inPhase(await requireChallenge({ store, group }, id), made, 'voting');
  const undone = await takeBack({ store, member: made.by }, cause, new Date(made.at));
  return undone ?? refuse('undo-nothing', { minutes: UNDO_MINUTES });
}

/** What a member chose last; undefined when they have not voted. */
export async function choiceOf(
  { store, group }: ChallengeScope,
  id: string,
  member: string,
): Promise<Chosen | undefined> {
  const cast = await everything(store, under(challengeBallotsOf(group, id, member)));
  return newest(cast.map(entry => stored(entry).ballot)).at(-1)?.chosen;
}

const newest = (ballots: readonly StoredBallot[]) => [...ballots].sort(isLater);

/** The ballot of every member that counts: the last one made while the vote ran, by the challenge's final terms. */
export async function ballotsOf(
  { store, group }: ChallengeScope,
  id: string,
  { terms }: Challenge,
): Promise<readonly Kept[]> {
  const cast = (await everything(store, under(challengeBallots(group, id)))).map(
    entry => stored(entry).ballot,
  );
  const inTime = cast.filter(({ at }) => at >= terms.entriesUntil && at < terms.votesUntil);
  const last = new Map(newest(inTime).map(ballot => [ballot.by, ballot.chosen]));
  return [...last].map(([member, chosen]) => ({ member, chosen }));
}
