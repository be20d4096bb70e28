import { inTimeForOne } from '../../records/in-time.ts';
import { mets, preferences, under } from '../../records/keys.ts';
import { lookedAfter } from '../../records/privacy/looked-after.ts';
import { readOnce } from '../../records/read-once.ts';
import type { Store } from '../../records/store.ts';
import type { Conversation } from '../conversation.ts';
import type { Origin } from '../question.ts';

/** Stores that are made for one question already. */
const made = new WeakSet<Store>();

/** Whether a conversation is what {@link forOneQuestion} made. */
export const isForOneQuestion = ({ services }: Conversation): boolean => made.has(services.store);

/**
 * What answers one question: its store reads preferences and shelves once, waits only so long altogether, and sets the
 * group's next look for what retention asks for. The same again for the same question.
 */
export function forOneQuestion(conversation: Conversation, { group, at, asker }: Origin): Conversation {
  const { services } = conversation;
  if (made.has(services.store)) return conversation;
  const store = readOnce(inTimeForOne(lookedAfter(services.store, { group, at })), {
    spans: ['preference/', 'shelf/'],
    together: [under(preferences(asker.id)), under(mets(asker.id))],
  });
  made.add(store);
  return { ...conversation, services: { ...services, store } };
}
