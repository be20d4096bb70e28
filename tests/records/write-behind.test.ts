import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { SqliteAdapter } from '../../src/records/adapters/sqlite.ts';
import { StoreFailure } from '../../src/records/failure.ts';
import { add, drop, everythingIn, put, type Store, type Write } from '../../src/records/store.ts';
import { StrictStore } from '../../src/records/strict.ts';
import { WriteBehind } from '../../src/records/write-behind.ts';

const SPAN = { from: 'late/', to: 'late0' };

/** A real store, what was committed to it, and a hand on how it answers. */
let real: Store;
let commits: (readonly Write[])[];
let gate: Promise<void>;
let fails: boolean;
let behind: WriteBehind;

beforeEach(async () => {
  real = new StrictStore(await SqliteAdapter.open(':memory:'));
  [commits, gate, fails] = [[], Promise.resolve(), false];
  behind = new WriteBehind(
    {
      get: keys => real.get(keys),
      range: (from, to, limit) => real.range(from, to, limit),
      ranges: (spans, limit) => Promise.all(spans.map(({ from, to }) => real.range(from, to, limit))),
      async commit(writes) {
        commits.push(writes);
        await gate;
        if (fails) throw new StoreFailure('full', 'write', 'no room');
        return await real.commit(writes);
      },
      close: () => real.close(),
    },
    SPAN,
  );
});
afterEach(() => behind.close());

test('many writes are one commit, and all are on disk within a moment', async () => {
  for (let at = 0; at < 30; at += 1) await behind.commit([put(`late/${at}`, at)]);
  expect(commits).toEqual([]);
  await vi.waitFor(async () => expect(await real.get(['late/0', 'late/29'])).toEqual([0, 29]));
  expect(commits).toHaveLength(1);
});

test('what is not on disk yet reads as if it were', async () => {
  await real.commit([put('late/a', 1), put('late/b', 2), put('late/c', 3), put('other', 0)]);
  await behind.commit([put('late/d', 4), drop('late/b'), put('late/a', 5)]);
  expect(commits).toEqual([]);
  expect(await behind.get(['late/a', 'late/b', 'late/c', 'late/d', 'other'])).toEqual([
    5,
    undefined,
    3,
    4,
    0,
  ]);
  expect(await behind.get(['late/b', 'late/d'])).toEqual([undefined, 4]);
  const all = [
    { key: 'late/a', value: 5 },
    { key: 'late/c', value: 3 },
    { key: 'late/d', value: 4 },
  ];
  expect(await behind.range('late/', 'late0', 9)).toEqual(all);
  expect(await behind.range('late/', 'late0', 2)).toEqual(all.slice(0, 2));
  expect(await behind.range('late/b', 'late/d', 9)).toEqual(all.slice(1, 2));
  expect(await everythingIn(behind, [SPAN, { from: 'other', to: 'other0' }], 2)).toEqual([
    ...all,
    { key: 'other', value: 0 },
  ]);
});

test.each([
  ['that drops only', [drop('late/a')]],
  ['elsewhere too', [put('late/b', 2), put('other', 1)]],
  ['that must not be there yet', [add('late/b', 2)]],
])('a commit %s is on disk before it is acknowledged, behind what was gathered', async (_, writes) => {
  await behind.commit([put('late/a', 1)]);
  await behind.commit(writes);
  expect(commits).toEqual([[put('late/a', 1)], writes]);
  expect(await real.get(['late/a'])).toEqual([writes[0]?.kind === 'drop' ? undefined : 1]);
});

test('whatever lies outside the span waits for nothing', async () => {
  await behind.commit([put('late/a', 1)]);
  await behind.commit([put('lateness', 2)]);
  expect(commits).toEqual([[put('lateness', 2)]]);
});

test('what waits is written when the store is closed', async () => {
  const kept: Write[] = [];
  const closing = new WriteBehind(
    {
      get: async () => [],
      range: async () => [],
      commit: async writes => {
        kept.push(...writes);
        return { done: true };
      },
      close: async () => {
        kept.push(put('closed', true));
      },
    },
    SPAN,
  );
  await closing.commit([put('late/a', 1)]);
  await closing.close();
  expect(kept).toEqual([put('late/a', 1), put('closed', true)]);
});

test('after a failure whoever writes is told, until the store takes something again', async () => {
  fails = true;
  await behind.commit([put('late/a', 1)]);
  await vi.waitFor(() => expect(commits).toHaveLength(1));
  await expect(behind.commit([put('late/b', 2)])).rejects.toThrow('no room');
  expect(await behind.get(['late/a', 'late/b'])).toEqual([undefined, undefined]);
  fails = false;
  await behind.commit([put('late/c', 3)]);
  expect(await real.get(['late/c'])).toEqual([3]);
  await behind.commit([put('late/d', 4)]);
  expect(await real.get(['late/d'])).toEqual([undefined]);
});

test('while the store is slow whoever writes waits for their own', async () => {
  const { promise, resolve } = Promise.withResolvers<void>();
  gate = promise;
  await behind.commit([put('late/a', 1)]);
  await vi.waitFor(() => expect(commits).toHaveLength(1));
  await behind.commit([put('late/b', 2)]);
  await new Promise(later => setTimeout(later, 700));
  let done = false;
  const third = behind.commit([put('late/c', 3)]).then(() => {
    done = true;
  });
  await new Promise(later => setTimeout(later, 150));
  expect(done).toBe(false);
  expect(await behind.get(['late/a', 'late/b'])).toEqual([1, 2]);
  resolve();
  await third;
  expect(await real.get(['late/a', 'late/b', 'late/c'])).toEqual([1, 2, 3]);
});

test('more than may wait does not pile up', async () => {
  const { promise, resolve } = Promise.withResolvers<void>();
  gate = promise;
  let acknowledged = 0;
  const all = Array.from({ length: 1_200 }, async (_, at) => {
    await behind.commit([put(`late/${at}`, at)]);
    acknowledged += 1;
  });
  await new Promise(later => setTimeout(later, 450));
  expect(acknowledged).toBe(1_024);
  resolve();
  await Promise.all(all);
  expect(await real.range('late/', 'late0', 4_999)).toHaveLength(1_024 + 176);
});
