/** What stands beside the announcement of a challenge: a thread to talk in, and its deadlines in the calendar. */
import type { Appointment, Posted } from '../conversation/outbox.ts';
import type { Challenge } from '../engine/challenges/challenge.ts';
import {
  asOf,
  type Board,
  forgetPost,
  keepPost,
  postOf,
  type StoredChallenge,
} from '../records/challenges/index.ts';
import { groupSettings } from '../records/group.ts';
import { wordsIn } from '../words/index.ts';
import type { ChallengeDesk } from './telling.ts';

/** Opens a thread under an announcement that has just been posted. A thread that cannot be is no fault. */
export async function openThread(
  { outbox, now }: ChallengeDesk,
  board: Board,
  challenge: StoredChallenge,
  announcement: Posted,
): Promise<void> {
  const { threads = true } = await groupSettings(board.store, board.group);
  if (!threads || !outbox.openThread || (await postOf(board, challenge.id, 'thread'))) return;
  const { title } = asOf(challenge, now()).terms;
  if ((await outbox.openThread(announcement, title)) === 'opened')
    // A thread has the id of the message that it hangs on.
    await keepPost(board, challenge.id, 'thread', {
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
  { outbox, now }: ChallengeDesk,
  board: Board,
  challenge: StoredChallenge,
): Promise<void> {
  const { calendar = true } = await groupSettings(board.store, board.group);
  if (!calendar || !outbox.schedule || !outbox.reschedule) return;
  const { store, group } = board;
  for (const kind of kinds) {
    const wanted = appointment(kind, challenge, asOf(challenge, Number.MAX_SAFE_INTEGER));
    const before = await postOf(board, challenge.id, kind);
    if (before) {
      await outbox.reschedule(group, before.message, wanted);
      if (!wanted) await forgetPost({ store, group }, challenge.id, kind);
    } else if (wanted && wanted.from >= now() + leastBefore) {
      const id = await outbox.schedule(group, wanted);
      if (id !== 'barred') await keepPost(board, challenge.id, kind, { channel: '', message: id });
    }
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
