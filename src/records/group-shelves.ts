import { z } from 'zod';
import { groupShelf, groupShelves, leftOf, part, under } from './keys.ts';
import { sweepDue } from './privacy/retention.ts';
import { readable, recordKind, written } from './record.ts';
import { listShelf } from './shelf/index.ts';
import type { ShelfItem } from './shelf/shelf.ts';
import { everything, put, type Store, type Write } from './store.ts';

const shelfInGroup = recordKind('shelf in a group', { member: z.string() });

/**
 * Notes that a member of this group keeps a shelf. The shelf is theirs in every group; which shelves a group's
 * palettes are drawn for is known from here.
 */
export const noteShelf = (group: string, member: string, now: Date): readonly Write[] => [
  put(groupShelf(group, member), written(shelfInGroup, { member })),
  // Whoever may leave is looked after from now on.
  sweepDue(group, now),
];

/**
 * The shelves of the members of a group, without saying whose they are; empty ones are left out, and those of members
 * who were found to have left.
 */
export async function sharedShelves(store: Store, group: string): Promise<readonly (readonly ShelfItem[])[]> {
  const [entries, left] = await Promise.all([
    everything(store, under(groupShelves(group))),
    everything(store, under(leftOf(group))),
  ]);
  const gone = new Set(left.map(({ key }) => key.split('/')[2]));
  const members = readable(shelfInGroup, entries)
    .map(({ fields }) => fields.member)
    .filter(member => !gone.has(part(member)));
  const shelves = await Promise.all(members.map(member => listShelf({ store, member })));
  return shelves.filter(items => items.length > 0);
}
