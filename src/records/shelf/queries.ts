import { nearestNamed } from '../../engine/text/names/own-names.ts';
import { valuesOn } from '../../engine/values-on.ts';
import { pick } from './names.ts';
import type { LedgerLine, Shelf, ShelfItem } from './shelf.ts';
import { type ItemSnapshot, readLedger, readShelf } from './snapshot.ts';

const byName = new Intl.Collator('en', { sensitivity: 'base', numeric: true });

/** What was put in order of the same snapshots: one question asks for them in several places. */
const inOrder = valuesOn<readonly ItemSnapshot[], readonly ShelfItem[]>();

/** Every item, in the order of their names. */
export async function listShelf(shelf: Shelf): Promise<readonly ShelfItem[]> {
  const snapshots = await readShelf(shelf);
  const before = inOrder.get(snapshots);
  if (before) return before;
  const items = snapshots.map(({ item }) => item).sort((a, b) => byName.compare(a.name, b.name));
  inOrder.set(snapshots, items);
  return items;
}

/**
 * The one item that is meant: by its id or its exact name, else by the start of its name or of a word in it,
 * else by a close spelling; capitals, accents and width do not matter. Refuses when there is none, or more
 * than one.
 */
export async function findItem(shelf: Shelf, asked: string): Promise<ShelfItem> {
  return pick(await listShelf(shelf), asked);
}

/** At most so many names, nearest to what was typed first: suggestions while typing. In order of names for ''. */
export async function nearestNames(shelf: Shelf, typed: string, most: number): Promise<readonly string[]> {
  return nearestNamed(await listShelf(shelf), typed)
    .slice(0, most)
    .map(({ name }) => name);
}

/** An item and the newest lines of its ledger, newest first. */
export async function showItem(
  shelf: Shelf,
  asked: string,
  lines = 10,
): Promise<{ readonly item: ShelfItem; readonly history: readonly LedgerLine[] }> {
  const shelved = await readShelf(shelf);
  const item = pick(
    shelved.map(snapshot => snapshot.item),
    asked,
  );
  const snapshot = shelved.find(one => one.item === item);
  const history = snapshot && snapshot.lines > 0 ? await readLedger(shelf, snapshot, lines) : [];
  return { item, history };
}
