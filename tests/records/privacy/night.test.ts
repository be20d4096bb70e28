import { afterEach, beforeEach, describe, expect, it, test } from 'vitest';
import { readCommands } from '../../../src/conversation/registry/registry.ts';
import { keepReport } from '../../../src/records/evidence/index.ts';
import { keepGroupSettings } from '../../../src/records/group.ts';
import { noteShelf } from '../../../src/records/group-shelves.ts';
import { leaveGroup, leftGroups, rejoinGroup } from '../../../src/records/left-groups.ts';
import { openStore } from '../../../src/records/open.ts';
import { prefer } from '../../../src/records/preferences.ts';
import { LookedAfter } from '../../../src/records/privacy/looked-after.ts';
import { isBare, nightSweep } from '../../../src/records/privacy/night.ts';
import { retention, sweep, sweepDue } from '../../../src/records/privacy/retention.ts';
import { addItem, useItem } from '../../../src/records/shelf/index.ts';
import { everything, put, type Store } from '../../../src/records/store.ts';
import { PATIENT } from '../patience.ts';

const [me, you] = ['701234567890123456', '709999999999999999'];
const [here, there] = ['501', '502'];
const start = new Date(1_700_000_000_000);
const on = (days: number) => new Date(start.getTime() + days * 86_400_000);
const all = { from: '!', to: '~' };

let store: Store;
beforeEach(async () => {
  store = await openStore('sqlite::memory:', PATIENT);
});
afterEach(() => store.close());
const kindsKept = async () =>
  [...new Set((await everything(store, all)).map(({ key }) => key.split('/')[0]))].filter(
    one => one !== 'meta',
  );

test.each(['asked', 'late-plan', 'late-match', 'late-fold'])(
  '%s goes after its two days, though its member never asks again',
  async kind => {
    await store.commit([put(`${kind}/${me}/a`, { v: 1, at: start.toISOString() })]);
    await nightSweep({ store, now: on(retention.recent - 0.1) });
    expect(await kindsKept()).toEqual([kind]);
    await nightSweep({ store, now: on(retention.recent + 0.1) });
    expect(await kindsKept()).toEqual([]);
  },
);

test('a case of flaws goes with its group’s night after two days, and not before', async () => {
  await store.commit([put(`flaw-case/${here}/${'1'.padStart(20, '0')}`, { v: 1, at: start.toISOString() })]);
  const night = (days: number) => sweep({ store, group: here, now: on(days), hasMember: async () => true });
  await night(1.9);
  expect(await kindsKept()).toContain('flaw-case');
  await night(2.1);
  expect(await kindsKept()).not.toContain('flaw-case');
});

describe('that something was done once', () => {
  const shelf = () => ({ store, member: me });
  const fill = async () => {
    await addItem(shelf(), { name: 'Dusk', grams: 20 }, { cause: '1', at: start });
    await useItem(shelf(), 'Dusk', 2, { cause: '2', at: start });
    await keepReport(
      { store, group: here },
      { identity: 'ultramarine-blue', result: 'held', process: 'gel', at: start },
      { member: me, name: 'Bram', cause: '3' },
    );
    await store.commit([put(`recipe-once/${me}/4`, { v: 1, name: 'Dusk', at: start.toISOString() })]);
  };
  const once = async () => (await kindsKept()).filter(kind => kind?.endsWith('-once'));

  it('is known as long as a button could do it again, and then not', async () => {
    await fill();
    await nightSweep({ store, now: on(retention.once - 0.1) });
    expect((await useItem(shelf(), 'Dusk', 2, { cause: '2', at: start })).repeated).toBe(true);
    expect(await once()).toEqual(['evidence-once', 'recipe-once', 'shelf-once']);
    await nightSweep({ store, now: on(retention.once + 0.1) });
    expect(await once()).toEqual([]);
    expect(await kindsKept()).toContain('shelf');
  });

  it('by an earlier program, which noted no time, counts from the first night', async () => {
    const outcome = { v: 1, action: 'use', id: 'a', name: 'Dusk', low: false, lot: 1 };
    await store.commit([put(`shelf-once/${me}/2`, outcome)]);
    await nightSweep({ store, now: on(50) });
    await nightSweep({ store, now: on(50 + retention.once - 0.1) });
    expect(await once()).toEqual(['shelf-once']);
    await nightSweep({ store, now: on(50 + retention.once + 0.1) });
    expect(await once()).toEqual([]);
  });

  it('is kept for longer than any button that changes a shelf, a recipe or a report lives', async () => {
    const registry = await readCommands(new URL('../../../commands/', import.meta.url));
    const longest = [...registry.followUps]
      .filter(([name]) => !name.startsWith('challenge'))
      .map(([, { hours }]) => hours);
    expect(longest.length).toBeGreaterThan(10);
    expect(Math.max(...longest)).toBeLessThan(retention.once * 24);
  });
});

