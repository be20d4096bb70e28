import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { Worker } from 'node:worker_threads';
import { afterAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { openMetrics } from '../../src/operations/metrics.ts';
import { readinessOf } from '../../src/readiness.ts';
import { SqliteAdapter } from '../../src/records/adapters/sqlite.ts';
import { StoreFailure } from '../../src/records/failure.ts';
import { under } from '../../src/records/keys.ts';
import { openStore } from '../../src/records/open.ts';
import { addItem, listShelf } from '../../src/records/shelf/index.ts';
import { drop, everything, put, type Store } from '../../src/records/store.ts';
import { StrictStore } from '../../src/records/strict.ts';

// On a disk: in memory no file can be made immutable.
const folder = mkdtempSync(join(existsSync('/var/tmp') ? '/var/tmp' : tmpdir(), 'file-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let count = 0;
let file: string;
let store: Store;
beforeEach(async () => {
  count += 1;
  file = join(folder, `${count}.sqlite`);
  store = await openStore(`sqlite:${file}`);
  await addItem({ store, member: '7' }, { name: 'Dusk' }, { cause: '1', at: new Date() });
  return () => store.close();
});

/** What a sentence may take from the question on, ms. */
const IN_TIME = 2_500;

/** What became of a call, and how long that took, ms. */
async function told(work: Promise<unknown>) {
  const began = performance.now();
  const outcome = await work.then(
    () => 'saved',
    (error: unknown) => error,
  );
  return { outcome, ms: performance.now() - began };
}

it('whose thread ends unasked tells so, once, and refuses every later call; one that is closed does not', async () => {
  const watch = vi.spyOn(Worker.prototype, 'postMessage');
  const told: string[] = [];
  const opened = (name: string) =>
    SqliteAdapter.open(join(folder, name), undefined, { onLost: why => told.push(why) });
  const [dying, closed] = [await opened('dying.sqlite'), await opened('closed.sqlite')];
  const [thread] = watch.mock.contexts as Worker[];
  watch.mockRestore();
  await closed.disconnect();
  expect(told).toEqual([]);
  await thread?.terminate();
  await expect(dying.texts(['a'])).rejects.toMatchObject({ name: 'StoreFailure', kind: 'closed' });
  expect(told).toEqual(["the store's thread ended"]);
});

it('a call that was answered in time is not given up since this thread was held up meanwhile', async () => {
  const hasty = new StrictStore(await SqliteAdapter.open(join(folder, 'hasty.sqlite')), 200);
  const writing = hasty.commit([put('a', 1)]);
  // The call is on its way to the store's thread, which answers while this one does something else.
  await new Promise(resolve => setImmediate(resolve));
  const until = performance.now() + 1_500;
  while (performance.now() < until);
  expect(await writing).toEqual({ done: true });
  await hasty.close();
});

describe('a database file', () => {
  it('that is moved away and put back serves on by itself', async () => {
    renameSync(file, `${file}.away`);
    const { outcome, ms } = await told(store.commit([put('a', 1)]));
    expect(outcome).toBeInstanceOf(StoreFailure);
    expect(ms).toBeLessThan(30_000);
    renameSync(`${file}.away`, file);
    expect(await store.commit([put('a', 2)])).toEqual({ done: true });
    expect(await listShelf({ store, member: '7' })).toHaveLength(1);
  });

  it('that others keep locked fails in under 2.5 s, and serves on once they let go', async () => {
    const other = new DatabaseSync(file);
    other.exec('BEGIN IMMEDIATE');
    // The best of three: the machine is another's too.
    const took: number[] = [];
    for (let time = 0; time < 3 && !took.some(ms => ms < IN_TIME); time += 1) {
      const { outcome, ms } = await told(store.commit([put('a', 1)]));
      expect(outcome).toMatchObject({ name: 'StoreFailure', during: 'write' });
      took.push(ms);
    }
    expect(Math.min(...took)).toBeLessThan(IN_TIME);
    other.exec('ROLLBACK');
    other.close();
    expect(await store.commit([put('b', 1)])).toEqual({ done: true });
  });

  it('that is damaged while it lies still is a failure, not an empty shelf', async () => {
    await store.close();
    const bytes = readFileSync(file);
    bytes.fill(0xff, 4_096);
    writeFileSync(file, bytes);
    const found = await openStore(`sqlite:${file}`).then(
      async again => {
        const shelf = await listShelf({ store: again, member: '7' }).catch((error: unknown) => error);
        await again.close();
        return shelf;
      },
      (error: unknown) => error,
    );
    expect(found).toBeInstanceOf(StoreFailure);
  });

  it('that may not be written to says so at the start', async () => {
    await store.close();
    const before = statSync(file).mtimeMs;
    // Root may write anywhere: then the file is made immutable instead, where the file system can.
    if (process.getuid?.() === 0) {
      try {
        execFileSync('chattr', ['+i', file], { stdio: 'pipe' });
      } catch {
        console.warn('NOT TESTED: no read-only file can be made here.');
        return;
      }
    } else execFileSync('chmod', ['400', file]);
    try {
      const { outcome } = await told(openStore(`sqlite:${file}`));
      expect(outcome).toMatchObject({ name: 'StoreFailure', during: 'open' });
      expect((outcome as Error).message).toMatch(/EPERM|EACCES|permitted|denied|readonly/i);
    } finally {
      if (process.getuid?.() === 0) execFileSync('chattr', ['-i', file]);
    }
    expect(statSync(file).mtimeMs).toBe(before);
  });

  it('that turns read-only under a running process saves nothing, reads on, and serves on by itself', async () => {
    // Who has a file open may write to it whatever its mode is: only an immutable one refuses. Not the index of the log: it is
    // mapped into memory, and a write there that is refused ends a process (SIGBUS).
    const immutable = (sign: '+' | '-') => {
      for (const one of [file, `${file}-wal`]) execFileSync('chattr', [`${sign}i`, one], { stdio: 'pipe' });
    };
    try {
      immutable('+');
    } catch {
      console.warn('NOT TESTED: no file can be made immutable here.');
      return;
    }
    const metrics = openMetrics(() => ({ waiting: 0, running: 0 }));
    const ready = readinessOf({ store, metrics, closed: () => undefined });
    try {
      const { outcome, ms } = await told(store.commit([put('a', 1)]));
      expect(outcome).toMatchObject({ name: 'StoreFailure', during: 'write' });
      expect(ms).toBeLessThan(30_000);
      metrics.storeFailed(outcome as StoreFailure);
      expect(await ready()).toBe('the records cannot be written');
      expect(await listShelf({ store, member: '7' })).toHaveLength(1);
    } finally {
      immutable('-');
    }
    expect(await ready()).toBeUndefined();
    expect(await store.get(['a'])).toEqual([undefined]);
    expect(await store.commit([put('a', 2)])).toEqual({ done: true });
  });

  it('that is full saves no part of a commit and says so, reads on, and serves on once there is room', async () => {
    const own = join(folder, 'full.sqlite');
    const bounded = new StrictStore(await SqliteAdapter.open(own, 300, { mostPages: 40 }));
    await bounded.commit([put('kept', 'x'.repeat(1_000))]);
    const metrics = openMetrics(() => ({ waiting: 0, running: 0 }));
    const ready = readinessOf({ store: bounded, metrics, closed: () => undefined });
    expect(await ready()).toBeUndefined();
    // Until nothing more fits, not even what a probe writes.
    for (const size of [50_000, 4_000, 500, 20]) {
      let failure: unknown;
      for (let n = 0; failure === undefined; n += 1)
        await bounded
          .commit([put(`a/${size}/${n}`, 'x'.repeat(size)), put(`b/${size}/${n}`, 'x'.repeat(size))])
          .catch((error: unknown) => {
            failure = error;
          });
      expect(failure).toMatchObject({ name: 'StoreFailure', kind: 'full', saved: 'no' });
      metrics.storeFailed(failure as StoreFailure);
    }
    const a = await everything(bounded, under('a'));
    const b = await everything(bounded, under('b'));
    expect(b.map(({ key }) => key.slice(1))).toEqual(a.map(({ key }) => key.slice(1)));
    expect(await bounded.get(['kept'])).toEqual(['x'.repeat(1_000)]);
    expect(await ready()).toBe('the records cannot be written');
    expect(await ready()).toBe('the records cannot be written');
    await bounded.commit([...a.slice(0, 100), ...b.slice(0, 100)].map(({ key }) => drop(key)));
    expect(await ready()).toBeUndefined();
    expect(await bounded.commit([put('c', 1)])).toEqual({ done: true });
    await bounded.close();
  });
});
