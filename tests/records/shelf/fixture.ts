import { Refusal } from '../../../src/engine/refusal.ts';
import { openStore } from '../../../src/records/open.ts';
import type { Change, Shelf } from '../../../src/records/shelf/index.ts';
import type { Entry, Store } from '../../../src/records/store.ts';
import { PATIENT } from '../patience.ts';

let opened: Promise<Store> | undefined;
let members = 0;

/** A shelf that no other test has touched. Its store ends with the process. */
export async function emptyShelf(): Promise<Shelf> {
  opened ??= openStore('sqlite::memory:', PATIENT);
  members += 1;
  return { store: await opened, member: `18400000000${members}-` };
}

let count = 0;
/** A change brought about by an interaction of its own. */
export function by(cause?: string, at = '2026-03-01T10:00:00Z'): Change {
  count += 1;
  return { cause: cause ?? `90000000000000${count}`, at: new Date(at) };
}

/** What was refused, as id and values; throws what is no refusal. */
export async function refusalOf(work: Promise<unknown>): Promise<{ id: string; values: unknown }> {
  try {
    await work;
  } catch (error) {
    if (error instanceof Refusal) return { id: error.id, values: error.values };
    throw error;
  }
  throw new Error('nothing was refused');
}

/** Everything in the store about a shelf, to show that nothing of it changed. */
export async function snapshot({ store, member }: Shelf): Promise<readonly Entry[]> {
  const all = await store.range('-', 'zzzz', 100_000);
  return all.filter(({ key }) => key.split('/')[1] === member);
}
