import type { Outbox, Place, Posted } from '../conversation/outbox.ts';
import type { Block, Reply } from '../conversation/reply.ts';
import {
  type Board,
  keepPost,
  type PostOf,
  postOf,
  type StoredChallenge,
} from '../records/challenges/index.ts';
import { groupSettings } from '../records/group.ts';
import { keepNotice } from '../records/notices.ts';
import type { Store } from '../records/store.ts';
import { wordsIn } from '../words/index.ts';
import type { Workers } from '../workers/workers.ts';

export type ChallengeDesk = {
  readonly store: Store;
  readonly outbox: Outbox;
  /** Draws; without it everything is told in words alone. */
  readonly workers?: Workers | undefined;
  /** The time, ms since 1970 UTC. */
  readonly now: () => number;
  /** Hears where a group could not be told. */
  readonly onBarred?: ((where: { group: string; channel: string; what: string }) => void) | undefined;
};

/** Where the group of a challenge hears of it. */
export const placeOf = ({ group, channel, language }: StoredChallenge): Place => ({
  group,
  channel,
  language,
});

/** A reply that is drawn when it is first needed, and then only once. */
export type Drawing = () => Promise<Reply>;

/** A reply with its picture first. A picture that cannot be drawn holds up no news. */
export function pictured(
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
const marks: Readonly<Record<Told, string>> = {
  announcement: 'a',
  open: 'o',
  'entries-soon': 'e',
  vote: 'v',
  'votes-soon': 's',
  results: 'r',
  cancelled: 'c',
};
/** What is told by a message of its own. */
export type Told = Exclude<PostOf, 'thread' | 'entries-event' | 'votes-event'>;

/**
 * Posts unless that was done before; gives the message when it was posted just now. Between posting and noting it
 * down lies the one moment in which a crash leaves us not knowing: the nonce makes a second post within minutes the
 * same message.
 */
export async function tellOnce(
  desk: ChallengeDesk,
  board: Board,
  challenge: StoredChallenge,
  { what, reply }: { what: Told; reply: Drawing },
): Promise<Posted | undefined> {
  if (await postOf(board, challenge.id, what)) return undefined;
  const place = placeOf(challenge);
  const { callsRole } = what === 'announcement' ? await groupSettings(board.store, board.group) : {};
  const nonce = `${marks[what]}${challenge.id}`.slice(0, 25);
  const posted = await desk.outbox.post(place, await reply(), nonce, { calls: callsRole });
  if (posted === 'barred') {
    await tellSteward(desk, challenge, what);
    return undefined;
  }
  await keepPost(board, challenge.id, what, posted);
  return posted;
}

/** Whoever opened the challenge hears once that the group did not: in private now, and with their next answer. */
async function tellSteward(desk: ChallengeDesk, challenge: StoredChallenge, what: Told): Promise<void> {
  const { store, outbox, now, onBarred } = desk;
  const { id, group, channel, language, events } = challenge;
  onBarred?.({ group, channel, what });
  const opening = events.find(event => event.kind === 'opened');
  if (!opening) return;
  const { title } = opening.terms;
  if (!(await keepNotice(store, opening.by, { group, id, title, at: new Date(now()) }))) return;
  const reply: Reply = {
    kind: 'reply',
    headline: wordsIn(language).conversation.notTold({ title }),
    data: { challenge: id, what },
    blocks: [],
    cautions: [],
  };
  // The notice waits for them in any case.
  await outbox.tell?.(opening.by, placeOf(challenge), reply).catch(() => 'barred');
}

/** Puts the announcement right. Comes after whatever is to be posted: a message that cannot be edited holds up no news. */
export async function updateAnnouncement(
  { outbox }: ChallengeDesk,
  board: Board,
  challenge: StoredChallenge,
  reply: Drawing,
): Promise<void> {
  const announcement = await postOf(board, challenge.id, 'announcement');
  if (announcement) await outbox.edit(placeOf(challenge), announcement, await reply());
}
