import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterAll, describe, expect, it } from 'vitest';
import { openStore } from '../../src/records/open.ts';
import { put } from '../../src/records/store.ts';

const folder = mkdtempSync(join(tmpdir(), 'records-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const modeOf = (path: string) => statSync(path).mode & 0o777;

describe('the file of a store', () => {
  it('and what lies beside it is for its user alone, also where it was not', async () => {
    const made = join(folder, 'made');
    const file = join(made, 'records.sqlite');
    const store = await openStore(`sqlite:${file}`);
    await store.commit([put('a', 1)]);
    expect(modeOf(made)).toBe(0o700);
    expect(readdirSync(made)).toHaveLength(3);
    expect(readdirSync(made).map(name => modeOf(join(made, name)))).toEqual([0o600, 0o600, 0o600]);
    await store.close();
    chmodSync(file, 0o644);
    const again = await openStore(`sqlite:${file}`);
    expect(modeOf(file)).toBe(0o600);
    await again.close();
  });

  it('deleted while it is open acknowledges nothing more, and finds nothing absent', async () => {
    const file = join(folder, 'deleted.sqlite');
    const store = await openStore(`sqlite:${file}`);
    await store.commit([put('a', 1)]);
    rmSync(file);
    await expect(store.commit([put('b', 1)])).rejects.toMatchObject({ during: 'write', saved: 'no' });
    await expect(store.get(['b'])).rejects.toMatchObject({ name: 'StoreFailure', during: 'read' });
    await store.close();
  });

  it('replaced by another one is noticed as well', async () => {
    const file = join(folder, 'replaced.sqlite');
    const store = await openStore(`sqlite:${file}`);
    rmSync(file);
    writeFileSync(file, '');
    await expect(store.commit([put('b', 1)])).rejects.toMatchObject({ name: 'StoreFailure', saved: 'no' });
    await store.close();
  });

  it('that cannot be opened says why', async () => {
    mkdirSync(join(folder, 'a-folder'));
    await expect(openStore(`sqlite:${join(folder, 'a-folder')}`)).rejects.toThrow(/EISDIR|directory/i);
    const junk = join(folder, 'junk.sqlite');
    writeFileSync(junk, 'this is no database. '.repeat(500));
    await expect(openStore(`sqlite:${junk}`)).rejects.toThrow(/not a database/);
  });

  it('that is somebody else’s stays as it was, whatever a setting says', async () => {
    const text = join(folder, 'accounts');
    writeFileSync(text, 'root:x:0:0:root:/root:/bin/sh\n'.repeat(50), { mode: 0o644 });
    await expect(openStore(`sqlite:${text}`)).rejects.toThrow(/not a database/);
    const other = join(folder, 'other.sqlite');
    const database = new DatabaseSync(other);
    database.exec('CREATE TABLE accounts (name TEXT)');
    database.close();
    chmodSync(other, 0o644);
    const before = readFileSync(other);
    await expect(openStore(`sqlite:${other}`)).rejects.toThrow(/another program/);
    expect([modeOf(text), modeOf(other)]).toEqual([0o644, 0o644]);
    expect(readFileSync(other).equals(before)).toBe(true);
    expect(readdirSync(folder).filter(name => /^(?:accounts|other).*-(?:wal|shm)$/.test(name))).toEqual([]);
  });
});
