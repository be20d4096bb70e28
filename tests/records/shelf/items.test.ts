import { beforeEach, describe, expect, it } from 'vitest';
import {
  addItem,
  describeItem,
  findItem,
  listShelf,
  mostItems,
  nearestNames,
  removeItem,
  restockItem,
  type Shelf,
  setLowMark,
  showItem,
  useItem,
} from '../../../src/records/shelf/index.ts';
import { by, emptyShelf, refusalOf, snapshot } from './fixture.ts';

let shelf: Shelf;
beforeEach(async () => {
  shelf = await emptyShelf();
});

describe('putting something on the shelf', () => {
  it('keeps everything said about it', async () => {
    const ingredients = {
      text: 'Mica, CI 77491',
      kind: 'mica',
      components: ['mica', 'ci-77491'],
      verdict: 'fine',
    };
    const change = by('771', '2026-03-01T10:00:00Z');
    const wanted = {
      name: 'Copper dusk',
      colourant: 'copper-mica',
      pigmentFraction: 0.4,
      lot: 'K12',
      lowAt: 5,
    };
    await addItem(shelf, { ...wanted, grams: 30.25, ingredients }, change);
    expect(await findItem(shelf, 'copper dusk')).toEqual({
      id: '771',
      name: 'Copper dusk',
      colourant: 'copper-mica',
      pigmentFraction: 0.4,
      ingredients,
      since: change.at,
      lot: { number: 1, label: 'K12', since: change.at },
      stock: { grams: 30.25, lowAt: 5, low: false },
    });
  });

  it('needs no more than a name', async () => {
    const outcome = await addItem(shelf, { name: 'Clay' }, by('1'));
    expect(outcome).toMatchObject({
      action: 'add',
      id: '1',
      name: 'Clay',
      low: false,
      lot: 1,
      repeated: false,
    });
    expect((await findItem(shelf, 'clay')).stock).toEqual({ grams: undefined, lowAt: 10, low: false });
  });

  it.each([
    ['Ultramarine Blue', 'ultramarine  BLUE'],
    ['Azul añil', 'AZUL ANIL'],
    ['Mica 5', 'Mica ５'],
    ['ﾐｶ', 'ミカ'],
    ['Straße', 'STRASSE'],
    ['Ультрамарин', 'УЛЬТРАМАРИН'],
    ['true-red', 'True Red'],
    ['Ὀξείδιον', 'οξειδιον'],
  ])('refuses "%s" and then "%s": capitals, accents and width make no other name', async (first, second) => {
    await addItem(shelf, { name: first }, by());
    const before = await snapshot(shelf);
    expect(await refusalOf(addItem(shelf, { name: second }, by()))).toEqual({
      id: 'shelf-name-taken',
      values: { name: first },
    });
    expect(await snapshot(shelf)).toEqual(before);
  });

  it.each([
    ['か', 'が'],
    ['नीला', 'नीली'],
    ['أزرق', 'أزرق ٢'],
  ])('keeps "%s" and "%s" apart: there a mark makes another word', async (first, second) => {
    await addItem(shelf, { name: first }, by());
    await addItem(shelf, { name: second }, by());
    expect((await findItem(shelf, second)).name).toBe(second);
  });

  it('of two interactions that add one name at once lets one through', async () => {
    const results = await Promise.allSettled(
      ['Neon pink', 'neon PINK', 'NEON pink'].map(name => addItem(shelf, { name, grams: 5 }, by())),
    );
    expect(results.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected', 'rejected']);
    expect(await listShelf(shelf)).toHaveLength(1);
  });

  it.each(['', '   ', '\u200b\u202e', 'x'.repeat(81), '\u{fdfa}'.repeat(40)])(
    'refuses a name that is none',
    async name => {
      expect(await refusalOf(addItem(shelf, { name }, by()))).toMatchObject({ id: 'shelf-name-unfit' });
      expect(await snapshot(shelf)).toEqual([]);
    },
  );

  it('drops what would turn the line around it', async () => {
    await addItem(shelf, { name: ' Blue\u202e\n\u0007 mica ' }, by());
    expect((await listShelf(shelf))[0]?.name).toBe('Blue mica');
  });

  it.each([-1, Number.NaN, Infinity, 100_001, 0.0001])('refuses %d grams', async grams => {
    expect(await refusalOf(addItem(shelf, { name: 'Clay', grams }, by()))).toMatchObject({
      id: 'shelf-grams-unfit',
    });
    expect(await snapshot(shelf)).toEqual([]);
  });

  it.each([0, -0.1, 1.01, Number.NaN])('refuses a pigment fraction of %d', async pigmentFraction => {
    const refusal = await refusalOf(addItem(shelf, { name: 'Liquid blue', pigmentFraction }, by()));
    expect(refusal.id).toBe('shelf-pigment-unfit');
  });

  it('keeps shelves apart, even of members whose ids begin alike', async () => {
    const neighbour = { store: shelf.store, member: `${shelf.member}0` };
    await addItem(shelf, { name: 'Mine' }, by('1'));
    await addItem(neighbour, { name: 'Theirs' }, by('1'));
    expect((await listShelf(shelf)).map(({ name }) => name)).toEqual(['Mine']);
    expect((await listShelf(neighbour)).map(({ name }) => name)).toEqual(['Theirs']);
  });
});

describe('a large shelf', () => {
  it(`takes ${mostItems} items and refuses the next, saying how many`, async () => {
    // Those of one delivery read the shelf together: one after another, each of 500 would read all before it.
    const last = 20;
    for (const [from, to] of [
      [0, mostItems - last],
      [mostItems - last, mostItems],
    ] as const)
      await Promise.all(
        Array.from({ length: to - from }, (_, more) =>
          addItem(shelf, { name: `Mica ${from + more}`, grams: 1, lowAt: 2 }, by()),
        ),
      );
    expect(await refusalOf(addItem(shelf, { name: 'One more' }, by()))).toEqual({
      id: 'shelf-full',
      values: { most: mostItems },
    });
    const all = await listShelf(shelf);
    expect(all).toHaveLength(mostItems);
    expect(all.map(({ name }) => name)).toEqual(Array.from({ length: mostItems }, (_, n) => `Mica ${n}`));
    await removeItem(shelf, 'Mica 250', by());
    await addItem(shelf, { name: 'One more' }, by());
  });
});

describe('finding an item', () => {
  beforeEach(async () => {
    for (const name of ['Ultramarine blue', 'Ultramarine violet', 'Azul añil', 'Blue', 'Blue mica', '群青']) {
      await addItem(shelf, { name }, by(`id-${name.length}${name[0]}`));
    }
  });

  it.each([
    ['blue', 'Blue'],
    ['AZUL ANIL', 'Azul añil'],
    ['azul', 'Azul añil'],
    ['violet', 'Ultramarine violet'],
    ['ultramarine v', 'Ultramarine violet'],
    ['ultramarin violett', 'Ultramarine violet'],
    ['bleu mica', 'Blue mica'],
    ['群青', '群青'],
    ['群', '群青'],
    ['id-4B', 'Blue'],
  ])('takes "%s" for "%s"', async (asked, name) => {
    expect((await findItem(shelf, asked)).name).toBe(name);
  });

  it('names the candidates when several may be meant', async () => {
    expect(await refusalOf(findItem(shelf, 'ultra'))).toEqual({
      id: 'shelf-item-ambiguous',
      values: { asked: 'ultra', candidates: ['Ultramarine blue', 'Ultramarine violet'] },
    });
  });

  it('names the nearest when none may be meant, and does not guess', async () => {
    const refusal = await refusalOf(findItem(shelf, 'cocoa powder'));
    expect(refusal.id).toBe('shelf-item-unknown');
    expect((refusal.values as { nearest: unknown[] }).nearest).toHaveLength(3);
    expect(await refusalOf(findItem(shelf, ''))).toMatchObject({ id: 'shelf-item-unknown' });
    expect(await refusalOf(findItem(shelf, 'red'))).toMatchObject({ id: 'shelf-item-unknown' });
  });

  it('says so on an empty shelf', async () => {
    const empty = { store: shelf.store, member: 'nobody' };
    expect(await refusalOf(findItem(empty, 'blue'))).toEqual({
      id: 'shelf-item-unknown',
      values: { asked: 'blue', nearest: [] },
    });
  });

  it('suggests while one types, beginnings first', async () => {
    expect((await nearestNames(shelf, 'blu', 3)).slice(0, 2)).toEqual(['Blue', 'Blue mica']);
    expect(await nearestNames(shelf, '', 25)).toHaveLength(6);
  });
});

describe('taking something off the shelf', () => {
  it('leaves nothing of it, and its name is free again', async () => {
    await addItem(shelf, { name: 'Clay', grams: 50, lowAt: 3, ingredients: { text: 'kaolin' } }, by('1'));
    await useItem(shelf, 'clay', 5, by());
    await removeItem(shelf, 'CLAY', by());
    expect(await listShelf(shelf)).toEqual([]);
    const left = (await snapshot(shelf)).map(({ key }) => key.split('/')[0]);
    expect(new Set(left)).toEqual(new Set(['late-undo', 'shelf-gone', 'shelf-once']));
    await addItem(shelf, { name: 'Clay', grams: 7 }, by());
    const { item, history } = await showItem(shelf, 'clay');
    expect(item.stock).toEqual({ grams: 7, lowAt: 10, low: false });
    expect(history).toHaveLength(1);
  });

  it('needs the whole name: a slip of the finger removes nothing', async () => {
    await addItem(shelf, { name: 'Blue mica' }, by());
    for (const asked of ['blue', 'blue mics']) {
      expect(await refusalOf(removeItem(shelf, asked, by()))).toEqual({
        id: 'shelf-item-unknown',
        values: { asked, nearest: ['Blue mica'] },
      });
    }
    expect(await listShelf(shelf)).toHaveLength(1);
  });

  it('while others change it leaves no crumbs', async () => {
    for (let round = 0; round < 15; round += 1) {
      await addItem(shelf, { name: 'Clay', grams: 50 }, by());
      await Promise.allSettled([
        useItem(shelf, 'clay', 1, by()),
        setLowMark(shelf, 'clay', 5, by()),
        removeItem(shelf, 'clay', by()),
        restockItem(shelf, 'clay', 1, by()),
        describeItem(shelf, 'clay', { ingredients: { text: 'kaolin' } }, by()),
      ]);
      expect(await listShelf(shelf)).toEqual([]);
    }
    const left = (await snapshot(shelf)).map(({ key }) => key.split('/')[0]);
    expect(new Set(left)).toEqual(new Set(['late-undo', 'shelf-gone', 'shelf-once']));
  });
});
