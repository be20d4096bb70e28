import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { SqliteAdapter } from '../../src/records/adapters/sqlite.ts';
import { anonymousGroup, refusalOf, StoreFailure } from '../../src/records/failure.ts';
import { prefer, preferencesOf } from '../../src/records/preferences.ts';
import {
  addItem,
  type Change,
  dishTest,
  listShelf,
  type Outcome,
  removeItem,
  restockItem,
  type Shelf,
  setLowMark,
  showItem,
  startLot,
  useItem,
  weighSpoon,
} from '../../src/records/shelf/index.ts';
import { signingKeyOf } from '../../src/records/signing-key.ts';
import { put } from '../../src/records/store.ts';
import { StrictStore } from '../../src/records/strict.ts';
import { wordsIn } from '../../src/words/index.ts';
import { FailingAdapter } from './store-adapter.ts';

let adapter: FailingAdapter;
let shelf: Shelf;
let inner: SqliteAdapter;
let count = 0;

beforeAll(async () => {
  inner = await SqliteAdapter.open(':memory:');
  return () => inner.disconnect();
});
beforeEach(async () => {
  adapter = new FailingAdapter(inner);
  count += 1;
  shelf = { store: new StrictStore(adapter), member: `m${count}-` };
  await addItem(shelf, { name: 'Blue', grams: 20 }, by());
});

const by = (): Change => {
  count += 1;
  return { cause: `c${count}`, at: new Date('2026-03-01T10:00:00Z') };
};
/** What the storage really holds. */
const held = () => inner.range('-', 'zzzz', 100_000);
const failure = (work: Promise<unknown>) =>
  work.then(
    () => expect.unreachable(),
    (error: unknown) => error,
  );

const changes: Readonly<Record<string, (change: Change) => Promise<Outcome>>> = {
  'adding an item': change => addItem(shelf, { name: 'Red', grams: 5, lowAt: 1, lot: 'A' }, change),
  'taking grams': change => useItem(shelf, 'blue', 4, change),
  restocking: change => restockItem(shelf, 'blue', 4, change),
  removing: change => removeItem(shelf, 'blue', change),
  'a dish test': change => dishTest(shelf, 'blue', 'oil', change),
  'weighing a spoon': change => weighSpoon(shelf, 'blue', { grams: 2, spoonMillilitres: 5 }, change),
  'a new lot': change => startLot(shelf, 'blue', { grams: 10 }, change),
  'a low mark': change => setLowMark(shelf, 'blue', 3, change),
};

/**
 * Makes the change with the first call to the storage failing, then the second, until none is left to fail:
 * what was told each time, and whether the storage changed.
 */
async function failingEachCall(make: (change: Change) => Promise<Outcome>) {
  const rounds: { saved: string; changed: boolean }[] = [];
  while (rounds.at(-1)?.saved !== 'yes') {
    const before = await held();
    const failing = rounds.length;
    adapter.calls = 0;
    adapter.faultOf = call => (call === failing ? 'before' : undefined);
    const saved = await make(by()).then(
      () => 'yes',
      (error: unknown) => (error instanceof StoreFailure ? error.saved : Promise.reject(error)),
    );
    rounds.push({ saved, changed: JSON.stringify(before) !== JSON.stringify(await held()) });
  }
  return rounds;
}

describe.each(Object.entries(changes))('%s', (_, make) => {
  it('is told as done only when it was saved, whichever call to the storage fails', async () => {
    const rounds = await failingEachCall(make);
    const [done, ...failed] = rounds.reverse();
    expect(done).toEqual({ saved: 'yes', changed: true });
    // The shelf is read, then written to.
    expect(failed.length).toBeGreaterThanOrEqual(2);
    for (const round of failed) expect(round).toEqual({ saved: 'no', changed: false });
  });

  it('whose answer was lost is not told as done, and counts once when it is tried again', async () => {
    const change = by();
    adapter.faultOf = (_call, during) => (during === 'write' ? 'after' : undefined);
    expect(await failure(make(change))).toMatchObject({ name: 'StoreFailure', saved: 'unknown' });
    adapter.faultOf = () => undefined;
    const before = await held();
    expect(await make(change)).toMatchObject({ repeated: true });
    expect(await held()).toEqual(before);
  });

  it('on a shelf that cannot be made sense of changes nothing', async () => {
    const before = await held();
    adapter.faultOf = () => 'lies';
    expect(await failure(make(by()))).toMatchObject({ name: 'StoreFailure', kind: 'corrupt' });
    expect(await held()).toEqual(before);
  });
});

