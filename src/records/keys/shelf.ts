import type { Span } from '../store.ts';
import { key, newestFirst, serial } from './key.ts';

// A member's shelf: it is theirs in every group, so no group is in the key.
/** Everything current about a member's shelf lies under this key. */
export const shelf = (member: string) => key('shelf', member);
/** What an item is: its name, its colourant, its pigment fraction. */
export const shelfItem = (member: string, item: string) => key('shelf', member, item);
/** How much is there now, as of the last line of its ledger. */
export const shelfStock = (member: string, item: string) => key('shelf', member, item, 'stock');
/** From how little on the member wants to be told. */
export const shelfLowMark = (member: string, item: string) => key('shelf', member, item, 'low-mark');
/** What the label lists. */
export const shelfIngredients = (member: string, item: string) => key('shelf', member, item, 'ingredients');
/** A lot: what is found out about one lot lies under it, so a new lot knows nothing of it. */
export const shelfLot = (member: string, item: string, lot: number) =>
  key('shelf', member, item, 'lot', serial(lot));
/** What can be found out about one lot. */
export const lotFacts = ['dish-test', 'spoon-weight', 'calibration', 'learnt'] as const;
export type LotFact = (typeof lotFacts)[number];
/** Something found out about one lot. */
export const shelfLotFact = (member: string, item: string, lot: number, fact: LotFact) =>
  key('shelf', member, item, 'lot', serial(lot), fact);
/** Holds a name: two items of one shelf cannot both add it. */
export const shelfName = (member: string, foldedName: string) => key('shelf-name', member, foldedName);
/** An item that was removed: whatever changes an item demands that this is absent. */
export const shelfGone = (member: string, item: string) => key('shelf-gone', member, item);
/** The changes that a member's interactions made lie under this key. */
export const shelfIdempotencies = (member: string) => key('shelf-once', member);
/** The change that an interaction made, so that its second delivery makes none. */
export const shelfIdempotency = (member: string, cause: string) => key('shelf-once', member, cause);
/** The changes that one interaction made at once, one behind the other. */
export function shelfIdempotencyParts(member: string, cause: string): Span {
  const first = shelfIdempotency(member, cause);
  // '.' is the character after '-'.
  return { from: `${first}-`, to: `${first}.` };
}
/** The lines of an item's ledger lie under this key. */
export const ledger = (member: string, item: string) => key('ledger', member, item);
/** One line of an item's ledger; the newest comes first. */
export const ledgerLine = (member: string, item: string, line: number) =>
  key('ledger', member, item, newestFirst(line));
