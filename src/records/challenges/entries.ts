import { standing } from '../../engine/challenges/challenge.ts';
import { refuse } from '../../engine/refusal.ts';
import { challengePhoto, challengeSlot } from '../keys.ts';
import { read, written } from '../record.ts';
import { add, drop, put, type Write } from '../store.ts';
import { alreadyDone, type Changed, happen, inPhase, requireChallenge } from './mutations.ts';
import { asOf, type Bar, barOf, type ChallengeScope, type Made, type StoredChallenge } from './queries.ts';
import { photoKind, slotKind } from './schema.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'challenge-entries-full': { readonly most: number };
  }
}

/** A bar and, where there is one, a small photo of it (JPEG or PNG) for the results. */
export type HandedIn = { readonly bar: Bar; readonly photo?: Uint8Array | undefined };

/**
 * Enters a bar; the entry's id is that of the interaction. Refuses when the challenge takes no entries at the
 * time of the interaction, or the member has as many as allowed: two that arrive at once in two processes cannot
 * both take the last place. Whether the bar keeps to the terms is for `violations` to tell beforehand.
 */
export async function enterBar(
  scope: ChallengeScope,
  id: string,
  handedIn: HandedIn,
  made: Made,
): Promise<Changed & { readonly entry: string }> {
  const challenge = await requireChallenge(scope, id);
  const entry = made.id;
  if (alreadyDone(challenge, made)) return { repeated: true, entry };
  const { terms } = inPhase(challenge, made, 'entering');
  for (let slot = 0; slot < terms.entriesPerMember; slot++) {
    const slotKey = challengeSlot(scope.group, id, made.by, slot);
    const { repeated, clash } = await happen(scope, challenge, {
      made,
      did: { kind: 'entered', entry, slot, bar: handedIn.bar },
      needs: 'entering',
      also: [add(slotKey, written(slotKind, { entry })), ...photoWrites(scope, id, handedIn, made)],
    });
    if (clash === undefined) return { repeated, entry };
  }
  return refuse('challenge-entries-full', { most: terms.entriesPerMember });
}

/** Hands an entry in anew, whole. Refuses an entry that is not the member's own, or not in the running. */
export async function replaceBar(
  scope: ChallengeScope,
  id: string,
  { entry, ...handedIn }: HandedIn & { readonly entry: string },
  made: Made,
): Promise<Changed> {
  const challenge = await requireChallenge(scope, id);
  if (alreadyDone(challenge, made)) return { repeated: true };
  requireOwn(challenge, entry, made);
  return happen(scope, challenge, {
    made,
    did: { kind: 'replaced', entry, bar: handedIn.bar },
    needs: 'entering',
    also: photoWrites(scope, id, handedIn, made),
  });
}

/** Takes an entry back; its place is free for another one of the member's. */
export async function withdrawBar(
  scope: ChallengeScope,
  id: string,
  entry: string,
  made: Made,
): Promise<Changed> {
  const challenge = await requireChallenge(scope, id);
  if (alreadyDone(challenge, made)) return { repeated: true };
  requireOwn(challenge, entry, made);
  const entered = challenge.handedIn.find(({ did }) => did.kind === 'entered' && did.entry === entry)?.did;
  const slot = entered?.kind === 'entered' ? entered.slot : 0;
  return happen(scope, challenge, {
    made,
    did: { kind: 'withdrawn', entry },
    needs: 'entering',
    also: [
      drop(challengeSlot(scope.group, id, made.by, slot)),
      ...challenge.handedIn
        .filter(({ did }) => 'entry' in did && did.entry === entry)
        .map(event => drop(challengePhoto(scope.group, id, event.id))),
    ],
  });
}

function requireOwn(challenge: StoredChallenge, entry: string, made: Made): void {
  const bar = inPhase(challenge, made, 'entering').entries.get(entry);
  if (bar?.state !== 'standing' || bar.by !== made.by) refuse('challenge-entry-unknown', { entry });
}

const photoWrites = (
  { group }: ChallengeScope,
  id: string,
  { photo }: HandedIn,
  made: Made,
): readonly Write[] =>
  photo === undefined
    ? []
    : [
        put(
          challengePhoto(group, id, made.id),
          written(photoKind, { base64: Buffer.from(photo).toString('base64') }),
        ),
      ];

/** An entry in the running, as it was last handed in. */
export type StandingBar = {
  readonly entry: string;
  readonly by: string;
  readonly bar: Bar;
  readonly event: string;
};

/** The entries in the running as of a time (ms since 1970 UTC), in the order of their ids. */
export const standingBars = (challenge: StoredChallenge, time: number): readonly StandingBar[] =>
  standing(asOf(challenge, time)).map(one => ({ entry: one.entry, by: one.by, ...barOf(challenge, one) }));

/** The small photos of entries, in their order; undefined where none was handed in. */
export async function photosOf(
  { store, group }: ChallengeScope,
  id: string,
  bars: readonly StandingBar[],
): Promise<readonly (Uint8Array | undefined)[]> {
  const keys = bars.map(({ event }) => challengePhoto(group, id, event));
  const stored = await store.get(keys);
  return stored.map((value, i) =>
    value === undefined ? undefined : Buffer.from(read(photoKind, keys[i] ?? '', value).base64, 'base64'),
  );
}
