import { copyFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { listChallenges, photosOf, resultAt, standingBars } from '../../src/records/challenges/index.ts';
import { duesBy } from '../../src/records/dues/dues.ts';
import { groupSettings, keepGroupSettings } from '../../src/records/group.ts';
import { sharedShelves } from '../../src/records/group-shelves.ts';
import { formatKey, groupSettingsKey, shelfItem } from '../../src/records/keys.ts';
import { FORMAT, openStore } from '../../src/records/open.ts';
import { preferencesOf } from '../../src/records/preferences.ts';
import { isAllNoted } from '../../src/records/privacy/owned-index.ts';
import { listRecipes } from '../../src/records/recipes/index.ts';
import { moment, read, recordKind, written } from '../../src/records/record.ts';
import { onSetAside, type SetAside } from '../../src/records/set-aside.ts';
import { addItem, describeItem, listShelf, showItem, useItem } from '../../src/records/shelf/index.ts';
import { everything, put, type Store } from '../../src/records/store.ts';
import { wordsIn } from '../../src/words/index.ts';
import { exportOf } from './privacy/exported.ts';

const folder = mkdtempSync(join(tmpdir(), 'releases-'));
afterAll(() => rmSync(folder, { recursive: true }));

/**
 * Written by the first release: its demo as it laid it out, with the settings of the group and two preferences, all but
 * one of the photos taken out to keep it small. Never write it anew: it stands for what is out there.
 */
const FIRST = new URL('fixtures/first-release.sqlite', import.meta.url).pathname;
const group = '110000000000000001';
const [odile, bram] = ['110000000000000002', '110000000000000003'];

describe('a store of the first release', () => {
  let store: Store;
  beforeAll(async () => {
    copyFileSync(FIRST, join(folder, 'first.sqlite'));
    store = await openStore(`sqlite:${join(folder, 'first.sqlite')}`);
    return () => store.close();
  });

  it('opens, and everything in it reads', async () => {
    const left: SetAside[] = [];
    const leave = onSetAside(one => left.push(one));
    expect(await groupSettings(store, group)).toEqual({ zone: 'Europe/Lisbon', stewardRole: '42' });
    expect(await preferencesOf(store, odile)).toMatchObject({ spoons: 'metric', language: 'es' });
    expect((await sharedShelves(store, group)).map(items => items.length).toSorted((a, b) => a - b)).toEqual([
      2, 3, 3, 3,
    ]);
    expect(await listRecipes({ store, member: odile, group })).not.toEqual([]);
    const [challenge] = await listChallenges({ store, group });
    const now = Number.MAX_SAFE_INTEGER;
    expect(standingBars(challenge!, now)).toHaveLength(3);
    const photos = await photosOf({ store, group }, challenge!.id, standingBars(challenge!, now));
    expect(photos.filter(photo => photo !== undefined)).toHaveLength(1);
    expect((await resultAt({ store, group }, challenge!, now)).ranking.flat()).toHaveLength(3);
    leave();
    expect(left).toEqual([]);
  });

  it('has its deadlines where they are looked for now', async () => {
    const dues = await duesBy(store, new Date('2026-12-04T00:00:00Z'), { ids: [0], of: 1 });
    expect(dues.map(({ at, group: whose, what }) => [at.toISOString(), whose, what])).toEqual([
      ['2026-12-02T01:56:00.000Z', group, 'challenge-votes-soon'],
      ['2026-12-03T01:56:05.000Z', group, 'challenge-close'],
    ]);
    const keys = (await everything(store, { from: 'due/', to: 'due0' })).map(({ key }) => key);
    expect(keys.map(key => key.split('/').length)).toEqual([6, 6]);
  });

  it('has noted whose what is, and an older program leaves it alone from then on', async () => {
    expect(await isAllNoted(store)).toBe(true);
    expect((await exportOf(store, bram, new Date())).records.challenges.length).toBeGreaterThan(1);
    expect(await store.get([formatKey()])).toEqual([{ v: 1, format: FORMAT }]);
  });

  it('goes on being written', async () => {
    const shelf = { store, member: bram };
    const [item] = await listShelf(shelf);
    const left = (item!.stock.grams ?? 0) - 1;
    expect((await useItem(shelf, item!.id, 1, { cause: 'later', at: new Date() })).left).toBe(left);
    expect((await showItem(shelf, item!.id)).history.length).toBeGreaterThan(1);
    expect((await exportOf(store, bram, new Date())).records.shelf.length).toBeGreaterThan(3);
  });

  it('is the file that was written then', () => {
    expect(readFileSync(FIRST).length).toBeLessThan(120_000);
  });
});

describe('a kind of record', () => {
  const first = recordKind('measure', { spoons: z.number() });
  const second = recordKind('measure', { millilitres: z.number() }, [
    ({ spoons }) => ({ millilitres: 5 * Number(spoons) }),
  ]);
  const third = recordKind('measure', { litres: z.number() }, [
    ...second.steps,
    ({ millilitres }) => ({ litres: Number(millilitres) / 1000 }),
  ]);

  it('is read from every earlier version, by one step for each', () => {
    expect(read(second, 'k', written(first, { spoons: 2 }))).toEqual({ millilitres: 10 });
    expect(read(third, 'k', written(first, { spoons: 2 }))).toEqual({ litres: 0.01 });
    expect(read(third, 'k', written(second, { millilitres: 7 }))).toEqual({ litres: 0.007 });
    expect(read(third, 'k', written(third, { litres: 3 }))).toEqual({ litres: 3 });
  });

  it('of a newer version is not guessed at', () => {
    expect(() => read(first, 'k', written(third, { litres: 3 }))).toThrow(
      expect.objectContaining({ kind: 'unknown-version' }),
    );
  });

  it('of the settings of a group was once called otherwise', async () => {
    const store = await openStore('sqlite::memory:');
    await store.commit([put(groupSettingsKey('g'), { version: 1, zone: 'Europe/Lisbon' })]);
    expect(await groupSettings(store, 'g')).toEqual({ zone: 'Europe/Lisbon' });
    await store.close();
  });
});

/* During a rolling update, and after a rollback, this program writes over what a newer one has written. */
describe('an optional field of a newer program', () => {
  const older = recordKind('measure', { spoons: z.number(), at: moment.optional() });
  const newer = recordKind('measure', {
    spoons: z.number(),
    at: moment.optional(),
    heaped: z.boolean().optional(),
    notes: z.array(z.string()).optional(),
  });
  const stored = written(newer, { spoons: 2, at: new Date(0), heaped: true, notes: ['a', 'b'] });

  it('is read over, and kept where the record is changed and written again', () => {
    const before = read(older, 'k', stored);
    expect(Object.entries(before)).toEqual([
      ['spoons', 2],
      ['at', new Date(0)],
    ]);
    const again = written(older, { ...before, spoons: 3 });
    expect(again).toEqual({ ...(stored as object), spoons: 3 });
    expect(read(newer, 'k', JSON.parse(JSON.stringify(again)))).toEqual({
      spoons: 3,
      at: new Date(0),
      heaped: true,
      notes: ['a', 'b'],
    });
  });

  it('is not what a slip of this program leaves in a record: only what was stored is kept', () => {
    const slip = { spoons: 2, spun: true };
    expect(written(older, slip)).toEqual({ v: 1, spoons: 2 });
    const { at, ...timeless } = read(older, 'k', stored);
    expect(at).toEqual(new Date(0));
    expect(written(older, timeless)).toEqual({ v: 1, spoons: 2, heaped: true, notes: ['a', 'b'] });
  });

  it('cannot take the place of a field that this program knows, nor of the version', () => {
    const before = read(older, 'k', stored);
    expect(written(older, { ...before, spoons: 5 })).toMatchObject({ v: 1, spoons: 5 });
    expect(read(older, 'k', written(older, before))).toEqual(before);
  });

  it('outlives a change of the group’s settings and of what a jar is', async () => {
    await using store = await disposable('sqlite::memory:');
    await store.commit([put(groupSettingsKey('g'), { v: 2, zone: 'Europe/Lisbon', greeting: 'short' })]);
    const { callsRole: _, ...before } = await groupSettings(store, 'g');
    await keepGroupSettings(store, 'g', { ...before, threads: false });
    expect(await store.get([groupSettingsKey('g')])).toEqual([
      { v: 2, zone: 'Europe/Lisbon', greeting: 'short', threads: false },
    ]);
    const mine = { store, member: '7' };
    const { id } = await addItem(mine, { name: 'Moss', grams: 5 }, { cause: 'a', at: new Date() });
    const [item] = await store.get([shelfItem('7', id)]);
    await store.commit([put(shelfItem('7', id), { ...(item as object), finish: 'matte' })]);
    await describeItem(mine, id, { pigmentFraction: 0.3 }, { cause: 'b', at: new Date() });
    expect(await store.get([shelfItem('7', id)])).toEqual([
      { ...(item as object), finish: 'matte', pigmentFraction: 0.3 },
    ]);
  });
});

const disposable = async (address: string) => {
  const store = await openStore(address);
  return Object.assign(store, { [Symbol.asyncDispose]: () => store.close() });
};

describe('a store of a newer program', () => {
  it('is left alone, with one sentence that says what to do', async () => {
    const address = `sqlite:${join(folder, 'newer.sqlite')}`;
    const store = await openStore(address);
    await store.commit([put(formatKey(), { v: 1, format: FORMAT + 1 })]);
    await store.close();
    const refusal = await openStore(address).catch((error: unknown) => error);
    expect(refusal).toMatchObject({ name: 'Refusal', id: 'store-newer' });
    expect(wordsIn('en').refusal(refusal as never)).toMatch(
      /newer version \(format 3, I know 2\): start that version/,
    );
  });
});
