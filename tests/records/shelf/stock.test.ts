import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import {
  addItem,
  findItem,
  restockItem,
  type Shelf,
  setLowMark,
  showItem,
  startLot,
  useItem,
} from '../../../src/records/shelf/index.ts';
import { by, emptyShelf, refusalOf, snapshot } from './fixture.ts';

let shelf: Shelf;
beforeEach(async () => {
  shelf = await emptyShelf();
});

const left = async (name: string) => (await findItem(shelf, name)).stock.grams;

describe('taking grams', () => {
  it('counts down to the milligram, without the crumbs of decimal fractions', async () => {
    await addItem(shelf, { name: 'Blue', grams: 1 }, by());
    for (let n = 0; n < 10; n += 1) await useItem(shelf, 'blue', 0.1, by());
    expect(await left('blue')).toBe(0);
  });

  it('tells what went and what is left', async () => {
    await addItem(shelf, { name: 'Blue', grams: 30 }, by());
    expect(await useItem(shelf, 'blue', 4.5, by())).toMatchObject({ change: -4.5, left: 25.5, low: false });
  });

  it('refuses more than is left, says how much that is, and changes nothing', async () => {
    await addItem(shelf, { name: 'Blue', grams: 3 }, by());
    const before = await snapshot(shelf);
    expect(await refusalOf(useItem(shelf, 'blue', 3.006, by()))).toEqual({
      id: 'shelf-not-enough',
      values: { name: 'Blue', asked: 3.006, left: 3 },
    });
    expect(await snapshot(shelf)).toEqual(before);
    await useItem(shelf, 'blue', 3, by());
    expect(await left('blue')).toBe(0);
  });

  it('refuses where nobody said how much there is; restocking says it', async () => {
    await addItem(shelf, { name: 'Clay' }, by());
    expect(await refusalOf(useItem(shelf, 'clay', 1, by()))).toMatchObject({ id: 'shelf-amount-unknown' });
    expect(await restockItem(shelf, 'clay', 20, by())).toMatchObject({ change: 20, left: 20 });
    await useItem(shelf, 'clay', 1, by());
    expect(await left('clay')).toBe(19);
  });

  it.each([0, -5, Number.NaN, Infinity])('refuses %d grams', async grams => {
    await addItem(shelf, { name: 'Blue', grams: 3 }, by());
    expect(await refusalOf(useItem(shelf, 'blue', grams, by()))).toMatchObject({ id: 'shelf-grams-unfit' });
    expect(await refusalOf(restockItem(shelf, 'blue', grams, by()))).toMatchObject({
      id: 'shelf-grams-unfit',
    });
    expect(await left('blue')).toBe(3);
  });
});

describe('an interaction delivered again', () => {
  it('counts once and is told the same', async () => {
    await addItem(shelf, { name: 'Blue', grams: 30 }, by());
    const again = by();
    const first = await useItem(shelf, 'blue', 4, again);
    await useItem(shelf, 'blue', 1, by());
    expect(await useItem(shelf, 'blue', 4, again)).toEqual({ ...first, repeated: true });
    expect(await left('blue')).toBe(25);
  });

  it('is told the same where what it did would be refused now', async () => {
    const added = by();
    const there = await addItem(shelf, { name: 'Blue', grams: 30 }, added);
    const all = by();
    const used = await useItem(shelf, 'blue', 30, all);
    expect(await useItem(shelf, 'blue', 30, all)).toEqual({ ...used, repeated: true });
    expect(await addItem(shelf, { name: 'Blue', grams: 30 }, added)).toEqual({ ...there, repeated: true });
    expect(await refusalOf(useItem(shelf, 'blue', 30, by()))).toMatchObject({ id: 'shelf-not-enough' });
    expect(await left('blue')).toBe(0);
  });

  it('counts once when both deliveries are under way together', async () => {
    const added = by();
    await Promise.all([1, 2, 3].map(() => addItem(shelf, { name: 'Blue', grams: 30 }, added)));
    const again = by();
    const told = await Promise.all([1, 2, 3, 4].map(() => useItem(shelf, 'blue', 4, again)));
    expect(told.filter(({ repeated }) => !repeated)).toHaveLength(1);
    expect(await left('blue')).toBe(26);
  });
});

