import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import * as flaws from '../../../src/records/flaws/index.ts';
import { openStore } from '../../../src/records/open.ts';
import { retention, sweep } from '../../../src/records/privacy/retention.ts';
import type { Store } from '../../../src/records/store.ts';

let store: Store;
let scope: flaws.FlawScope;
beforeEach(async () => {
  store = await openStore('sqlite::memory:');
  scope = { store, group: 'g' };
});
afterEach(() => store.close());

const at = new Date('2026-03-01T10:00:00Z');
const give = (id: string, member = 'm', bytes = 100, of = scope) =>
  flaws.givePicture(of, id, {
    member,
    cause: 'soda-ash',
    jpeg: new Uint8Array(bytes).fill(Number(id) % 256),
    width: 10,
    height: 8,
    at,
  });
const set = (from = 0, most = 1e6) => flaws.labelledSet(scope, { from, most });

describe('pictures that members gave', () => {
  test('come out as they went in, of this group only', async () => {
    await give('7');
    await give('8', 'm', 100, { store, group: 'other' });
    const { pictures, next } = await set();
    expect(pictures).toHaveLength(1);
    expect(pictures[0]).toMatchObject({ cause: 'soda-ash', width: 10, height: 8 });
    expect([...pictures[0]!.jpeg]).toEqual(Array.from({ length: 100 }, () => 7));
    expect(next).toBeUndefined();
    expect((await set()).pictures[0]?.name).toBe(pictures[0]?.name);
  });

  test('are at most 20 of a member in a group, one of a case however often it is given', async () => {
    for (let id = 0; id < 20; id++) await give(String(id));
    await give('19');
    await expect(give('20')).rejects.toMatchObject({
      id: 'flaw-pictures-full',
      values: { most: 20, of: 'member' },
    });
    await give('20', 'other');
    expect(await flaws.picturesOf(scope, 'm')).toHaveLength(20);
    expect(await flaws.takePicturesBack(scope, 'm', '3')).toBe(1);
    await give('20');
  });

  test('are at most 400 in a group', async () => {
    for (let member = 0; member < 20; member++)
      for (let id = 0; id < 20; id++) await give(String(id), `m${member}`, 1);
    await expect(give('1', 'late')).rejects.toMatchObject({
      id: 'flaw-pictures-full',
      values: { most: 400, of: 'group' },
    });
  });

  test('come in parts that fit, each once, one that is too large by itself as well', async () => {
    for (let id = 0; id < 7; id++) await give(String(id), 'm', id === 4 ? 900 : 100);
    const names: string[] = [];
    const sizes: number[] = [];
    for (let from: number | undefined = 0; from !== undefined; ) {
      const part: Awaited<ReturnType<typeof set>> = await set(from, 300);
      names.push(...part.pictures.map(({ name }) => name));
      sizes.push(part.pictures.length);
      from = part.next;
    }
    expect(sizes).toEqual([3, 1, 1, 2]);
    expect(new Set(names).size).toBe(7);
  });

  test('of whoever left are left out at once, and erased after their days', async () => {
    await give('1', 'gone');
    await give('2', 'here');
    const swept = (days: number) =>
      sweep({
        store,
        group: 'g',
        now: new Date(at.getTime() + days * 86_400_000),
        hasMember: async member => member === 'here',
      });
    await swept(0);
    expect((await set()).pictures).toHaveLength(1);
    expect(await flaws.picturesOf(scope, 'gone')).toHaveLength(1);
    await swept(retention.left + 1);
    expect(await flaws.picturesOf(scope, 'gone')).toHaveLength(0);
    expect(await flaws.picturesOf(scope, 'here')).toHaveLength(1);
  });
});
