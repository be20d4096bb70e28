import { closeSync, existsSync, openSync, readSync } from 'node:fs';
import { chmod } from 'node:fs/promises';
import { backup as copyDatabase, DatabaseSync } from 'node:sqlite';
import { refuse } from '../../engine/refusal.ts';
import { openStore } from '../open.ts';
import { fill, holdsLines, openLines, openStored, type Tally, tallyOf, writeLines } from './lines.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'backup-exists': { readonly file: string };
    'backup-missing': { readonly file: string };
    'backup-of-memory': Record<never, never>;
    'move-onto-itself': Record<never, never>;
  }
}

/** Nobody waits at the other end: many records at once may take their time, ms. */
const PATIENCE = 120_000;

const sqliteFile = (address: string): string | undefined => /^sqlite:(.+)$/.exec(address)?.[1];

/**
 * Backs a store up to a new file while it is used: an SQLite file by SQLite's own backup, at one moment; any other
 * store record by record, as lines of JSON. Gives what the file holds, read back from it. Throws a Refusal where the
 * file is there already.
 */
export async function backUp(address: string, file: string): Promise<Tally> {
  if (existsSync(file)) refuse('backup-exists', { file });
  const database = sqliteFile(address);
  if (database === ':memory:') refuse('backup-of-memory', {});
  if (database === undefined) return await backUpLines(address, file);
  if (!existsSync(database)) refuse('backup-missing', { file: database });
  // A store that was filled only in part is refused before anything is made of it.
  await within(address, async () => undefined);
  // Made before it is filled, so that no moment has it open to others.
  closeSync(openSync(file, 'wx', 0o600));
  const source = new DatabaseSync(database, { readOnly: true, timeout: 5000 });
  try {
    await copyDatabase(source, file);
  } finally {
    source.close();
  }
  await chmod(file, 0o600);
  return await within(`sqlite:${file}`, tallyOf);
}

async function backUpLines(address: string, file: string): Promise<Tally> {
  const written = await within(address, store => writeLines(store, file));
  const { tally } = await openLines(file);
  if (tally.sha256 !== written.sha256) refuse('backup-changed', { file });
  return tally;
}

/** Fills an empty store from a backup of any kind. Throws a Refusal where the file is broken, before anything is written. */
export async function restore(file: string, address: string): Promise<Tally> {
  if (!existsSync(file)) refuse('backup-missing', { file });
  if (await holdsLines(file)) {
    const lines = await openLines(file);
    return await within(address, store => fill(store, lines), { filling: true });
  }
  if (!isDatabase(file)) refuse('backup-unreadable', { file, line: 1 });
  checkWhole(file);
  return await move(`sqlite:${file}`, address);
}

/** Copies a store that nobody writes to into an empty one of any kind; goes on where it was stopped. */
export async function move(from: string, to: string): Promise<Tally> {
  if (from === to) refuse('move-onto-itself', {});
  return await within(from, async source => {
    const stored = await openStored(source);
    return await within(to, store => fill(store, stored), { filling: true });
  });
}

async function within<Result>(
  address: string,
  work: (store: Awaited<ReturnType<typeof openStore>>) => Promise<Result>,
  how: { readonly filling?: boolean } = {},
): Promise<Result> {
  // What is copied is copied as it is, and brought up to date by whoever uses it next.
  const store = await openStore(address, PATIENCE, { ...how, asItIs: true });
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

/** The first bytes of every database file (sqlite.org/fileformat.html, section 1.3). */
const MAGIC = 'SQLite format 3\0';

function isDatabase(file: string): boolean {
  const bytes = Buffer.alloc(MAGIC.length);
  const descriptor = openSync(file, 'r');
  try {
    readSync(descriptor, bytes, 0, bytes.length, 0);
  } finally {
    closeSync(descriptor);
  }
  return bytes.toString('latin1') === MAGIC;
}

/** Throws a Refusal for a database that SQLite itself finds something wrong with. */
function checkWhole(file: string): void {
  const database = new DatabaseSync(file, { readOnly: true });
  try {
    const [row] = database.prepare('PRAGMA integrity_check(1)').all();
    if (row?.integrity_check !== 'ok') refuse('backup-changed', { file });
  } catch (error) {
    if ((error as { errcode?: number }).errcode === undefined) throw error;
    refuse('backup-changed', { file });
  } finally {
    database.close();
  }
}
