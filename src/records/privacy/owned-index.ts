/*
 * Whose every record is that lies under a group: `owned/<member>/<the record's key>`, in the commit that writes or drops
 * the record. What lies under the member's own key needs no such note. So all of one member's is read without looking
 * through what their groups keep.
 */
import { ownedMarker, ownedRecord, ownedRecords, part, textOfPart, under } from '../keys.ts';
import { absent, drop, type Entry, instead, pages, put, type Store, type Write } from '../store.ts';
import { groupPartOf, isOwned, kinds, type OwnedKind, PICTURES } from './kinds.ts';
import { DIRECT, ERASED } from './members-named.ts';

/** The key of the record that a note tells of. */
const recordOwned = (note: string): string => note.split('/').slice(2).join('/');

const PAGE = 200;
const PAGE_OF_PICTURES = 4;
const sizeFor = (kind: string): number => (PICTURES.has(kind) ? PAGE_OF_PICTURES : PAGE);

/** True for kinds whose records are noted here: not what lies under its owner's key, nor what an event tells the owner of. */
export const isNoted = ({ owner }: OwnedKind): boolean =>
  'part' in owner ? owner.part !== 1 : !('event' in owner);

/** Whose a record is, where that is to be noted. A value is asked for only where its key does not tell. */
function ownerOf(key: string, value: unknown): string | undefined {
  const parts = key.split('/');
  const held = kinds.get(parts[0] ?? '');
  if (!isOwned(held) || !isNoted(held)) return undefined;
  const owner = namedBy(held, parts, value);
  return owner === undefined || owner === '' || owner.startsWith(ERASED) ? undefined : owner;
}

function namedBy({ owner }: OwnedKind, parts: readonly string[], value: unknown): string | undefined {
  if ('part' in owner) return textOf(parts[owner.part]);
  if ('direct' in owner) {
    const group = textOf(parts[owner.direct]);
    return group?.startsWith(DIRECT) ? group.slice(DIRECT.length) : undefined;
  }
  if ('event' in owner || ('head' in owner && parts.length !== 3)) return undefined;
  const named = (value as Record<string, unknown> | undefined)?.['field' in owner ? owner.field : owner.head];
  return typeof named === 'string' ? named : undefined;
}

const textOf = (encoded: string | undefined): string | undefined =>
  encoded === undefined ? undefined : textOfPart(encoded);

/** True where only the value of a record tells whose it is. */
function isToldByValue(key: string): boolean {
  const held = kinds.get(key.split('/')[0] ?? '');
  return isOwned(held) && ('field' in held.owner || 'head' in held.owner);
}

/** The store, which notes with everything it writes whose that is, and strikes the note off with the record. */
export function noting(store: Store): Store {
  return instead(store, {
    async commit(writes) {
      const notes = await notesOf(store, writes);
      if (notes.length === 0) return await store.commit(writes);
      const given = new Set(writes.map(({ key }) => key));
      return await store.commit([...writes, ...notes.filter(({ key }) => !given.has(key))]);
    },
  });
}

async function notesOf(store: Store, writes: readonly Write[]): Promise<readonly Write[]> {
  const dropped = writes.filter(({ kind, key }) => kind === 'drop' && isToldByValue(key));
  const before = await (dropped.length > 0 ? store.get(dropped.map(({ key }) => key)) : []);
  const was = new Map(dropped.map(({ key }, at) => [key, before[at]]));
  return writes.flatMap((write): Write[] => {
    if (write.kind === 'absent') return [];
    const owner = ownerOf(write.key, write.kind === 'drop' ? was.get(write.key) : write.value);
    if (owner === undefined) return [];
    const note = ownedRecord(owner, write.key);
    return [write.kind === 'drop' ? drop(note) : put(note, NOTE)];
  });
}

const NOTE = { v: 1 };

/** What is noted, so that a table of kinds that says otherwise is noticed. */
const WHAT = [...kinds]
  .flatMap(([kind, held]) =>
    isOwned(held) && isNoted(held) ? [`${kind} ${JSON.stringify(held.owner)}`] : [],
  )
  .join(', ');

/** True where it is noted whose every record is. */
export async function isAllNoted(store: Store): Promise<boolean> {
  const [marker] = await store.get([ownedMarker()]);
  return (marker as { what?: unknown } | undefined)?.what === WHAT;
}

/** Notes whose every record is, where that has not been done. Safe to be stopped halfway, and to be done by two at once. */
export async function noteAll(store: Store): Promise<void> {
  if (await isAllNoted(store)) return;
  for (const [kind, held] of kinds)
    if (isOwned(held) && isNoted(held)) await noteMissing(store, kind, sizeFor(kind));
  await store.commit([put(ownedMarker(), { v: 1, what: WHAT })]);
}

/** Notes what is missing of one group: a program before format 2 that still ran may have written beside us. */
export async function noteGroup(store: Store, group: string): Promise<void> {
  for (const [kind, held] of kinds)
    if (isOwned(held) && isNoted(held) && groupPartOf(held) === 1)
      await noteMissing(store, `${kind}/${part(group)}`, sizeFor(kind));
}

async function noteMissing(store: Store, beginning: string, size: number): Promise<void> {
  for await (const page of pages(store, under(beginning), size)) {
    const notes = page.flatMap(({ key, value }) => {
      const owner = ownerOf(key, value);
      return owner === undefined ? [] : [ownedRecord(owner, key)];
    });
    const there = await store.get(notes);
    await store.commit(notes.filter((_, at) => there[at] === undefined).map(note => put(note, NOTE)));
    await new Promise<void>(resolve => setImmediate(resolve));
  }
}

/** The records of a kind that are noted as a member's, a page in each turn of the event loop. */
export async function* notedOf(store: Store, member: string, kind: string): AsyncGenerator<Entry> {
  for await (const page of pages(store, under(`${ownedRecords(member)}/${kind}`), sizeFor(kind))) {
    const keys = page.map(({ key }) => recordOwned(key));
    const values = await store.get(keys);
    for (const [at, key] of keys.entries()) if (values[at] !== undefined) yield { key, value: values[at] };
    await new Promise<void>(resolve => setImmediate(resolve));
  }
}

/** Strikes off what is noted of a member whose every record has been erased, but of records that came meanwhile. */
export async function forgetNotes(store: Store, member: string): Promise<void> {
  for await (const page of pages(store, under(ownedRecords(member)), PAGE))
    for (const { key } of page) {
      const record = recordOwned(key);
      const [value] = await store.get([record]);
      if (value === undefined) await store.commit([absent(record), drop(key)]);
      else if (ownerOf(record, value) !== member) await store.commit([drop(key)]);
    }
}
