import { mkdtemp, rename, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { setImmediate as nextTurn } from 'node:timers/promises';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openStore } from '../../src/records/open.ts';
import { ReadOnce } from '../../src/records/reading/read-once.ts';
import { ReadingHere } from '../../src/records/reading/reading-here.ts';
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
  // All of this may have happened in one turn still.
  await nextTurn();
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
  const asking = new ReadOnce(counted, { spans: ['preference/'] });
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

test('several spans are read here as each is alone, pieces that do not read by the store', async () => {
  const { store: here, asked } = watched(store);
  await store.commit(Array.from({ length: 9 }, (_, at) => put(`a/${at}`, at)));
  const spans = [
    { from: 'a/5', to: 'a/9' },
    { from: 'b', to: 'c' },
    { from: 'a/0', to: 'a/7' },
  ];
  expect((await here.range('a/5', 'a/7', 9)).map(({ key }) => key)).toEqual(['a/5', 'a/6']);
  for (const limit of [1, 3, 9])
    expect(await here.ranges?.(spans, limit)).toEqual(
      await Promise.all(spans.map(({ from, to }) => store.range(from, to, limit))),
    );
  expect(await here.ranges?.([], 9)).toEqual([]);
  expect(asked).toEqual([]);
  const db = new DatabaseSync(path);
  db.prepare("INSERT INTO records VALUES ('tintmoot', 'b', '{torn')").run();
  db.close();
  await nextTurn();
  const [, torn] = (await here.ranges?.(spans, 9)) ?? [];
  expect(torn).toStrictEqual([{ key: 'b', value: new Unreadable() }]);
});

test('more than this thread should read is left to the store', async () => {
  const { store: here, asked } = watched(store);
  await here.range('a', 'b', 5_001);
  await here.get(Array.from({ length: 33 }, (_, at) => `a/${at}`));
  await here.ranges?.(
    Array.from({ length: 5 }, () => ({ from: 'a', to: 'b' })),
    5_001,
  );
  expect(asked).toEqual(['range', 'get', 'range', 'range', 'range', 'range', 'range']);
});

test('what a question needs together is read in one go with its first key, what it writes to anew, and all where somebody else wrote', async () => {
  const asked: string[] = [];
  let stalls = true;
  const counted: Store = {
    get(keys) {
      asked.push(`get ${keys.join(' ')}`);
      return store.get(keys);
    },
    range(from, to, limit) {
      asked.push(`range ${from}`);
      return store.range(from, to, limit);
    },
    ranges(spans, limit) {
      asked.push(`ranges ${spans.map(({ from }) => from).join(' ')}`);
      if (stalls) {
        stalls = false;
        return Promise.reject(new Error('stalled'));
      }
      return Promise.all(spans.map(({ from, to }) => store.range(from, to, limit)));
    },
    commit: writes => store.commit(writes),
    close: () => store.close(),
  };
  await store.commit([put('wish/ana/spoons', 'us'), put('met/ana/dust', 1), put('met/bea/dust', 2)]);
  const asking = new ReadOnce(counted, {
    spans: ['wish/'],
    together: [
      { from: 'wish/ana/', to: 'wish/ana0' },
      { from: 'met/ana/', to: 'met/ana0' },
    ],
  });
  const gathering = 'ranges wish/ana/ met/ana/';
  await expect(asking.get(['wish/ana/spoons'])).rejects.toThrow('stalled');
  expect(await asking.get(['wish/ana/hour', 'wish/ana/spoons'])).toEqual([undefined, 'us']);
  expect(await asking.get(['met/ana/dust', 'met/ana/lye'])).toEqual([1, undefined]);
  expect(asked).toEqual([gathering, gathering]);
  expect(await asking.get(['met/ana/dust', 'met/bea/dust'])).toEqual([1, 2]);
  await asking.commit([put('wish/ana/spoons', 'label')]);
  expect(await asking.get(['wish/ana/spoons'])).toEqual(['label']);
  expect(await asking.get(['wish/ana/hour', 'met/ana/dust'])).toEqual([undefined, 1]);
  expect(await asking.range('wish/ana/', 'wish/ana0', 9)).toEqual([
    { key: 'wish/ana/spoons', value: 'label' },
  ]);
  const [, , ...later] = asked.splice(0);
  expect(later).toEqual(['get met/ana/dust met/bea/dust', 'range wish/ana/']);

  // What stands in the way of a commit was written by somebody else: nothing that was read still holds.
  await store.commit([put('met/ana/lye', 3), put('wish/ana/spoons', 'metric')]);
  expect(await asking.get(['met/ana/lye'])).toEqual([undefined]);
  expect(await asking.commit([add('seen/ana', 1)])).toEqual({ done: true });
  expect(await asking.get(['met/ana/lye', 'wish/ana/spoons'])).toEqual([undefined, 'label']);
  expect(await asking.commit([add('seen/ana', 2)])).toMatchObject({ done: false });
  expect(await asking.get(['met/ana/lye', 'wish/ana/spoons'])).toEqual([3, 'metric']);
  expect(asked).toEqual([gathering]);
});

test('what lies together is given as the list that the store gave, never more than was asked for, and anew after a write', async () => {
  await store.commit(Array.from({ length: 4 }, (_, at) => put(`wish/ana/${at}`, at)));
  const span = { from: 'wish/ana/', to: 'wish/ana0' };
  const asking = new ReadOnce(store, { spans: [], together: [span] });
  const keys = async (from: string, to: string, limit: number) =>
    (await asking.range(from, to, limit)).map(({ key }) => key.slice('wish/ana/'.length)).join('');
  expect(await asking.range(span.from, span.to, 9)).toBe(await asking.range(span.from, span.to, 4));
  expect(await keys(span.from, span.to, 4)).toBe('0123');
  expect(await keys(span.from, span.to, 3)).toBe('012');
  expect(await keys('wish/ana/1', 'wish/ana/3', 9)).toBe('12');
  await asking.commit([put('wish/ana/4', 4), drop('wish/ana/0')]);
  expect(await keys(span.from, span.to, 9)).toBe('1234');
});

test('a span that is read in pieces is read anew by whoever looks again', async () => {
  let reads = 0;
  const counted: Store = {
    get: keys => store.get(keys),
    range(...span) {
      reads += 1;
      return store.range(...span);
    },
    commit: writes => store.commit(writes),
    close: () => store.close(),
  };
  await store.commit([put('shelf/ana/1', 1), put('shelf/ana/2', 2)]);
  const asking = new ReadOnce(counted, { spans: ['shelf/'] });
  for (let time = 0; time < 3; time += 1) await asking.range('shelf/ana/', 'shelf/ana0', 9);
  expect(reads).toBe(1);
  for (let time = 0; time < 3; time += 1) await asking.range('shelf/ana/', 'shelf/ana0', 2);
  expect(reads).toBe(4);
});
