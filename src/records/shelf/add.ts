import { refuse } from '../../engine/refusal.ts';
import { foldName } from '../../engine/text/names/own-names.ts';
import { shelfIngredients, shelfItem, shelfLot, shelfLowMark, shelfName } from '../keys.ts';
import { written } from '../record.ts';
import { add, put, type Write } from '../store.ts';
import { changeOnce } from './idempotency.ts';
import { ingredientsRecord } from './jars/ingredients.ts';
import { checkGramsOrNone, checkPigment } from './limits.ts';
import { tidyName } from './names.ts';
import { itemKind, lotKind, lowMarkKind, nameKind } from './schema.ts';
import {
  type Change,
  mostItems,
  type NewItem,
  type Outcome,
  type Shelf,
  type ShelfItem,
  usualLowMark,
} from './shelf.ts';
import { type ItemSnapshot, readShelf, toMilligrams } from './snapshot.ts';
import { move, outcomeOf } from './stock.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'shelf-name-taken': { readonly name: string };
    'shelf-full': { readonly most: number };
    'shelf-name-set-aside': { readonly name: string };
  }
}

/**
 * Puts a new item on the shelf. Refuses a name that is there already (capitals, accents and width do not make
 * another name), a full shelf, and amounts that cannot be. The item's id is the change's cause.
 */
export async function addItem(shelf: Shelf, wanted: NewItem, change: Change): Promise<Outcome> {
  const name = tidyName(wanted.name);
  if (wanted.grams !== undefined) checkGramsOrNone(wanted.grams);
  if (wanted.lowAt !== undefined) checkGramsOrNone(wanted.lowAt);
  if (wanted.pigmentFraction !== undefined) checkPigment(wanted.pigmentFraction);
  return changeOnce(shelf, change, async all => {
    const same = all.find(({ item }) => foldName(item.name) === foldName(name));
    if (same) refuse('shelf-name-taken', { name: same.item.name });
    if (!same && (await isHeld(shelf, name))) refuse('shelf-name-set-aside', { name });
    if (all.length >= mostItems) refuse('shelf-full', { most: mostItems });
    const snapshot = fresh(name, wanted, change);
    const writes = describing(shelf, snapshot.item, wanted);
    if (wanted.grams === undefined) return { writes, outcome: outcomeOf(snapshot.item, 'add') };
    const stocked = move(shelf, snapshot, { action: 'add', grams: wanted.grams, lot: 1 }, change);
    return {
      writes: [...writes, ...stocked.writes],
      outcome: { ...outcomeOf(snapshot.item, 'add', stocked.left), change: wanted.grams },
    };
  });
}

/** Whether a jar holds the name that no reading of the shelf shows: it is set aside, and keeps its name. */
async function isHeld(shelf: Shelf, name: string): Promise<boolean> {
  const [holder] = await shelf.store.get([shelfName(shelf.member, foldName(name))]);
  if (holder === undefined) return false;
  // Added by another change just now, it shows in a second reading.
  return !(await readShelf(shelf)).some(({ item }) => foldName(item.name) === foldName(name));
}

/** The item before any stock of it is written down. */
function fresh(name: string, wanted: NewItem, { cause, at }: Change): ItemSnapshot {
  const item: ShelfItem = {
    id: cause,
    name,
    colourant: wanted.colourant,
    pigmentFraction: wanted.pigmentFraction,
    price: wanted.price,
    since: at,
    lot: { number: 1, label: wanted.lot, since: at },
    stock: { grams: undefined, lowAt: wanted.lowAt ?? usualLowMark, low: false },
  };
  return { item, lines: 0 };
}

function describing({ member }: Shelf, item: ShelfItem, wanted: NewItem): Write[] {
  const { id, name, colourant, pigmentFraction, price, since, lot, stock } = item;
  const writes = [
    add(shelfName(member, foldName(name)), written(nameKind, { item: id })),
    add(shelfItem(member, id), written(itemKind, { id, name, colourant, pigmentFraction, price, since })),
    add(shelfLot(member, id, lot.number), written(lotKind, { label: lot.label, since })),
  ];
  if (wanted.lowAt !== undefined) {
    writes.push(put(shelfLowMark(member, id), written(lowMarkKind, { at: toMilligrams(stock.lowAt) })));
  }
  if (wanted.ingredients) {
    writes.push(put(shelfIngredients(member, id), ingredientsRecord(wanted.ingredients)));
  }
  return writes;
}
