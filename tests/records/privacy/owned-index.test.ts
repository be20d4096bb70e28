import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fc, test } from '@fast-check/vitest';
import { afterAll, describe, expect, it } from 'vitest';
import { SqliteAdapter } from '../../../src/records/adapters/sqlite.ts';
import { openStore } from '../../../src/records/open.ts';
import { erase } from '../../../src/records/privacy/erase.ts';
import { ownedBy } from '../../../src/records/privacy/owned.ts';
import { isAllNoted, noteGroup } from '../../../src/records/privacy/owned-index.ts';
import { drop, everything, put, type Store, type Write } from '../../../src/records/store.ts';
import { StrictStore } from '../../../src/records/strict.ts';
import { PATIENT } from '../patience.ts';
import { countOf } from './count-of.ts';

const folder = mkdtempSync(join(tmpdir(), 'owned-'));
afterAll(() => rmSync(folder, { recursive: true }));

const members = ['701', '702', '703'];
const group = '501';
/** A record of each way in which it is told whose it is; `n` tells one from another. */
const recordOf = (member: string, n: number): [string, object][] => [
  [`season-vote/${group}/${member}`, { v: 1 }],
  [`evidence/${group}/blue/${member}/${n}`, { v: 1, n }],
  [`due/00/2026/direct-${member}/what/${n}`, { v: 1, n }],
  [`shared-recipe/${group}/${n}`, { v: 1, by: member }],
  [`challenge-event/${group}/9/0001/${n}`, { v: 1, by: member }],
  [`flaw-case/${group}/${n}`, { v: 1, member }],
  [`flaw-picture/${group}/${member}/${n}`, { v: 1, base64: 'x' }],
];

/** Whose every record is, by looking at all of them: the store itself, without notes. */
async function byLooking(store: Store, member: string): Promise<readonly string[]> {
  const all = await everything(store, { from: '!', to: '~' });
  const cases = all.filter(
    ({ key, value }) => key.startsWith('flaw-case/') && (value as { member?: string }).member === member,
  );
  const isTheirs = (key: string, value: unknown) =>
    key.split('/').some(part => part === member || part === `direct-${member}`) ||
    (value as { by?: string }).by === member ||
    cases.some(one => key === one.key || key.startsWith(`${one.key}/`));
  return all
    .filter(({ key, value }) => !key.startsWith('owned/') && isTheirs(key, value))
    .map(({ key }) => key);
}

async function byNotes(store: Store, member: string): Promise<readonly string[]> {
  const keys: string[] = [];
  for await (const { key } of ownedBy(store, member)) keys.push(key);
  return keys.toSorted();
}

const notes = async (store: Store) =>
  (await everything(store, { from: 'owned/', to: 'owned0' })).map(({ key }) => key);

type Step = { readonly member: number; readonly which: number; readonly n: number; readonly does: string };
const step = fc.record({
  member: fc.nat(2),
  which: fc.nat(6),
  n: fc.nat(3),
  does: fc.constantFrom('put', 'put', 'drop', 'answer'),
});

describe('what is noted of whose what is', () => {
  test.prop([fc.array(step, { maxLength: 60 })], { numRuns: 60 })(
    'is what looking at every record says, whatever is written and dropped',
    async steps => {
      await using held = await opened();
      const { store } = held;
      const writeOf = ({ member, which, n, does }: Step): Write => {
        const [key, value] = recordOf(members[member]!, n)[which]!;
        if (does === 'answer') return put(`flaw-case/${group}/${n}/answer/ash`, { v: 1 });
        return does === 'put' ? put(key, value) : drop(key);
      };
      for (const one of steps) await store.commit([writeOf(one)]);
      for (const member of members)
        expect(await byNotes(store, member)).toEqual(await byLooking(store, member));
      // Nothing is noted of what is gone.
      const noted = (await notes(store)).map(note => note.split('/').slice(2).join('/'));
      expect((await store.get(noted)).map(value => value !== undefined)).toEqual(noted.map(() => true));
      for (const member of members) await erase(store, member);
      expect(await notes(store)).toEqual([]);
    },
  );

  it('is written with the record or not at all', async () => {
    await using held = await opened();
    const { store } = held;
    const [key, value] = recordOf('701', 1)[1]!;
    await store.commit([put('taken', 1)]);
    await store.commit([{ kind: 'absent', key: 'taken' }, put(key, value)]);
    expect(await notes(store)).toEqual([]);
  });

  it('spares looking through what the group keeps of others', async () => {
    await using held = await opened();
    const { store } = held;
    await store.commit(
      Array.from({ length: 2_000 }, (_, n) => put(`evidence/${group}/blue/7${n}/1`, { v: 1 })),
    );
    await store.commit(recordOf('mine', 1).map(([key, value]) => put(key, value)));
    let read = 0;
    const counting: Store = {
      async get(keys) {
        read += keys.length;
        return await store.get(keys);
      },
      async range(...span) {
        const found = await store.range(...span);
        read += found.length;
        return found;
      },
      commit: writes => store.commit(writes),
      close: () => store.close(),
    };
    const counts = await countOf(counting, 'mine');
    expect(Object.values(counts).reduce((sum, count) => sum + count, 0)).toBe(6);
    expect(read).toBeLessThan(40);
  });
});

describe('a store in which nothing was noted', () => {
  /** As an older program writes: without notes. */
  async function older(name: string): Promise<string> {
    const path = join(folder, name);
    const store = new StrictStore(await SqliteAdapter.open(path), PATIENT);
    for (const [at, member] of members.entries())
      await store.commit(recordOf(member, at).map(([key, value]) => put(key, value)));
    await store.close();
    return path;
  }

  it('has all noted once it is opened, and then at once', async () => {
    const path = await older('older.sqlite');
    const store = await openStore(`sqlite:${path}`, PATIENT);
    expect(await isAllNoted(store)).toBe(true);
    for (const member of members)
      expect(await byNotes(store, member)).toEqual(await byLooking(store, member));
    expect(await notes(store)).toHaveLength(members.length * 7);
    await store.close();
  });

  it('is noted anew where the table of kinds says otherwise than when it was noted', async () => {
    const path = await older('other.sqlite');
    const raw = new StrictStore(await SqliteAdapter.open(path), PATIENT);
    await raw.commit([put('meta/owned', { v: 1, what: 'evidence' })]);
    await raw.close();
    const store = await openStore(`sqlite:${path}`, PATIENT);
    expect(await notes(store)).toHaveLength(members.length * 7);
    await store.close();
  });

  it('tells the same of whose what is by looking through it', async () => {
    const store = await openStore(`sqlite:${await older('raw.sqlite')}`, PATIENT, { asItIs: true });
    for (const member of members)
      expect(await byNotes(store, member)).toEqual(await byLooking(store, member));
    expect(await notes(store)).toEqual([]);
    await store.close();
  });

  it('has what an older program wrote beside us noted by the next look through the group', async () => {
    const path = join(folder, 'beside.sqlite');
    const store = await openStore(`sqlite:${path}`, PATIENT);
    const raw = new StrictStore(await SqliteAdapter.open(path), PATIENT);
    await raw.commit(recordOf('701', 1).map(([key, value]) => put(key, value)));
    await raw.close();
    await noteGroup(store, group);
    // All but what lies in their own talk with us, which is another group.
    expect(await notes(store)).toHaveLength(6);
    await store.close();
  });
});

async function opened() {
  const store = await openStore('sqlite::memory:', PATIENT);
  return { store, [Symbol.asyncDispose]: () => store.close() };
}