describe('a group that put us out', () => {
  /** Two members here, one of them in another group too; and what the group itself set. */
  const live = async () => {
    for (const [member, groups] of [
      [me, [here]],
      [you, [here, there]],
    ] as const) {
      await addItem({ store, member }, { name: 'Dusk', grams: 20 }, { cause: `add-${member}`, at: start });
      await prefer(store, member, { spoons: 'us' });
      for (const group of groups) await store.commit(noteShelf(group, member, start));
    }
    await keepGroupSettings(store, here, { zone: 'UTC' });
    await store.commit([
      put(`challenge-end/${here}/9`, { v: 1, how: 'closed', at: 1 }),
      put(`challenge-photo/${here}/9/1`, { v: 1, base64: 'x' }),
      put(`season/${here}`, { v: 1 }),
    ]);
    await leaveGroup(store, here, start);
  };
  const text = async () => JSON.stringify(await everything(store, all));

  it('has all of it erased when its days are over, with those who were nowhere else, and the note last', async () => {
    await live();
    await nightSweep({ store, now: on(retention.left - 1) });
    expect(await text()).toContain(`group-shelf/${here}`);
    await nightSweep({ store, now: on(retention.left + 1) });
    const after = await text();
    expect(after).not.toMatch(new RegExp(`"[a-z-]+/${here}[/"]`));
    expect(after).not.toContain(me);
    expect(after).toContain(`shelf/${you}`);
    expect(after).toContain(`preference/${you}`);
    expect(await leftGroups(store)).toEqual([]);
  });

  it('and took us in again keeps everything', async () => {
    await live();
    await rejoinGroup(store, here);
    const before = await text();
    await nightSweep({ store, now: on(retention.left + 1) });
    expect(await text()).toBe(before);
  });

  it('or took us in so lately that the note still stands, keeps everything', async () => {
    await live();
    const before = await text();
    await nightSweep({ store, now: on(retention.left + 1), isBack: group => group === here });
    expect(await text()).toBe(before);
  });
});

describe('the next look through a group', () => {
  const dues = async () => (await everything(store, { from: 'due/', to: 'due0' })).map(({ key }) => key);

  it('is set by the first thing kept there that does not go by itself, once a day', async () => {
    const question = new LookedAfter(store, { group: here, at: start.getTime() });
    await question.commit([put(`late-plan/${me}/1`, { v: 1 })]);
    await question.commit([{ kind: 'drop', key: `swap/${here}/${me}/a` }]);
    expect(await dues()).toEqual([]);
    await question.commit([put(`evidence/${here}/blue/${me}/gel`, { v: 1 })]);
    expect(await dues()).toEqual([sweepDue(here, start).key]);
    await store.commit([{ kind: 'drop', key: sweepDue(here, start).key }]);
    await question.commit([put(`evidence/${here}/green/${me}/gel`, { v: 1 })]);
    expect(await dues()).toEqual([]);
    await new LookedAfter(store, { group: here, at: on(1).getTime() }).commit([
      put(`swap/${here}/${me}/a`, {}),
    ]);
    expect(await dues()).toEqual([sweepDue(here, on(1)).key]);
  });

  it('is set with a commit that sets it itself, too', async () => {
    await new LookedAfter(store, { group: here, at: start.getTime() }).commit(noteShelf(here, me, start));
    expect(await dues()).toHaveLength(1);
  });

  it('of all groups is spread over the day', () => {
    const hours = new Array<number>(24).fill(0);
    for (let group = 0; group < 2_400; group += 1) {
      const at = /^due\/\d\d\/([^/]+)/.exec(sweepDue(`70123456789012${1_000 + group}`, start).key)?.[1] ?? '';
      hours[Number(at.slice(11, 13))]! += 1;
    }
    // 100 each by chance, give or take 10: four standard deviations.
    expect(Math.min(...hours)).toBeGreaterThan(60);
    expect(Math.max(...hours)).toBeLessThan(140);
  });

  it('ends where nothing is kept any more', async () => {
    expect(await isBare(store, here)).toBe(true);
    await store.commit([put(`swap/${here}/${me}/a`, {})]);
    expect(await isBare(store, here)).toBe(false);
    expect(await isBare(store, there)).toBe(true);
    expect(await isBare(store, `direct-${me}`)).toBe(true);
    await prefer(store, me, { spoons: 'us' });
    expect(await isBare(store, `direct-${me}`)).toBe(false);
  });
});
