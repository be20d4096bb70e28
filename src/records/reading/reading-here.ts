import { statSync } from 'node:fs';
import { DatabaseSync, type StatementSync } from 'node:sqlite';
import type { CommitResult, Entry, Span, Store, Write } from '../store.ts';
import { MOST_KEYS, Searches } from './searches.ts';

/** How often is looked whether the file is still the one that was opened, ms. */
const LOOK_EVERY_MS = 1_000;
/** More than this is left to the store's own thread: reading it would hold up everybody's answers. */
const MOST_HERE = 5_000;
/** So many answers of an unchanged file are kept, each of so many entries at most. */
const MOST_KEPT = 1_000;
const MOST_ENTRIES_KEPT = 50;

/** Of several spans asked for at once, as many entries at most. */
const MOST_AT_ONCE = 20_000;

/** What was read of a span, at most so many. */
type Kept = { readonly to: string; readonly limit: number; readonly entries: readonly Entry[] };

/**
 * A store in an SQLite file whose reads are made on this thread, beside the thread that writes: a read takes some
 * microseconds, a message to another thread and back ten times that. A reader of a write-ahead log waits for no
 * writer and sees every commit that has been acknowledged (sqlite.org/wal.html). Whatever does not go smoothly here
 * is asked again of the store itself, which knows how to say what is wrong.
 */
export class ReadingHere implements Store {
  readonly #inner: Store;
  readonly #path: string;
  readonly #db: DatabaseSync;
  readonly #searches: Searches;
  /** What was read since the file last changed, by key and by span: a busy group asks for the same again and again. */
  readonly #values = new Map<string, unknown>();
  /** By where a span begins. */
  readonly #entries = new Map<string, Kept>();
  #version: unknown;
  /** Whether it was looked in this turn of the event loop that what is kept is what the file holds. */
  #isFresh = false;
  readonly #versionNow: StatementSync;
  readonly #begin: StatementSync;
  readonly #end: StatementSync;
  readonly #file: string;
  #lookedAt = Number.NEGATIVE_INFINITY;
  #sound = true;

  readonly patience?: number;

  private constructor(inner: Store, path: string, db: DatabaseSync) {
    this.#inner = inner;
    if (inner.patience !== undefined) this.patience = inner.patience;
    this.#path = path;
    this.#db = db;
    this.#file = identityOf(path);
    this.#searches = new Searches(db);
    // Changes with every commit of another connection, that of our own writer included (sqlite.org/pragma.html#pragma_data_version).
    this.#versionNow = db.prepare('PRAGMA data_version');
    this.#versionNow.setReturnArrays(true);
    this.#begin = db.prepare('BEGIN');
    this.#end = db.prepare('COMMIT');
  }

  /** The store with its reads made here; the store as it is where the file cannot be read from here. */
  static of(inner: Store, path: string): Store {
    if (path === ':memory:') return inner;
    let db: DatabaseSync | undefined;
    try {
      // No patience: whoever waits for a lock waits in the other thread.
      db = new DatabaseSync(path, { readOnly: true, timeout: 0 });
      return new ReadingHere(inner, path, db);
    } catch {
      db?.close();
      return inner;
    }
  }

