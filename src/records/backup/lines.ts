import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { open } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import { setTimeout as pause } from 'node:timers/promises';
import { refuse } from '../../engine/refusal.ts';
import { StoreFailure } from '../failure.ts';
import { fillingKey, formatKey, ownedMarker } from '../keys.ts';
import { drop, type Entry, pages, put, type Store, type Write } from '../store.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'backup-unreadable': { readonly file: string; readonly line: number };
    'backup-cut-short': { readonly file: string };
    'backup-changed': { readonly file: string };
    'restore-not-empty': Record<never, never>;
    'backup-unlike': { readonly records: number; readonly expected: number };
  }
}

/** How many records there are, and a checksum over all of them in the order of their keys. */
export type Tally = { readonly records: number; readonly sha256: string };

const FORMAT = 'tintmoot-records';
/** Of the file of lines. */
const VERSION = 1;
/** Every key there can be: they begin with a letter, a digit, `-` or `_`. */
const EVERYTHING = { from: '-', to: '{' };
const PAGE = 500;

/** One record as a line: keys and values in their own order, so that the same record is the same line in every store. */
const lineOf = ({ key, value }: Entry): string => JSON.stringify([key, sorted(value)]);

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const fields = Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(fields.map(([name, one]) => [name, sorted(one)]));
}

/**
 * Every record, page by page, but that it is noted whose each of them is: of what changes meanwhile a record may be in a
 * backup and its note not, so whoever opens the copy notes all anew.
 */
async function* recordsOf(store: Pick<Store, 'range'>): AsyncGenerator<readonly Entry[]> {
  for await (const page of pages(store, EVERYTHING, PAGE))
    yield page.filter(({ key }) => key !== ownedMarker());
}

/** Counts a store and sums it up: equal stores have equal tallies, whatever they are made of. */
export async function tallyOf(store: Pick<Store, 'range'>): Promise<Tally> {
  const hash = createHash('sha256');
  let records = 0;
  for await (const page of recordsOf(store))
    for (const entry of page) {
      hash.update(`${lineOf(entry)}\n`);
      records += 1;
    }
  return { records, sha256: hash.digest('hex') };
}

/**
 * Writes every record to a new file, one a line, its tally last; the store goes on being used. What is written while
 * it runs may be in or not, record by record. Rejects where the file is there already.
 */
export async function writeLines(store: Pick<Store, 'range'>, path: string): Promise<Tally> {
  const file = await open(path, 'wx', 0o600);
  try {
    const hash = createHash('sha256');
    let records = 0;
    await file.write(`${JSON.stringify({ format: FORMAT, version: VERSION })}\n`);
    for await (const page of recordsOf(store)) {
      const text = page.map(entry => `${lineOf(entry)}\n`).join('');
      hash.update(text);
      records += page.length;
      await file.write(text);
    }
    const tally = { records, sha256: hash.digest('hex') };
    await file.write(`${JSON.stringify(tally)}\n`);
    await file.sync();
    return tally;
  } finally {
    await file.close();
  }
}

/** True for a file that {@link writeLines} began. */
export async function holdsLines(path: string): Promise<boolean> {
  const file = await open(path, 'r');
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(64), 0, 64, 0);
    return buffer.subarray(0, bytesRead).toString('utf8').startsWith(`{"format":"${FORMAT}"`);
  } finally {
    await file.close();
  }
}

/**
 * The records of a file of lines. Throws a Refusal `backup-unreadable`, `backup-cut-short` or, once all are read,
 * `backup-changed` where they are not those that were written.
 */
