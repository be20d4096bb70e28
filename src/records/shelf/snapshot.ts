import { remembered } from '../../engine/remembered.ts';
import { valuesOn } from '../../engine/values-on.ts';
import { anonymous, StoreFailure } from '../failure.ts';
import { ledgerLine, shelf as shelfKey, under } from '../keys.ts';
import { orSetAside, type RecordKind, read, readable } from '../record.ts';
import { atHand, type Entry, everything } from '../store.ts';
import { isOddSpoon } from './limits.ts';
import {
  calibrationKind,
  dishTestKind,
  ingredientsKind,
  itemKind,
  learntKind,
  ledgerKind,
  lotKind,
  lowMarkKind,
  spoonWeightKind,
  stockKind,
} from './schema.ts';
import { type LedgerLine, type Shelf, type ShelfItem, usualLowMark } from './shelf.ts';

/** An item, and how many lines its ledger has. */
export type ItemSnapshot = { readonly item: ShelfItem; readonly lines: number };

/** Before a cause: the change that takes its change back. */
export const UNDO_CAUSE = 'undo-';

export const toGrams = (mass: number) => mass / 1000;
export const toMilligrams = (grams: number) => Math.round(grams * 1000);

/** Enough for a full shelf in one answer of the store, which is one moment of it. */
const pageSize = 5000;

/** What was made of the same entries: a question asks in several places for what its store has read once. */
const assembled = valuesOn<readonly Entry[], readonly ItemSnapshot[]>();

const NOTHING: readonly ItemSnapshot[] = [];
/** Asked for in several places of most answers. */
const spanOf = remembered(member => under(shelfKey(member)));

/** Everything on the shelf, in no order; a jar of which something does not read is set aside whole, and alone. */
export async function readShelf(shelf: Shelf): Promise<readonly ItemSnapshot[]> {
  const span = spanOf(shelf.member);
  const there = atHand(shelf.store, span, pageSize);
  const isAll = there !== undefined && there.length < pageSize;
  const entries = isAll ? there : await everything(shelf.store, span, pageSize);
  if (entries.length === 0) return NOTHING;
  const before = assembled.get(entries);
  if (before) return before;
  try {
    const found = assemble(entries, span.from, entries.length < pageSize);
    assembled.set(entries, found);
    return found;
  } catch (failure) {
    // An item removed between two pages leaves half of itself: look once more before setting it aside.
    if (!(failure instanceof StoreFailure)) throw failure;
    return assemble(await everything(shelf.store, span, pageSize), span.from, true);
  }
}

/** How many jars of the shelf are set aside because something of them does not read. */
export async function setAsideOn(shelf: Shelf): Promise<number> {
  const { from, to } = under(shelfKey(shelf.member));
  const entries = await everything(shelf.store, { from, to }, pageSize);
  const items = new Set(entries.map(({ key }) => key.slice(from.length).split('/')[0]));
  return items.size - assemble(entries, from, true).length;
}

/** Item id -> what is under it by the rest of its key, `''` for the item itself. */
type Facts = Map<string, Entry>;

function assemble(entries: readonly Entry[], prefix: string, isWhole: boolean): readonly ItemSnapshot[] {
  const items = new Map<string, Facts>();
  for (const entry of entries) {
    const [id = '', ...rest] = entry.key.slice(prefix.length).split('/');
    const facts = items.get(id) ?? new Map<string, Entry>();
    facts.set(rest.join('/'), entry);
    items.set(id, facts);
  }
  return [...items].flatMap(([id, facts]) => {
    const key = `${prefix}${id}`;
    if (!isWhole) return snapshotOf(key, facts);
    return orSetAside(itemKind.name, key, () => snapshotOf(key, facts)) ?? [];
  });
}

function fact<Fields>(kind: RecordKind<Fields>, facts: Facts, rest: string): Fields | undefined {
  const entry = facts.get(rest);
  return entry && read(kind, entry.key, entry.value);
}

function snapshotOf(key: string, facts: Facts): ItemSnapshot {
  const described = fact(itemKind, facts, '');
  const newestLot = [...facts.keys()]
    .filter(rest => /^lot\/\d+$/.test(rest))
    .sort()
    .at(-1);
  const lot = newestLot === undefined ? undefined : fact(lotKind, facts, newestLot);
  if (!described || !lot || newestLot === undefined) {
    throw new StoreFailure('corrupt', 'read', `${anonymous(key)}: an item in pieces`);
  }
  const spoon = fact(spoonWeightKind, facts, `${newestLot}/spoon-weight`);
  const isOdd = spoon !== undefined && isOddSpoon(spoon.grams, spoon.spoonMillilitres);
  const stock = fact(stockKind, facts, 'stock');
  const lowMark = fact(lowMarkKind, facts, 'low-mark');
  const grams = stock && toGrams(stock.left);
  // A jar that never held more than the usual mark is no low jar.
  const isUntouched = stock?.line === 1;
  const lowAt = lowMark ? toGrams(lowMark.at) : usualLowMark;
  return {
    lines: stock?.line ?? 0,
    item: {
      ...described,
      ingredients: fact(ingredientsKind, facts, 'ingredients'),
      lot: {
        ...lot,
        number: Number(newestLot.slice('lot/'.length)),
        dishTest: fact(dishTestKind, facts, `${newestLot}/dish-test`)?.result,
        spoonWeight:
          spoon && !isOdd ? { grams: spoon.grams, spoonMillilitres: spoon.spoonMillilitres } : undefined,
        ...(isOdd && { oddSpoonGrams: spoon.grams }),
        calibration: fact(calibrationKind, facts, `${newestLot}/calibration`)?.found,
        learnt: fact(learntKind, facts, `${newestLot}/learnt`),
      },
      stock: {
        grams,
        lowAt,
        low: grams !== undefined && grams <= lowAt && (!isUntouched || lowMark !== undefined || grams === 0),
      },
    },
  };
}

/** The newest lines of an item's ledger, newest first. */
export async function readLedger(
  shelf: Shelf,
  snapshot: ItemSnapshot,
  most: number,
): Promise<readonly LedgerLine[]> {
  // Keys of older lines are higher, so a history is read from its newest line on, however long it is.
  const from = ledgerLine(shelf.member, snapshot.item.id, snapshot.lines);
  const to = ledgerLine(shelf.member, snapshot.item.id, 0);
  const entries = await shelf.store.range(from, to, most);
  return readable(ledgerKind, entries).map(({ fields }) => {
    const { change, left, cause, ...line } = fields;
    const undoes = cause.startsWith(UNDO_CAUSE);
    return { ...line, change: toGrams(change), left: toGrams(left), ...(undoes && { undoes }) };
  });
}
