import { refuse } from '../../engine/refusal.ts';
import { cut } from '../../engine/text/excerpt.ts';
import { foldName, nearestNamed } from '../../engine/text/names/own-names.ts';
import {
  allBatchEvents,
  batchEvents,
  batches,
  batch as batchKey,
  batchPhotos,
  batchReminder,
  sharedBatch,
  sharedBatches,
  textOfPart,
  under,
} from '../keys.ts';
import { read, readable } from '../record.ts';
import { everything, type Store } from '../store.ts';
import type { Batch, BatchBook, BatchEvent } from './batch.ts';
import { batchKind, eventKind, photoKind, reminderKind, sharedKind } from './schema.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'batch-unknown': { readonly asked: string; readonly nearest: readonly string[] };
    'batch-gone': Record<never, never>;
  }
}

const byTime = (a: BatchEvent, b: BatchEvent) => a.at.getTime() - b.at.getTime();
const lastPart = (key: string) => key.split('/').at(-1) ?? '';

/** A member's batches with all that became of them, the newest first. One that does not read is set aside. */
export async function listBatches({ store, member }: BatchBook): Promise<readonly Batch[]> {
  const [heads, happened] = await Promise.all([
    everything(store, under(batches(member))),
    everything(store, under(allBatchEvents(member))),
  ]);
  const events = Map.groupBy(readable(eventKind, happened), ({ key }) => key.split('/')[2] ?? '');
  return readable(batchKind, heads)
    .map(({ key, fields }) => ({
      ...fields,
      id: fields.cause,
      events: (events.get(lastPart(key)) ?? []).map(one => one.fields).sort(byTime),
    }))
    .sort((a, b) => b.at.getTime() - a.at.getTime());
}

/** One batch by its id; undefined where there is none. */
export async function readBatch({ store, member }: BatchBook, id: string): Promise<Batch | undefined> {
  const key = batchKey(member, id);
  const [value] = await store.get([key]);
  if (value === undefined) return undefined;
  const happened = await everything(store, under(batchEvents(member, id)));
  const events = readable(eventKind, happened).map(({ fields }) => fields);
  return { ...read(batchKind, key, value), id, events: events.sort(byTime) };
}

/** The id of the batch whose own key is among these; undefined where there is none. */
export const batchAmong = (keys: readonly string[]): string | undefined => {
  const found = keys
    .map(key => key.split('/'))
    .find(([kind, , id, ...more]) => kind === 'batch' && id && more.length === 0);
  return found?.[2] === undefined ? undefined : textOfPart(found[2]);
};

/** One batch by its id. Throws a Refusal `batch-gone` where there is none. */
export const batchOf = async (book: BatchBook, id: string): Promise<Batch> =>
  (await readBatch(book, id)) ?? refuse('batch-gone', {});

/**
 * The batch a member means: by its id or its name, the newest where several are called alike; without a name the newest
 * of all. Throws a Refusal `batch-unknown`.
 */
export async function findBatch(book: BatchBook, asked: string | undefined): Promise<Batch> {
  const all = await listBatches(book);
  const folded = asked === undefined ? '' : foldName(asked);
  const found =
    asked === undefined
      ? all[0]
      : (all.find(({ id }) => id === asked) ??
        all.find(({ name }) => foldName(name) === folded) ??
        (folded === '' ? undefined : all.find(({ name }) => foldName(name).startsWith(folded))));
  if (found) return found;
  const names = asked === undefined ? [] : nearestNamed(all, asked).map(({ name }) => name);
  return refuse('batch-unknown', {
    asked: cut(asked ?? '', 60),
    nearest: [...new Set(names)].slice(0, 3),
  });
}

/** Batches nearest to what was typed, the newest first for ''. */
export async function nearestBatches(
  book: BatchBook,
  typed: string,
  most: number,
): Promise<readonly Batch[]> {
  const all = await listBatches(book);
  return (typed === '' ? all : nearestNamed(all, typed)).slice(0, most);
}

/** The newest photo of a batch; undefined where there is none. */
export async function photoOf({ store, member }: BatchBook, id: string): Promise<Uint8Array | undefined> {
  const found = readable(photoKind, await everything(store, under(batchPhotos(member, id)), 20));
  const last = found.at(-1);
  return last && Buffer.from(last.fields.base64, 'base64');
}

/** A batch that somebody shows to a group. */
export type SharedBatch = Batch & { readonly by: string; readonly byName: string };

/** The batches shown to a group, the newest first; one that is gone is left out. */
export async function listShared(store: Store, group: string): Promise<readonly SharedBatch[]> {
  const shown = readable(sharedKind, await everything(store, under(sharedBatches(group))));
  const found = await Promise.all(
    shown.map(async ({ fields: { member, byName, batch: id } }) => {
      const made = await readBatch({ store, member }, id);
      return made && { ...made, by: member, byName };
    }),
  );
  return found.filter(one => one !== undefined).sort((a, b) => b.at.getTime() - a.at.getTime());
}

/** Whether a batch is shown to a group. */
export async function isShared({ store, member }: BatchBook, group: string, id: string): Promise<boolean> {
  const [value] = await store.get([sharedBatch(group, member, id)]);
  return value !== undefined;
}

/** Whose batch a reminder in a group is about; undefined where it is gone. */
export async function reminderOf(store: Store, group: string, id: string): Promise<string | undefined> {
  const key = batchReminder(group, id);
  const [value] = await store.get([key]);
  return value === undefined ? undefined : read(reminderKind, key, value).member;
}