async function* readLines(path: string, tell?: (tally: Tally) => void): AsyncGenerator<Entry> {
  const hash = createHash('sha256');
  let records = 0;
  let number = 0;
  let tally: Tally | undefined;
  for await (const line of createInterface({
    input: createReadStream(path),
    crlfDelay: Number.POSITIVE_INFINITY,
  })) {
    number += 1;
    if (tally) refuse('backup-unreadable', { file: path, line: number });
    const read = parsed(line) ?? refuse('backup-unreadable', { file: path, line: number });
    if (number === 1) {
      if ((read as { version?: unknown }).version !== VERSION)
        refuse('backup-unreadable', { file: path, line: 1 });
      continue;
    }
    if (!Array.isArray(read)) {
      tally = read as Tally;
      continue;
    }
    hash.update(`${line}\n`);
    records += 1;
    yield { key: String(read[0]), value: read[1] };
  }
  if (!tally) return refuse('backup-cut-short', { file: path });
  if (tally.records !== records || tally.sha256 !== hash.digest('hex'))
    refuse('backup-changed', { file: path });
  tell?.(tally);
}

function parsed(line: string): object | undefined {
  try {
    const read: unknown = JSON.parse(line);
    return typeof read === 'object' && read !== null ? read : undefined;
  } catch {
    return undefined;
  }
}

/** The records of a file of lines, read through once before the first is given. */
export async function openLines(path: string): Promise<{ tally: Tally; records: AsyncIterable<Entry> }> {
  let tally: Tally = { records: 0, sha256: '' };
  for await (const _ of readLines(path, told => {
    tally = told;
  }));
  return { tally, records: readLines(path) };
}

/** Every record of a store, and its tally. */
export async function openStored(
  store: Pick<Store, 'range'>,
): Promise<{ tally: Tally; records: AsyncIterable<Entry> }> {
  const records = async function* () {
    for await (const page of recordsOf(store)) yield* page;
  };
  return { tally: await tallyOf(store), records: records() };
}

/** Holds what a store is being filled from, until it is. */
const FILLING = fillingKey();
/** What a store that nobody has used holds. */
const UNUSED: ReadonlySet<string> = new Set([FILLING, formatKey(), ownedMarker()]);

/** So often is a page written again, each time after a longer wait, ms: a server that rewrites its log can hold up a write for many seconds. */
const WAITS_MS = [500, 2_000, 8_000, 20_000];

/**
 * Fills a store that holds nothing yet, verified by count and checksum; goes on where the same source was
 * stopped
 * halfway. A page that a store did not take in time is written again after each of `waits`, ms. Throws a
 * Refusal `restore-not-empty` where it holds something of another source, and `backup-unlike` where
 * it does not hold in the end what the source did.
 */
export async function fill(
  store: Store,
  { tally, records }: { readonly tally: Tally; readonly records: AsyncIterable<Entry> },
  waits: readonly number[] = WAITS_MS,
): Promise<Tally> {
  await begin(store, tally);
  let writes: Write[] = [];
  for await (const { key, value } of records) {
    if (key === FILLING) continue;
    writes.push(put(key, value));
    if (writes.length < PAGE) continue;
    await surely(store, writes, waits);
    writes = [];
  }
  await surely(store, [...writes, drop(FILLING)], waits);
  const found = await tallyOf(store);
  if (found.records !== tally.records || found.sha256 !== tally.sha256)
    refuse('backup-unlike', { records: found.records, expected: tally.records });
  return found;
}

/** Writes a page, and writes it again where nobody knows whether it is there: to put a record twice is to put it once. */
async function surely(store: Store, writes: readonly Write[], waits: readonly number[]): Promise<void> {
  for (const wait of waits) {
    try {
      await store.commit(writes);
      return;
    } catch (failure) {
      if (!(failure instanceof StoreFailure) || failure.kind !== 'unreachable') throw failure;
      await pause(wait);
    }
  }
  await store.commit(writes);
}

async function begin(store: Store, { sha256 }: Tally): Promise<void> {
  const [before] = await store.get([FILLING]);
  if ((before as { source?: unknown } | undefined)?.source === sha256) return;
  const first = await store.range(EVERYTHING.from, EVERYTHING.to, UNUSED.size + 1);
  if (before !== undefined || first.some(({ key }) => !UNUSED.has(key))) refuse('restore-not-empty', {});
  await store.commit([put(FILLING, { v: 1, source: sha256 }), drop(ownedMarker())]);
}
