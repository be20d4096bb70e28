import type { Phase } from '../../engine/challenges/events.ts';
import { refuse } from '../../engine/refusal.ts';
import { challengeEnd, challengeEvent } from '../keys.ts';
import { type RecordOf, read, written } from '../record.ts';
import { absent, add, type Write } from '../store.ts';
import { asOf, type ChallengeScope, type Made, readChallenge, type StoredChallenge } from './queries.ts';
import { endKind, eventKind } from './schema.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'challenge-unknown': { readonly id: string };
  }
}

type Did = RecordOf<typeof eventKind>['did'];

/** `repeated`: this interaction had already done it, and nothing was done now. */
export type Changed = { readonly repeated: boolean };

/** The challenge of an id; refuses one that does not exist in this group. */
export async function requireChallenge(scope: ChallengeScope, id: string): Promise<StoredChallenge> {
  return (await readChallenge(scope, id)) ?? refuse('challenge-unknown', { id });
}

/** True when this interaction has already left its event. */
export const alreadyDone = ({ events }: StoredChallenge, { id }: Made): boolean =>
  events.some(event => event.id === id && event.kind !== 'closed');

/**
 * Adds an event together with other writes, unless the challenge has ended. Gives the key that stood in the way
 * when it is neither the end nor the event itself: the caller knows what its other writes mean.
 */
export async function happen(
  { store, group }: ChallengeScope,
  challenge: StoredChallenge,
  { made, did, needs, also }: { made: Made; did: Did; needs: Phase; also: readonly Write[] },
): Promise<Changed & { readonly clash?: string }> {
  const endKey = challengeEnd(group, challenge.id);
  const eventKey = challengeEvent(group, challenge.id, made.at, made.id);
  const result = await store.commit([
    absent(endKey),
    add(eventKey, written(eventKind, { ...made, did })),
    ...also,
  ]);
  if (result.done) return { repeated: false };
  if (result.clash === eventKey) return { repeated: true };
  if (result.clash !== endKey) return { repeated: false, clash: result.clash };
  const [end] = await store.get([endKey]);
  return refuse('challenge-not-now', { phase: read(endKind, endKey, end).how, needs });
}

/** The challenge as of the interaction; refuses one that is in another phase than the interaction needs. */
export function inPhase(challenge: StoredChallenge, { at }: Made, needs: Phase) {
  const now = asOf(challenge, at);
  if (now.phase !== needs) refuse('challenge-not-now', { phase: now.phase, needs });
  return now;
}
