import type { Outbox, Place } from '../../src/conversation/outbox.ts';
import type { Block, Reply } from '../../src/conversation/reply.ts';
import type { Act } from '../../src/deadlines/scheduler.ts';
import type { Phase } from '../../src/engine/challenges/events.ts';
import {
  asOf,
  type ChallengeDue,
  type ChallengeScope,
  closeChallenge,
  isStillDue,
  keepPlacings,
  keepPost,
  type Notice,
  type PostOf,
  postOf,
  readChallenge,
  resultAt,
  type StoredChallenge,
} from '../../src/records/challenges/index.ts';
import type { Due } from '../../src/records/dues.ts';
import type { Store } from '../../src/records/store.ts';
import { wordsIn } from '../../src/words/index.ts';
import type { Workers } from '../../src/workers/workers.ts';
import { announcementPicture, barsPicture, resultsPicture } from './pictures.ts';
import { announcementReply, cancelledReply, noticeReply, resultsReply } from './view.ts';

export type ChallengeDesk = {
  readonly store: Store;
  readonly outbox: Outbox;
  /** Draws; without it everything is told in words alone. */
  readonly workers?: Workers | undefined;
  /** The time, ms since 1970 UTC. */
  readonly now: () => number;
};

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
    'challenge-close': due => onClose(desk, due),
  };
}

const placeOf = ({ group, channel, language }: StoredChallenge): Place => ({ group, channel, language });

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
  // It says in which phase the challenge is.
  await updateAnnouncement(desk, scope, challenge, announcement);
  const reply =
    what === 'announcement'
      ? announcement
      : pictured(noticeReply(challenge, now, { what, say }), desk, async workers =>
          what === 'vote' ? barsPicture(workers, scope, telling) : [],
        );
  await tellOnce(desk, scope, challenge, { what, reply });
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
  await updateAnnouncement(
    desk,
    scope,
    challenge,
    pictured(announcementReply(challenge, now, say), desk, workers =>
      announcementPicture(workers, { challenge, now, say }),
    ),
  );
  const reply = pictured(resultsReply(challenge, { now, result, say }), desk, workers =>
    resultsPicture(workers, scope, { challenge, now, say, result }),
  );
  const before = await postOf(scope, challenge.id, 'results');
  if (before) await desk.outbox.edit(placeOf(challenge), before, await reply());
  else await tellOnce(desk, scope, challenge, { what: 'results', reply });
}

async function tellCancelled(
  desk: ChallengeDesk,
  scope: ChallengeScope,
  challenge: StoredChallenge,
): Promise<void> {
  const told = cancelledReply(challenge, asOf(challenge, atLast), wordsIn(challenge.language));
  const reply = async () => told;
  await updateAnnouncement(desk, scope, challenge, reply);
  await tellOnce(desk, scope, challenge, { what: 'cancelled', reply });
}

async function updateAnnouncement(
  { outbox }: ChallengeDesk,
  scope: ChallengeScope,
  challenge: StoredChallenge,
  reply: Drawing,
): Promise<void> {
  const announcement = await postOf(scope, challenge.id, 'announcement');
  if (announcement) await outbox.edit(placeOf(challenge), announcement, await reply());
}

/** A reply that is drawn when it is first needed, and then only once. */
type Drawing = () => Promise<Reply>;

/** A reply with its picture first. A picture that cannot be drawn holds up no news. */
function pictured(
  reply: Reply,
  { workers }: ChallengeDesk,
  draw: (workers: Workers) => Promise<readonly Block[]>,
): Drawing {
  let drawn: Promise<Reply> | undefined;
  const begin = async () => {
    const picture = workers ? await draw(workers).catch(() => []) : [];
    return { ...reply, blocks: [...picture, ...reply.blocks] };
  };
  return () => (drawn ??= begin());
}

/** Short marks for nonces, which hold no more than 25 characters with the id. */
const marks: Readonly<Record<PostOf, string>> = {
  announcement: 'a',
  open: 'o',
  'entries-soon': 'e',
  vote: 'v',
  'votes-soon': 's',
  results: 'r',
  cancelled: 'c',
};

/**
 * Posts unless that was done before. Between posting and noting it down lies the one moment in which a crash
 * leaves us not knowing: the nonce makes a second post within minutes the same message.
 */
async function tellOnce(
  { outbox }: ChallengeDesk,
  scope: ChallengeScope,
  challenge: StoredChallenge,
  { what, reply }: { what: PostOf; reply: Drawing },
): Promise<void> {
  if (await postOf(scope, challenge.id, what)) return;
  const posted = await outbox.post(
    placeOf(challenge),
    await reply(),
    `${marks[what]}${challenge.id}`.slice(0, 25),
  );
  if (posted !== 'barred') await keepPost(scope, challenge.id, what, posted);
}