describe('many at once', () => {
  it('all count', async () => {
    await addItem(shelf, { name: 'Blue', grams: 100 }, by());
    const all = Array.from({ length: 40 }, (_, n) =>
      n % 4 === 0 ? restockItem(shelf, 'blue', 10, by()) : useItem(shelf, 'blue', 2, by()),
    );
    await Promise.all(all);
    expect(await left('blue')).toBe(100 + 10 * 10 - 30 * 2);
    expect((await showItem(shelf, 'blue', 100)).history).toHaveLength(41);
  });

  it('never take more than there is together', async () => {
    await addItem(shelf, { name: 'Blue', grams: 10 }, by());
    const results = await Promise.allSettled(
      Array.from({ length: 30 }, () => useItem(shelf, 'blue', 0.7, by())),
    );
    expect(results.filter(({ status }) => status === 'fulfilled')).toHaveLength(14);
    expect(await left('blue')).toBe(0.2);
  });

  it('add up whatever their order', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(
          fc.integer({ min: -5000, max: 5000 }).filter(n => n !== 0),
          { minLength: 1, maxLength: 12 },
        ),
        async moves => {
          const name = `Jar ${by().cause}`;
          await addItem(shelf, { name, grams: 3 }, by());
          const results = await Promise.allSettled(
            moves.map(mg =>
              mg < 0 ? useItem(shelf, name, -mg / 1000, by()) : restockItem(shelf, name, mg / 1000, by()),
            ),
          );
          const done = moves.filter((_, index) => results[index]?.status === 'fulfilled');
          const { item, history } = await showItem(shelf, name, 100);
          expect(item.stock.grams).toBe((3000 + done.reduce((sum, mg) => sum + mg, 0)) / 1000);
          expect(history.every(line => line.left >= 0)).toBe(true);
          expect(history).toHaveLength(done.length + 1);
        },
      ),
      { numRuns: 25 },
    );
  });
});

describe('running low', () => {
  it('is told at the usual mark, or at the member’s own', async () => {
    await addItem(shelf, { name: 'Blue', grams: 12 }, by());
    expect(await useItem(shelf, 'blue', 1.9, by())).toMatchObject({ left: 10.1, low: false, lowAt: 10 });
    expect(await useItem(shelf, 'blue', 0.1, by())).toMatchObject({ left: 10, low: true });
    expect(await setLowMark(shelf, 'blue', 2, by())).toMatchObject({ lowAt: 2, low: false });
    expect((await findItem(shelf, 'blue')).stock).toEqual({ grams: 10, lowAt: 2, low: false });
    expect(await restockItem(shelf, 'blue', 1, by())).toMatchObject({ left: 11, low: false });
    expect(await useItem(shelf, 'blue', 9, by())).toMatchObject({ left: 2, low: true });
  });

  it('with a mark of 0 is told of an empty jar only', async () => {
    await addItem(shelf, { name: 'Blue', grams: 1, lowAt: 0 }, by());
    expect(await useItem(shelf, 'blue', 0.999, by())).toMatchObject({ low: false });
    expect(await useItem(shelf, 'blue', 0.001, by())).toMatchObject({ left: 0, low: true });
  });
});

describe('the history', () => {
  it('is told newest first, with what each movement left, as far back as asked', async () => {
    await addItem(shelf, { name: 'Blue', grams: 20 }, by(undefined, '2026-01-01T00:00:00Z'));
    await useItem(shelf, 'blue', 5, by(undefined, '2026-02-01T00:00:00Z'));
    await startLot(shelf, 'blue', { grams: 30, label: 'B' }, by(undefined, '2026-03-01T00:00:00Z'));
    await restockItem(shelf, 'blue', 1, by(undefined, '2026-04-01T00:00:00Z'));
    const { history } = await showItem(shelf, 'blue', 3);
    expect(history).toEqual([
      { at: new Date('2026-04-01T00:00:00Z'), action: 'restock', change: 1, left: 46, lot: 2 },
      { at: new Date('2026-03-01T00:00:00Z'), action: 'new-lot', change: 30, left: 45, lot: 2 },
      { at: new Date('2026-02-01T00:00:00Z'), action: 'use', change: -5, left: 15, lot: 1 },
    ]);
  });

  it('costs a shelf nothing: what is read for a list does not grow with it', async () => {
    await addItem(shelf, { name: 'Blue', grams: 1000 }, by());
    const read = async () => {
      let entries = 0;
      const counting: Shelf = {
        member: shelf.member,
        store: {
          ...shelf.store,
          get: keys => shelf.store.get(keys),
          commit: writes => shelf.store.commit(writes),
          close: () => shelf.store.close(),
          async range(from, to, limit) {
            const page = await shelf.store.range(from, to, limit);
            entries += page.length;
            return page;
          },
        },
      };
      await useItem(counting, 'blue', 1, by());
      return entries;
    };
    const before = await read();
    for (let n = 0; n < 100; n += 1) await useItem(shelf, 'blue', 1, by());
    expect(await read()).toBe(before);
  });
});
