import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { planNumbers } from '../../src/engine/batch/planning/plan.ts';
import { MEASURES } from '../../src/engine/quantities/units.ts';
import { recipe } from '../../src/records/keys.ts';
import { openStore } from '../../src/records/open.ts';
import { findRecipe } from '../../src/records/recipes/index.ts';
import { readKept } from '../../src/records/recipes/kept-plan.ts';
import { add, type Store } from '../../src/records/store.ts';

let store: Store;
beforeAll(async () => {
  store = await openStore('sqlite::memory:');
});
afterAll(() => store.close());

/** A recipe as it was written down before liquids were an option of their own. */
const kept = (name: string, written: object) => ({
  v: 1,
  name,
  written: { oils: 'coconut 30%, olive 50%, palm 20%', size: '1000 g oils', ...written },
  spoons: 'us',
  times: { size: 1, portions: 1, additives: 1 },
  colours: [],
  by: 'm',
  byName: 'Bram',
  at: '2026-03-01T10:00:00.000Z',
  cause: `c-${name}`,
});

async function planned(name: string, written: object) {
  await store.commit([add(recipe('m', name), kept(name, written))]);
  const found = await findRecipe({ store, member: 'm', group: 'g' }, name);
  const { request } = await readKept(found, { store, member: 'm' }, MEASURES.us);
  return planNumbers(request);
}

describe('a recipe kept before liquids were an option', () => {
  test('still loads, and its milk no longer empties the jug', async () => {
    const { jug, lye } = await planned('milky', { additives: 'goat milk 250 g' });
    expect(jug).toMatchObject({ method: 'frozen', liquids: [{ id: 'goat-milk', into: 'jug' }] });
    expect(jug.waterInJugGrams).toBeGreaterThanOrEqual(lye.grams);
  });

  test('is refused where its lye could not be dissolved', async () => {
    await expect(planned('flooded', { additives: 'milk 400 g' })).rejects.toMatchObject({
      id: 'milk-more-than-water',
    });
  });
});
