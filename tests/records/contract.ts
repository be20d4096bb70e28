import fc from 'fast-check';
import Keyv from 'keyv';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RecordAdapter } from '../../src/records/adapters/adapter.ts';
import { StoreFailure } from '../../src/records/failure.ts';
import { part, under } from '../../src/records/keys.ts';
import {
  absent,
  add,
  drop,
  everything,
  everythingIn,
  put,
  type Span,
  Unreadable,
} from '../../src/records/store.ts';
import { StrictStore } from '../../src/records/strict.ts';

/** A storage under contract. */
export type Storage = {
  /** Another connection to the same records, or the same one where a storage has only one. */
  open(): Promise<RecordAdapter>;
  /** Puts text under a key behind the adapter's back. */
  spoil(key: string, text: string): Promise<void>;
  /** Where records go with their one connection: a storage of its own, to be closed. */
  openApart?(): Promise<RecordAdapter>;
};

/** What every storage must do, whatever it is made of. Call it inside a `describe`. */
export function keepsTheContract(storage: () => Storage): void {
  let adapter: RecordAdapter;
  let store: StrictStore;
  let other: StrictStore;
  let count = 0;
  /** A parent key that no other test uses. */
  const fresh = () => {
    count += 1;
    return `test/${count}`;
  };

  beforeAll(async () => {
    adapter = await storage().open();
    store = new StrictStore(adapter);
    other = new StrictStore(await storage().open());
  });
  afterAll(async () => {
    await store.close();
    await other.close();
  });

  describe('reading', () => {
    it('answers in the order of the keys asked, undefined where nothing is', async () => {
      const at = fresh();
      await store.commit([put(`${at}/a`, { spoons: 1 }), put(`${at}/c`, [null, 'añil', 0, false])]);
      expect(await store.get([`${at}/c`, `${at}/b`, `${at}/a`, `${at}/c`])).toEqual([
        [null, 'añil', 0, false],
        undefined,
        { spoons: 1 },
        [null, 'añil', 0, false],
      ]);
    });

    it('tells null, 0, false and the empty text from nothing', async () => {
      const at = fresh();
      const values = [null, 0, false, '', [], {}];
      await store.commit(values.map((value, index) => put(`${at}/${index}`, value)));
      expect(await store.get(values.map((_, index) => `${at}/${index}`))).toEqual(values);
    });

    it('gives back any plain value as it went in', async () => {
      const key = fresh();
      await fc.assert(
        fc.asyncProperty(fc.jsonValue({ maxDepth: 3, stringUnit: 'binary' }), async value => {
          await store.commit([put(key, value)]);
          const [back] = await other.get([key]);
          // JSON has one zero.
          expect(back).toEqual(JSON.parse(JSON.stringify(value)));
        }),
        { numRuns: 60 },
      );
    });

    it.each(['garbage', 'null', '5', '""', '{}', '[]', '{"value":'])(
      'calls what is not a record unreadable, never absent, and its neighbours read: %s',
      async text => {
        const at = fresh();
        await store.commit([put(`${at}/good`, 1)]);
        await storage().spoil(`${at}/spoilt`, text);
        const [well, ill] = await store.get([`${at}/good`, `${at}/spoilt`]);
        expect(well).toBe(1);
        expect(ill).toBeInstanceOf(Unreadable);
        const [good, spoilt] = await store.range(`${at}/`, `${at}0`, 9);
        expect(good?.value).toBe(1);
        expect(spoilt?.value).toBeInstanceOf(Unreadable);
        expect(await store.get([`${at}/good`])).toEqual([1]);
      },
    );
  });

  describe('ranges', () => {
    it('come in the byte order of their keys, from the first up to but not including the last', async () => {
      const at = fresh();
      const names = ['-', '0', '00', '9', 'A', 'Z', '_', '_c3_b1', 'a', 'a-b', 'aa', 'z'];
      await store.commit([...names].reverse().map(name => put(`${at}/${name}`, name)));
      const all = await store.range(`${at}/`, `${at}0`, 100);
      expect(all.map(({ value }) => value)).toEqual(names);
      const some = await store.range(`${at}/0`, `${at}/a`, 100);
      expect(some.map(({ value }) => value)).toEqual(['0', '00', '9', 'A', 'Z', '_', '_c3_b1']);
    });

    it('hold what lies under a key and not its namesakes', async () => {
      const at = fresh();
      await store.commit([
        put(at, 0),
        put(`${at}/x`, 1),
        put(`${at}/x/y`, 2),
        put(`${at}-`, 3),
        put(`${at}a/x`, 4),
      ]);
      const { from, to } = under(at);
      expect((await store.range(from, to, 9)).map(({ value }) => value)).toEqual([1, 2]);
    });

    it('end at the limit and go on from there, missing and repeating nothing', async () => {
      const at = fresh();
      const names = Array.from({ length: 23 }, (_, index) => `${at}/${String(index).padStart(2, '0')}`);
      await store.commit(names.map((name, index) => put(name, index)));
      await store.commit([put(`${at}/05/lot`, 'five'), put(`${at}/05-`, 'five dash')]);
      const whole = await store.range(`${at}/`, `${at}0`, 100);
      for (const pageSize of [1, 2, 5, 24, 25, 26]) {
        expect(await everything(store, under(at), pageSize)).toEqual(whole);
        expect(await store.range(`${at}/`, `${at}0`, pageSize)).toEqual(whole.slice(0, pageSize));
      }
    });

    it('of several spans are each as it is alone, whatever their order and however they overlap', async () => {
      const at = fresh();
      const names = Array.from({ length: 23 }, (_, index) => `${at}/${String(index).padStart(2, '0')}`);
      await store.commit(names.map((name, index) => put(name, index)));
      const spans: readonly Span[] = [
        { from: `${at}/15`, to: `${at}/20` },
        { from: `${at}/nothing`, to: `${at}/nowhere` },
        { from: `${at}/00`, to: `${at}/17` },
        { from: `${at}/15`, to: `${at}/20` },
        { from: `${at}/20`, to: `${at}/15` },
      ];
      for (const limit of [1, 3, 5, 6, 99])
        expect(await store.ranges(spans, limit)).toEqual(
          await Promise.all(spans.map(({ from, to }) => store.range(from, to, limit))),
        );
      expect(await store.ranges([], 9)).toEqual([]);
      await expect(store.ranges(spans, 0)).rejects.toThrow('limit 0');
    });

    it('of several spans go on beyond their first page', async () => {
      const at = fresh();
      const names = Array.from({ length: 23 }, (_, index) => `${at}/${String(index).padStart(2, '0')}`);
      await store.commit(names.map((name, index) => put(name, index)));
      const spans = [
        { from: `${at}/00`, to: `${at}/11` },
        { from: `${at}/11`, to: `${at}/99` },
      ];
      for (const pageSize of [1, 5, 11, 12, 24])
        expect((await everythingIn(store, spans, pageSize)).map(({ key }) => key)).toEqual(names);
    });

    it('order keys in any script as their encoded parts', async () => {
      const at = fresh();
      const names = ['Ультрамарин', '群青', 'نيلي', 'नीला', 'añil', '🎨 mica', 'a/b', 'a_b', ''];
      await store.commit(names.map(name => put(`${at}/${part(name)}`, name)));
      const found = (await everything(store, under(at))).map(({ value }) => value as string);
      const ordered = [...names].sort((a, b) => (part(a) < part(b) ? -1 : 1));
      expect(found).toEqual(ordered);
    });
  });

  describe('commits', () => {
    it('write all or nothing, and say which key was in the way', async () => {
      const at = fresh();
      await store.commit([put(`${at}/taken`, 'first')]);
      const clash = { done: false, clash: `${at}/taken` };
      const steps = [put(`${at}/new`, 1), drop(`${at}/taken/x`)];
      expect(await store.commit([...steps, add(`${at}/taken`, 'second')])).toEqual(clash);
      expect(await store.commit([absent(`${at}/taken`), ...steps])).toEqual(clash);
      expect(await store.get([`${at}/new`, `${at}/taken`])).toEqual([undefined, 'first']);
    });

    it('keep what was there before a clash, dropped or overwritten', async () => {
      const at = fresh();
      await store.commit([put(`${at}/a`, 1), put(`${at}/b`, 2), put(`${at}/c`, 3)]);
      const result = await store.commit([drop(`${at}/a`), put(`${at}/b`, 9), add(`${at}/c`, 9)]);
      expect(result).toEqual({ done: false, clash: `${at}/c` });
      expect(await store.get([`${at}/a`, `${at}/b`, `${at}/c`])).toEqual([1, 2, 3]);
    });

    it('demand absence without writing anything', async () => {
      const at = fresh();
      expect(await store.commit([absent(`${at}/closed`), put(`${at}/ballot`, 1)])).toEqual({ done: true });
      expect(await store.get([`${at}/closed`, `${at}/ballot`])).toEqual([undefined, 1]);
    });

    it('drop, and drop what is not there', async () => {
      const at = fresh();
      await store.commit([put(`${at}/a`, 1)]);
      expect(await store.commit([drop(`${at}/a`), drop(`${at}/b`)])).toEqual({ done: true });
      expect(await store.get([`${at}/a`])).toEqual([undefined]);
      expect(await store.range(`${at}/`, `${at}0`, 9)).toEqual([]);
      expect(await store.commit([add(`${at}/a`, 2)])).toEqual({ done: true });
    });

    it('let exactly one of many that add the same key through', async () => {
      const at = fresh();
      const results = await Promise.all(
        Array.from({ length: 40 }, (_, index) =>
          (index % 2 === 0 ? store : other).commit([
            add(`${at}/one`, index),
            put(`${at}/by/${index}`, index),
          ]),
        ),
      );
      const winners = results.flatMap((result, index) => (result.done ? [index] : []));
      expect(winners).toHaveLength(1);
      expect(await other.get([`${at}/one`])).toEqual(winners);
      expect((await everything(store, under(`${at}/by`))).map(({ value }) => value)).toEqual(winners);
    });

    it('never let a ballot in after the close that counted without it', async () => {
      const at = fresh();
      const votes = Array.from({ length: 60 }, (_, index) =>
        store.commit([absent(`${at}/closed`), put(`${at}/ballot/${index}`, index)]),
      );
      const closing = (async () => {
        await votes[5];
        await other.commit([add(`${at}/closed`, true)]);
        return (await everything(other, under(`${at}/ballot`))).length;
      })();
      const accepted = (await Promise.all(votes)).filter(({ done }) => done).length;
      const tallied = await closing;
      expect(tallied).toBe(accepted);
      expect(await everything(other, under(`${at}/ballot`))).toHaveLength(accepted);
    });

    it('of many in flight each have an outcome of their own', async () => {
      const at = fresh();
      await store.commit([put(`${at}/3`, 'old'), put(`${at}/7`, 'old')]);
      const results = await Promise.all(
        Array.from({ length: 10 }, (_, n) =>
          store.commit([put(`${at}/mark/${n}`, n), add(`${at}/${n}`, 'new')]),
        ),
      );
      expect(results.map(({ done }) => done)).toEqual(
        [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map(n => n !== 3 && n !== 7),
      );
      expect((await everything(store, under(`${at}/mark`))).map(({ value }) => value)).toEqual([
        0, 1, 2, 4, 5, 6, 8, 9,
      ]);
    });

    it('refuse values that would not come back, and write nothing of the commit', async () => {
      const at = fresh();
      const unfit = [
        undefined,
        Number.NaN,
        Infinity,
        new Date(0),
        new Map(),
        () => 1,
        { a: [1n] },
        Symbol('x'),
      ];
      for (const value of unfit) {
        await expect(store.commit([put(`${at}/good`, 1), put(`${at}/bad`, value)])).rejects.toMatchObject({
          kind: 'unfit',
          saved: 'no',
        });
      }
      expect(await store.get([`${at}/good`])).toEqual([undefined]);
    });

    it.each(['', '/', 'a//b', '/a', 'a/', 'ñ', 'a b', 'a:b', 'a%b'])(
      'refuse what is not a key: "%s"',
      async key => {
        await expect(store.commit([put(key, 1)])).rejects.toBeInstanceOf(StoreFailure);
        await expect(store.get([key])).rejects.toBeInstanceOf(StoreFailure);
      },
    );

    it('refuse the same key twice', async () => {
      const key = fresh();
      await expect(store.commit([drop(key), add(key, 1)])).rejects.toMatchObject({ kind: 'unfit' });
    });
  });

  describe('as a storage of keyv', () => {
    it('does what keyv asks', async () => {
      const at = fresh();
      const keyv = new Keyv({ store: adapter });
      expect(await keyv.set(`${at}/a`, { x: 1 })).toBe(true);
      expect(await keyv.setMany([{ key: `${at}/b`, value: 2 }])).toEqual([true]);
      expect(await keyv.get(`${at}/a`)).toEqual({ x: 1 });
      expect(await keyv.getMany([`${at}/b`, `${at}/c`])).toEqual([2, undefined]);
      expect(await keyv.has(`${at}/a`)).toBe(true);
      expect(await keyv.delete(`${at}/a`)).toBe(true);
      expect(await keyv.delete(`${at}/a`)).toBe(false);
      expect(await keyv.hasMany([`${at}/a`, `${at}/b`])).toEqual([false, true]);
      expect(await store.get([`${at}/b`])).toEqual([2]);
    });

    it('refuses to forget by itself, and to be emptied', async () => {
      const keyv = new Keyv({ store: adapter });
      await expect(keyv.set(fresh(), 1, 1000)).rejects.toMatchObject({ kind: 'unfit' });
      await expect(keyv.clear()).rejects.toMatchObject({ kind: 'unfit' });
    });
  });

  it('finishes what is in flight before it closes, and rejects what comes later', async () => {
    const at = fresh();
    const here = storage();
    const apart = await here.openApart?.();
    const closing = new StrictStore(apart ?? (await here.open()));
    const writes = Array.from({ length: 20 }, (_, n) => closing.commit([put(`${at}/${n}`, n)]));
    await closing.close();
    expect(await Promise.all(writes)).toEqual(writes.map(() => ({ done: true })));
    // What lies apart goes with its connection, and is nobody else's.
    expect(await everything(store, under(at))).toHaveLength(apart ? 0 : 20);
    await expect(closing.get([at])).rejects.toMatchObject({ kind: 'closed', during: 'read' });
    await expect(closing.commit([put(at, 1)])).rejects.toMatchObject({ kind: 'closed', saved: 'no' });
  });
}
