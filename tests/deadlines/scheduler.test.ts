import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { type Scheduler, startScheduler } from '../../src/deadlines/scheduler.ts';
import { type Due, duesBy, putDue } from '../../src/records/dues/dues.ts';
import { openStore } from '../../src/records/open.ts';
import type { Store } from '../../src/records/store.ts';

/** How often is looked for what is due, ms. */
const checkEvery = 15_000;
const noon = Date.UTC(2026, 11, 1, 12);
const due = (id: string, at = noon, group = 'soapers'): Due => ({
  at: new Date(at),
  group,
  what: 'test',
  id,
});

let store: Store;
let now: number;
let done: string[];
let faults: string[];
let watch: Scheduler | undefined;

beforeEach(async () => {
  store = await openStore('sqlite::memory:');
  now = noon;
  done = [];
  faults = [];
});
afterEach(async () => {
  await watch?.stop();
  await store.close();
  vi.useRealTimers();
});

const note = async ({ id }: Due) => {
  done.push(id);
};
const watchWith = (
  acts: Readonly<Record<string, (one: Due) => Promise<void>>> = { test: note },
  serves: (group: string) => boolean = () => true,
) => {
  watch = startScheduler({
    store,
    serves,
    acts,
    now: () => now,
    onFault: fault => faults.push((fault as Error).message),
  });
  return watch;
};
const left = async () => (await duesBy(store, new Date(noon * 2))).map(({ id }) => id);

