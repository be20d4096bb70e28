import { z } from 'zod';
import { notice, notices, under } from './keys.ts';
import { moment, type RecordOf, readable, recordKind, written } from './record.ts';
import { add, drop, everything, type Store } from './store.ts';

const noticeKind = recordKind('notice', {
  group: z.string(),
  /** The record it is about, such as a challenge. */
  id: z.string(),
  title: z.string(),
  /** Why a bar of theirs, of that title, was taken out; absent where a group could not be told of what it is about. */
  reason: z.string().exactOptional(),
  at: moment,
});

/** What somebody is to hear of: that their group could not be told of something, or that a bar of theirs was taken out. */
export type Notice = RecordOf<typeof noticeKind>;

/** Keeps a notice for a member. False when the same one already waits for them. */
export async function keepNotice(store: Store, member: string, about: Notice): Promise<boolean> {
  const key = notice(member, about.group, about.id);
  return (await store.commit([add(key, written(noticeKind, about))])).done;
}

/** What waits for a member. One that does not read is set aside. */
export async function noticesFor(store: Store, member: string): Promise<readonly Notice[]> {
  const waiting = await everything(store, under(notices(member)));
  return readable(noticeKind, waiting).map(({ fields }) => fields);
}

/** Strikes out what a member has been told. */
export async function dropNotices(store: Store, member: string, told: readonly Notice[]): Promise<void> {
  await store.commit(told.map(({ group, id }) => drop(notice(member, group, id))));
}
