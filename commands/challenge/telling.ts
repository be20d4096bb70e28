import type { Block, Reply } from '../../src/conversation/reply.ts';
import type { DeadlineServices } from '../../src/conversation/unasked/deadline.ts';
import type { Place, Posted } from '../../src/conversation/unasked/outbox.ts';
import {
  type ChallengeScope,
  keepPost,
  type PostOf,
  postOf,
  type StoredChallenge,
} from '../../src/records/challenges/index.ts';
import { groupSettings } from '../../src/records/group.ts';
import { keepNotice } from '../../src/records/notices.ts';
import { preferencesOf } from '../../src/records/preferences.ts';
import { wordsIn } from '../../src/words/index.ts';
import type { Workers } from '../../src/workers/workers.ts';
import type { NumberedBar } from './bars.ts';

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
  { workers }: DeadlineServices,
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
const marks: Readonly<Record<PostTold, string>> = {
  announcement: 'a',
  open: 'o',
  'entries-soon': 'e',
  vote: 'v',
  'votes-soon': 's',
  results: 'r',
  cancelled: 'c',
};
/** What is told by a message of its own. */
export type PostTold = Exclude<PostOf, 'thread' | 'entries-event' | 'votes-event'>;

/**
 * Posts unless that was done before; gives the message when it was posted just now. Between posting and noting it
 * down lies the one moment in which a crash leaves us not knowing: the nonce makes a second post within minutes the
 * same message.
 */
export async function tellOnce(
  services: DeadlineServices,
  scope: ChallengeScope,
  challenge: StoredChallenge,
  { what, reply }: { what: PostTold; reply: Drawing },
): Promise<Posted | undefined> {
  if (await postOf(scope, challenge.id, what)) return undefined;
  const place = placeOf(challenge);
  const { callsRole } = what === 'announcement' ? await groupSettings(scope.store, scope.group) : {};
  const nonce = `${marks[what]}${challenge.id}`.slice(0, 25);
  const posted = await services.outbox.post(place, await reply(), nonce, { calls: callsRole });
  if (posted === 'barred') {
    await tellSteward(services, challenge, what);
    return undefined;
  }
  await keepPost(scope, challenge.id, what, posted);
  return posted;
}

/** Whoever opened the challenge hears once that the group did not: in private now, and with their next answer. */
async function tellSteward(
  services: DeadlineServices,
  challenge: StoredChallenge,
  what: PostTold,
): Promise<void> {
  const { store, outbox, now, onBarred } = services;
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

/** Whoever made a bar hears in private that it was taken out; where that cannot reach them, with their next answer. */
export async function tellMaker(
  { store, outbox, now }: DeadlineServices,
  challenge: StoredChallenge,
  { bar: { entry, by, bar }, reason }: { readonly bar: NumberedBar; readonly reason: string },
): Promise<void> {
  const { group } = challenge;
  const language = (await preferencesOf(store, by)).language ?? challenge.language;
  const reply: Reply = {
    kind: 'reply',
    headline: wordsIn(language).challengeSteps.takenOutOfYours({ title: bar.title, reason }),
    data: { challenge: challenge.id, entry, reason },
    blocks: [],
    cautions: [],
  };
  // Told twice only where a process ended between the two: the nonce makes that the same message.
  const told = await outbox.tell?.(by, { ...placeOf(challenge), language }, reply, `t${entry}`.slice(0, 25));
  if (told !== 'told')
    await keepNotice(store, by, { group, id: entry, title: bar.title, reason, at: new Date(now()) });
}

/** Puts the announcement right. Comes after whatever is to be posted: a message that cannot be edited holds up no news. */
export async function updateAnnouncement(
  { outbox }: DeadlineServices,
  scope: ChallengeScope,
  challenge: StoredChallenge,
  reply: Drawing,
): Promise<void> {
  const announcement = await postOf(scope, challenge.id, 'announcement');
  if (announcement) await outbox.edit(placeOf(challenge), announcement, await reply());
}
