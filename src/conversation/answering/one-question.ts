import { remembered } from '../../engine/remembered.ts';
import { valuesOn } from '../../engine/values-on.ts';
import { alone, evidenceSharedBy, mets, preferences, shelf, under } from '../../records/keys.ts';
import { lookedAfter } from '../../records/privacy/looked-after.ts';
import { inTimeForOne } from '../../records/reading/in-time.ts';
import { readOnce } from '../../records/reading/read-once.ts';
import type { Store } from '../../records/store.ts';
import type { Conversation } from '../conversation.ts';
import type { Origin } from '../question.ts';

/** Stores that are made for one question already. */
const made = valuesOn<Store, true>();

/** What most questions ask of their asker's, wherever they lead: read in one message. */
const spansOf = remembered(member => [preferences(member), mets(member), shelf(member)].map(under));

/** Whether a conversation is what {@link forOneQuestion} made. */
export const isForOneQuestion = ({ services }: Conversation): boolean => made.get(services.store) === true;

/**
 * What answers one question: its store reads preferences and shelves once, waits only so long altogether, and sets the
 * group's next look for what retention asks for. The same again for the same question.
 */
export function forOneQuestion(conversation: Conversation, { group, at, asker }: Origin): Conversation {
  const { services } = conversation;
  if (made.get(services.store)) return conversation;
  const store = readOnce(inTimeForOne(lookedAfter(services.store, { group, at })), {
    spans: ['preference/', 'shelf/'],
    together: [...spansOf(asker.id), alone(evidenceSharedBy(group))],
  });
  made.set(store, true);
  return { ...conversation, services: { ...services, store } };
}
