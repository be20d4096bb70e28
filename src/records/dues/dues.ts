import { z } from 'zod';
import { dueBy, dueKey, dues, duesBeforeBuckets } from '../keys.ts';
import { moment, readable, recordKind, written } from '../record.ts';
import { drop, type Entry, everything, everythingIn, pages, put, type Store, type Write } from '../store.ts';
import { bucketOf, bucketsOf, type Shards } from './due-buckets.ts';

/** Something to do at a time, for a group. `what` says what, `id` for which record. */
export type Due = { readonly at: Date; readonly group: string; readonly what: string; readonly id: string };

/** The group of what is due for no group: one process does it. */
export const HOUSE = 'house';

const dueKind = recordKind('due', { at: moment, group: z.string(), what: z.string(), id: z.string() });

const keyOf = ({ at, group, what, id }: Due) => dueKey(at, group, what, id);

/** Notes something to do; belongs in the commit of whatever makes it due. */
export const putDue = (due: Due): Write => put(keyOf(due), written(dueKind, due));

/** Strikes something off: the last thing to do about it. */
export const dropDue = (due: Due): Write => drop(keyOf(due));

/**
 * All that is due by now, the earliest first: of every group, or of those in whose buckets the groups of some shards
 * lie. One that does not read is set aside.
 */
export async function duesBy(store: Store, now: Date, shards?: Shards): Promise<readonly Due[]> {
  const spans = bucketsOf(shards).map(bucket => dueBy(now, bucket));
  return readable(dueKind, await everythingIn(store, spans))
    .map(({ key, fields }) => ({ order: key.split('/').slice(2).join('/'), fields }))
    .sort((a, b) => (a.order < b.order ? -1 : 1))
    .map(({ fields }) => fields);
}

/** All that is ever to be done for a group, as it lies in the store. Reads all of its bucket: for rare occasions. */
export async function duesOfGroup(store: Store, group: string): Promise<readonly Entry[]> {
  const entries = await everything(store, dues(bucketOf(group)));
  const theirs = readable(dueKind, entries).filter(({ fields }) => fields.group === group);
  const keys = new Set(theirs.map(({ key }) => key));
  return entries.filter(({ key }) => keys.has(key));
}

/**
 * Puts what programs before format 2 noted into the buckets. One that does not read stays where it is, set aside. Safe
 * to do again, and to be stopped halfway.
 */
export async function divideDues(store: Store): Promise<void> {
  for await (const page of pages(store, duesBeforeBuckets()))
    await store.commit(readable(dueKind, page).flatMap(({ key, fields }) => [drop(key), putDue(fields)]));
}
