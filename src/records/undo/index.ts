/* What a change took away or wrote over, kept for some minutes so that the change can be taken back. */

import { isDeepStrictEqual } from 'node:util';
import { z } from 'zod';
import { refuse } from '../../engine/refusal.ts';
import {
  allUndoables,
  allUndone,
  textOfPart,
  under,
  undoable as undoableKey,
  undoables,
  undone,
} from '../keys.ts';
import { moment, type RecordOf, read, readable, recordKind, written } from '../record.ts';
import { absent, add, drop, type Entry, everything, pages, put, type Store, type Write } from '../store.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'undo-nothing': { readonly minutes: number };
    'undo-too-late': { readonly minutes: number };
    'undo-changed-since': { readonly name: string };
  }
}

/** As long as a change can be taken back, minutes. */
export const UNDO_MINUTES = 10;

const UNDOABLE = [
  'jar-removed',
  'recipe-removed',
  'recipe-unshared',
  'report',
  'report-gone',
  'ballot',
  'poured',
  'batch-removed',
  'batch-event',
] as const;
export type UndoableWhat = (typeof UNDOABLE)[number];

const entries = z.array(z.object({ key: z.string(), value: z.json() }));

const undoableKind = recordKind('change to take back', {
  at: moment,
  what: z.enum(UNDOABLE),
  name: z.string(),
  /** Put back only where nothing has come in its place. */
  back: entries,
  /** Put back over what stands there. */
  over: entries,
  /** What the change made: dropped, unless something else stands there by then. */
  made: entries,
  /** What must not have come meanwhile. */
  absent: z.array(z.string()),
});
const undoneKind = recordKind('change taken back', { at: moment, what: z.enum(UNDOABLE), name: z.string() });

type Member = { readonly store: Store; readonly member: string };

/** What a change is called, and what was there before it. */
export type Undoable = {
  readonly what: UndoableWhat;
  readonly name: string;
  readonly back?: readonly Entry[];
  readonly over?: readonly Entry[];
  readonly made?: readonly Entry[];
  readonly absent?: readonly string[];
};

/** Entries as the store gives them back: what is undefined is not there. */
const stored = (list: readonly Entry[]) => JSON.parse(JSON.stringify(list)) as z.output<typeof entries>;

/** Goes into the commit of the change itself: what it takes to take the change back. */
export const undoable = (
  member: string,
  { cause, at }: { readonly cause: string; readonly at: Date },
  { what, name, back = [], over = [], made = [], absent: without = [] }: Undoable,
): Write =>
  put(
    undoableKey(member, cause),
    written(undoableKind, {
      at,
      what,
      name,
      back: stored(back),
      over: stored(over),
      made: stored(made),
      absent: [...without],
    }),
  );

/** Fails the commit of a change that was taken back: its second delivery must not make it once more. */
export const notUndone = (member: string, { cause }: { readonly cause: string }): Write =>
  absent(undone(member, cause));

/** Whether a change made at `at` can still be taken back. */
export const canUndo = (at: Date, now: Date): boolean =>
  now.getTime() - at.getTime() <= UNDO_MINUTES * 60_000;

export type Undone = {
  readonly what: UndoableWhat;
  readonly name: string;
  /** True where it had been taken back before, and nothing was changed now. */
  readonly repeated: boolean;
  /** Keys of what stands again. */
  readonly back: readonly string[];
};

/**
 * Takes a change back: what it took away stands again, what it made is gone, all of it or nothing, and once. Undefined
 * where no such change was noted. Throws the Refusals `undo-too-late` and `undo-changed-since`.
 */
export async function takeBack(
  { store, member }: Member,
  cause: string,
  now: Date,
): Promise<Undone | undefined> {
  const [key, doneKey] = [undoableKey(member, cause), undone(member, cause)];
  const [kept, before] = await store.get([key, doneKey]);
  if (before !== undefined) {
    const { what, name } = read(undoneKind, doneKey, before);
    return { what, name, repeated: true, back: [] };
  }
  if (kept === undefined) return undefined;
  const change = read(undoableKind, key, kept);
  const { what, name } = change;
  if (!canUndo(change.at, now)) refuse('undo-too-late', { minutes: UNDO_MINUTES });
  await requireAsLeft(store, change);
  const stands = new Set(change.over.map(one => one.key));
  const result = await store.commit([
    add(doneKey, written(undoneKind, { at: now, what, name })),
    drop(key),
    ...change.absent.map(absent),
    ...change.back.map(one => add(one.key, one.value)),
    ...change.over.map(one => put(one.key, one.value)),
    ...change.made.filter(one => !stands.has(one.key)).map(one => drop(one.key)),
  ]);
  if (result.done) return { what, name, repeated: false, back: change.back.map(one => one.key) };
  return result.clash === doneKey
    ? { what, name, repeated: true, back: [] }
    : refuse('undo-changed-since', { name: change.name });
}

async function requireAsLeft(
  store: Store,
  { made, name }: Pick<RecordOf<typeof undoableKind>, 'made' | 'name'>,
): Promise<void> {
  const now = await store.get(made.map(({ key }) => key));
  const changed = made.some(({ value }, at) => !isDeepStrictEqual(now[at], value));
  if (changed) refuse('undo-changed-since', { name });
}

/** The newest of a member's changes of these kinds that can still be taken back. */
export async function lastUndoable(
  { store, member }: Member,
  kinds: readonly UndoableWhat[],
  now: Date,
): Promise<{ readonly cause: string; readonly at: Date } | undefined> {
  const { from, to } = under(undoables(member));
  return readable(undoableKind, await store.range(from, to, 500))
    .filter(({ fields }) => kinds.includes(fields.what) && canUndo(fields.at, now))
    .map(({ key, fields }) => ({ cause: textOfPart(key.split('/')[2] ?? ''), at: fields.at }))
    .sort(newestFirst)[0];
}

const byNumber = new Intl.Collator('en', { numeric: true });

/** Newest first; of changes at one moment, the one whose interaction came later, since their ids grow. */
export const newestFirst = (
  a: { readonly cause: string; readonly at: Date },
  b: { readonly cause: string; readonly at: Date },
): number => b.at.getTime() - a.at.getTime() || byNumber.compare(b.cause, a.cause);

/** Drops all that changes of a member could bring back, as when they want some of it gone for good. */
export async function forgetUndoables({ store, member }: Member): Promise<void> {
  const keys = (await everything(store, under(undoables(member)))).map(({ key }) => key);
  if (keys.length > 0) await store.commit(keys.map(drop));
}

/** What of a member's earlier changes can no longer be taken back: dropped with the next change that is noted. */
export async function dropOutlivedUndoables({ store, member }: Member, now: Date): Promise<void> {
  const { from, to } = under(undoables(member));
  const old = readable(undoableKind, await store.range(from, to, 50)).filter(
    ({ fields }) => !canUndo(fields.at, now),
  );
  if (old.length > 0) await store.commit(old.map(({ key }) => drop(key)));
}

/** The same for everybody; marks of what was taken back outlive the buttons that lead to them, by a day. */
export async function sweepUndoables(store: Store, now: Date): Promise<void> {
  for await (const page of pages(store, under(allUndoables()), 200)) {
    const old = readable(undoableKind, page).filter(({ fields }) => !canUndo(fields.at, now));
    await store.commit(old.map(({ key }) => drop(key)));
  }
  for await (const page of pages(store, under(allUndone()), 200)) {
    const old = readable(undoneKind, page).filter(
      ({ fields }) => now.getTime() - fields.at.getTime() > 86_400_000,
    );
    await store.commit(old.map(({ key }) => drop(key)));
  }
}
