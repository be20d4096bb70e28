import { mayExtend } from '../../engine/challenges/challenge.ts';
import { checkTerms } from '../../engine/challenges/opening.ts';
import type { Terms } from '../../engine/challenges/terms.ts';
import type { Language } from '../../engine/language.ts';
import { refuse } from '../../engine/refusal.ts';
import { dropDue, putDue } from '../dues/dues.ts';
import { challengeEnd, challengeEvent, challenge as challengeKey } from '../keys.ts';
import { written } from '../record.ts';
import { add } from '../store.ts';
import { duesOf } from './due.ts';
import { alreadyDone, type Changed, happen, requireChallenge } from './mutations.ts';
import { asOf, type ChallengeScope, type Made } from './queries.ts';
import { endKind, eventKind, openingKind } from './schema.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'challenge-extension-unfit': Record<never, never>;
    'challenge-reason-missing': Record<never, never>;
    'challenge-entry-unknown': { readonly entry: string };
    'challenge-over': { readonly phase: 'closed' | 'cancelled' };
  }
}

/** What a steward opens: the terms, and where and in which language the group hears of it. */
export type Opening = { readonly terms: Terms; readonly channel: string; readonly language: Language };

/** Opens a challenge; its id is that of the interaction. Refuses terms nobody could keep. */
export async function openChallenge(
  { store, group }: ChallengeScope,
  { terms, channel, language }: Opening,
  made: Made,
): Promise<Changed & { readonly id: string }> {
  checkTerms(terms);
  const result = await store.commit([
    add(challengeKey(group, made.id), written(openingKind, { ...made, terms, channel, language })),
    ...duesOf(terms, { id: made.id, group, openedAt: made.at }).map(putDue),
  ]);
  return { id: made.id, repeated: !result.done };
}

/** New deadlines, each later than before. */
export type Extension = {
  readonly entriesUntil?: number | undefined;
  readonly votesUntil?: number | undefined;
  readonly reason: string;
};

/** Moves deadlines later. Refuses one that has passed, that would move earlier, or that leaves no time to vote. */
export async function extendChallenge(
  scope: ChallengeScope,
  id: string,
  extension: Extension,
  made: Made,
): Promise<Changed> {
  const challenge = await requireChallenge(scope, id);
  if (alreadyDone(challenge, made)) return { repeated: true };
  const now = asOf(challenge, made.at);
  if (now.phase === 'closed' || now.phase === 'cancelled') refuse('challenge-over', { phase: now.phase });
  if (!mayExtend(now, { ...extension, at: made.at })) refuse('challenge-extension-unfit', {});
  const { entriesUntil = now.terms.entriesUntil, votesUntil = now.terms.votesUntil } = extension;
  const before = duesOf(now.terms, challenge);
  const after = duesOf({ ...now.terms, entriesUntil, votesUntil }, challenge);
  const moved = after.filter(due => !before.some(old => isSame(old, due)));
  const gone = before.filter(due => !after.some(fresh => isSame(fresh, due)));
  return happen(scope, challenge, {
    made,
    did: { kind: 'extended', ...extension, reason: reasonOf(extension.reason) },
    needs: 'voting',
    also: [
      ...moved.map(putDue),
      ...gone.map(dropDue),
      putDue({ what: 'challenge-changed', at: new Date(made.at), group: scope.group, id }),
    ],
  });
}

type Timed = { readonly what: string; readonly at: Date };
const isSame = (one: Timed, other: Timed) =>
  one.what === other.what && one.at.getTime() === other.at.getTime();

/** Calls a challenge off, for good. Refuses one that is over, and a steward who gives no reason. */
export async function cancelChallenge(
  scope: ChallengeScope,
  id: string,
  reason: string,
  made: Made,
): Promise<Changed> {
  const { store, group } = scope;
  const challenge = await requireChallenge(scope, id);
  if (alreadyDone(challenge, made)) return { repeated: true };
  const did = { kind: 'cancelled', reason: reasonOf(reason) } as const;
  const eventKey = challengeEvent(group, id, made.at, made.id);
  const result = await store.commit([
    add(challengeEnd(group, id), written(endKind, { how: 'cancelled', at: made.at })),
    add(eventKey, written(eventKind, { ...made, did })),
    // What was to be done about it finds it cancelled and strikes itself off; the group is told by the first.
    putDue({ what: 'challenge-close', at: new Date(made.at), group, id }),
  ]);
  if (result.done) return { repeated: false };
  if (result.clash === eventKey) return { repeated: true };
  const { phase } = asOf(await requireChallenge(scope, id), Number.MAX_SAFE_INTEGER);
  return refuse('challenge-over', { phase: phase === 'cancelled' ? 'cancelled' : 'closed' });
}

/** Takes an entry out, for a reason that members can read; also after the close, when places move up. */
export async function disqualify(
  scope: ChallengeScope,
  id: string,
  { entry, reason }: { readonly entry: string; readonly reason: string },
  made: Made,
): Promise<Changed> {
  const { store, group } = scope;
  const challenge = await requireChallenge(scope, id);
  if (alreadyDone(challenge, made)) return { repeated: true };
  const now = asOf(challenge, made.at);
  if (now.phase === 'cancelled') refuse('challenge-over', { phase: 'cancelled' });
  if (now.entries.get(entry)?.state !== 'standing') refuse('challenge-entry-unknown', { entry });
  const did = { kind: 'disqualified', entry, reason: reasonOf(reason) } as const;
  const result = await store.commit([
    add(challengeEvent(group, id, made.at, made.id), written(eventKind, { ...made, did })),
    // A result that is out, or that some process is working out just now, must be put right.
    putDue({ what: 'challenge-close', at: new Date(made.at), group, id }),
    putDue({ what: 'challenge-taken-out', at: new Date(made.at), group, id }),
  ]);
  return { repeated: !result.done };
}

function reasonOf(text: string): string {
  const reason = text.trim();
  return reason === '' ? refuse('challenge-reason-missing', {}) : reason;
}
