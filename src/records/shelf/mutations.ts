import type { Price } from '../../engine/cost/money.ts';
import {
  type LotFact,
  shelfGone,
  shelfIngredients,
  shelfItem,
  shelfLot,
  shelfLotFact,
  shelfLowMark,
} from '../keys.ts';
import { written } from '../record.ts';
import { absent, add, put } from '../store.ts';
import { changeOnce } from './idempotency.ts';
import { ingredientsRecord } from './jars/ingredients.ts';
import { checkGrams, checkGramsOrNone, checkPigment, checkSpoon } from './limits.ts';
import { pickFromSnapshot } from './pick-from-snapshot.ts';
import { calibrationKind, dishTestKind, itemKind, lotKind, lowMarkKind, spoonWeightKind } from './schema.ts';
import type {
  Calibration,
  Change,
  DishTestResult,
  Ingredients,
  Outcome,
  Shelf,
  SpoonWeight,
} from './shelf.ts';
import { type ItemSnapshot, toMilligrams } from './snapshot.ts';
import { move, outcomeOf } from './stock.ts';

/** Writes one fact about the item that is meant, unless it was removed meanwhile. */
function note(
  shelf: Shelf,
  asked: string,
  change: Change,
  action: Outcome['action'],
  fact: (snapshot: ItemSnapshot) => {
    readonly key: string;
    readonly value: unknown;
    readonly lowAt?: number;
  },
): Promise<Outcome> {
  return changeOnce(shelf, change, all => {
    const snapshot = pickFromSnapshot(all, asked);
    const { key, value, lowAt = snapshot.item.stock.lowAt } = fact(snapshot);
    const { id, stock } = snapshot.item;
    return {
      writes: [absent(shelfGone(shelf.member, id)), put(key, value)],
      outcome: outcomeOf({ ...snapshot.item, stock: { ...stock, lowAt } }, action),
    };
  });
}

const lotFact = ({ member }: Shelf, { item }: ItemSnapshot, fact: LotFact) =>
  shelfLotFact(member, item.id, item.lot.number, fact);

/** Writes down where a pinch of this lot went in a dish of water. */
export async function dishTest(
  shelf: Shelf,
  asked: string,
  result: DishTestResult,
  change: Change,
): Promise<Outcome> {
  return note(shelf, asked, change, 'dish-test', snapshot => ({
    key: lotFact(shelf, snapshot, 'dish-test'),
    value: written(dishTestKind, { result, at: change.at }),
  }));
}

/** Writes down what one level spoon of this lot weighs; refuses what no powder or paste weighs. */
export async function weighSpoon(
  shelf: Shelf,
  asked: string,
  { grams, spoonMillilitres }: SpoonWeight,
  change: Change,
): Promise<Outcome> {
  checkSpoon(grams, spoonMillilitres);
  return note(shelf, asked, change, 'weigh', snapshot => ({
    key: lotFact(shelf, snapshot, 'spoon-weight'),
    value: written(spoonWeightKind, { grams, spoonMillilitres, at: change.at }),
  }));
}

/** Keeps how this lot was measured to behave. */
export async function keepCalibration(
  shelf: Shelf,
  asked: string,
  calibration: Calibration,
  change: Change,
): Promise<Outcome> {
  return note(shelf, asked, change, 'calibrate', snapshot => ({
    key: lotFact(shelf, snapshot, 'calibration'),
    value: written(calibrationKind, { found: calibration as never, at: change.at }),
  }));
}

/** What an item is said to be. */
export type Description = {
  readonly colourant?: string | undefined;
  readonly pigmentFraction?: number | undefined;
  readonly ingredients?: Ingredients | undefined;
  readonly price?: Price | undefined;
};

/** Says what an item is, where that was not known or not right. */
export async function describeItem(
  shelf: Shelf,
  asked: string,
  what: Description,
  change: Change,
): Promise<Outcome> {
  if (what.pigmentFraction !== undefined) checkPigment(what.pigmentFraction);
  return changeOnce(shelf, change, all => {
    const { item } = pickFromSnapshot(all, asked);
    const { id } = item;
    const described = {
      // With whatever a newer program says of it: only the fields of the kind are written beside that.
      ...item,
      colourant: what.colourant ?? item.colourant,
      pigmentFraction: what.pigmentFraction ?? item.pigmentFraction,
      price: what.price ?? item.price,
    };
    return {
      writes: [
        absent(shelfGone(shelf.member, id)),
        put(shelfItem(shelf.member, id), written(itemKind, described)),
        ...(what.ingredients
          ? [put(shelfIngredients(shelf.member, id), ingredientsRecord(what.ingredients))]
          : []),
      ],
      outcome: outcomeOf(item, 'describe'),
    };
  });
}

/** From how many grams on the member is told that little is left; 0 tells only of an empty jar. */
export async function setLowMark(
  shelf: Shelf,
  asked: string,
  grams: number,
  change: Change,
): Promise<Outcome> {
  checkGramsOrNone(grams);
  return note(shelf, asked, change, 'low-mark', ({ item }) => ({
    key: shelfLowMark(shelf.member, item.id),
    value: written(lowMarkKind, { at: toMilligrams(grams) }),
    lowAt: grams,
  }));
}

/**
 * Starts a new lot: nothing found out about the last one holds for it. What is left of the old one stays in
 * the stock; the grams, if given, are added.
 */
export async function startLot(
  shelf: Shelf,
  asked: string,
  lot: { readonly label?: string | undefined; readonly grams?: number | undefined },
  change: Change,
): Promise<Outcome> {
  if (lot.grams !== undefined) checkGrams(lot.grams);
  return changeOnce(shelf, change, all => {
    const snapshot = pickFromSnapshot(all, asked);
    const number = snapshot.item.lot.number + 1;
    const item = { ...snapshot.item, lot: { number, label: lot.label, since: change.at } };
    const opened = add(
      shelfLot(shelf.member, item.id, number),
      written(lotKind, { label: lot.label, since: change.at }),
    );
    if (lot.grams === undefined) {
      return {
        writes: [absent(shelfGone(shelf.member, item.id)), opened],
        outcome: outcomeOf(item, 'new-lot'),
      };
    }
    const stocked = move(shelf, snapshot, { action: 'new-lot', grams: lot.grams, lot: number }, change);
    return {
      writes: [opened, ...stocked.writes],
      outcome: { ...outcomeOf(item, 'new-lot', stocked.left), change: lot.grams },
    };
  });
}
