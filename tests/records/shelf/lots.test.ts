import { beforeEach, describe, expect, it } from 'vitest';
import { findColourant } from '../../../src/engine/colourants/asked/find-colourant.ts';
import { US_TEASPOON_ML } from '../../../src/engine/quantities/units.ts';
import { colourNotes } from '../../../src/presenting/warning.ts';
import {
  addItem,
  describeItem,
  dishTest,
  findItem,
  keepCalibration,
  listShelf,
  removeItem,
  type Shelf,
  startLot,
  weighSpoon,
} from '../../../src/records/shelf/index.ts';
import { put } from '../../../src/records/store.ts';
import { wordsIn } from '../../../src/words/index.ts';
import type { Language } from '../../../src/words/sentence.ts';
import { SPOON_ODD } from '../../terminal/warned/spoon-odd.ts';
import { by, emptyShelf, refusalOf, snapshot } from './fixture.ts';

let shelf: Shelf;
beforeEach(async () => {
  shelf = await emptyShelf();
  await addItem(shelf, { name: 'Blue', grams: 20, lot: 'A', ingredients: { text: 'CI 77007' } }, by());
});

const spoon = { grams: 2.4, spoonMillilitres: US_TEASPOON_ML };

describe('what is found out about a lot', () => {
  it('is kept with it', async () => {
    await dishTest(shelf, 'blue', 'oil', by());
    await weighSpoon(shelf, 'blue', spoon, by());
    await keepCalibration(shelf, 'blue', { bands: [0.1, 0.2], by: 'photo' }, by());
    expect((await findItem(shelf, 'blue')).lot).toMatchObject({
      number: 1,
      label: 'A',
      dishTest: 'oil',
      spoonWeight: spoon,
      calibration: { bands: [0.1, 0.2], by: 'photo' },
    });
  });

  it('is replaced by what is found out later', async () => {
    await dishTest(shelf, 'blue', 'oil', by());
    await dishTest(shelf, 'blue', 'water', by());
    expect((await findItem(shelf, 'blue')).lot.dishTest).toBe('water');
  });

  it('is not lost when two find out at once', async () => {
    await Promise.all([dishTest(shelf, 'blue', 'oil', by()), weighSpoon(shelf, 'blue', spoon, by())]);
    expect((await findItem(shelf, 'blue')).lot).toMatchObject({ dishTest: 'oil', spoonWeight: spoon });
  });

  it('holds for no new lot of the same thing', async () => {
    await dishTest(shelf, 'blue', 'oil', by());
    await weighSpoon(shelf, 'blue', spoon, by());
    await keepCalibration(shelf, 'blue', { bands: [0.1] }, by());
    const change = by(undefined, '2026-05-01T00:00:00Z');
    expect(await startLot(shelf, 'blue', { label: 'B', grams: 50 }, change)).toMatchObject({
      lot: 2,
      change: 50,
      left: 70,
    });
    const item = await findItem(shelf, 'blue');
    expect(item.lot).toEqual({ number: 2, label: 'B', since: change.at });
    expect(item.ingredients).toEqual({ text: 'CI 77007' });
    expect(item.stock.grams).toBe(70);
  });

  it('stays apart over a dozen lots', async () => {
    for (let n = 2; n <= 12; n += 1) await startLot(shelf, 'blue', { label: `L${n}` }, by());
    await dishTest(shelf, 'blue', 'water', by());
    expect((await findItem(shelf, 'blue')).lot).toMatchObject({
      number: 12,
      label: 'L12',
      dishTest: 'water',
    });
    await removeItem(shelf, 'blue', by());
    expect(await listShelf(shelf)).toEqual([]);
    expect((await snapshot(shelf)).filter(({ key }) => key.startsWith('shelf/'))).toEqual([]);
  });

  it('is one lot further for two new lots, and for one delivered twice one', async () => {
    await Promise.all([startLot(shelf, 'blue', {}, by()), startLot(shelf, 'blue', {}, by())]);
    expect((await findItem(shelf, 'blue')).lot.number).toBe(3);
    const again = by();
    await Promise.all([startLot(shelf, 'blue', {}, again), startLot(shelf, 'blue', {}, again)]);
    expect((await findItem(shelf, 'blue')).lot.number).toBe(4);
  });
});

describe('a spoon on the scale', () => {
  // Least and most are powders of 0.05 and 5 g/ml (from memory) in a US teaspoon; no more than the 20 g that a dose takes.
  it.each([0, -1, 0.2, 20.1, 24, 25, Number.NaN])('refuses a level teaspoon of %d g', async grams => {
    const refusal = await refusalOf(weighSpoon(shelf, 'blue', { ...spoon, grams }, by()));
    expect(refusal.id).toBe('shelf-spoon-unfit');
  });
});

describe('a spoon that was weighed before there was a limit', () => {
  /** As an earlier release kept it. */
  const weighedOnce = async (grams: number) => {
    await weighSpoon(shelf, 'blue', spoon, by());
    const kept = (await snapshot(shelf)).find(({ key }) => key.endsWith('spoon-weight'))!;
    await shelf.store.commit([put(kept.key, { ...(kept.value as object), grams })]);
  };

  it.each([20.5, 25, 0.05])('of %d g counts for nothing, and is told with a way out', async grams => {
    await weighedOnce(grams);
    const item = await findItem(shelf, 'blue');
    expect(item.lot.spoonWeight).toBeUndefined();
    expect(item.lot.oddSpoonGrams).toBe(grams);
    const jar = { item, colourant: findColourant('ultramarine blue') };
    const [id, en, es] = SPOON_ODD;
    for (const [language, part] of Object.entries({ en, es } as const)) {
      const scope = { store: shelf.store, group: 'g' };
      const say = wordsIn(language as Language);
      const { cautions } = await colourNotes([jar], { scope, viewer: 'm', say });
      expect(cautions).toMatchObject([{ id, text: expect.stringContaining(part) }]);
      expect(cautions[0]!.text).toMatch(/\/shelf weigh item:Blue /);
    }
    await weighSpoon(shelf, 'blue', spoon, by());
    expect((await findItem(shelf, 'blue')).lot).toMatchObject({ spoonWeight: spoon });
    expect((await findItem(shelf, 'blue')).lot.oddSpoonGrams).toBeUndefined();
  });

  it('of 20 g is kept', async () => {
    await weighedOnce(20);
    expect((await findItem(shelf, 'blue')).lot.spoonWeight).toMatchObject({ grams: 20 });
  });
});

describe('a label', () => {
  it('is kept with what was made of it', async () => {
    const ingredients = {
      text: 'Polyester-3, CI 45350',
      kind: 'neon',
      components: ['polyester-3'],
      verdict: 'ok',
    };
    await describeItem(shelf, 'blue', { ingredients }, by());
    expect((await findItem(shelf, 'blue')).ingredients).toEqual(ingredients);
  });
});
