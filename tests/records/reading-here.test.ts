import { mkdtemp, rename, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { setImmediate as nextTurn } from 'node:timers/promises';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openStore } from '../../src/records/open.ts';
import { readOnce } from '../../src/records/read-once.ts';
import { ReadingHere } from '../../src/records/reading-here.ts';
import { absent, add, drop, put, type Store, Unreadable } from '../../src/records/store.ts';

let folder: string;
let path: string;
let store: Store;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tintmoot-'));
  path = join(folder, 'records.sqlite');
  store = await openStore(`sqlite:${path}`);
});
afterEach(async () => {
  await store.close();
  await rm(folder, { recursive: true, force: true });
});

/** What the store itself was asked for, past the reads made here. */
function watched(inner: Store) {
  const asked: string[] = [];
  const watching: Store = {
    get(keys) {
      asked.push('get');
      return inner.get(keys);
    },
    range(from, to, limit) {
      asked.push('range');
      return inner.range(from, to, limit);
    },
    commit: writes => inner.commit(writes),
    close: async () => {},
  };
  return { store: ReadingHere.of(watching, path), asked };
}

test('every acknowledged write is read at once, by another reader in the next turn', async () => {
  const { store: second, asked } = watched(store);
  for (let round = 0; round < 300; round += 1) {
    await store.commit([put('a/b', { round }), round % 2 ? add('a/c', [round]) : drop('a/c')]);
    expect(await store.get(['a/b', 'a/c'])).toEqual([{ round }, round % 2 ? [round] : undefined]);
    await nextTurn();
    expect(await second.range('a/', 'a0', 9)).toHaveLength(round % 2 ? 2 : 1);
  }
  expect(asked).toEqual([]);
});

test('whoever wrote reads what they wrote, also in the turn of a look that was taken before', async () => {
  const db = new DatabaseSync(path);
  const set = db.prepare("REPLACE INTO records VALUES ('tintmoot', 'a', ?)");
  const atOnce: Store = {
    get: keys => store.get(keys),
    range: (from, to, limit) => store.range(from, to, limit),
    commit: async writes => {
      for (const write of writes) if (write.kind === 'put') set.run(JSON.stringify({ value: write.value }));
      return await Promise.resolve({ done: true as const });
    },
    close: async () => {},
  };
  const here = ReadingHere.of(atOnce, path);
  expect(await here.get(['a'])).toEqual([undefined]);
  await here.commit([put('a', 1)]);
  expect(await here.get(['a'])).toEqual([1]);
  db.close();
});

test('reads in one turn of the loop see one moment, and the next turn what came since', async () => {
  const other = await openStore(`sqlite:${path}`);
  await other.commit([put('a', 1)]);
  const first = store.get(['a']);
  await other.commit([put('a', 2)]);
  expect(await first).toEqual([1]);
  expect(await store.get(['a'])).toEqual([2]);
  await other.close();
});

test('values of every kind come back as they went in, null and false too', async () => {
  const values = [null, false, 0, '', 'ñandú', [1, [2]], { deep: { er: null } }];
  await store.commit(values.map((value, at) => put(`v/${at}`, value)));
  expect(await store.get(values.map((_, at) => `v/${at}`))).toEqual(values);
  expect(await store.commit([absent('v/0')])).toEqual({ done: false, clash: 'v/0' });
});

test('what cannot be made sense of here is left to the store to judge, and its neighbours read', async () => {
  const { store: here, asked } = watched(store);
  const db = new DatabaseSync(path);
  db.prepare("INSERT INTO records VALUES ('tintmoot', 'a', '{torn')").run();
  db.prepare("INSERT INTO records VALUES ('tintmoot', 'b', '5')").run();
  db.close();
  await store.commit([put('c', 1)]);
  expect(await here.get(['a', 'c'])).toStrictEqual([new Unreadable(), 1]);
  expect(await here.range('b', 'd', 5)).toStrictEqual([
    { key: 'b', value: new Unreadable() },
    { key: 'c', value: 1 },
  ]);
  expect(asked).toEqual(['get', 'range']);
});

test('nothing is read from a file that has been moved away', async () => {
  await store.commit([put('a', 1)]);
  const { store: here, asked } = watched(store);
  await rename(path, `${path}.away`);
  await here.get(['a']).catch(() => undefined);
  expect(asked).toEqual(['get']);
  await rename(`${path}.away`, path);
});

test('nor from one whose place another file has taken', async () => {
  await store.commit([put('a', 1)]);
  const { store: here, asked } = watched(store);
  await rename(path, `${path}.away`);
  const other = await openStore(`sqlite:${join(folder, 'other.sqlite')}`);
  await rename(join(folder, 'other.sqlite'), path);
  await here.get(['a']).catch(() => undefined);
  expect(asked).toEqual(['get']);
  await other.close();
});

test('a question reads a record once, unless it writes or the reading failed', async () => {
  let reads = 0;
  let broken = true;
  const counted: Store = {
    ...store,
    get: async keys => {
      reads += 1;
      if (broken) throw new Error('stalled');
      return await store.get(keys);
    },
    range: (...span) => store.range(...span),
    commit: writes => store.commit(writes),
  };
  const asking = readOnce(counted, 'preference/');
  await expect(asking.get(['preference/ana/spoons'])).rejects.toThrow('stalled');
  broken = false;
  expect(await asking.get(['preference/ana/spoons'])).toEqual([undefined]);
  await asking.get(['preference/ana/spoons']);
  expect(reads).toBe(2);
  await asking.commit([put('preference/ana/spoons', 'label')]);
  expect(await asking.get(['preference/ana/spoons'])).toEqual(['label']);
  await asking.get(['shelf/ana']);
  await asking.get(['shelf/ana']);
  expect(reads).toBe(5);
});
