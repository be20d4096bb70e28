import { chmodSync, closeSync, mkdirSync, openSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { type MessagePort, parentPort, receiveMessageOnPort, workerData } from 'node:worker_threads';
import type { CommitResult } from '../store.ts';
import type { TextEntry, TextWrite } from './adapter.ts';

/*
 * The thread that owns the database. node:sqlite is synchronous, and waiting for another process's lock
 * (`busy_timeout`) would stop whatever loop it runs on: here that hurts nobody.
 */

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

/** SQLITE_BUSY (sqlite.org/rescode.html). */
const BUSY = 5;

/** The file, and its folder where that is new, for this user alone; SQLite makes what lies beside it alike. */
function makePrivate(path: string): void {
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  closeSync(openSync(path, 'a', 0o600));
  for (const file of [path, `${path}-wal`, `${path}-shm`]) {
    if (statSync(file, { throwIfNoEntry: false })?.isFile()) chmodSync(file, 0o600);
  }
}

/** Throws unless the file that is open is still the one at its path: what is written to a deleted one is lost. */
function checkThere(): void {
  if (inode === undefined) return;
  const there = statSync(path, { throwIfNoEntry: false });
  if (there?.ino !== inode) throw new Error('the database file was moved or deleted while it was open');
}

function open({ path, patience, mostPages }: Opening): DatabaseSync {
  if (path !== ':memory:') makePrivate(path);
  const opened = new DatabaseSync(path, { timeout: patience });
  opened.exec('PRAGMA journal_mode = WAL');
  // NORMAL may lose the last commits when the power goes; an acknowledged write has to outlive that.
  opened.exec('PRAGMA synchronous = FULL');
  opened.exec(
    'CREATE TABLE IF NOT EXISTS records (ns TEXT, key TEXT, text TEXT NOT NULL, PRIMARY KEY (ns, key)) STRICT, WITHOUT ROWID',
  );
  if (mostPages !== undefined) opened.exec(`PRAGMA max_page_count = ${Math.floor(mostPages)}`);
  return opened;
}

const { path } = workerData as Opening;
const db = open(workerData as Opening);
/** Of the file as it was opened; undefined in memory. */
const inode = path === ':memory:' ? undefined : statSync(path).ino;
const select = db.prepare('SELECT text FROM records WHERE ns = ? AND key = ?');
const selectRange = db.prepare(
  'SELECT key, text FROM records WHERE ns = ? AND key >= ? AND key < ? ORDER BY key LIMIT ?',
);
const upsert = db.prepare(
  'INSERT INTO records (ns, key, text) VALUES (?, ?, ?) ON CONFLICT DO UPDATE SET text = excluded.text',
);
const insert = db.prepare('INSERT INTO records (ns, key, text) VALUES (?, ?, ?) ON CONFLICT DO NOTHING');
const remove = db.prepare('DELETE FROM records WHERE ns = ? AND key = ?');

function read(call: Exclude<Call, CommitCall>): readonly (string | undefined)[] | readonly TextEntry[] {
  if (call.task === 'texts') {
    return call.keys.map(key => select.get(call.namespace, key)?.text as string | undefined);
  }
  return selectRange
    .all(call.namespace, call.from, call.to, call.limit)
    .map(row => [row.key as string, row.text as string] as const);
}

/** Applies one write; false when the key is in its way. */
function apply(ns: string, write: TextWrite): boolean {
  switch (write.kind) {
    case 'put':
      upsert.run(ns, write.key, write.text);
      return true;
    case 'add':
      return insert.run(ns, write.key, write.text).changes === 1;
    case 'absent':
      return select.get(ns, write.key) === undefined;
    case 'drop':
      remove.run(ns, write.key);
      return true;
  }
}

/** One commit inside the shared transaction: its savepoint is undone alone when one of its keys clashes. */
function attempt(call: CommitCall): Done {
  db.exec('SAVEPOINT one');
  try {
    const clash = call.writes.find(write => !apply(call.namespace, write));
    if (clash) db.exec('ROLLBACK TO one');
    return { id: call.id, answer: clash ? { done: false, clash: clash.key } : { done: true } };
  } catch (error) {
    // Out of room or memory ends the whole transaction: then there is no savepoint, and no success for anyone.
    if (!db.isTransaction) throw error;
    db.exec('ROLLBACK TO one');
    return { id: call.id, fault: faultOf(error) };
  } finally {
    if (db.isTransaction) db.exec('RELEASE one');
  }
}

/** Every commit that was waiting, in one transaction and so in one flush to the disk. */
function commitTogether(calls: readonly CommitCall[]): readonly Done[] {
  try {
    checkThere();
    db.exec('BEGIN IMMEDIATE');
    const answers = calls.map(attempt);
    db.exec('COMMIT');
    return answers;
  } catch (error) {
    if (db.isTransaction) db.exec('ROLLBACK');
    const fault = faultOf(error);
    // One too large for the disk takes the others with it: then each by itself, unless it is the lock that failed.
    const alone = calls.length === 1 || fault.sqlite === BUSY;
    return alone ? calls.map(({ id }) => ({ id, fault })) : calls.flatMap(call => commitTogether([call]));
  }
}

function faultOf(error: unknown): Fault {
  const { message, errcode = 0 } = error as { message?: string; errcode?: number };
  // The low byte of an extended result code is the primary one.
  return { message: message ?? String(error), sqlite: errcode & 0xff };
}

function readOne(call: Exclude<Call, CommitCall>): Done {
  try {
    checkThere();
    return { id: call.id, answer: read(call) };
  } catch (error) {
    return { id: call.id, fault: faultOf(error) };
  }
}

function serve(port: MessagePort): void {
  port.on('message', (first: Call | 'close') => {
    const waiting: (Call | 'close')[] = [first];
    for (let more = receiveMessageOnPort(port); more; more = receiveMessageOnPort(port)) {
      waiting.push(more.message);
    }
    const calls = waiting.filter(call => call !== 'close');
    // Reads first: they never wait for a lock.
    for (const call of calls) if (call.task !== 'commit') port.postMessage(readOne(call));
    const commits = calls.filter(call => call.task === 'commit');
    if (commits.length > 0) for (const done of commitTogether(commits)) port.postMessage(done);
    if (calls.length < waiting.length) {
      db.close();
      port.close();
    }
  });
}

if (parentPort) serve(parentPort);
