import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { Refusal } from '../../src/engine/refusal.ts';
import { openStore } from '../../src/records/open.ts';
import * as recipes from '../../src/records/recipes/index.ts';
import { addItem, showItem, useItems } from '../../src/records/shelf/index.ts';
import type { Store } from '../../src/records/store.ts';
import { PATIENT } from './patience.ts';

let store: Store;
beforeAll(async () => {
  store = await openStore('sqlite::memory:', PATIENT);
});
afterAll(() => store.close());

const at = new Date('2026-03-01T10:00:00Z');
let count = 0;
const change = (cause = `c${++count}`) => ({ cause, at, byName: 'Bram' });
const shelfOf = (member: string, group = 'g') => ({ store, member, group });
const PLAN: recipes.KeptPlan = {
  written: { oils: 'olive 100%', size: '1000 g oils', superfat: 5, swirl: 'drop' },
  spoons: 'us',
  times: recipes.ONCE,
  colours: [{ text: 'sky', colourant: 'ultramarine-blue', pigmentFraction: 0.3 }],
};
const refusal = async (act: Promise<unknown>) => {
  const thrown = await act.then(
    () => undefined,
    (error: unknown) => error,
  );
  return thrown instanceof Refusal ? thrown.id : thrown;
};

describe('recipes', () => {
  test('come back as they were kept', async () => {
    await recipes.saveRecipe(shelfOf('m1'), 'Sea', PLAN, change());
    expect(await recipes.findRecipe(shelfOf('m1'), 'sea')).toMatchObject({
      ...PLAN,
      name: 'Sea',
      by: 'm1',
      shared: false,
    });
  });

  test('are saved once for one interaction, however often it is delivered', async () => {
    const once = change();
    const first = await recipes.saveRecipe(shelfOf('m1'), 'Once', PLAN, once);
    const second = await recipes.saveRecipe(shelfOf('m1'), 'Once', PLAN, once);
    expect([first.repeated, second.repeated]).toEqual([false, true]);
    expect(await refusal(recipes.saveRecipe(shelfOf('m1'), 'ONCE', PLAN, change()))).toBe(
      'recipe-name-taken',
    );
  });

  test('of two that want one name at once, one gets it', async () => {
    const both = await Promise.allSettled(
      ['a', 'b'].map(() => recipes.saveRecipe(shelfOf('m2'), 'Race', PLAN, change())),
    );
    expect(both.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
  });

  test('a removal delivered twice does not touch a recipe that came under the name since', async () => {
    await recipes.saveRecipe(shelfOf('m3'), 'Tide', PLAN, change());
    const removal = change();
    await recipes.removeRecipe(shelfOf('m3'), 'Tide', removal);
    await recipes.saveRecipe(shelfOf('m3'), 'Tide', PLAN, change());
    expect(await recipes.removeRecipe(shelfOf('m3'), 'Tide', removal)).toEqual({
      name: 'Tide',
      repeated: true,
    });
    expect((await recipes.findRecipe(shelfOf('m3'), 'Tide')).name).toBe('Tide');
  });

  test('are shared to one group only, and taken back by maker or steward', async () => {
    await recipes.saveRecipe(shelfOf('m4', 'here'), 'Bay', PLAN, change());
    await recipes.shareRecipe(shelfOf('m4', 'here'), 'Bay', change());
    expect((await recipes.findRecipe(shelfOf('m5', 'here'), 'Bay')).shared).toBe(true);
    expect(await refusal(recipes.findRecipe(shelfOf('m5', 'there'), 'Bay'))).toBe('recipe-unknown');
    const unshare = (steward: boolean) =>
      recipes.unshareRecipe(shelfOf('m5', 'here'), 'Bay', { ...change(), steward });
    expect(await refusal(unshare(false))).toBe('recipe-not-yours');
    expect((await unshare(true)).name).toBe('Bay');
    expect(await refusal(recipes.findRecipe(shelfOf('m5', 'here'), 'Bay'))).toBe('recipe-unknown');
  });

  test('a name’s beginning is enough where it means one', async () => {
    await recipes.saveRecipe(shelfOf('m6'), 'Morning mist', PLAN, change());
    await recipes.saveRecipe(shelfOf('m6'), 'Morning dew', PLAN, change());
    expect((await recipes.findRecipe(shelfOf('m6'), 'morning m')).name).toBe('Morning mist');
    expect(await refusal(recipes.findRecipe(shelfOf('m6'), 'morning'))).toBe('recipe-ambiguous');
  });
});

describe('late plans', () => {
  test('the newest twenty are remembered, the last one is the last', async () => {
    const whose = { store, member: 'm7' };
    for (let minute = 0; minute < 25; minute += 1)
      await recipes.keepRecentPlan(
        whose,
        `p${minute}`,
        { ...PLAN, written: { oils: `olive ${minute}` }, uses: [] },
        new Date(at.getTime() + minute * 60_000),
      );
    expect((await recipes.lastPlan(whose)).written.oils).toBe('olive 24');
    expect((await recipes.recentPlanOf(whose, 'p5')).written.oils).toBe('olive 5');
    expect(await refusal(recipes.recentPlanOf(whose, 'p4'))).toBe('plan-forgotten');
    expect(await refusal(recipes.recentPlanOf({ store, member: 'm8' }, 'p24'))).toBe('plan-forgotten');
  });
});

describe('taking several items in one step', () => {
  let members = 0;
  beforeEach(() => {
    members += 1;
  });
  const shelf = () => ({ store, member: `taking-${members}` });
  const left = async (item: string) => (await showItem(shelf(), item)).item.stock.grams;

  test('takes all of them or none, and once', async () => {
    const blue = await addItem(shelf(), { name: 'Blue', grams: 10 }, change());
    const gold = await addItem(shelf(), { name: 'Gold', grams: 1 }, change());
    const taking = (goldGrams: number) => [
      { item: blue.id, grams: 3 },
      { item: gold.id, grams: goldGrams },
    ];
    expect(await refusal(useItems(shelf(), taking(2), change()))).toBe('shelf-not-enough');
    expect(await left('Blue')).toBe(10);
    const once = change();
    await useItems(shelf(), taking(0.5), once);
    const again = await useItems(shelf(), taking(0.5), once);
    expect(again.map(({ repeated, left: told }) => [repeated, told])).toEqual([
      [true, 7],
      [true, 0.5],
    ]);
    expect([await left('Blue'), await left('Gold')]).toEqual([7, 0.5]);
  });

  test('two presses at once never take more than there is', async () => {
    await addItem(shelf(), { name: 'Blue', grams: 7 }, change());
    const both = await Promise.allSettled(
      [1, 2].map(() => useItems(shelf(), [{ item: 'Blue', grams: 4 }], change())),
    );
    expect(both.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
    expect(await left('Blue')).toBe(3);
  });
});
