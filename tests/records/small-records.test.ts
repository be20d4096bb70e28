import { beforeAll, describe, expect, it } from 'vitest';
import { preference, shelfItem } from '../../src/records/keys.ts';
import { openStore } from '../../src/records/open.ts';
import { prefer, preferencesOf, usualPreferences } from '../../src/records/preferences.ts';
import { addItem, listShelf, setAsideOn } from '../../src/records/shelf/index.ts';
import { put, type Store } from '../../src/records/store.ts';

let store: Store;
beforeAll(async () => {
  store = await openStore('sqlite::memory:');
  return () => store.close();
});

describe('preferences', () => {
  it('are the usual ones until a member says otherwise, one by one', async () => {
    expect(await preferencesOf(store, '7')).toEqual(usualPreferences);
    expect(await prefer(store, '7', { spoons: 'metric' })).toEqual({ ...usualPreferences, spoons: 'metric' });
    await prefer(store, '7', { language: 'es', mass: 'ounces' });
    const wanted = {
      spoons: 'metric',
      temperature: 'celsius',
      mass: 'ounces',
      language: 'es',
      jars: 'private',
      hour: 9,
      answers: 'short',
    };
    expect(await preferencesOf(store, '7')).toEqual(wanted);
    expect(await preferencesOf(store, '70')).toEqual(usualPreferences);
  });

  it('go back to the usual ones', async () => {
    await prefer(store, '8', { language: 'es', spoons: 'label' });
    expect(await prefer(store, '8', { language: undefined, spoons: undefined })).toEqual(usualPreferences);
  });

  it('set at once do not overwrite one another', async () => {
    await Promise.all([
      prefer(store, '9', { spoons: 'label' }),
      prefer(store, '9', { temperature: 'fahrenheit' }),
    ]);
    expect(await preferencesOf(store, '9')).toMatchObject({ spoons: 'label', temperature: 'fahrenheit' });
  });
});

describe('a record of another version', () => {
  it('is a failure of its own kind, never the usual; of a jar, that jar is set aside', async () => {
    await store.commit([put(preference('10', 'spoons'), { v: 2, choice: 'us', cups: 'metric' })]);
    await expect(preferencesOf(store, '10')).rejects.toMatchObject({ kind: 'unknown-version' });
    const shelf = { store, member: '11' };
    await addItem(shelf, { name: 'Clay' }, { cause: '1', at: new Date() });
    await store.commit([put(shelfItem('11', '1'), { v: 2, names: ['Clay'] })]);
    expect([await listShelf(shelf), await setAsideOn(shelf)]).toEqual([[], 1]);
  });

  it.each([{ v: 1, choice: 'thumbs' }, { choice: 'ours' }, { v: '1', choice: 'us' }, null, 'us'])(
    'as is one that reads as no such record: %j',
    async value => {
      await store.commit([put(preference('12', 'spoons'), value)]);
      await expect(preferencesOf(store, '12')).rejects.toMatchObject({ kind: 'corrupt' });
    },
  );

  it('half an item is set aside too', async () => {
    const shelf = { store, member: '13' };
    await store.commit([put(`${shelfItem('13', '1')}/stock`, { v: 1, line: 1, left: 5 })]);
    expect([await listShelf(shelf), await setAsideOn(shelf)]).toEqual([[], 1]);
  });

  it('what a failure says never repeats what was stored, nor whose it is', async () => {
    await store.commit([put(preference('14', 'spoons'), { v: 1, choice: 'my private words' })]);
    const failure: Error = await preferencesOf(store, '14').then(
      () => expect.unreachable(),
      (error: Error) => error,
    );
    expect(failure.message).toMatch(/^preference#[0-9a-f]{12}: not a preference/);
    expect(failure.message).not.toContain('private');
  });
});
