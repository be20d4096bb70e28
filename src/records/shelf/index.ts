/*
 * A member's shelf: what they own, how much is left, and what they found out about it. Everything here takes
 * a {@link Shelf}. Items are meant by their name as the member types it, or by their id.
 */

export { addItem } from './add.ts';
export { readIngredients } from './jars/ingredients.ts';
export {
  describeItem,
  dishTest,
  keepCalibration,
  setLowMark,
  startLot,
  weighSpoon,
} from './mutations.ts';
export { pressedAgain } from './pressed-again.ts';
export { findItem, listShelf, nearestNames, showItem } from './queries.ts';
export { removeItem } from './removal.ts';
export * from './shelf.ts';
export { setAsideOn } from './snapshot.ts';
export { restockItem, type Taking, useItem, useItems } from './stock.ts';
export { lastOnShelf, type ShelfUndone, undoOnShelf } from './undo.ts';
