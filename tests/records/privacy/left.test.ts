import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { keepReport } from '../../../src/records/evidence/index.ts';
import { noteShelf, sharedShelves } from '../../../src/records/group-shelves.ts';
import { openStore } from '../../../src/records/open.ts';
import { prefer } from '../../../src/records/preferences.ts';
import { retention, sweep, sweepDue } from '../../../src/records/privacy/retention.ts';
import { addItem } from '../../../src/records/shelf/index.ts';
import type { Store } from '../../../src/records/store.ts';
import { PATIENT } from '../patience.ts';
import { countOf } from './count-of.ts';

const me = '701234567890123456';
const [here, there] = ['501', '502'];
const direct = `direct-${me}`;
const start = new Date(1_700_000_000_000);
const day = 86_400_000;
const on = (days: number) => new Date(start.getTime() + days * day);

let store: Store;
/** The groups the member is in now; a group that is not listed cannot be asked. */
let isIn: Record<string, boolean>;

beforeEach(async () => {
  store = await openStore('sqlite::memory:', PATIENT);
  isIn = { [here]: true, [there]: true, [direct]: true };
  await addItem({ store, member: me }, { name: 'Dusk', grams: 20 }, { cause: '1', at: start });
  await prefer(store, me, { spoons: 'metric' });
  await store.commit(noteShelf(here, me, start));
});
afterEach(() => store.close());

const report = (group: string) =>
  keepReport(
    { store, group },
    { identity: 'ultramarine-blue', result: 'held', process: 'gel', at: start },
    { member: me, name: 'Bram', cause: `report-${group}` },
  );
const night = (group: string, days: number) =>
  sweep({
    store,
    group,
    now: on(days),
    hasMember: async (_, where) => isIn[where] ?? Promise.reject(new Error('of another process')),
  });
const kept = async () => {
  const { shelf, preferences, evidence } = await countOf(store, me);
  return { shelf: shelf > 0, preferences, evidence };
};

describe('whoever left one group', () => {
  it('and is in another that holds a report of theirs, but no note of a shelf, keeps all but the first’s', async () => {
    await report(here);
    await report(there);
    isIn[here] = false;
    await night(here, 1);
    await night(here, 1 + retention.left);
    expect(await kept()).toEqual({ shelf: true, preferences: 1, evidence: 1 });
  });

  it('after they were missed in another and came back there, keeps their shelf', async () => {
    await store.commit(noteShelf(there, me, start));
    isIn[there] = false;
    await night(there, 1);
    expect(await sharedShelves(store, there)).toEqual([]);
    isIn[there] = true;
    await night(there, 2);
    expect(await sharedShelves(store, there)).toHaveLength(1);
    isIn[here] = false;
    await night(here, 3);
    await night(here, 3 + retention.left);
    expect(await kept()).toMatchObject({ shelf: true, preferences: 1 });
  });

  it('and uses us in their own talk with us keeps what is theirs alone', async () => {
    await report(here);
    await store.commit([sweepDue(direct, start)]);
    isIn[here] = false;
    await night(here, 1);
    await night(here, 1 + retention.left);
    expect(await kept()).toEqual({ shelf: true, preferences: 1, evidence: 0 });
    // The account is gone: in their own talk the platform does not know them any more.
    isIn[direct] = false;
    await night(direct, 40);
    await night(direct, 40 + retention.left - 1);
    expect(await kept()).toMatchObject({ shelf: true });
    await night(direct, 40 + retention.left);
    expect(await kept()).toEqual({ shelf: false, preferences: 0, evidence: 0 });
  });

  it('and every other, is erased everywhere with the last of them, not before its days are over', async () => {
    await report(there);
    isIn = { [here]: false, [there]: false };
    await night(here, 1);
    await night(there, 11);
    await night(here, 1 + retention.left);
    expect(await kept()).toEqual({ shelf: true, preferences: 1, evidence: 1 });
    await night(there, 11 + retention.left);
    expect(await kept()).toEqual({ shelf: false, preferences: 0, evidence: 0 });
  });

  it('is erased in that one only while nobody can tell whether they came back to the other', async () => {
    await report(here);
    await report(there);
    isIn = { [here]: false, [there]: false };
    await night(there, 1);
    await night(here, 1);
    isIn = { [here]: false };
    await night(here, 1 + retention.left);
    expect(await kept()).toEqual({ shelf: true, preferences: 1, evidence: 1 });
  });

  it('does not hold up the others where the platform cannot tell of one of them', async () => {
    const you = '709999999999999999';
    await store.commit(noteShelf(here, you, start));
    const looked: string[] = [];
    const failing = sweep({
      store,
      group: here,
      now: start,
      hasMember: async member => {
        looked.push(member);
        if (member === me) throw new Error('away');
        return false;
      },
    });
    await expect(failing).rejects.toThrow('away');
    expect(looked.sort()).toEqual([me, you]);
    expect((await countOf(store, you)).shelf).toBe(2);
    expect((await countOf(store, me)).shelf).toBeGreaterThan(2);
  });
});
