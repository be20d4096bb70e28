import { chmodSync, closeSync, mkdirSync, openSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { DatabaseSync, type StatementSync } from 'node:sqlite';
import type { CommitResult } from '../store.ts';
import type { TextEntry, TextWrite } from './adapter.ts';

export type Call = { readonly id: number; readonly namespace: string } & Task;
export type Task =
  | { readonly task: 'texts'; readonly keys: readonly string[] }
  | { readonly task: 'range'; readonly from: string; readonly to: string; readonly limit: number }
  | { readonly task: 'commit'; readonly writes: readonly TextWrite[] };
/** `sqlite` is its primary result code, 0 where the fault is not SQLite's. */
type Fault = { readonly message: string; readonly sqlite: number };
export type Done = { readonly id: number } & (
  | { readonly answer: readonly (string | undefined)[] | readonly TextEntry[] | CommitResult }
  | { readonly fault: Fault }
);
type CommitCall = Extract<Call, { task: 'commit' }>;

/**
 * The file, or `:memory:`; how long one statement waits for another process's lock, ms; and the most pages that the file
 * may have, where it is to be full before the disk is.
 */
export type Opening = { readonly path: string; readonly patience: number; readonly mostPages?: number };

/** SQLite's own name of a database that lives as long as its connection. */
export const IN_MEMORY = ':memory:';

/** SQLITE_BUSY (sqlite.org/rescode.html). */
const BUSY = 5;

/** The file, and its folder, where they are new, for this user alone. What is there already may be anybody's, and stays as it is. */
function makeMissing(path: string): void {
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  closeSync(openSync(path, 'a', 0o600));
}

/** Throws what SQLite throws where the file is no database, and an Error where it is another program's. */
function checkOurs(opened: DatabaseSync): void {
  const tables = opened.prepare("SELECT name FROM sqlite_schema WHERE type = 'table'").all();
  if (tables.length > 0 && !tables.some(({ name }) => name === 'records'))
    throw new Error('it is a database of another program');
}

/** Our file for this user alone, and what SQLite keeps beside it. */
function makePrivate(path: string): void {
  for (const file of [path, `${path}-wal`, `${path}-shm`]) {
    if (statSync(file, { throwIfNoEntry: false })?.isFile()) chmodSync(file, 0o600);
  }
}

function open({ path, patience, mostPages }: Opening): DatabaseSync {
  if (path !== IN_MEMORY) makeMissing(path);
  const opened = new DatabaseSync(path, { timeout: patience });
  if (path !== IN_MEMORY) {
    // Nothing of a file is changed before it is known to be ours: a slip in a setting may name any file of the machine.
    try {
      checkOurs(opened);
    } catch (error) {
      opened.close();
      throw error;
    }
    makePrivate(path);
  }
  opened.exec('PRAGMA journal_mode = WAL');
  // NORMAL may lose the last commits when the power goes; an acknowledged write has to outlive that.
  opened.exec('PRAGMA synchronous = FULL');
  opened.exec(
    'CREATE TABLE IF NOT EXISTS records (ns TEXT, key TEXT, text TEXT NOT NULL, PRIMARY KEY (ns, key)) STRICT, WITHOUT ROWID',
  );
  if (mostPages !== undefined) opened.exec(`PRAGMA max_page_count = ${Math.floor(mostPages)}`);
  return opened;
}

/** The database and its statements. node:sqlite is synchronous: whoever owns it waits for each call. */
export class SqliteDatabase {
  readonly #db: DatabaseSync;
  readonly #path: string;
  /** Of the file as it was opened; undefined in memory. */
  readonly #inode: number | undefined;
  readonly #select: StatementSync;
  readonly #selectRange: StatementSync;
  readonly #upsert: StatementSync;
  readonly #insert: StatementSync;
  readonly #remove: StatementSync;
  readonly #begin: StatementSync;
  readonly #end: StatementSync;
  readonly #undo: StatementSync;
  readonly #mark: StatementSync;
  readonly #undoToMark: StatementSync;
  readonly #unmark: StatementSync;

  /** Throws what SQLite throws where the file is none of its own or cannot be opened. */
  constructor(opening: Opening) {
    this.#path = opening.path;
    this.#db = open(opening);
    this.#inode = opening.path === IN_MEMORY ? undefined : statSync(opening.path).ino;
    this.#select = this.#db.prepare('SELECT text FROM records WHERE ns = ? AND key = ?');
    this.#selectRange = this.#db.prepare(
      'SELECT key, text FROM records WHERE ns = ? AND key >= ? AND key < ? ORDER BY key LIMIT ?',
    );
    this.#upsert = this.#db.prepare(
      'INSERT INTO records (ns, key, text) VALUES (?, ?, ?) ON CONFLICT DO UPDATE SET text = excluded.text',
    );
    this.#insert = this.#db.prepare(
      'INSERT INTO records (ns, key, text) VALUES (?, ?, ?) ON CONFLICT DO NOTHING',
    );
    this.#remove = this.#db.prepare('DELETE FROM records WHERE ns = ? AND key = ?');
    // Prepared, too: reading their text each time cost as much as a row.
    this.#begin = this.#db.prepare('BEGIN IMMEDIATE');
    this.#end = this.#db.prepare('COMMIT');
    this.#undo = this.#db.prepare('ROLLBACK');
    this.#mark = this.#db.prepare('SAVEPOINT one');
    this.#undoToMark = this.#db.prepare('ROLLBACK TO one');
    this.#unmark = this.#db.prepare('RELEASE one');
  }

  /** What was waiting, answered: reads first, since they never wait for a lock, then every commit in one transaction. */
  *answers(calls: readonly Call[]): Generator<Done, void, undefined> {
    for (const call of calls) if (call.task !== 'commit') yield this.#readOne(call);
    const commits = calls.filter(call => call.task === 'commit');
    if (commits.length > 0) yield* this.#commitTogether(commits);
  }

  close(): void {
    this.#db.close();
  }

  /** Throws unless the file that is open is still the one at its path: what is written to a deleted one is lost. */
  #checkThere(): void {
    if (this.#inode === undefined) return;
    const there = statSync(this.#path, { throwIfNoEntry: false });
    if (there?.ino !== this.#inode)
      throw new Error('the database file was moved or deleted while it was open');
  }

  #read(call: Exclude<Call, CommitCall>): readonly (string | undefined)[] | readonly TextEntry[] {
    if (call.task === 'texts') {
      return call.keys.map(key => this.#select.get(call.namespace, key)?.text as string | undefined);
    }
    return this.#selectRange
      .all(call.namespace, call.from, call.to, call.limit)
      .map(row => [row.key as string, row.text as string] as const);
  }

  /** Applies one write; false when the key is in its way. */
  #apply(ns: string, write: TextWrite): boolean {
    switch (write.kind) {
      case 'put':
        this.#upsert.run(ns, write.key, write.text);
        return true;
      case 'add':
        return this.#insert.run(ns, write.key, write.text).changes === 1;
      case 'absent':
        return this.#select.get(ns, write.key) === undefined;
      case 'drop':
        this.#remove.run(ns, write.key);
        return true;
    }
  }

  /** One commit inside the shared transaction: its savepoint is undone alone when one of its keys clashes. */
  #attempt(call: CommitCall): Done {
    this.#mark.run();
    try {
      const clash = call.writes.find(write => !this.#apply(call.namespace, write));
      if (clash) this.#undoToMark.run();
      return { id: call.id, answer: clash ? { done: false, clash: clash.key } : { done: true } };
    } catch (error) {
      // Out of room or memory ends the whole transaction: then there is no savepoint, and no success for anyone.
      if (!this.#db.isTransaction) throw error;
      this.#undoToMark.run();
      return { id: call.id, fault: faultOf(error) };
    } finally {
      if (this.#db.isTransaction) this.#unmark.run();
    }
  }

  /** The only commit of a transaction: what is undone is all of it, so it needs no savepoint. Throws what fails. */
  #only(call: CommitCall): Done {
    const clash = call.writes.find(write => !this.#apply(call.namespace, write));
    (clash ? this.#undo : this.#end).run();
    return { id: call.id, answer: clash ? { done: false, clash: clash.key } : { done: true } };
  }

  /** Every commit that was waiting, in one transaction and so in one flush to the disk. */
  #commitTogether(calls: readonly CommitCall[]): readonly Done[] {
    try {
      this.#checkThere();
      this.#begin.run();
      const [first, ...others] = calls;
      if (first && others.length === 0) return [this.#only(first)];
      const answers = calls.map(call => this.#attempt(call));
      this.#end.run();
      return answers;
    } catch (error) {
      if (this.#db.isTransaction) this.#undo.run();
      const fault = faultOf(error);
      // One too large for the disk takes the others with it: then each by itself, unless it is the lock that failed.
      const alone = calls.length === 1 || fault.sqlite === BUSY;
      return alone
        ? calls.map(({ id }) => ({ id, fault }))
        : calls.flatMap(call => this.#commitTogether([call]));
    }
  }

  #readOne(call: Exclude<Call, CommitCall>): Done {
    try {
      this.#checkThere();
      return { id: call.id, answer: this.#read(call) };
    } catch (error) {
      return { id: call.id, fault: faultOf(error) };
    }
  }
}

function faultOf(error: unknown): Fault {
  const { message, errcode = 0 } = error as { message?: string; errcode?: number };
  // The low byte of an extended result code is the primary one.
  return { message: message ?? String(error), sqlite: errcode & 0xff };
}
