import type { Conversation } from '../conversation.ts';
import type { Origin } from '../question.ts';
import type { Choice, Form, Problem, Reply } from '../reply.ts';
import { type Follow, type Holder, seal } from './follow.ts';

export type Unspoken = Reply<string> | Form<string> | Problem;

export const holderOf = ({ group, asker }: Origin) => ({ group, asker: asker.id });

/** For whom an id is signed, and when, ms since 1970 UTC. */
export type Sealing = { readonly holder: Holder; readonly at: number };

/** A choice may lead to another command, which nobody has asked for yet. */
export function allKnown(answer: Reply | Form, { registry: { nameOf } }: Conversation): boolean {
  const follows = answer.kind === 'form' ? [answer.follow] : (answer.choices ?? []).map(one => one.follow);
  return follows.every(({ followUp }) => nameOf.has(followUp));
}

/** Turns the follow-ups of an answer into signed ids. */
export function sealed(answer: Reply | Form, origin: Origin, conversation: Conversation): Unspoken {
  const sealing = { holder: holderOf(origin), at: origin.at };
  if (answer.kind === 'form') return { ...answer, follow: signed(answer.follow, sealing, conversation) };
  return sealedReply(answer, sealing, conversation);
}

function sealedReply(
  { choices, ...rest }: Reply,
  sealing: Sealing,
  conversation: Conversation,
): Reply<string> {
  if (!choices) return rest;
  return { ...rest, choices: choices.map(one => sealedChoice(one, sealing, conversation)) };
}

export const sealedChoice = (one: Choice, sealing: Sealing, conversation: Conversation): Choice<string> => ({
  ...one,
  follow: signed(one.follow, sealing, conversation),
});

export function signed(follow: Follow, { holder, at }: Sealing, { registry, key }: Conversation): string {
  const name = registry.nameOf.get(follow.followUp);
  if (!name) throw new Error('a choice leads to a follow-up that no command declares');
  return seal(follow, name, { key, holder, at });
}

/**
 * A reply that nobody asked for, ready to be posted in a group. Throws an Error when a choice is for one asker
 * only: in a post there is none.
 */
export function sealedPost(
  reply: Reply,
  { group, at }: { group: string; at: number },
  conversation: Conversation,
): Reply<string> {
  if (reply.choices?.some(({ follow }) => follow.followUp.for !== 'group'))
    throw new Error('a post offers a choice that is for one asker');
  return sealedReply(reply, { holder: { group, asker: '' }, at }, conversation);
}
