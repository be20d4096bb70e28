import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  castBallot,
  enterBar,
  openChallenge,
  photosOf,
  readChallenge,
  standingBars,
  withdrawBar,
} from '../../../src/records/challenges/index.ts';
import { keepReport } from '../../../src/records/evidence/index.ts';
import { noteShelf, sharedShelves } from '../../../src/records/group-shelves.ts';
import * as keys from '../../../src/records/keys.ts';
import { openStore } from '../../../src/records/open.ts';
import { prefer } from '../../../src/records/preferences.ts';
import { erase } from '../../../src/records/privacy/erase.ts';
import { kinds, topics } from '../../../src/records/privacy/kinds.ts';
import { retention, sweep } from '../../../src/records/privacy/retention.ts';
import { addItem, listShelf, removeItem, useItem } from '../../../src/records/shelf/index.ts';
import { everything, put, type Store } from '../../../src/records/store.ts';
import { sweepUndoables } from '../../../src/records/undo/index.ts';
import { PATIENT } from '../patience.ts';
import { countOf } from './count-of.ts';
import { exportOf } from './exported.ts';

let store: Store;
beforeEach(async () => {
  store = await openStore('sqlite::memory:', PATIENT);
});
afterEach(() => store.close());

const [me, you] = ['701234567890123456', '709999999999999999'];
const [here, there] = ['501', '502'];
const at = new Date(1_700_000_000_000);
const change = (cause: string) => ({ cause, at });
const all = { from: '!', to: '~' };
const textOf = async () => JSON.stringify(await everything(store, all));

const terms = {
  title: 'Dusk',
  brief: '',
  palette: [],
  constraint: 'none',
  class: 'open',
  zone: 'UTC',
  opensAt: 1_000,
  entriesUntil: 100_000_000,
  votesUntil: 200_000_000,
  method: 'schulze',
  decides: 'votes',
  ties: 'shared',
  entriesPerMember: 1,
  anonymous: true,
  runningTotals: false,
} as const;
const photo = new Uint8Array([0x89, 1, 2, 250]);
const scope = {
  group: here,
  get store() {
    return store;
  },
};

/** A little of everything, of two members, in two groups; a challenge with both their bars and votes. */
async function live() {
  for (const member of [me, you]) {
    const shelf = { store, member };
    await addItem(
      shelf,
      { name: `Dusk of ${member}`, colourant: 'ultramarine-blue', grams: 20 },
      change(`${member}1`),
    );
    await useItem(shelf, `Dusk of ${member}`, 2, change(`${member}2`));
    await prefer(store, member, { spoons: 'metric' });
    for (const group of [here, there]) {
      await store.commit(noteShelf(group, member, at));
      await keepReport(
        { store, group },
        { identity: 'ultramarine-blue', result: 'held', process: 'gel', at, note: `note of ${member}` },
        { member, cause: `${member}${group}`, name: 'Ultramarine blue' },
      );
    }
  }
  await openChallenge(scope, { terms, channel: 'c', language: 'en' }, { id: '9', at: 1_000, by: '7' });
  for (const [n, member] of [me, you].entries())
    await enterBar(
      scope,
      '9',
      {
        bar: {
          title: `Bar ${n}`,
          maker: `Maker ${member}`,
          colourants: [],
          colour: { unscored: 'no-white' },
        },
        photo,
      },
      { id: `10${n}`, at: 2_000 + n, by: member },
    );
  await castBallot(
    scope,
    '9',
    { chosen: [['101']], joinedAt: undefined },
    { id: '200', at: 150_000_000, by: me },
  );
}

describe('every kind of record', () => {
  /** Whatever a function of the layout is given, it makes a key, or a span of keys, that begins with its kind. */
  const firstPartOf = ([name, made]: [string, unknown]): string[] => {
    if (typeof made !== 'function' || ['alone', 'part', 'textOfPart', 'under'].includes(name)) return [];
    const parts = Array.from({ length: made.length }, () => '1');
    const key: unknown = made(...(name === 'dueBy' || name === 'dueKey' ? [new Date(0), ...parts] : parts));
    const text = typeof key === 'string' ? key : (key as { from: string }).from;
    return [text.split('/')[0] ?? ''];
  };

  it('says whose it is, and what becomes of it', () => {
    const named = new Set(Object.entries(keys).flatMap(firstPartOf));
    expect(named.size).toBeGreaterThan(25);
    expect(new Set(kinds.keys())).toEqual(named);
  });
});