  async get(keys: readonly string[]): Promise<readonly unknown[]> {
    if (!this.#ready() || keys.length > MOST_KEYS) return await this.#inner.get(keys);
    try {
      this.#look();
      if (!keys.every(key => this.#values.has(key))) this.#readValues(keys);
      return keys.map(key => this.#values.get(key));
    } catch {
      return await this.#inner.get(keys);
    }
  }

  async range(from: string, to: string, limit: number): Promise<readonly Entry[]> {
    if (!this.#ready() || !Number.isInteger(limit) || limit < 1 || limit > MOST_HERE)
      return await this.#inner.range(from, to, limit);
    try {
      this.#look();
      return this.#entriesOf([{ from, to }], limit)[0] ?? [];
    } catch {
      return await this.#inner.range(from, to, limit);
    }
  }

  async ranges(spans: readonly Span[], limit: number): Promise<readonly (readonly Entry[])[]> {
    if (spans.length === 0) return [];
    const isBounded = Number.isInteger(limit) && limit >= 1 && limit * spans.length <= MOST_AT_ONCE;
    if (!isBounded || spans.length > MOST_KEYS || !this.#ready())
      return await Promise.all(spans.map(({ from, to }) => this.range(from, to, limit)));
    try {
      this.#look();
      return this.#entriesOf(spans, limit);
    } catch {
      return await Promise.all(spans.map(({ from, to }) => this.range(from, to, limit)));
    }
  }

  atHand(spans: readonly Span[], limit: number): readonly (readonly Entry[])[] | undefined {
    const isBounded = Number.isInteger(limit) && limit >= 1 && limit * spans.length <= MOST_AT_ONCE;
    if (!isBounded || limit > MOST_HERE || spans.length === 0 || !this.#ready()) return undefined;
    try {
      this.#look();
      return this.#entriesOf(spans, limit);
    } catch {
      return undefined;
    }
  }

  async commit(writes: readonly Write[]): Promise<CommitResult> {
    try {
      return await this.#inner.commit(writes);
    } finally {
      // The acknowledgement may arrive in the very turn of a look that was taken before the commit.
      this.#endLook();
    }
  }

  async close(): Promise<void> {
    this.#sound = false;
    if (this.#db.isOpen) this.#db.close();
    await this.#inner.close();
  }

  #readValues(keys: readonly string[]): void {
    this.#enter();
    const found = new Map(this.#searches.keys(keys).map(([key, text]) => [key, valueIn(text)]));
    if (this.#values.size >= MOST_KEPT) this.#values.clear();
    for (const key of keys) this.#values.set(key, found.get(key));
  }

  #entriesOf(spans: readonly Span[], limit: number): readonly (readonly Entry[])[] {
    const known = this.#knownOf(spans, limit);
    if (isWhole(known)) return known;
    this.#enter();
    // What was known may have changed since it was looked, a moment ago: all of an answer is of one moment.
    const before = this.#knownOf(spans, limit);
    const missing = spans.filter((_, at) => before[at] === undefined);
    if (missing.length === 0) return before as readonly (readonly Entry[])[];
    const read: Entry[][] = missing.map(() => []);
    for (const [key, text, at] of this.#searches.spans(missing, limit))
      read[at]?.push({ key, value: valueIn(text) });
    let next = 0;
    return spans.map((span, at) => before[at] ?? this.#keep(span, limit, read[next++] ?? []));
  }

  /** What is kept of each span. */
  #knownOf(spans: readonly Span[], limit: number): readonly (readonly Entry[] | undefined)[] {
    return spans.map(({ from, to }) => {
      const kept = this.#entries.get(from);
      return kept?.to === to && kept.limit === limit ? kept.entries : undefined;
    });
  }

  #keep({ from, to }: Span, limit: number, entries: readonly Entry[]): readonly Entry[] {
    if (entries.length > MOST_ENTRIES_KEPT) return entries;
    if (this.#entries.size >= MOST_KEPT) this.#entries.clear();
    this.#entries.set(from, { to, limit, entries });
    return entries;
  }

  /**
   * Makes sure, once in each turn of the event loop, that what is kept is what the file holds now. No transaction for that: its
   * locks cost more than the question, and most of what is asked is kept.
   */
  #look(): void {
    if (this.#isFresh) return;
    this.#forgetStale();
    this.#isFresh = true;
    setImmediate(this.#endLook);
  }

  /**
   * What is searched for in one turn is read from one moment of the records: the locks of a transaction cost more than its
   * reads. A commit of this process ends that moment, so that whoever wrote reads what they wrote.
   */
  #enter(): void {
    if (this.#db.isTransaction) return;
    this.#begin.run();
    this.#forgetStale();
  }

  #forgetStale(): void {
    const [version] = this.#versionNow.get() as unknown as readonly [number];
    if (version === this.#version) return;
    this.#values.clear();
    this.#entries.clear();
    this.#version = version;
  }

  readonly #endLook = (): void => {
    this.#isFresh = false;
    if (this.#db.isOpen && this.#db.isTransaction) this.#end.run();
  };

  /** False once the file under the path is another one, or none: what is still open is then nobody's records. */
  #ready(): boolean {
    if (!this.#sound || this.#isFresh) return this.#sound;
    const now = performance.now();
    if (now - this.#lookedAt < LOOK_EVERY_MS) return this.#sound;
    this.#lookedAt = now;
    this.#sound = identityOf(this.#path) === this.#file;
    if (!this.#sound) this.#db.close();
    return this.#sound;
  }
}

const isWhole = (known: readonly (readonly Entry[] | undefined)[]): known is readonly (readonly Entry[])[] =>
  !known.includes(undefined);

function identityOf(path: string): string {
  const found = statSync(path, { throwIfNoEntry: false });
  return found ? `${found.dev}/${found.ino}` : '';
}

/** What the store's envelope holds; throws on anything that is no envelope. */
function valueIn(text: string): unknown {
  const data: unknown = JSON.parse(text);
  if (typeof data !== 'object' || data === null || !('value' in data)) throw new SyntaxError('no record');
  return data.value;
}
