import { refuse } from '../../engine/refusal.ts';
import { ledger, shelfIdempotency, under } from '../keys.ts';
import { readable } from '../record.ts';
import { changeOnce } from './idempotency.ts';
import { pickFromSnapshot } from './pick-from-snapshot.ts';
import { listShelf } from './queries.ts';
import { ledgerKind } from './schema.ts';
import type { Change, Outcome, Shelf } from './shelf.ts';
import { toGrams } from './snapshot.ts';
import { move, outcomeOf } from './stock.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'undo-nothing': { readonly minutes: number };
    'undo-too-late': { readonly minutes: number };
    'shelf-undo-not-enough': { readonly name: string; readonly left: number };
  }
}

/** As long as a movement of stock can be taken back, minutes. */
export const UNDO_MINUTES = 10;
/** Lines of a ledger in which a movement is looked for: more than anybody makes in that time. */
const MOST_LINES = 50;

const PREFIX = 'undo-';
const isFresh = (at: Date, now: Date): boolean => now.getTime() - at.getTime() <= UNDO_MINUTES * 60_000;

async function linesOf({ store, member }: Shelf, item: string, most: number) {
  const { from, to } = under(ledger(member, item));
  return readable(ledgerKind, await store.range(from, to, most)).map(({ fields }) => fields);
}

/**
 * Takes back a use or a restock by the opposite movement: what else happened to the item meanwhile stays. Once, however often
 * it is asked. Throws the Refusals `undo-nothing`, `undo-too-late` and `shelf-undo-not-enough`.
 */
export async function undoMovement(
  shelf: Shelf,
  { item, cause }: { readonly item: string; readonly cause: string },
  change: Pick<Change, 'at'>,
): Promise<Outcome> {
  const undoing = { at: change.at, cause: `${PREFIX}${cause}` };
  return changeOnce(shelf, undoing, async all => {
    const lines = await linesOf(shelf, item, MOST_LINES);
    const line = lines.find(one => one.cause === cause && one.action !== 'add' && one.action !== 'new-lot');
    if (!line) return refuse('undo-nothing', { minutes: UNDO_MINUTES });
    if (!isFresh(line.at, change.at)) refuse('undo-too-late', { minutes: UNDO_MINUTES });
    const snapshot = pickFromSnapshot(all, item);
    const { name, stock, lot } = snapshot.item;
    const grams = -toGrams(line.change);
    if ((stock.grams ?? 0) + grams < 0) refuse('shelf-undo-not-enough', { name, left: stock.grams ?? 0 });
    const action = grams > 0 ? 'restock' : 'use';
    const { writes, left } = move(shelf, snapshot, { action, grams, lot: lot.number }, undoing);
    return { writes, outcome: { ...outcomeOf(snapshot.item, action, left), change: grams } };
  });
}

/** The member's last use or restock that can still be taken back. Throws a Refusal `undo-nothing`. */
export async function lastMovement(
  shelf: Shelf,
  now: Date,
): Promise<{ readonly item: string; readonly cause: string }> {
  const found = await Promise.all(
    (await listShelf(shelf)).map(async ({ id }) =>
      (await linesOf(shelf, id, MOST_LINES))
        .filter(
          ({ action, at, cause }) => isMovement(action) && isFresh(at, now) && !cause.startsWith(PREFIX),
        )
        .map(({ at, cause }) => ({ item: id, cause, at })),
    ),
  );
  const newest = found.flat().sort((a, b) => b.at.getTime() - a.at.getTime());
  const undone = await shelf.store.get(
    newest.map(({ cause }) => shelfIdempotency(shelf.member, `${PREFIX}${cause}`)),
  );
  return (
    newest.find((_, place) => undone[place] === undefined) ??
    refuse('undo-nothing', { minutes: UNDO_MINUTES })
  );
}

const isMovement = (action: string): boolean => action === 'use' || action === 'restock';