describe('everything about me', () => {
  it('is one JSON with every record that names me, pictures included, and nothing of another', async () => {
    await live();
    const exported = await exportOf(store, me, at);
    const text = JSON.stringify(exported);
    expect(JSON.parse(text)).toEqual(exported);
    for (const topic of ['shelf', 'preferences', 'evidence', 'challenges'] as const)
      expect([topic, exported.records[topic].length > 0]).toEqual([topic, true]);
    expect(text).toContain(Buffer.from(photo).toString('base64'));
    expect(text).not.toContain(you);
    // Nothing names me that the export leaves out, but what the group's own records say.
    const told = new Set(topics.flatMap(topic => exported.records[topic].map(({ key }) => key)));
    const naming = (await everything(store, all)).filter(entry => JSON.stringify(entry).includes(me));
    // Interaction ids here begin with the member's; `evidence-once` holds those alone.
    const left = naming.filter(({ key }) => !told.has(key) && !/^(?:evidence-once|owned)\//.test(key));
    expect(left).toEqual([]);
  });

  it('is erased, and nothing of another is', async () => {
    await live();
    const before = await exportOf(store, you, at);
    const { renamed } = await erase(store, me);
    expect(renamed).toBeGreaterThan(0);
    const left = (await everything(store, all)).filter(({ key }) => !key.startsWith('evidence-once/'));
    expect(JSON.stringify(left)).not.toContain(me);
    expect(await exportOf(store, you, at)).toEqual(before);
    expect(Object.values(await countOf(store, me)).every(count => count === 0)).toBe(true);
  });

  it('of one kind leaves the others', async () => {
    await live();
    await erase(store, me, { asked: topic => topic === 'shelf' });
    expect(await countOf(store, me)).toMatchObject({ shelf: 0, preferences: 1, evidence: 2 });
    expect(await listShelf({ store, member: you })).toHaveLength(1);
  });
});

describe('my part in a challenge', () => {
  it('stays without my name or photo, and a ballot in a vote that has ended still counts', async () => {
    await live();
    await store.commit([put(keys.challengeEnd(here, '9'), { v: 1, how: 'closed', at: 200_000_000 })]);
    await erase(store, me);
    const challenge = await readChallenge(scope, '9');
    const bars = standingBars(challenge!, 250_000_000);
    expect(bars.map(({ bar }) => [bar.title, bar.maker])).toEqual([
      ['Bar 0', '—'],
      ['Bar 1', `Maker ${you}`],
    ]);
    expect((await photosOf(scope, '9', bars)).map(one => one !== undefined)).toEqual([false, true]);
    expect(await everything(store, keys.under(keys.challengeBallots(here, '9')))).toHaveLength(1);
  });

  it('a ballot in a vote that runs is withdrawn', async () => {
    await live();
    await erase(store, me);
    expect(await everything(store, keys.under(keys.challengeBallots(here, '9')))).toEqual([]);
  });

  it('a withdrawn entry takes its photo with it', async () => {
    await live();
    expect(await textOf()).toContain('challenge-photo/501/9/100');
    await withdrawBar(scope, '9', '100', { id: '300', at: 3_000, by: me });
    expect(await textOf()).not.toContain('challenge-photo/501/9/100');
    expect(await textOf()).toContain('challenge-photo/501/9/101');
  });
});

it('a jar taken off the shelf leaves its name nowhere once that can no longer be undone', async () => {
  const shelf = { store, member: me };
  await addItem(shelf, { name: 'Secret dusk', grams: 20 }, change('1'));
  await useItem(shelf, 'Secret dusk', 2, change('2'));
  await addItem(shelf, { name: 'Moss', grams: 20 }, change('3'));
  await removeItem(shelf, 'Secret dusk', change('4'));
  const later = (minutes: number) => new Date(at.getTime() + minutes * 60_000);
  await sweepUndoables(store, later(10));
  expect(await textOf()).toMatch(/secret dusk/i);
  await sweepUndoables(store, later(10.1));
  expect(await textOf()).not.toMatch(/secret/i);
  expect(await textOf()).toContain('Moss');
  expect((await useItem(shelf, 'Moss', 1, change('2'))).repeated).toBe(true);
});

describe('whoever left a group', () => {
  const day = 86_400_000;
  const daysOn = (days: number) => new Date(at.getTime() + days * day);
  const gone = (group: string, now: Date) =>
    sweep({ store, group, now, hasMember: async member => member !== me });

  it('draws none of its palettes any more, at once', async () => {
    await live();
    await gone(here, at);
    expect((await sharedShelves(store, here)).flat().map(({ name }) => name)).toEqual([`Dusk of ${you}`]);
    expect(await listShelf({ store, member: me })).toHaveLength(1);
  });

  it('is erased there after its days and not before, everywhere once they are nowhere', async () => {
    await live();
    await gone(here, at);
    await gone(here, daysOn(retention.left - 0.1));
    expect((await countOf(store, me)).evidence).toBe(2);
    await gone(here, daysOn(retention.left));
    expect(await countOf(store, me)).toMatchObject({ evidence: 1, preferences: 1, challenges: 0 });
    await gone(there, daysOn(1));
    await gone(there, daysOn(2 * retention.left));
    expect(Object.values(await countOf(store, me)).every(count => count === 0)).toBe(true);
    expect((await countOf(store, you)).evidence).toBe(2);
  });

  it('and came back has lost nothing', async () => {
    await live();
    await gone(here, at);
    const back = { store, group: here, hasMember: async () => true };
    await sweep({ ...back, now: daysOn(20) });
    await sweep({ ...back, now: daysOn(retention.left + 1) });
    await gone(here, daysOn(retention.left + 2));
    expect((await countOf(store, me)).evidence).toBe(2);
  });

  it('is not taken for gone when nobody can tell', async () => {
    await live();
    const unsure = sweep({
      store,
      group: here,
      now: at,
      hasMember: () => Promise.reject(new Error('the platform is away')),
    });
    await expect(unsure).rejects.toThrow('away');
    expect((await sharedShelves(store, here)).flat()).toHaveLength(2);
  });
});

it('photos of a challenge go a year after its end', async () => {
  await live();
  const ended = 200_000_000;
  await store.commit([put(keys.challengeEnd(here, '9'), { v: 1, how: 'closed', at: ended })]);
  const swept = (days: number) =>
    sweep({ store, group: here, now: new Date(ended + days * 86_400_000), hasMember: async () => true });
  await swept(retention.photos - 1);
  expect(await textOf()).toContain('challenge-photo/');
  await swept(retention.photos);
  expect(await textOf()).not.toContain('challenge-photo/');
});
