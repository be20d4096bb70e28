import { refuse } from '../../engine/refusal.ts';
import {
  batchEvent,
  batchEvents,
  batches,
  batch as batchKey,
  batchPhoto,
  batchPhotos,
  batchReminder,
  sharedBatch,
  under,
  undoable as undoableKey,
} from '../keys.ts';
import { written } from '../record.ts';
import { changeAllOnce, type Planned } from '../shelf/idempotency.ts';
import { pickFromSnapshot } from '../shelf/pick-from-snapshot.ts';
import type { Change, Outcome } from '../shelf/shelf.ts';
import { type ItemSnapshot, toGrams, toMilligrams } from '../shelf/snapshot.ts';
import { move, outcomeOf, type Taking } from '../shelf/stock.ts';
import { add, drop, everything, put, type Write } from '../store.ts';
import { dropOutlivedUndoables, notUndone, undoable } from '../undo/index.ts';
import { type Batch, type BatchBook, type Did, mostBatches, mostEvents, type Poured } from './batch.ts';
import { batchOf, readBatch } from './queries.ts';
import { batchKind, eventKind, photoKind, reminderKind, sharedKind } from './schema.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'batches-full': { readonly most: number };
    'batch-events-full': { readonly most: number };
  }
}

/** What a pour did: what left the shelf, and of what there was less than went in. */
export type PourOutcome = {
  readonly batch: Batch;
  readonly outcomes: readonly Outcome[];
  readonly repeated: boolean;
};

/** A batch before it is known what could be taken off the shelf for it. */
export type ToPour = Omit<Poured, 'taken' | 'cause' | 'at'> & { readonly at: Date };

/**
 * Keeps a batch and takes its colours off the shelf, all in one commit and once for its cause. Of a jar with less than
 * went in, all that is left is taken; of one that was never counted, nothing: the soap is made. `also` goes into the same
 * commit. Throws a Refusal `batches-full`.
 */
export async function pourBatch(
  book: BatchBook,
  poured: ToPour,
  { takings, change, also }: { takings: readonly Taking[]; change: Change; also: readonly Write[] },
): Promise<PourOutcome> {
  const { store, member } = book;
  const { from, to } = under(batches(member));
  if ((await store.range(from, to, mostBatches)).length >= mostBatches)
    refuse('batches-full', { most: mostBatches });
  const id = change.cause;
  const head = (taken: Poured['taken']): readonly Write[] => [
    add(batchKey(member, id), written(batchKind, { ...poured, cause: id, taken })),
    put(batchReminder(poured.group, id), written(reminderKind, { member })),
    undoable(member, change, { what: 'poured', name: poured.name }),
    ...also,
  ];
  if (takings.length === 0) {
    const { done } = await store.commit(head([]));
    return { batch: await batchOf(book, id), outcomes: [], repeated: !done };
  }
  const outcomes = await changeAllOnce(book, { cause: id, at: change.at, many: takings.length }, all => {
    const planned = takings.map((taking, n) =>
      planTaking(book, pickFromSnapshot(all, taking.item), taking, { ...change, cause: `${id}-${n + 1}` }),
    );
    const taken = planned.flatMap(({ outcome }) =>
      outcome.change ? [{ item: outcome.id, milligrams: toMilligrams(-outcome.change) }] : [],
    );
    return planned.map((one, n) => (n === 0 ? { ...one, writes: [...one.writes, ...head(taken)] } : one));
  });
  return { batch: await batchOf(book, id), outcomes, repeated: outcomes.some(one => one.repeated) };
}

function planTaking(book: BatchBook, snapshot: ItemSnapshot, { grams }: Taking, change: Change): Planned {
  const { stock, lot } = snapshot.item;
  const taken = Math.min(toMilligrams(grams), toMilligrams(stock.grams ?? 0));
  if (taken <= 0) return { writes: [], outcome: outcomeOf(snapshot.item, 'use') };
  const movement = { action: 'use', grams: -toGrams(taken), lot: lot.number } as const;
  const { writes, left } = move(book, snapshot, movement, change);
  return { writes, outcome: { ...outcomeOf(snapshot.item, 'use', left), change: -toGrams(taken) } };
}

/** Every key a batch has, but for the lines of the jars' ledgers. */
async function everyKeyOf({ store, member }: BatchBook, batch: Batch): Promise<readonly string[]> {
  const [events, photos] = await Promise.all([
    everything(store, under(batchEvents(member, batch.id))),
    everything(store, under(batchPhotos(member, batch.id)), 20),
  ]);
  return [
    batchKey(member, batch.id),
    batchReminder(batch.group, batch.id),
    sharedBatch(batch.group, member, batch.id),
    ...events.map(({ key }) => key),
    ...photos.map(({ key }) => key),
  ];
}

/**
 * Takes a pour back: the batch is gone, and what was taken for it stands on the shelf again, in one commit and once
 * however often it is pressed. A jar that left the shelf since stays away. Gives the outcomes and the batch; the batch is
 * undefined where it was gone already.
 */
