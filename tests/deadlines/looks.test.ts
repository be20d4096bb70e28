import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Outbox } from '../../src/conversation/unasked/outbox.ts';
import { setLooks } from '../../src/deadlines/looks.ts';
import { duesBy, HOUSE } from '../../src/records/dues/dues.ts';
import { openStore } from '../../src/records/open.ts';
import { SWEEP } from '../../src/records/privacy/retention.ts';
import type { Store } from '../../src/records/store.ts';
import { PATIENT } from '../records/patience.ts';

const noon = Date.UTC(2026, 11, 1, 12);
const day = 86_400_000;
let store: Store;
beforeEach(async () => {
  store = await openStore('sqlite::memory:', PATIENT);
});
afterEach(() => store.close());

const speaking = (to: readonly string[], leads?: boolean): Outbox => ({
  serves: group => to.includes(group),
  groups: () => to,
  ...(leads !== undefined && { leads: () => leads }),
  post: () => Promise.reject(new Error('nothing is posted')),
  edit: () => Promise.reject(new Error('nothing is edited')),
});
const looks = async () => {
  const dues = await duesBy(store, new Date(noon + 2 * day));
  expect(dues.every(({ what, group, id }) => what === SWEEP && group === id)).toBe(true);
  return dues;
};

describe('at a start the next look is set', () => {
  test('through every group that is spoken to, however many, within a day', async () => {
    const groups = Array.from({ length: 450 }, (_, n) => String((BigInt(n) << 22n) + 7n));
    await setLooks(store, speaking(groups), noon);
    const dues = await looks();
    expect(new Set(dues.map(({ group }) => group))).toEqual(new Set([...groups, HOUSE]));
    for (const { at } of dues)
      expect([at.getTime() > noon, at.getTime() <= noon + day]).toEqual([true, true]);
  });

  test('of what lies in no group by the process that leads, and by no other', async () => {
    await setLooks(store, speaking(['1'], false), noon);
    expect((await looks()).map(({ group }) => group)).toEqual(['1']);
    await setLooks(store, speaking(['2'], true), noon);
    expect((await looks()).map(({ group }) => group).toSorted()).toEqual(['1', '2', HOUSE]);
  });

  test('once, however often a process starts that day', async () => {
    for (const minutes of [0, 1, 2]) await setLooks(store, speaking(['1']), noon + minutes * 60_000);
    expect(await looks()).toHaveLength(2);
  });
});
