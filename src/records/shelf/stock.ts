import { shownSlack } from '../../engine/quantities/told/stock.ts';
import { refuse } from '../../engine/refusal.ts';
import { ledgerLine, shelfGone, shelfStock } from '../keys.ts';
import { type RecordOf, written } from '../record.ts';
import { absent, add, put, type Write } from '../store.ts';
import { changeAllOnce, changeOnce, type Planned } from './idempotency.ts';
import { checkGrams } from './limits.ts';
import { pickFromSnapshot } from './pick-from-snapshot.ts';
import { ledgerKind, stockKind } from './schema.ts';
import type { Change, LedgerLine, Outcome, Shelf, ShelfItem } from './shelf.ts';
import { type ItemSnapshot, toGrams, toMilligrams } from './snapshot.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'shelf-not-enough': { readonly name: string; readonly asked: number; readonly left: number };
    'shelf-amount-unknown': { readonly name: string };
  }
}

/** A movement of stock: positive in, negative out, g. */
type Movement = { readonly action: LedgerLine['action']; readonly grams: number; readonly lot: number };

/**
 * The next line of an item's ledger, and the checkpoint after it. The line's number is taken by `add`: of two
 * movements worked out from the same stock one clashes and is worked out again, so both count and the two
 * together never take more than there is.
 */
export function move(
  shelf: Shelf,
  { item, lines }: ItemSnapshot,
  movement: Movement,
  change: Change,
): { readonly writes: readonly Write[]; readonly left: number } {
  const line = lines + 1;
  const moved = toMilligrams(movement.grams);
  const left = toMilligrams(item.stock.grams ?? 0) + moved;
  const entry: RecordOf<typeof ledgerKind> = {
    action: movement.action,
    at: change.at,
    cause: change.cause,
    change: moved,
    left,
    lot: movement.lot,
  };
  return {
    left: toGrams(left),
    writes: [
      absent(shelfGone(shelf.member, item.id)),
      add(ledgerLine(shelf.member, item.id, line), written(ledgerKind, entry)),
      put(shelfStock(shelf.member, item.id), written(stockKind, { line, left })),
    ],
  };
}

/** What to tell of an item whose stock is now `left` grams. */
export function outcomeOf(
  item: ShelfItem,
  action: Outcome['action'],
  left: number | undefined = item.stock.grams,
): Planned['outcome'] {
  const { lowAt } = item.stock;
  return {
    action,
    id: item.id,
    name: item.name,
    left,
    lowAt,
    // Nobody is told that little is left of what they just put there.
    low: left !== undefined && left <= lowAt && (action !== 'add' || left === 0),
    lot: item.lot.number,
  };
}

function planMovement(shelf: Shelf, snapshot: ItemSnapshot, movement: Movement, change: Change): Planned {
  const { writes, left } = move(shelf, snapshot, movement, change);
  return { writes, outcome: { ...outcomeOf(snapshot.item, movement.action, left), change: movement.grams } };
}

/**
 * Takes grams off. Refuses more than is left, saying how much that is, and an item of which nobody ever said
 * how much there is.
 */
export async function useItem(shelf: Shelf, asked: string, grams: number, change: Change): Promise<Outcome> {
  checkGrams(grams);
  return changeOnce(shelf, change, all => planUse(shelf, pickFromSnapshot(all, asked), grams, change));
}

/** What one press takes off: an item by its id, g. */
export type Taking = { readonly item: string; readonly grams: number };

/**
 * Takes several items off in one step, all of them or none, each item once in the list. Throws the Refusal of the first
 * item that has not enough, before anything is taken.
 */
export async function useItems(
  shelf: Shelf,
  takings: readonly Taking[],
  change: Change,
): Promise<readonly Outcome[]> {
  for (const { grams } of takings) checkGrams(grams);
  return changeAllOnce(shelf, { ...change, many: takings.length }, all =>
    takings.map(({ item, grams }, n) =>
      planUse(shelf, pickFromSnapshot(all, item), grams, { ...change, cause: `${change.cause}-${n + 1}` }),
    ),
  );
}

function planUse(shelf: Shelf, snapshot: ItemSnapshot, grams: number, change: Change): Planned {
  const { name, stock, lot } = snapshot.item;
  if (stock.grams === undefined) return refuse('shelf-amount-unknown', { name });
  if (toMilligrams(grams) > toMilligrams(stock.grams + shownSlack(stock.grams))) {
    return refuse('shelf-not-enough', { name, asked: grams, left: stock.grams });
  }
  return planMovement(
    shelf,
    snapshot,
    { action: 'use', grams: -Math.min(grams, stock.grams), lot: lot.number },
    change,
  );
}

/** Puts grams of the same lot on; a new lot is {@link startLot}. */
export async function restockItem(
  shelf: Shelf,
  asked: string,
  grams: number,
  change: Change,
): Promise<Outcome> {
  checkGrams(grams);
  return changeOnce(shelf, change, all => {
    const snapshot = pickFromSnapshot(all, asked);
    return planMovement(shelf, snapshot, { action: 'restock', grams, lot: snapshot.item.lot.number }, change);
  });
}
