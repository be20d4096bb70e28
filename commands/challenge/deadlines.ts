import { keepCalendar, openThread } from '../../src/deadlines/beside.ts';
import type { Act } from '../../src/deadlines/scheduler.ts';
import {
  type ChallengeDesk,
  pictured,
  placeOf,
  tellOnce,
  updateAnnouncement,
} from '../../src/deadlines/telling.ts';
import type { Phase } from '../../src/engine/challenges/events.ts';
import {
  asOf,
  type ChallengeDue,
  type ChallengeScope,
  closeChallenge,
  isStillDue,
  keepPlacings,
  type Notice,
  postOf,
  readChallenge,
  resultAt,
  type StoredChallenge,
} from '../../src/records/challenges/index.ts';
import type { Due } from '../../src/records/dues.ts';
import { wordsIn } from '../../src/words/index.ts';
import { announcementPicture, barsPicture, resultsPicture } from './pictures.ts';
import { announcementReply, cancelledReply, noticeReply, resultsReply } from './view.ts';

export type { ChallengeDesk } from '../../src/deadlines/telling.ts';

/** After everything that has happened. */
const atLast = Number.MAX_SAFE_INTEGER;

/** What to do about challenges when the time comes. Each is safe to do again, and in two processes at once. */
export function challengeActs(desk: ChallengeDesk): Readonly<Record<ChallengeDue, Act>> {
  return {
    'challenge-announce': due =>
      onTime(desk, due, 'announcement', ['announced', 'entering', 'voting', 'counting']),
    'challenge-open': due => onTime(desk, due, 'open', ['entering']),
    'challenge-entries-soon': due => onTime(desk, due, 'entries-soon', ['entering']),
    'challenge-vote': due => onTime(desk, due, 'vote', ['voting']),
    'challenge-votes-soon': due => onTime(desk, due, 'votes-soon', ['voting']),
    'challenge-changed': due => onChange(desk, due),
    'challenge-close': due => onClose(desk, due),
  };
}

/** Tells the group something that is of use only while the challenge is in certain phases, and was not put off. */
async function onTime(
  desk: ChallengeDesk,
  due: Due,
  what: Notice | 'announcement',
  phases: readonly Phase[],
): Promise<void> {
  const scope = { store: desk.store, group: due.group };
  const challenge = await readChallenge(scope, due.id);
  if (!challenge) return;
  const now = asOf(challenge, Math.max(desk.now(), due.at.getTime()));
  if (!phases.includes(now.phase) || !isStillDue(now.terms, challenge, due)) return;
  const say = wordsIn(challenge.language);
  const telling = { challenge, now, say };
  const announcement = pictured(announcementReply(challenge, now, say), desk, workers =>
    announcementPicture(workers, telling),
  );
  if (what === 'announcement') {
    const posted = await tellOnce(desk, scope, challenge, { what, reply: announcement });
    if (posted) await openThread(desk, scope, challenge, posted);
    return await keepCalendar(desk, scope, challenge);
  }
  const reply = pictured(noticeReply(challenge, now, { what, say }), desk, async workers =>
    what === 'vote' ? barsPicture(workers, scope, telling) : [],
  );
  await tellOnce(desk, scope, challenge, { what, reply });
  // It says in which phase the challenge is.
  await updateAnnouncement(desk, scope, challenge, announcement);
}

/** Puts right what says when the deadlines are. */
async function onChange(desk: ChallengeDesk, due: Due): Promise<void> {
  const scope = { store: desk.store, group: due.group };
  const challenge = await readChallenge(scope, due.id);
  if (!challenge) return;
  const now = asOf(challenge, Math.max(desk.now(), due.at.getTime()));
  if (now.phase === 'closed' || now.phase === 'cancelled') return;
  const say = wordsIn(challenge.language);
  await keepCalendar(desk, scope, challenge);
  const draw = pictured(announcementReply(challenge, now, say), desk, workers =>
    announcementPicture(workers, { challenge, now, say }),
  );
  await updateAnnouncement(desk, scope, challenge, draw);
}

/** Closes, counts and tells; or tells that it was cancelled; or puts a result right from which a bar was taken. */
async function onClose(desk: ChallengeDesk, due: Due): Promise<void> {
  const scope = { store: desk.store, group: due.group };
  const found = await readChallenge(scope, due.id);
  if (!found) return;
  const { phase, terms } = asOf(found, atLast);
  if (phase === 'cancelled') return await tellCancelled(desk, scope, found);
  if (phase !== 'closed') {
    if (!isStillDue(terms, found, due)) return;
    if (!(await closeChallenge(scope, found, desk.now()))) return;
  }
  // Read anew: what came in before the close is all there now, and nothing can follow it.
  const challenge = await readChallenge(scope, due.id);
  if (challenge) await tellResults(desk, scope, challenge);
}

async function tellResults(
  desk: ChallengeDesk,
  scope: ChallengeScope,
  challenge: StoredChallenge,
): Promise<void> {
  const now = asOf(challenge, atLast);
  const result = await resultAt(scope, challenge, atLast);
  const say = wordsIn(challenge.language);
  await keepPlacings(scope, challenge, result);
  const reply = pictured(resultsReply(challenge, { now, result, say }), desk, workers =>
    resultsPicture(workers, scope, { challenge, now, say, result }),
  );
  const before = await postOf(scope, challenge.id, 'results');
  if (before) await desk.outbox.edit(placeOf(challenge), before, await reply());
  else await tellOnce(desk, scope, challenge, { what: 'results', reply });
  const announcement = pictured(announcementReply(challenge, now, say), desk, workers =>
    announcementPicture(workers, { challenge, now, say }),
  );
  await updateAnnouncement(desk, scope, challenge, announcement);
}

async function tellCancelled(
  desk: ChallengeDesk,
  scope: ChallengeScope,
  challenge: StoredChallenge,
): Promise<void> {
  const told = cancelledReply(challenge, asOf(challenge, atLast), wordsIn(challenge.language));
  const reply = async () => told;
  await tellOnce(desk, scope, challenge, { what: 'cancelled', reply });
  await updateAnnouncement(desk, scope, challenge, reply);
  await keepCalendar(desk, scope, challenge);
}
