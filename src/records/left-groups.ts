import { z } from 'zod';
import { duesOfGroup } from './dues/dues.ts';
import { groupLeft, groupsLeft, under } from './keys.ts';
import { moment, read, readable, recordKind, written } from './record.ts';
import { add, drop, everything, type Store } from './store.ts';

const leftKind = recordKind('group that put us out', { group: z.string(), at: moment });

/**
 * Notes that a group put us out, and strikes off all that was to be done for it: there is nobody left to tell. Its
 * records stay as they are, and the note says from when on the time for keeping them runs. Safe to repeat: the
 * first time counts.
 */
export async function leaveGroup(store: Store, group: string, at: Date): Promise<void> {
  await store.commit([add(groupLeft(group), written(leftKind, { group, at }))]);
  const dues = await duesOfGroup(store, group);
  if (dues.length > 0) await store.commit(dues.map(({ key }) => drop(key)));
}

/** When a group put us out; undefined while we are in it. */
export async function leftAt(store: Store, group: string): Promise<Date | undefined> {
  const key = groupLeft(group);
  const [stored] = await store.get([key]);
  return stored === undefined ? undefined : read(leftKind, key, stored).at;
}

/** The groups that put us out. A note that does not read is set aside. */
export async function leftGroups(store: Store): Promise<readonly string[]> {
  const entries = await everything(store, under(groupsLeft()));
  return readable(leftKind, entries).map(({ fields }) => fields.group);
}

/** Strikes the note out: the group took us in again. */
export async function rejoinGroup(store: Store, group: string): Promise<void> {
  await store.commit([drop(groupLeft(group))]);
}
