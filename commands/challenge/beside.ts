/** What stands beside the announcement of a challenge: a thread to talk in, and its deadlines in the calendar. */

import type { DeadlineServices } from '../../src/conversation/unasked/deadline.ts';
import type { Appointment, Posted } from '../../src/conversation/unasked/outbox.ts';
import type { Challenge } from '../../src/engine/challenges/challenge.ts';
import {
  asOf,
  type ChallengeScope,
  forgetPost,
  keepPost,
  postOf,
  type StoredChallenge,
} from '../../src/records/challenges/index.ts';
import { groupSettings } from '../../src/records/group.ts';
import { wordsIn } from '../../src/words/index.ts';

/** Opens a thread under an announcement, unless there is one. A thread that cannot be is no fault. */
export async function openThread(
  { outbox, now }: DeadlineServices,
  scope: ChallengeScope,
  challenge: StoredChallenge,
  announcement: Posted,
): Promise<void> {
  const { threads = true } = await groupSettings(scope.store, scope.group);
  if (!threads || !outbox.openThread || (await postOf(scope, challenge.id, 'thread'))) return;
  const { title } = asOf(challenge, now()).terms;
  if ((await outbox.openThread(announcement, title)) === 'opened')
    // A thread has the id of the message that it hangs on.
    await keepPost(scope, challenge.id, 'thread', {
      channel: announcement.message,
      message: announcement.message,
    });
}

const kinds = ['entries-event', 'votes-event'] as const;
/** An entry of the calendar is the last hour before a deadline: it calls whoever is interested as it begins. */
const lastHour = 3_600_000;
/** The platform takes no entry that has begun; until it is asked some time passes. */
const leastBefore = 60_000;

/** Enters the deadlines of a challenge in the group's calendar, moves them, or takes them out. */
export async function keepCalendar(
  { outbox, now }: DeadlineServices,
  scope: ChallengeScope,
  challenge: StoredChallenge,
): Promise<void> {
  const { calendar = true } = await groupSettings(scope.store, scope.group);
  if (!calendar || !outbox.schedule || !outbox.reschedule) return;
  const { store, group } = scope;
  for (const kind of kinds) {
    const wanted = appointment(kind, challenge, asOf(challenge, Number.MAX_SAFE_INTEGER));
    const before = await postOf(scope, challenge.id, kind);
    const isToCome = wanted !== undefined && wanted.from >= now() + leastBefore;
    // What has begun stands as it is: the platform moves nothing that has begun or is over.
    if (before && wanted && !isToCome) continue;
    const moved = before && (await outbox.reschedule(group, before.message, wanted));
    if (moved === 'done' && wanted) continue;
    if (before) await forgetPost({ store, group }, challenge.id, kind);
    if (!isToCome) continue;
    const id = await outbox.schedule(group, wanted);
    if (id !== 'barred') await keepPost(scope, challenge.id, kind, { channel: '', message: id });
  }
}

function appointment(
  kind: (typeof kinds)[number],
  { language }: StoredChallenge,
  { terms, phase }: Challenge,
): Appointment | undefined {
  const { title, entriesUntil, votesUntil, decides } = terms;
  if (phase === 'cancelled' || (kind === 'votes-event' && decides === 'colour')) return undefined;
  const until = kind === 'entries-event' ? entriesUntil : votesUntil;
  const words = wordsIn(language).challengeSteps;
  const name = kind === 'entries-event' ? words.entriesEnd({ title }) : words.votesEnd({ title });
  return { name, says: words.calendarSays, from: until - lastHour, until };
}
