import { refuse } from '../../engine/refusal.ts';
import {
  batch,
  ledger,
  lotFacts,
  shelfGone,
  shelfIdempotencies,
  shelfIdempotency,
  shelfIdempotencyParts,
  shelfLot,
  shelfLotFact,
  textOfPart,
  under,
  undoable as undoableKey,
  undone,
} from '../keys.ts';
import { type RecordOf, read, readable } from '../record.ts';
import { absent, drop, everything } from '../store.ts';
import { canUndo, lastUndoable, newestFirst, takeBack, UNDO_MINUTES, type Undone } from '../undo/index.ts';
import { changeAllOnce, changeOnce, type Planned } from './idempotency.ts';
import { pickFromSnapshot } from './pick-from-snapshot.ts';
import { listShelf } from './queries.ts';
import { idempotencyKind, ledgerKind } from './schema.ts';
import type { Change, Outcome, Shelf } from './shelf.ts';
import { type ItemSnapshot, toGrams, UNDO_CAUSE } from './snapshot.ts';
import { move, outcomeOf } from './stock.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'shelf-undo-not-enough': { readonly name: string; readonly left: number };
  }
}

/** Lines of a ledger in which a movement is looked for: more than anybody makes in that time. */
const MOST_LINES = 50;
/** Jars that one press can take from: every one of a full plan. */
const MOST_PARTS = 500;

type Done = RecordOf<typeof idempotencyKind>;
/** One change of a cause, under its own part of it. */
type Part = { readonly cause: string; readonly done: Done };

async function linesOf({ store, member }: Shelf, item: string, most: number) {
  const { from, to } = under(ledger(member, item));
  return readable(ledgerKind, await store.range(from, to, most)).map(({ fields }) => fields);
}

/** What a cause changed on the shelf: one thing, or several at once; none where nothing was. */
async function partsOf({ store, member }: Shelf, cause: string): Promise<readonly Part[]> {
  const key = shelfIdempotency(member, cause);
  const [single] = await store.get([key]);
  if (single !== undefined) return [{ cause, done: read(idempotencyKind, key, single) }];
  const { from, to } = shelfIdempotencyParts(member, cause);
  const parts = await store.range(from, to, MOST_PARTS);
  return readable(idempotencyKind, parts)
    .map(({ key: one, fields }) => ({ cause: `${cause}${one.slice(key.length)}`, done: fields }))
    .sort((a, b) => numberIn(a.cause) - numberIn(b.cause));
}

const numberIn = (cause: string): number => Number(/\d+$/.exec(cause)?.[0] ?? 0);

/** What undoing a change of the shelf did: movements taken back, or a jar that stands again. */
export type ShelfUndone = { readonly outcomes: readonly Outcome[] } | { readonly change: Undone };

/**
 * Takes back what one cause changed on the shelf: uses and restocks by the opposite movement, so that what else happened
 * to the jars meanwhile stays; a new lot where nothing is known of it yet; a removal with all its history. All of it or
 * nothing, and once, however often it is asked. Throws the Refusals `undo-nothing`, `undo-too-late`,
 * `undo-changed-since` and `shelf-undo-not-enough`.
 */
export async function undoOnShelf(
  shelf: Shelf,
  { cause }: { readonly cause: string },
  { at }: Pick<Change, 'at'>,
): Promise<ShelfUndone> {
  const change = await takeBack(shelf, cause, at);
  if (change) return { change };
  const parts = await partsOf(shelf, cause);
  const [first] = parts;
  if (!first) return refuse('undo-nothing', { minutes: UNDO_MINUTES });
  const undoing = { at, cause: `${UNDO_CAUSE}${cause}` };
  if (first.cause === cause)
    return {
      outcomes: [await changeOnce(shelf, undoing, async all => planBack(shelf, all, first, undoing))],
    };
  const lines = new Map(
    await Promise.all(
      parts.map(async ({ done }) => [done.id, await linesOf(shelf, done.id, MOST_LINES)] as const),
    ),
  );
  const outcomes = await changeAllOnce(shelf, { ...undoing, many: parts.length }, all =>
    parts.map(part => {
      const partly = { at, cause: `${UNDO_CAUSE}${part.cause}` };
      return backFrom(shelf, all, { part, lines: lines.get(part.done.id) ?? [] }, partly);
    }),
  );
  return { outcomes };
}

async function planBack(
  shelf: Shelf,
  all: readonly ItemSnapshot[],
  part: Part,
  undoing: Change,
): Promise<Planned> {
  if (part.done.action !== 'new-lot') {
    const lines = await linesOf(shelf, part.done.id, MOST_LINES);
    return backFrom(shelf, all, { part, lines }, undoing);
  }
  return lotBack(shelf, all, part, undoing);
}

/** The opposite of a use or a restock. */
function backFrom(
  shelf: Shelf,
  all: readonly ItemSnapshot[],
  {
    part: { cause, done },
    lines,
  }: { readonly part: Part; readonly lines: readonly RecordOf<typeof ledgerKind>[] },
  undoing: Change,
): Planned {
  const line = isMovement(done.action) ? lines.find(one => one.cause === cause) : undefined;
  if (!line) return refuse('undo-nothing', { minutes: UNDO_MINUTES });
  if (!canUndo(line.at, undoing.at)) refuse('undo-too-late', { minutes: UNDO_MINUTES });
  const snapshot = pickFromSnapshot(all, done.id);
  return moved(shelf, snapshot, { grams: -toGrams(line.change), lot: snapshot.item.lot.number }, undoing);
}

