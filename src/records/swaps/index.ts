/* Jars that members offer their group for swapping: only what somebody offered, and only while the jar is on their shelf. */

import { z } from 'zod';
import { swap, swaps, under } from '../keys.ts';
import { moment, type RecordOf, readable, recordKind, written } from '../record.ts';
import { listShelf, type ShelfItem } from '../shelf/index.ts';
import { drop, everything, put, type Store } from '../store.ts';

const kind = recordKind('swap', {
  member: z.string(),
  byName: z.string(),
  item: z.string(),
  /** What they would like for it, in their words. */
  wants: z.string().exactOptional(),
  at: moment,
});

type Scope = { readonly store: Store; readonly group: string };
export type Offer = RecordOf<typeof kind> & { readonly jar: ShelfItem };

/** Offers a jar, in place of what was offered of it before. */
export async function offerJar(
  { store, group }: Scope,
  offer: Omit<RecordOf<typeof kind>, 'item'> & { readonly item: Pick<ShelfItem, 'id'> },
): Promise<void> {
  const record = { ...offer, item: offer.item.id };
  await store.commit([put(swap(group, offer.member, record.item), written(kind, record))]);
}

/** Takes an offer back; no matter if there was none. */
export async function withdrawJar(
  { store, group }: Scope,
  { member, item }: { readonly member: string; readonly item: string },
): Promise<void> {
  await store.commit([drop(swap(group, member, item))]);
}

/** What is offered, the newest first; a jar that is empty or off its shelf is left out. */
export async function offersIn({ store, group }: Scope): Promise<readonly Offer[]> {
  const all = readable(kind, await everything(store, under(swaps(group)))).map(({ fields }) => fields);
  const members = [...new Set(all.map(({ member }) => member))];
  const shelves = new Map(
    await Promise.all(members.map(async member => [member, await listShelf({ store, member })] as const)),
  );
  return all
    .flatMap(offer => {
      const jar = shelves.get(offer.member)?.find(({ id }) => id === offer.item);
      return jar && jar.stock.grams !== 0 ? [{ ...offer, jar }] : [];
    })
    .sort((a, b) => b.at.getTime() - a.at.getTime());
}
