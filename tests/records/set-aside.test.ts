import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { startScheduler } from '../../src/deadlines/scheduler.ts';
import { listChallenges } from '../../src/records/challenges/index.ts';
import { duesBy, putDue } from '../../src/records/dues/dues.ts';
import { noteShelf, sharedShelves } from '../../src/records/group-shelves.ts';
import * as keys from '../../src/records/keys.ts';
import { openStore } from '../../src/records/open.ts';
import { onSetAside } from '../../src/records/set-aside.ts';
import { addItem, findItem, listShelf, setAsideOn, useItem } from '../../src/records/shelf/index.ts';
import { put, type Store } from '../../src/records/store.ts';

let store: Store;
beforeEach(async () => {
  store = await openStore('sqlite::memory:');
});
afterEach(() => store.close());

const change = (cause: string) => ({ cause, at: new Date(1_700_000_000_000) });
const jar = (name: string) => ({ name, colourant: 'ultramarine-blue', grams: 20 });

/** A jar of which one record is not what it should be. */
async function shelfWithBadJar(member: string) {
  const shelf = { store, member };
  await addItem(shelf, jar('Dusk'), change('c1'));
  await addItem(shelf, jar('Moss'), change('c2'));
  await store.commit([put(keys.shelfItem(member, 'c1'), { v: 1, nonsense: true })]);
  return shelf;
}

describe('one unreadable record', () => {
  it('leaves the rest of its owner’s shelf, and of the group’s, as it was', async () => {
    const shelf = await shelfWithBadJar('7');
    await store.commit(noteShelf('g', '7', new Date()));
    expect((await listShelf(shelf)).map(({ name }) => name)).toEqual(['Moss']);
    expect((await findItem(shelf, 'moss')).name).toBe('Moss');
    expect((await useItem(shelf, 'Moss', 5, change('c3'))).left).toBe(15);
    expect(await setAsideOn(shelf)).toBe(1);
    expect((await sharedShelves(store, 'g')).flat().map(({ name }) => name)).toEqual(['Moss']);
  });

  it('keeps its name from another jar, in one sentence and at once', async () => {
    const shelf = await shelfWithBadJar('6');
    await expect(addItem(shelf, jar('dusk'), change('c9'))).rejects.toMatchObject({
      id: 'shelf-name-set-aside',
    });
    expect((await addItem(shelf, jar('Dawn'), change('c10'))).name).toBe('Dawn');
  });

  it('of a fact sets its jar aside whole: an answer without its dish test would be another answer', async () => {
    const shelf = { store, member: '8' };
    await addItem(shelf, jar('Dusk'), change('c1'));
    await store.commit([put(keys.shelfLotFact('8', 'c1', 1, 'dish-test'), { v: 1, result: 'mud' })]);
    expect(await listShelf(shelf)).toEqual([]);
    expect(await setAsideOn(shelf)).toBe(1);
  });

  it('among the dues stops none of the others', async () => {
    const at = new Date(1_700_000_000_000);
    await store.commit([
      put(keys.dueKey(at, 'g', 'challenge-close', 'bad'), 'gibberish'),
      putDue({ at, group: 'g', what: 'ring', id: '1' }),
    ]);
    const rung: string[] = [];
    const faults: unknown[] = [];
    const scheduler = startScheduler({
      store,
      serves: () => true,
      acts: { ring: async due => void rung.push(due.id) },
      now: () => at.getTime(),
      onFault: fault => faults.push(fault),
    });
    await scheduler.check();
    await scheduler.stop();
    expect(rung).toEqual(['1']);
    expect(faults).toEqual([]);
    expect(await duesBy(store, at)).toEqual([]);
  });

  it('among the challenges, or in one, leaves the list of the others', async () => {
    const terms = {
      title: 'Dusk',
      brief: '',
      palette: [],
      constraint: 'none',
      class: 'open',
      zone: 'UTC',
      opensAt: 1,
      entriesUntil: 2,
      votesUntil: 3,
      method: 'schulze',
      decides: 'votes',
      ties: 'shared',
      entriesPerMember: 1,
      anonymous: true,
      runningTotals: false,
    };
    const opening = (id: string) => ({ v: 1, id, at: 1, by: '7', terms, channel: 'c', language: 'en' });
    await store.commit([
      put(keys.challenge('g', '1'), opening('1')),
      put(keys.challenge('g', '2'), { v: 1 }),
      put(keys.challenge('g', '3'), opening('3')),
      put(keys.challengeEvent('g', '3', 1, 'x'), []),
    ]);
    expect((await listChallenges({ store, group: 'g' })).map(({ id }) => id)).toEqual(['1']);
  });

  it('is told once, by its kind and without saying whose it is', async () => {
    const told: string[] = [];
    const leave = onSetAside(({ kind, key, failure }) => told.push(`${kind} ${key} ${failure.message}`));
    const shelf = await shelfWithBadJar('4242424242');
    await listShelf(shelf);
    await listShelf(shelf);
    leave();
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(/^shelf item shelf#[0-9a-f]{12} /);
    expect(told[0]).not.toContain('4242424242');
  });
});

describe('a field that a newer program added', () => {
  it('is read over, at the top and within', async () => {
    const shelf = { store, member: '9' };
    await addItem(shelf, jar('Dusk'), change('c1'));
    const key = keys.shelfItem('9', 'c1');
    const [stored] = await store.get([key]);
    await store.commit([
      put(key, { ...(stored as object), sparkle: 3 }),
      put(keys.shelfIngredients('9', 'c1'), { v: 1, text: 'Mica', permitted: { us: 'a', eu: 'b', uk: 'c' } }),
    ]);
    const [item] = await listShelf(shelf);
    expect(item).toMatchObject({
      name: 'Dusk',
      ingredients: { text: 'Mica', permitted: { us: 'a', eu: 'b' } },
    });
  });
});