function moved(
  shelf: Shelf,
  snapshot: ItemSnapshot,
  { grams, lot }: { readonly grams: number; readonly lot: number },
  undoing: Change,
): Planned {
  const { name, stock } = snapshot.item;
  if ((stock.grams ?? 0) + grams < 0) refuse('shelf-undo-not-enough', { name, left: stock.grams ?? 0 });
  const action = grams > 0 ? 'restock' : 'use';
  const { writes, left } = move(shelf, snapshot, { action, grams, lot }, undoing);
  return { writes, outcome: { ...outcomeOf(snapshot.item, action, left), change: grams } };
}

/** A new lot closed again: the one before it counts, with its tests; what was put on with it comes off. */
async function lotBack(
  shelf: Shelf,
  all: readonly ItemSnapshot[],
  { done: { id, lot, change } }: Part,
  undoing: Change,
): Promise<Planned> {
  const { member } = shelf;
  const snapshot = pickFromSnapshot(all, id);
  const { name, lot: now } = snapshot.item;
  if (!canUndo(now.since, undoing.at)) refuse('undo-too-late', { minutes: UNDO_MINUTES });
  const facts = lotFacts.map(fact => shelfLotFact(member, id, lot, fact));
  const known = (await shelf.store.get(facts)).some(one => one !== undefined);
  if (now.number !== lot || known) refuse('undo-changed-since', { name });
  const closed = [
    ...facts.map(absent),
    absent(shelfLot(member, id, lot + 1)),
    drop(shelfLot(member, id, lot)),
  ];
  if (change === undefined || change === 0) {
    const writes = [absent(shelfGone(member, id)), ...closed];
    return { writes, outcome: { ...outcomeOf(snapshot.item, 'new-lot'), lot: lot - 1 } };
  }
  const stocked = moved(shelf, snapshot, { grams: -toGrams(change), lot: lot - 1 }, undoing);
  return {
    writes: [...stocked.writes, ...closed],
    outcome: { ...stocked.outcome, action: 'new-lot', lot: lot - 1 },
  };
}

/** Changes that are taken back like those of a jar: where there is no button to press, `/shelf undo` is the way. */
const CHANGES = [
  'jar-removed',
  'recipe-removed',
  'recipe-unshared',
  'poured',
  'batch-removed',
  'batch-event',
] as const;

/**
 * What was changed last on the shelf, or of the member's recipes and batches, and can still be taken back, by its cause. Throws a
 * Refusal `undo-nothing`.
 */
export async function lastOnShelf(shelf: Shelf, now: Date): Promise<{ readonly cause: string }> {
  const removed = await lastUndoable(shelf, CHANGES, now);
  const newest = [
    ...(await movements(shelf, now)),
    ...(await newLots(shelf, now)),
    ...(removed ? [removed] : []),
  ].sort(newestFirst);
  const undoneKeys = newest.map(({ cause }) => shelfIdempotency(shelf.member, `${UNDO_CAUSE}${cause}`));
  const marks = newest.map(({ cause }) => undone(shelf.member, cause));
  const before = await shelf.store.get([...undoneKeys, ...marks]);
  const found = newest.find((_, at) => before[at] === undefined && before[newest.length + at] === undefined);
  if (!found) return refuse('undo-nothing', { minutes: UNDO_MINUTES });
  return { cause: await wholeCause(shelf, found.cause) };
}

type Made = { readonly cause: string; readonly at: Date };

/** Fresh movements of stock; what a batch took is undone with the batch. */
async function movements(shelf: Shelf, now: Date): Promise<readonly Made[]> {
  const lines = await Promise.all((await listShelf(shelf)).map(({ id }) => linesOf(shelf, id, MOST_LINES)));
  const fresh = lines
    .flat()
    .filter(
      ({ action, at, cause }) => isMovement(action) && canUndo(at, now) && !cause.startsWith(UNDO_CAUSE),
    );
  const bases = fresh.map(({ cause }) => baseOf(cause));
  // A batch that was removed took it all the same.
  const pours = await shelf.store.get([
    ...bases.map(base => batch(shelf.member, base)),
    ...bases.map(base => undoableKey(shelf.member, base)),
  ]);
  return fresh.filter((_, at) => pours[at] === undefined && pours[fresh.length + at] === undefined);
}

async function newLots(shelf: Shelf, now: Date): Promise<readonly Made[]> {
  const fresh = (await listShelf(shelf)).filter(({ lot }) => lot.number > 1 && canUndo(lot.since, now));
  if (fresh.length === 0) return [];
  const parent = under(shelfIdempotencies(shelf.member));
  return readable(idempotencyKind, await everything(shelf.store, parent)).flatMap(({ key, fields }) => {
    if (fields.action !== 'new-lot') return [];
    const item = fresh.find(({ id, lot }) => id === fields.id && lot.number === fields.lot);
    const cause = textOfPart(key.split('/')[2] ?? '');
    return item && !cause.startsWith(UNDO_CAUSE) ? [{ cause, at: item.lot.since }] : [];
  });
}

const baseOf = (cause: string): string => cause.replace(/-\d+$/, '');

/** One press may have moved several jars: they go back together. */
async function wholeCause(shelf: Shelf, cause: string): Promise<string> {
  const base = baseOf(cause);
  if (base === cause) return cause;
  const [first] = await shelf.store.get([shelfIdempotency(shelf.member, `${base}-1`)]);
  return first === undefined ? cause : base;
}

const isMovement = (action: string): boolean => action === 'use' || action === 'restock';