describe('with the storage stalled', () => {
  beforeEach(() => {
    adapter.faultOf = () => 'stalls';
  });
  it('a read fails instead of waiting for ever', async () => {
    expect(await failure(listShelf(shelf))).toMatchObject({
      name: 'StoreFailure',
      during: 'read',
      saved: 'no',
    });
  });

  it('a write is called neither saved nor not: it may be', async () => {
    const failed = await failure(prefer(shelf.store, shelf.member, { spoons: 'us' }));
    expect(failed).toMatchObject({ name: 'StoreFailure', during: 'write', saved: 'unknown' });
  });

  it('what comes after goes on by itself', async () => {
    await failure(listShelf(shelf));
    adapter.faultOf = () => undefined;
    expect(await listShelf(shelf)).toHaveLength(1);
  });
});

describe('with the storage gone', () => {
  beforeEach(() => {
    adapter.faultOf = () => 'before';
  });

  it.each<[string, () => Promise<unknown>]>([
    ['a shelf is not empty', () => listShelf(shelf)],
    ['an item is not unknown', () => showItem(shelf, 'blue')],
    ['preferences are not the usual ones', () => preferencesOf(shelf.store, shelf.member)],
    ['a preference is not set', () => prefer(shelf.store, shelf.member, { spoons: 'us' })],
    [
      'no signing key is made up',
      () => signingKeyOf(shelf.store, join(tmpdir(), 'no-such-folder', 'signing-key')),
    ],
  ])('%s: it rejects', async (_, work) => {
    expect(await failure(work())).toBeInstanceOf(StoreFailure);
  });

  it('the member is told in one sentence what became of it, in either language', () => {
    const sentences = (['en', 'es'] as const).flatMap(language =>
      [
        new StoreFailure('unreachable', 'read', 'x'),
        new StoreFailure('full', 'write', 'x'),
        new StoreFailure('unreachable', 'write', 'x', { saved: 'unknown' }),
      ].map(one => wordsIn(language).refusal(refusalOf(one))),
    );
    expect(new Set(sentences).size).toBe(6);
  });
});

describe('an SQLite file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'records-'));
  afterAll(() => rmSync(folder, { recursive: true }));

  it('locked by another for longer than patience is busy; nothing is saved and the loop goes on', async () => {
    const file = join(folder, 'locked.sqlite');
    const patient = await SqliteAdapter.open(file, 300);
    const store = new StrictStore(patient);
    await store.commit([put('a', 1)]);
    const other = new DatabaseSync(file);
    other.exec('BEGIN IMMEDIATE');
    let turns = 0;
    const turning = setInterval(() => (turns += 1), 10);
    const lost = await Promise.allSettled([store.commit([put('a', 2)]), store.commit([put('b', 2)])]);
    clearInterval(turning);
    for (const one of lost) {
      expect(one).toMatchObject({ reason: { kind: 'busy', during: 'write', saved: 'no' } });
    }
    expect(turns).toBeGreaterThan(3);
    other.exec('COMMIT');
    other.close();
    expect(await store.get(['a', 'b'])).toEqual([1, undefined]);
    expect(await store.commit([put('a', 3)])).toEqual({ done: true });
    await store.close();
  });

  it('whose table is gone fails each call, and calls nothing saved', async () => {
    const file = join(folder, 'dropped.sqlite');
    const store = new StrictStore(await SqliteAdapter.open(file));
    await store.commit([put('a', 1)]);
    const other = new DatabaseSync(file);
    other.exec('DROP TABLE records');
    other.close();
    expect(await failure(store.get(['a']))).toMatchObject({ name: 'StoreFailure', during: 'read' });
    expect(await failure(store.range('a', 'b', 1))).toMatchObject({ name: 'StoreFailure', during: 'read' });
    expect(await failure(store.commit([put('a', 1)]))).toMatchObject({ name: 'StoreFailure', saved: 'no' });
    await store.close();
  });
});

it('a log names a group by its id, and a member’s own talk with us by a mark', () => {
  expect(anonymousGroup('501')).toBe('501');
  expect(anonymousGroup('direct-701234567890123456')).toMatch(/^direct#[0-9a-f]{12}$/);
  expect(anonymousGroup('direct-701')).not.toBe(anonymousGroup('direct-702'));
});