export async function undoPour(
  book: BatchBook,
  id: string,
  { at }: Pick<Change, 'at'>,
): Promise<{ readonly batch: Batch | undefined; readonly outcomes: readonly Outcome[] }> {
  const batch = await readBatch(book, id);
  if (!batch) return { batch: undefined, outcomes: [] };
  const keys = [...(await everyKeyOf(book, batch)), undoableKey(book.member, id)];
  const cause = `undo-${id}`;
  const { taken } = batch;
  if (taken.length === 0) {
    await book.store.commit(keys.map(drop));
    return { batch, outcomes: [] };
  }
  const outcomes = await changeAllOnce(book, { cause, at, many: taken.length }, all =>
    taken.map(({ item, milligrams }, n) => {
      const snapshot = all.find(one => one.item.id === item);
      const extra = n === 0 ? keys.map(drop) : [];
      if (!snapshot) return { writes: extra, outcome: goneOutcome(item) };
      const grams = toGrams(milligrams);
      const movement = { action: 'restock', grams, lot: snapshot.item.lot.number } as const;
      const { writes, left } = move(book, snapshot, movement, { at, cause: `${cause}-${n + 1}` });
      return {
        writes: [...writes, ...extra],
        outcome: { ...outcomeOf(snapshot.item, 'restock', left), change: grams },
      };
    }),
  );
  return { batch, outcomes };
}

const goneOutcome = (id: string): Planned['outcome'] => ({
  action: 'restock',
  id,
  name: '',
  low: false,
  lot: 1,
});

/**
 * Removes a batch with its photos and all that became of it, which can be taken back for some minutes; the shelf stays as
 * it is.
 */
export async function removeBatch(book: BatchBook, batch: Batch, change: Change): Promise<void> {
  const { store, member } = book;
  await dropOutlivedUndoables(book, change.at);
  const keys = await everyKeyOf(book, batch);
  const values = await store.get(keys);
  const back = keys.flatMap((key, at) => (values[at] === undefined ? [] : [{ key, value: values[at] }]));
  await store.commit([
    notUndone(member, change),
    undoable(member, change, { what: 'batch-removed', name: batch.name, back }),
    ...keys.map(drop),
  ]);
}

/** What a maker notes by hand, and may want to take back. */
const BY_HAND: ReadonlySet<Did['kind']> = new Set(['cut', 'weighed', 'noted']);

/**
 * Notes what happened to a batch at a time, once for its cause; what is noted by hand can be taken back for some minutes from
 * `now` on. `also` goes into the same commit. False where it was noted
 * before. Throws a Refusal: `batch-gone`, `batch-events-full`.
 */
export async function noteEvent(
  book: BatchBook,
  batch: Batch,
  did: Did,
  { at, now = at, cause, also = [] }: Change & { readonly now?: Date; readonly also?: readonly Write[] },
): Promise<boolean> {
  const { store, member } = book;
  if (batch.events.length >= mostEvents) refuse('batch-events-full', { most: mostEvents });
  if (batch.events.some(event => event.cause === cause)) return false;
  const event = {
    key: batchEvent(member, batch.id, at.getTime(), cause),
    value: written(eventKind, { at, cause, did }),
  };
  const back = BY_HAND.has(did.kind)
    ? [
        notUndone(member, { cause }),
        undoable(member, { cause, at: now }, { what: 'batch-event', name: batch.name, made: [event] }),
      ]
    : [];
  const result = await store.commit([add(event.key, event.value), ...back, ...also]);
  return result.done;
}

/** Keeps a photo of a batch in place of the ones before, base64 of its file. */
export async function keepPhoto(
  { store, member }: BatchBook,
  id: string,
  { cause, bytes }: { readonly cause: string; readonly bytes: Uint8Array },
): Promise<void> {
  const key = batchPhoto(member, id, cause);
  const before = await everything(store, under(batchPhotos(member, id)), 20);
  const base64 = Buffer.from(bytes).toString('base64');
  await store.commit([
    put(key, written(photoKind, { base64 })),
    ...before.filter(one => one.key !== key).map(one => drop(one.key)),
  ]);
}

/** Shows a batch to the group it was poured in; no matter if it was shown before. */
export async function showBatch(
  { store, member }: BatchBook,
  { id, group }: Pick<Batch, 'id' | 'group'>,
  { at, byName, also = [] }: { at: Date; byName: string; also?: readonly Write[] },
): Promise<void> {
  const record = written(sharedKind, { member, batch: id, byName, at });
  await store.commit([put(sharedBatch(group, member, id), record), ...also]);
}

/** Takes it back; no matter if it was not shown. */
export async function hideBatch(
  { store, member }: BatchBook,
  { id, group }: Pick<Batch, 'id' | 'group'>,
): Promise<void> {
  await store.commit([drop(sharedBatch(group, member, id))]);
}
