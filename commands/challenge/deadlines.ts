import type { DeadlineAct, DeadlineServices } from '../../src/conversation/unasked/deadline.ts';
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
import type { Due } from '../../src/records/dues/dues.ts';
import { wordsIn } from '../../src/words/index.ts';
import { numberedBars } from './bars.ts';
import { keepCalendar, openThread } from './beside.ts';
import { announcementPicture, barsPicture, resultsPicture } from './pictures.ts';
import { pictured, placeOf, tellMaker, tellOnce, updateAnnouncement } from './telling.ts';
import { announcementReply, cancelledReply, noticeReply, resultsReply } from './view.ts';

/** After everything that has happened. */
const atLast = Number.MAX_SAFE_INTEGER;

/** What to do about challenges when the time comes. Each is safe to do again, and in two processes at once. */
export function challengeActs(services: DeadlineServices): Readonly<Record<ChallengeDue, DeadlineAct>> {
  return {
    'challenge-announce': due =>
      onTime(services, due, 'announcement', ['announced', 'entering', 'voting', 'counting']),
    'challenge-open': due => onTime(services, due, 'open', ['entering']),
    'challenge-entries-soon': due => onTime(services, due, 'entries-soon', ['entering']),
    'challenge-vote': due => onTime(services, due, 'vote', ['voting']),
    'challenge-votes-soon': due => onTime(services, due, 'votes-soon', ['voting']),
    'challenge-changed': due => onChange(services, due),
    'challenge-taken-out': due => onTakenOut(services, due),
    'challenge-close': due => onClose(services, due),
  };
}

/** Tells the group something that is of use only while the challenge is in certain phases, and was not put off. */
async function onTime(
  services: DeadlineServices,
  due: Due,
  what: Notice | 'announcement',
  phases: readonly Phase[],
): Promise<void> {
  const scope = { store: services.store, group: due.group };
  const challenge = await readChallenge(scope, due.id);
  if (!challenge) return;
  const now = asOf(challenge, Math.max(services.now(), due.at.getTime()));
  if (!phases.includes(now.phase) || !isStillDue(now.terms, challenge, due)) return;
  const say = wordsIn(challenge.language);
  const telling = { challenge, now, say };
  const announcement = pictured(announcementReply(challenge, now, say), services, workers =>
    announcementPicture(workers, telling),
  );
  if (what === 'announcement') {
    await tellOnce(services, scope, challenge, { what, reply: announcement });
    // Not of this try alone: the one before may have ended between the post and its thread.
    const posted = await postOf(scope, challenge.id, 'announcement');
    if (posted) await openThread(services, scope, challenge, posted);
    return await keepCalendar(services, scope, challenge);
  }
  const reply = pictured(noticeReply(challenge, now, { what, say }), services, async workers =>
    what === 'vote' ? barsPicture(workers, scope, telling) : [],
  );
  await tellOnce(services, scope, challenge, { what, reply });
  // It says in which phase the challenge is.
  await updateAnnouncement(services, scope, challenge, announcement);
}

/** Puts right what says when the deadlines are. */
async function onChange(services: DeadlineServices, due: Due): Promise<void> {
  const scope = { store: services.store, group: due.group };
  const challenge = await readChallenge(scope, due.id);
  if (!challenge) return;
  const now = asOf(challenge, Math.max(services.now(), due.at.getTime()));
  if (now.phase === 'closed' || now.phase === 'cancelled') return;
  const say = wordsIn(challenge.language);
  const draw = pictured(announcementReply(challenge, now, say), services, workers =>
    announcementPicture(workers, { challenge, now, say }),
  );
  await updateAnnouncement(services, scope, challenge, draw);
  await updateNotice(services, scope, { challenge, now, say });
  await keepCalendar(services, scope, challenge);
}

/** Tells whoever made a bar that it was taken out, and why. */
async function onTakenOut(services: DeadlineServices, due: Due): Promise<void> {
  const challenge = await readChallenge({ store: services.store, group: due.group }, due.id);
  if (!challenge) return;
  const bars = numberedBars(challenge, asOf(challenge, atLast));
  for (const event of challenge.events) {
    if (event.kind !== 'disqualified' || event.at !== due.at.getTime()) continue;
    const bar = bars.find(({ entry }) => entry === event.entry);
    if (bar) await tellMaker(services, challenge, { bar, reason: event.reason });
  }
}

/** The message that called for entries, or for votes, says until when. */
async function updateNotice(
  services: DeadlineServices,
  scope: ChallengeScope,
  telling: Parameters<typeof barsPicture>[2],
): Promise<void> {
  const { challenge, now, say } = telling;
  const what = now.phase === 'voting' ? 'vote' : 'open';
  const posted = await postOf(scope, challenge.id, what);
  if (!posted) return;
  const reply = pictured(noticeReply(challenge, now, { what, say }), services, async workers =>
    what === 'vote' ? barsPicture(workers, scope, telling) : [],
  );
  await services.outbox.edit(placeOf(challenge), posted, await reply());
}

/** Closes, counts and tells; or tells that it was cancelled; or puts a result right from which a bar was taken. */
async function onClose(services: DeadlineServices, due: Due): Promise<void> {
  const scope = { store: services.store, group: due.group };
  const found = await readChallenge(scope, due.id);
  if (!found) return;
  const { phase, terms } = asOf(found, atLast);
  if (phase === 'cancelled') return await tellCancelled(services, scope, found);
  if (phase !== 'closed') {
    if (!isStillDue(terms, found, due)) return;
    if (!(await closeChallenge(scope, found, services.now()))) return;
  }
  // Read anew: what came in before the close is all there now, and nothing can follow it.
  const challenge = await readChallenge(scope, due.id);
  if (challenge) await tellResults(services, scope, challenge);
}

async function tellResults(
  services: DeadlineServices,
  scope: ChallengeScope,
  challenge: StoredChallenge,
): Promise<void> {
  const now = asOf(challenge, atLast);
  const result = await resultAt(scope, challenge, atLast);
  const say = wordsIn(challenge.language);
  await keepPlacings(scope, challenge, result);
  const reply = pictured(resultsReply(challenge, { now, result, say }), services, workers =>
    resultsPicture(workers, scope, { challenge, now, say, result }),
  );
  const before = await postOf(scope, challenge.id, 'results');
  if (before) await services.outbox.edit(placeOf(challenge), before, await reply());
  else await tellOnce(services, scope, challenge, { what: 'results', reply });
  const announcement = pictured(announcementReply(challenge, now, say), services, workers =>
    announcementPicture(workers, { challenge, now, say }),
  );
  await updateAnnouncement(services, scope, challenge, announcement);
}

async function tellCancelled(
  services: DeadlineServices,
  scope: ChallengeScope,
  challenge: StoredChallenge,
): Promise<void> {
  const told = cancelledReply(challenge, asOf(challenge, atLast), wordsIn(challenge.language));
  const reply = async () => told;
  await tellOnce(services, scope, challenge, { what: 'cancelled', reply });
  await updateAnnouncement(services, scope, challenge, reply);
  await keepCalendar(services, scope, challenge);
}
