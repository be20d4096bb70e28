import { mkdtemp, rename, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { setImmediate as nextTurn } from 'node:timers/promises';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { StoreFailure } from '../../src/records/failure.ts';
import { foldedAnswer, foldedAnswers, under } from '../../src/records/keys.ts';
import { openStore } from '../../src/records/open.ts';
import { prefer, preferencesAtHand, preferencesOf } from '../../src/records/preferences.ts';
import { InTimeForOne } from '../../src/records/reading/in-time.ts';
import { ReadOnce } from '../../src/records/reading/read-once.ts';
import { atHand, drop, instead, put, type Span, type Store } from '../../src/records/store.ts';

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

const jars: Span = { from: 'shelf/ana/', to: 'shelf/ana0' };
const wishes: Span = { from: 'preference/ana/', to: 'preference/ana0' };
const keysOf = (from: Store, span = jars, limit = 9) => atHand(from, span, limit)?.map(({ key }) => key);

test('what a file holds is at hand as it would be read, no more of it than was asked for', async () => {
  await store.commit([1, 2, 3].map(at => put(`shelf/ana/${at}`, { at })));
  for (const limit of [1, 2, 9])
    expect(atHand(store, jars, limit)).toEqual(await store.range(jars.from, jars.to, limit));
  expect(store.atHand?.([wishes, jars], 9)).toEqual([[], await store.range(jars.from, jars.to, 9)]);
  expect(atHand(store, jars, 5_001)).toBeUndefined();
  expect(atHand(store, jars, 0.5)).toBeUndefined();
});

test('what was written is at hand at once for whoever wrote, for others in the next turn', async () => {
  const other = await openStore(`sqlite:${path}`);
  for (let round = 1; round <= 100; round += 1) {
    keysOf(store);
    keysOf(other);
    await store.commit([round % 2 ? put('shelf/ana/1', round) : drop('shelf/ana/1')]);
    expect(keysOf(store)).toEqual(round % 2 ? ['shelf/ana/1'] : []);
    await nextTurn();
    expect(keysOf(other)).toEqual(round % 2 ? ['shelf/ana/1'] : []);
  }
  await other.close();
});

test('what is known of one span and read of another are one moment, though somebody wrote between two looks', async () => {
  const db = new DatabaseSync(path);
  const set = db.prepare("REPLACE INTO records VALUES ('tintmoot', ?, ?)");
  const write = (text: string) => {
    db.exec('BEGIN');
    for (const key of ['preference/ana/1', 'shelf/ana/1']) set.run(key, JSON.stringify({ value: text }));
    db.exec('COMMIT');
  };
  write('before');
  for (let turn = 0; turn < 2; turn += 1) {
    await nextTurn();
    expect(atHand(store, jars, 9)).toEqual([{ key: 'shelf/ana/1', value: 'before' }]);
  }
  write('after');
  // In the same turn: the jars are known from before.
  expect(store.atHand?.([jars, wishes], 9)).toEqual([
    [{ key: 'shelf/ana/1', value: 'after' }],
    [{ key: 'preference/ana/1', value: 'after' }],
  ]);
  db.close();
});

test('a span that does not read, or whose file is gone, is not at hand: the store says why', async () => {
  await store.commit([put('shelf/ana/1', 1)]);
  const db = new DatabaseSync(path);
  db.prepare("INSERT INTO records VALUES ('tintmoot', 'shelf/ana/2', '{torn')").run();
  db.close();
  await nextTurn();
  expect(atHand(store, jars, 9)).toBeUndefined();
  const moved = await openStore(`sqlite:${join(folder, 'moved.sqlite')}`);
  await rename(join(folder, 'moved.sqlite'), join(folder, 'away.sqlite'));
  expect(atHand(moved, jars, 9)).toBeUndefined();
  await moved.close();
});

test('what waits to be written is not at hand beside what it changes, and all else is', async () => {
  await store.commit([put('shelf/ana/1', 1)]);
  await store.commit([put(foldedAnswer('ana', 'a'), 1)]);
  expect(atHand(store, under(foldedAnswers('ana')), 9)).toBeUndefined();
  expect(keysOf(store)).toEqual(['shelf/ana/1']);
});

test('nothing is at hand past whoever stands before the reads of a store', async () => {
  const reads = { get: store.get.bind(store), range: store.range.bind(store) };
  expect(atHand(instead(store, { commit: store.commit.bind(store) }), jars, 9)).toEqual([]);
  expect(atHand(instead(store, { get: reads.get }), jars, 9)).toBeUndefined();
  expect(atHand(instead(store, { range: reads.range }), jars, 9)).toBeUndefined();
  const memory = await openStore('sqlite::memory:');
  expect(atHand(memory, jars, 9)).toBeUndefined();
  await memory.close();
});

test('a question that has given a store up finds nothing of it at hand', async () => {
  const lost = new StoreFailure('unreachable', 'read', 'lost');
  const asking = new InTimeForOne(
    Object.assign(instead(store, { get: () => Promise.reject(lost) }), { atHand: store.atHand!.bind(store) }),
  );
  expect(keysOf(asking)).toEqual([]);
  await expect(asking.get(['a'])).rejects.toThrow(lost);
  expect(keysOf(asking)).toBeUndefined();
});

test('a question finds at hand what it has read, and what it wrote since; after a clash everything anew', async () => {
  await store.commit([put('shelf/ana/1', 1), put('preference/ana/spoons', 1)]);
  const asking = new ReadOnce(store, { spans: ['shelf/', 'preference/'], together: [jars, wishes] });
  const read = atHand(asking, jars, 9);
  // Somebody else's: a question sees one moment.
  await store.commit([put('shelf/ana/2', 2), put('preference/ana/hour', 2)]);
  expect(atHand(asking, jars, 9)).toBe(read);
  expect(await asking.range(jars.from, jars.to, 9)).toBe(read);
  expect(await asking.get(['preference/ana/hour', 'shelf/ana/1'])).toEqual([undefined, 1]);
  expect(keysOf(asking, { from: 'shelf/ana/1', to: 'shelf/ana/2' })).toEqual(['shelf/ana/1']);
  expect(keysOf(asking, jars, 1)).toEqual(['shelf/ana/1']);
  await asking.commit([put('shelf/ana/3', 3)]);
  expect(keysOf(asking)).toEqual(['shelf/ana/1', 'shelf/ana/2', 'shelf/ana/3']);
  expect(await asking.get(['shelf/ana/3', 'preference/ana/hour'])).toEqual([3, undefined]);
  await asking.commit([{ kind: 'absent', key: 'shelf/ana/1' }]);
  expect(await asking.get(['preference/ana/hour'])).toEqual([2]);
});

test('spoons that were wished for are at hand from the next look on', async () => {
  expect(preferencesAtHand(store, 'ana')).toEqual(await preferencesOf(store, 'ana'));
  await prefer(store, 'ana', { spoons: 'metric' });
  expect(preferencesAtHand(store, 'ana')?.spoons).toBe('metric');
  await store.commit([put('preference/ana/spoons', { v: 1, choice: 'ladle' })]);
  expect(preferencesAtHand(store, 'ana')).toBeUndefined();
});
