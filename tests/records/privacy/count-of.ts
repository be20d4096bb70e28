import { type Topic, topics } from '../../../src/records/privacy/kinds.ts';
import { ownedBy } from '../../../src/records/privacy/owned.ts';
import type { Store } from '../../../src/records/store.ts';

/** How many records are kept about a member, by topic. */
export async function countOf(store: Store, member: string): Promise<Readonly<Record<Topic, number>>> {
  const counts = Object.fromEntries(topics.map(topic => [topic, 0])) as Record<Topic, number>;
  // A time at which something is to be done about what is counted already.
  for await (const { held, kind } of ownedBy(store, member)) if (kind !== 'due') counts[held.topic] += 1;
  return counts;
}
