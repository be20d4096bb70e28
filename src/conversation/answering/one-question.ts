import { remembered } from '../../engine/remembered.ts';
import { alone, evidenceSharedBy, mets, preferences, shelf, under } from '../../records/keys.ts';
import { LookedAfter } from '../../records/privacy/looked-after.ts';
import { InTimeForOne } from '../../records/reading/in-time.ts';
import { ReadOnce } from '../../records/reading/read-once.ts';
import type { Conversation } from '../conversation.ts';
import type { Origin } from '../question.ts';

/** What most questions ask of their asker's, wherever they lead: read in one message. */
const spansOf = remembered(member => [preferences(member), mets(member), shelf(member)].map(under));
const sharingOf = remembered(group => alone(evidenceSharedBy(group)));
const SPANS = ['preference/', 'shelf/'];

/** Whether a conversation is what {@link forOneQuestion} made. */
export const isForOneQuestion = ({ services }: Conversation): boolean => services.store instanceof ReadOnce;

/**
 * What answers one question: its store reads preferences and shelves once, waits only so long altogether, and sets the
 * group's next look for what retention asks for. The same again for the same question.
 */
export function forOneQuestion(conversation: Conversation, { group, at, asker }: Origin): Conversation {
  const { services } = conversation;
  if (services.store instanceof ReadOnce) return conversation;
  const looking = new InTimeForOne(new LookedAfter(services.store, { group, at }));
  const together = [...spansOf(asker.id), sharingOf(group)];
  const store = new ReadOnce(looking, { spans: SPANS, together });
  return { ...conversation, services: { ...services, store } };
}
