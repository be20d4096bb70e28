import type { LedgerLine, Shelf, ShelfItem } from './shelf.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'shelf-item-unknown': { readonly asked: string; readonly nearest: readonly string[] };
    'shelf-item-ambiguous': { readonly asked: string; readonly candidates: readonly string[] };
  }
}

/** Every item, in the order of their names. */
export async function listShelf(_shelf: Shelf): Promise<readonly ShelfItem[]> {
  throw new Error('not yet');
}

/**
 * The one item that is meant: by its id or its exact name, else by the start of its name, else by a close
 * spelling; capitals, accents and width do not matter. Refuses when there is none, or more than one.
 */
export async function findItem(_shelf: Shelf, _asked: string): Promise<ShelfItem> {
  throw new Error('not yet');
}

/** The names nearest to what was typed, best first, for suggestions while typing; all of them for ''. */
export async function nearestNames(_shelf: Shelf, _typed: string, _most: number): Promise<readonly string[]> {
  throw new Error('not yet');
}

/** An item and the newest lines of its ledger, newest first. */
export async function showItem(
  _shelf: Shelf,
  _asked: string,
  _lines = 10,
): Promise<{ readonly item: ShelfItem; readonly history: readonly LedgerLine[] }> {
  throw new Error('not yet');
}
