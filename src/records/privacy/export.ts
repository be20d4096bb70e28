import type { Store } from '../store.ts';
import { type Topic, topics } from './kinds.ts';
import { ownedBy } from './owned.ts';

/** Everything kept about a member, as its JSON says it; pictures are base64 within. */
export type Export = {
  readonly member: string;
  /** What this process remembers of their last questions for half an hour, which is written nowhere. */
  readonly lately: readonly unknown[];
  /** ISO 8601 in UTC. */
  readonly made: string;
  readonly records: { readonly [T in Topic]: readonly { readonly key: string; readonly value: unknown }[] };
};

/** A part of it: JSON in UTF-8, how many records it holds, and at which record the next part begins, if any. */
export type ExportPart = {
  readonly bytes: Uint8Array;
  readonly records: number;
  readonly next: number | undefined;
};

/**
 * What is kept about a member, in every group, from the record `from` (0 the first) on: as many as fit into `most` bytes,
 * at least one. Each part is an {@link Export} by itself.
 */
export async function exportPart(
  store: Store,
  member: string,
  {
    made,
    from,
    most,
    unwritten = [],
  }: {
    readonly made: Date;
    readonly from: number;
    readonly most: number;
    /** What is remembered of them and stands in no record. */
    readonly unwritten?: readonly unknown[];
  },
): Promise<ExportPart> {
  const lines = new Map<Topic, string[]>(topics.map(topic => [topic, []]));
  let at = -1;
  let records = 0;
  let bytes = 0;
  let next: number | undefined;
  for await (const { key, value, held } of ownedBy(store, member)) {
    at += 1;
    if (at < from) continue;
    const line = JSON.stringify({ key, value });
    bytes += Buffer.byteLength(line) + 2;
    if (records > 0 && bytes > most) {
      next = at;
      break;
    }
    lines.get(held.topic)?.push(line);
    records += 1;
  }
  const byTopic = topics.map(topic => `"${topic}":[\n${lines.get(topic)?.join(',\n')}\n]`);
  const head = `"member":${JSON.stringify(member)},"made":${JSON.stringify(made.toISOString())},"lately":${JSON.stringify(unwritten)}`;
  return { bytes: Buffer.from(`{${head},"records":{\n${byTopic.join(',\n')}\n}}\n`), records, next };
}

/** Records that a member knows as one thing, by their kind and the parts of their key; all others stand beside one of these. */
const THINGS: Readonly<Record<string, number>> = { shelf: 3, preference: 3, recipe: 3, batch: 3 };
const COUNTED_WHOLE: ReadonlySet<Topic> = new Set(['recent', 'evidence', 'flaws', 'challenges']);

/** How many things are kept about a member as they would count them, and how many records in all. */
export async function thingsOf(
  store: Store,
  member: string,
): Promise<{ readonly things: Readonly<Record<Topic, number>>; readonly records: number }> {
  const things = Object.fromEntries(topics.map(topic => [topic, 0])) as Record<Topic, number>;
  let records = 0;
  for await (const { held, kind, key } of ownedBy(store, member)) {
    if (kind === 'due') continue;
    records += 1;
    const isThing = COUNTED_WHOLE.has(held.topic) || THINGS[kind] === key.split('/').length;
    if (isThing) things[held.topic] += 1;
  }
  return { things, records };
}
