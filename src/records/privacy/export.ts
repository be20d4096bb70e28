import type { Store } from '../store.ts';
import { type Topic, topics } from './kinds.ts';
import { ownedBy } from './owned.ts';

/** Everything kept about a member, ready to be written as JSON; pictures are base64 within. */
export type Export = {
  readonly member: string;
  /** ISO 8601 in UTC. */
  readonly made: string;
  readonly records: { readonly [T in Topic]: readonly { readonly key: string; readonly value: unknown }[] };
};

/** Gathers everything kept about a member, in every group. */
export async function exportOf(store: Store, member: string, made: Date): Promise<Export> {
  const records = Object.fromEntries(topics.map(topic => [topic, []])) as unknown as Record<
    Topic,
    { key: string; value: unknown }[]
  >;
  for await (const { key, value, held } of ownedBy(store, member)) records[held.topic].push({ key, value });
  return { member, made: made.toISOString(), records };
}

/** How many records are kept about a member, by topic. */
export async function countOf(store: Store, member: string): Promise<Readonly<Record<Topic, number>>> {
  const counts = Object.fromEntries(topics.map(topic => [topic, 0])) as Record<Topic, number>;
  // A time at which something is to be done about what is counted already.
  for await (const { held, kind } of ownedBy(store, member)) if (kind !== 'due') counts[held.topic] += 1;
  return counts;
}
