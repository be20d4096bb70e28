import { type Challenge, challengeAt, type EnteredBar } from '../../engine/challenges/challenge.ts';
import type { ChallengeEvent } from '../../engine/challenges/events.ts';
import type { Language } from '../../engine/language.ts';
import { challenge, challengeEnd, challengeEvents, challenges, under } from '../keys.ts';
import { orSetAside, type RecordOf, read, readable } from '../record.ts';
import { everything, type Store } from '../store.ts';
import { endKind, eventKind, openingKind } from './schema.ts';

/** Whose challenges, and where they are kept. */
export type ChallengeScope = { readonly store: Store; readonly group: string };

/**
 * The interaction that brings something about: its id, when it was made (ms since 1970 UTC), and by whom; with the
 * name of a steward, whose deeds members can read.
 */
export type Made = {
  readonly id: string;
  readonly at: number;
  readonly by: string;
  readonly name?: string | undefined;
};

/** What was handed in as an entry. */
export type Bar = Extract<RecordOf<typeof eventKind>['did'], { kind: 'entered' }>['bar'];

type StoredEvent = RecordOf<typeof eventKind>;

/** A challenge as it lies in the store: everything that happened, to be looked at as of any time. */
export type StoredChallenge = {
  readonly id: string;
  readonly group: string;
  readonly channel: string;
  readonly language: Language;
  readonly openedAt: number;
  readonly events: readonly ChallengeEvent[];
  /** What was handed in, with the event that did it. */
  readonly handedIn: readonly StoredEvent[];
};

/** The challenge as of a time, ms since 1970 UTC. */
export const asOf = ({ events }: StoredChallenge, time: number): Challenge => challengeAt(events, time);

/** A challenge with all that happened in it; undefined when there is none of that id. */
export async function readChallenge(
  { store, group }: ChallengeScope,
  id: string,
): Promise<StoredChallenge | undefined> {
  const openingKey = challenge(group, id);
  const endKey = challengeEnd(group, id);
  // The end before the events: once it is there, no event can slip in between that it forbids.
  const [opening, end] = await store.get([openingKey, endKey]);
  if (opening === undefined) return undefined;
  const { terms, channel, language, ...made } = read(openingKind, openingKey, opening);
  const entries = await everything(store, under(challengeEvents(group, id)));
  const stored = entries.map(({ key, value }) => read(eventKind, key, value));
  const ended = end === undefined ? undefined : read(endKind, endKey, end);
  const closed: readonly ChallengeEvent[] =
    ended?.how === 'closed' ? [{ kind: 'closed', id: '0', at: ended.at, by: '' }] : [];
  return {
    id,
    group,
    channel,
    language,
    openedAt: made.at,
    events: [{ ...made, kind: 'opened', terms }, ...stored.map(happened), ...closed],
    handedIn: stored.filter(({ did }) => did.kind === 'entered' || did.kind === 'replaced'),
  };
}

const happened = ({ did, ...made }: StoredEvent): ChallengeEvent => ({ ...made, ...did });

/** The challenges of a group that were opened last, the newest first. */
export async function listChallenges(scope: ChallengeScope, most = 25): Promise<readonly StoredChallenge[]> {
  const stored = await everything(scope.store, under(challenges(scope.group)));
  const openings = [...readable(openingKind, stored)].map(({ fields }) => fields);
  const newest = openings.sort((a, b) => b.at - a.at).slice(0, most);
  const found = await Promise.all(newest.map(({ id }) => readWhole(scope, id)));
  return found.filter(one => one !== undefined);
}

/** A challenge of which an event does not read cannot be told right: it is set aside as a whole, and alone. */
async function readWhole(scope: ChallengeScope, id: string): Promise<StoredChallenge | undefined> {
  const outcome = await readChallenge(scope, id).then(
    found => () => found,
    (failure: unknown) => () => {
      throw failure;
    },
  );
  return orSetAside(openingKind.name, challenge(scope.group, id), outcome);
}

/** What an entry is, as it was last handed in while that was allowed; and the event that did it. */
export function barOf({ handedIn }: StoredChallenge, { entry, at }: EnteredBar): { bar: Bar; event: string } {
  const found = handedIn.findLast(
    ({ did, at: handedAt }) => 'entry' in did && did.entry === entry && handedAt === at,
  );
  if (!found || !('bar' in found.did)) throw new Error(`entry ${entry} was never handed in`);
  return { bar: found.did.bar, event: found.id };
}
