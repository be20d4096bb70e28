import { z } from 'zod';
import { putDue } from '../dues.ts';
import { flawCases, flawPictures, groupShelf, groupShelves, leftAt, leftOf, part, under } from '../keys.ts';
import { moment, readable, recordKind, written } from '../record.ts';
import { add, drop, everything, pages, type Store, type Write } from '../store.ts';
import { sweepUndoables } from '../undo/index.ts';
import { erase } from './erase.ts';
import { fieldOf } from './owned.ts';

const day = 86_400_000;

/** How long things are kept, days. */
export const retention = {
  /** What somebody kept in a group, after they were first found to have left it. */
  left: 30,
  /** Photos of entries, after their challenge ended. */
  photos: 365,
  /** Cases of flaws, and plans and matches that buttons go on with. */
  recent: 2,
} as const;

/** The due under which a group is looked through. */
export const SWEEP = 'privacy-sweep';

/** Sets the next look through a group, the coming night in UTC: as often as it is set in a day, it is one due. */
export function sweepDue(group: string, now: Date): Write {
  const at = new Date((Math.floor(now.getTime() / day) + 1) * day);
  return putDue({ at, group, what: SWEEP, id: group });
}

const leftKind = recordKind('left', { member: z.string(), at: moment });

export type Sweep = {
  readonly store: Store;
  readonly group: string;
  readonly now: Date;
  /** Whether somebody is in the group; rejects when that cannot be told just now. */
  readonly hasMember: (member: string) => Promise<boolean>;
};

/**
 * Does what retention asks for in one group: notes who has left, erases what those kept there who left long ago (and
 * all of it where they are in no other group), and drops what has outlived its time. Safe to do again.
 */
export async function sweep({ store, group, now, hasMember }: Sweep): Promise<void> {
  for (const member of await membersIn(store, group)) {
    if (await hasMember(member)) {
      await store.commit([drop(leftAt(group, member))]);
      continue;
    }
    // Their jars colour no palette of the group from here on.
    await store.commit([drop(groupShelf(group, member))]);
    await store.commit([add(leftAt(group, member), written(leftKind, { member, at: now }))]);
  }
  await eraseLeft(store, group, now);
  await dropOutlived(store, group, now);
  await sweepUndoables(store, now);
}

/** Everybody of whom the group keeps something under a key of their own. */
async function membersIn(store: Store, group: string): Promise<ReadonlySet<string>> {
  const members = new Set<string>();
  for (const [kind, at] of [
    [groupShelves(group), 2],
    [leftOf(group), 2],
    [`evidence/${part(group)}`, 3],
    [`placing/${part(group)}`, 2],
    [flawPictures(group), 2],
    [`calibration/${part(group)}`, 4],
    [`shared-batch/${part(group)}`, 2],
    [`swap/${part(group)}`, 2],
    [`season-palette/${part(group)}`, 2],
    [`season-vote/${part(group)}`, 2],
  ] as const)
    for await (const page of pages(store, under(kind)))
      for (const { key } of page) members.add(key.split('/')[at] ?? '');
  members.delete('');
  return members;
}

async function eraseLeft(store: Store, group: string, now: Date): Promise<void> {
  const left = readable(leftKind, await everything(store, under(leftOf(group))));
  for (const { key, fields } of left) {
    if (now.getTime() - fields.at.getTime() < retention.left * day) continue;
    const elsewhere = await isElsewhere(store, group, fields.member);
    await erase(store, fields.member, elsewhere ? { group } : {});
    await store.commit([drop(key)]);
  }
}

/** Whether another group still counts them among those with a shelf. */
async function isElsewhere(store: Store, group: string, member: string): Promise<boolean> {
  for await (const page of pages(store, under('group-shelf')))
    if (page.some(({ key }) => key.endsWith(`/${part(member)}`) && key !== groupShelf(group, member)))
      return true;
  return false;
}

async function dropOutlived(store: Store, group: string, now: Date): Promise<void> {
  const ends = await everything(store, under(`challenge-end/${part(group)}`));
  for (const { key, value } of ends) {
    const at = fieldOf({ key, value }, 'at');
    if (typeof at !== 'number' || now.getTime() - at < retention.photos * day) continue;
    const photos = under(key.replace(/^challenge-end/, 'challenge-photo'));
    for await (const page of pages(store, photos, 100)) await store.commit(page.map(one => drop(one.key)));
  }
  for await (const page of pages(store, under(flawCases(group)), 200)) {
    const old = page.filter(entry => {
      const at = Date.parse(String(fieldOf(entry, 'at')));
      return now.getTime() - at > retention.recent * day;
    });
    await store.commit(old.map(({ key }) => drop(key)));
  }
}