describe('what is due', () => {
  test('is done at its time and not before, the earliest first, and once', async () => {
    await store.commit([due('b', noon + 1000), due('a'), due('c', noon + 1001)].map(putDue));
    const { check } = watchWith();
    await check();
    expect(done).toEqual(['a']);
    now = noon + 1000;
    await check();
    await check();
    expect(done).toEqual(['a', 'b']);
    expect(await left()).toEqual(['c']);
  });

  test('and failed is told as late, by its age, until it is done; others’ is not', async () => {
    await store.commit([due('a'), due('b', noon + 30_000)].map(putDue));
    const told: { count: number; seconds: number }[] = [];
    let broken = true;
    watch = startScheduler({
      store,
      serves: () => true,
      // Asked for when there is something to do: who acts may have to be loaded.
      acts: async () => ({
        test: async () => {
          if (broken) throw new Error('channel gone');
        },
      }),
      now: () => now,
      onLate: late => told.push(late),
      onFault: () => undefined,
    });
    now = noon + 60_000;
    await watch.check();
    expect(told.at(-1)).toEqual({ count: 2, seconds: 60 });
    broken = false;
    now += 3_600_000;
    await watch.check();
    expect(told.at(-1)).toEqual({ count: 0, seconds: 0 });
  });

  test('for many groups at once is done for a few of them at a time', async () => {
    await store.commit(Array.from({ length: 40 }, (_, n) => putDue(due('a', noon, `group-${n}`))));
    let under = 0;
    let most = 0;
    const slowly = async (one: Due) => {
      most = Math.max(most, ++under);
      await new Promise(resolve => setTimeout(resolve, 2));
      under -= 1;
      await note(one);
    };
    await watchWith({ test: slowly }).check();
    expect(done).toHaveLength(40);
    expect(most).toBe(8);
  });

  test('while the process was down is done when it starts', async () => {
    await store.commit([due('a'), due('b', noon + 1)].map(putDue));
    now = noon + 40 * 86_400_000;
    const { check } = watchWith();
    await check();
    expect(done).toEqual(['a', 'b']);
  });

  test('is looked for again and again, without a timer that reaches to the deadline', async () => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] });
    await store.commit([putDue(due('a', noon + 30 * 86_400_000))]);
    const { check } = watchWith();
    await check();
    now = noon + 30 * 86_400_000;
    vi.advanceTimersByTime(checkEvery);
    await vi.waitFor(() => expect(done).toEqual(['a']));
  });

  test('in the groups of other shards is not even read', async () => {
    // Groups of the shards 0 to 3 of four: (id >> 22) % 4. Source: platform documentation, Gateway > Sharding.
    const groups = [8n, 9n, 10n, 11n].map(n => String(n << 22n));
    await store.commit(groups.map(group => putDue(due('a', noon, group))));
    const read: string[] = [];
    const watched: Store = {
      get: keys => store.get(keys),
      commit: writes => store.commit(writes),
      close: () => store.close(),
      async range(...span) {
        const found = await store.range(...span);
        read.push(...found.map(({ key }) => key).filter(key => key.startsWith('due/')));
        return found;
      },
    };
    watch = startScheduler({
      store: watched,
      serves: group => group === groups[1],
      shards: () => ({ ids: [1], of: 4 }),
      acts: { test: note },
      now: () => now,
      onFault: fault => faults.push((fault as Error).message),
    });
    await watch.check();
    expect([done, faults]).toEqual([['a'], []]);
    expect(new Set(read.map(key => key.split('/')[3]))).toEqual(new Set([groups[1]]));
    expect(await left()).toHaveLength(3);
  });

  test('in a group of another shard is left to that shard', async () => {
    await store.commit([due('mine'), due('theirs', noon, 'others')].map(putDue));
    await watchWith(undefined, group => group === 'soapers').check();
    expect(done).toEqual(['mine']);
    expect(await left()).toEqual(['theirs']);
  });

  test('and fails is kept, tried again after a while, and holds up nothing else', async () => {
    await store.commit([due('bad'), due('good', noon + 1)].map(putDue));
    now = noon + 1;
    let tries = 0;
    const { check } = watchWith({
      test: async one => {
        if (one.id === 'bad' && ++tries < 3) throw new Error('no answer');
        done.push(one.id);
      },
    });
    await check();
    expect(done).toEqual(['good']);
    expect(faults).toEqual(['no answer']);
    await check();
    expect(tries).toBe(1);
    now += checkEvery;
    await check();
    expect(tries).toBe(2);
    now += checkEvery;
    await check();
    expect(tries).toBe(2);
    now += checkEvery;
    await check();
    expect(done).toEqual(['good', 'bad']);
    expect(await left()).toEqual([]);
  });

  test('but unknown to this version is kept for one that knows it', async () => {
    await store.commit([putDue({ ...due('new'), what: 'from-the-future' })]);
    await watchWith().check();
    expect(faults).toEqual(['nobody here knows what to do about from-the-future']);
    expect(await left()).toEqual(['new']);
  });

  test('is looked for on after a failed read', async () => {
    const { check } = watchWith();
    await check();
    const broken = vi.spyOn(store, 'range').mockRejectedValueOnce(new Error('disk gone'));
    await check();
    expect(faults).toEqual(['disk gone']);
    broken.mockRestore();
    await store.commit([putDue(due('a'))]);
    await check();
    expect(done).toEqual(['a']);
  });

  test('is finished before stopping, and nothing new is begun', async () => {
    await store.commit([due('a'), due('b', noon + 1)].map(putDue));
    now = noon + 1;
    const gate = Promise.withResolvers<void>();
    const { stop } = watchWith({
      test: async one => {
        await gate.promise;
        done.push(one.id);
      },
    });
    await vi.waitFor(async () => expect(await left()).toHaveLength(2));
    const stopping = stop();
    gate.resolve();
    await stopping;
    expect(done.length).toBeLessThanOrEqual(1);
    expect(await left()).toContain('b');
  });

  test('that takes long and that nobody waits for holds up no reminder, and is late until it is done', async () => {
    const slow = Array.from({ length: 40 }, (_, n) => ({ ...due('a', noon, `group-${n}`), what: 'slow' }));
    await store.commit(slow.map(putDue));
    const gate = Promise.withResolvers<void>();
    let under = 0;
    let most = 0;
    const told: number[] = [];
    watch = startScheduler({
      store,
      serves: () => true,
      acts: {
        test: note,
        slow: async () => {
          most = Math.max(most, ++under);
          await gate.promise;
          under -= 1;
        },
      },
      unhurried: new Set(['slow']),
      now: () => now,
      onLate: ({ count }) => told.push(count),
      onFault: fault => faults.push((fault as Error).message),
    });
    await watch.check();
    // A reminder that falls due meanwhile, in a group whose own long one is under way.
    now += 1_000;
    await store.commit([putDue(due('reminder', now, 'group-0'))]);
    await watch.check();
    expect(done).toEqual(['reminder']);
    expect(told.at(-1)).toBe(40);
    gate.resolve();
    await vi.waitFor(async () => expect(await left()).toEqual([]));
    await watch.check();
    expect(told.at(-1)).toBe(0);
    expect(most).toBe(2);
    expect(faults).toEqual([]);
  });

  test('while an earlier look’s work is still under way is done meanwhile, and nothing of it twice', async () => {
    await store.commit([putDue(due('long', noon, 'slow-channel'))]);
    const gate = Promise.withResolvers<void>();
    const { check } = watchWith({
      test: async one => {
        if (one.id === 'long') await gate.promise;
        done.push(one.id);
      },
    });
    const first = check();
    now += 1_000;
    await store.commit([putDue(due('short', now))]);
    const second = check();
    await vi.waitFor(() => expect(done).toEqual(['short']));
    gate.resolve();
    await Promise.all([first, second, check()]);
    expect(done).toEqual(['short', 'long']);
    expect(await left()).toEqual([]);
  });

  test('and done while it was being looked for is not done again', async () => {
    await store.commit([putDue(due('a'))]);
    const stale = await store.range('due/', 'due0', 10);
    let acts = 0;
    const acting = Promise.withResolvers<void>();
    const reading = Promise.withResolvers<void>();
    const { check } = watchWith({
      test: async one => {
        acts += 1;
        await acting.promise;
        done.push(one.id);
      },
    });
    const first = check();
    await vi.waitFor(() => expect(acts).toBe(1));
    // A look that reads the records while what is due still stands in them, and hears of them after it was done.
    const read = vi.spyOn(store, 'range').mockImplementationOnce(async () => []);
    read.mockImplementationOnce(async () => {
      await reading.promise;
      return stale;
    });
    const second = check();
    acting.resolve();
    await first;
    reading.resolve();
    await second;
    read.mockRestore();
    expect(done).toEqual(['a']);
  });
});
