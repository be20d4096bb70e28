import { createHash } from 'node:crypto';
import { z } from 'zod';
import { putDue } from '../dues/dues.ts';
import { flawCases, leftAt, leftOf, part, under } from '../keys.ts';
import { moment, readable, recordKind, written } from '../record.ts';
import { add, drop, everything, pages, type Store, type Write } from '../store.ts';
import { sweepUndoables } from '../undo/index.ts';
import { erase } from './erase.ts';
import { groupsOf, membersIn } from './members.ts';
import { dropOlder } from './outlived.ts';
import { fieldOf } from './owned.ts';
import { noteGroup } from './owned-index.ts';

const minute = 60_000;
const day = 1_440 * minute;

/** How long things are kept, days. */
export const retention = {
  /** What somebody kept in a group, after they were first found to have left it. */
  left: 30,
  /** Photos of entries, after their challenge ended. */
  photos: 365,
  /** Cases of flaws, and plans and matches that buttons go on with. */
  recent: 2,
  /** That something was done once: longer than any button lives that could do it again. */
  once: 100,
} as const;

/** The due under which a group is looked through. */
export const SWEEP = 'privacy-sweep';

/**
 * Sets the next look through a group, at the time of day that is the group's own, so that all groups together are
 * looked through in 24 hours and not in one. As often as it is set in a day, it is one due.
 */
export function sweepDue(group: string, now: Date): Write {
  const offset = createHash('sha256').update(group).digest().readUInt32BE(0) % (day / minute);
  const time = now.getTime() - offset * minute;
  const at = new Date((Math.floor(time / day) + 1) * day + offset * minute);
  return putDue({ at, group, what: SWEEP, id: group });
}

const leftKind = recordKind('left', { member: z.string(), at: moment });

export type Sweep = {
  readonly store: Store;
  readonly group: string;
  readonly now: Date;
  /** Whether somebody is in a group; rejects when that cannot be told just now. */
  readonly hasMember: (member: string, group: string) => Promise<boolean>;
};

/**
 * Does what retention asks for in one group: notes who has left, erases what those kept there who left long ago (and
 * all of it where nothing of theirs is in a group that they are still in), and drops what has outlived its time. Who
 * cannot be looked up is left as they are, and the failure thrown once all else is done. Safe to do again.
 */
export async function sweep(sweeping: Sweep): Promise<void> {
  const { store, group, now } = sweeping;
  const failures: unknown[] = [];
  await noteGroup(store, group);
  await noteLeft(sweeping, failures);
  await eraseLeft(sweeping);
  await dropOutlived(store, group, now);
  await sweepUndoables(store, now);
  if (failures.length > 0) throw failures[0];
}

async function noteLeft({ store, group, now, hasMember }: Sweep, failures: unknown[]): Promise<void> {
  const noted = new Set((await everything(store, under(leftOf(group)))).map(({ key }) => key));
  for (const member of await membersIn(store, group)) {
    const note = leftAt(group, member);
    const isHere = await hasMember(member, group).catch((failure: unknown) => {
      failures.push(failure);
      return undefined;
    });
    if (isHere === true && noted.has(note)) await store.commit([drop(note)]);
    if (isHere === false && !noted.has(note))
      await store.commit([add(note, written(leftKind, { member, at: now }))]);
  }
}

async function eraseLeft(sweeping: Sweep): Promise<void> {
  const { store, group, now } = sweeping;
  const left = readable(leftKind, await everything(store, under(leftOf(group))));
  for (const { key, fields } of left) {
    if (!isOver(fields.at, now)) continue;
    const stays = await isElsewhere(sweeping, fields.member);
    await erase(store, fields.member, stays ? { group } : {});
    await store.commit([drop(key)]);
  }
}

const isOver = (at: Date, now: Date): boolean => now.getTime() - at.getTime() >= retention.left * day;

/**
 * Whether another group holds something of a member's, their own talk with us among them, and is one that they may
 * still be in: whoever was found to have left it long ago, and is not there now, is not. In doubt they are.
 */
async function isElsewhere({ store, group, now, hasMember }: Sweep, member: string): Promise<boolean> {
  for (const other of await groupsOf(store, member)) {
    if (other === part(group)) continue;
    const key = leftAt(other, member);
    const [note] = await store.get([key]);
    const [left] = note === undefined ? [] : readable(leftKind, [{ key, value: note }]);
    if (!left || !isOver(left.fields.at, now)) return true;
    if (await hasMember(member, other).catch(() => true)) return true;
  }
  return false;
}

async function dropOutlived(store: Store, group: string, now: Date): Promise<void> {
  const ends = await everything(store, under(`challenge-end/${part(group)}`));
  for (const { key, value } of ends) {
    const at = fieldOf({ key, value }, 'at');
    if (typeof at !== 'number' || now.getTime() - at < retention.photos * day) continue;
    const photos = under(key.replace(/^challenge-end/, 'challenge-photo'));
    for await (const page of pages(store, photos, 4)) await store.commit(page.map(one => drop(one.key)));
  }
  await dropOlder(store, { span: under(flawCases(group)), days: retention.recent, now });
}
