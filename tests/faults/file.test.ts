import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { StoreFailure } from '../../src/records/failure.ts';
import { openStore } from '../../src/records/open.ts';
import { addItem, listShelf } from '../../src/records/shelf/index.ts';
import { put, type Store } from '../../src/records/store.ts';

const folder = mkdtempSync(join(tmpdir(), 'file-'));
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

/** What became of a call, and how long that took, ms. */
async function told(work: Promise<unknown>) {
  const began = performance.now();
  const outcome = await work.then(
    () => 'saved',
    (error: unknown) => error,
  );
  return { outcome, ms: performance.now() - began };
}

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
    const { outcome, ms } = await told(store.commit([put('a', 1)]));
    expect(outcome).toMatchObject({ name: 'StoreFailure', during: 'write' });
    expect(ms).toBeLessThan(30_000);
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
});
