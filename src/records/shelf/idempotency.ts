import { Refusal } from '../../engine/refusal.ts';
import { anonymous, StoreFailure } from '../failure.ts';
import { shelfIdempotency } from '../keys.ts';
import { type RecordOf, read, written } from '../record.ts';
import { add, type Write } from '../store.ts';
import { idempotencyKind } from './schema.ts';
import type { Change, Outcome, Shelf } from './shelf.ts';
import { type ItemSnapshot, readShelf, toGrams, toMilligrams } from './snapshot.ts';

/** A change worked out on the shelf as it was read: what to write, and what to tell. */
export type Planned = { readonly writes: readonly Write[]; readonly outcome: Omit<Outcome, 'repeated'> };

/** More changes than one member can have under way at once: past it something else is wrong. */
const mostRounds = 1000;

/**
 * Makes a change once for its cause, by optimistic concurrency. The plan is made on what was read, and its writes name what must not have
 * happened since (a ledger line, a name, a removal); if it has, everything is read and planned again. Each
 * round that fails is one in which another change got through, so somebody always gets on.
 */
export async function changeOnce(
  shelf: Shelf,
  change: Change,
  plan: (snapshot: readonly ItemSnapshot[]) => Planned | Promise<Planned>,
): Promise<Outcome> {
  const key = shelfIdempotency(shelf.member, change.cause);
  const madeBefore = async (): Promise<Outcome | undefined> => {
    const [before] = await shelf.store.get([key]);
    return before === undefined
      ? undefined
      : { ...outcomeOf(read(idempotencyKind, key, before)), repeated: true };
  };
  for (let round = 0; round < mostRounds; round += 1) {
    // Hardly any is made a second time: whether this one is, is asked where something stands in its way. Its own key then does.
    const made = round > 0 ? await madeBefore() : undefined;
    if (made) return made;
    const planned = await planOnce(async () => await plan(await readShelf(shelf)), madeBefore);
    if ('repeated' in planned) return planned;
    const { writes, outcome } = planned;
    const result = await shelf.store.commit([
      add(key, written(idempotencyKind, kept(outcome, change))),
      ...writes,
    ]);
    if (result.done) return { ...outcome, repeated: false };
  }
  throw new StoreFailure('busy', 'write', `${anonymous(key)}: other changes kept coming between`);
}

/** The plan; where it is refused, what was made of the same cause before, which may be why. */
async function planOnce(
  plan: () => Promise<Planned>,
  madeBefore: () => Promise<Outcome | undefined>,
): Promise<Planned | Outcome> {
  try {
    return await plan();
  } catch (refusal) {
    const made = refusal instanceof Refusal ? await madeBefore() : undefined;
    if (made) return made;
    throw refusal;
  }
}

/**
 * Makes `many` changes for one cause, all of them or none, and once: like {@link changeOnce}, each under a cause of its
 * own (`<cause>-1`, `<cause>-2`, ...). The plan gives one change each, in the same order every time.
 */
export async function changeAllOnce(
  shelf: Shelf,
  { many, ...change }: Change & { readonly many: number },
  plan: (snapshot: readonly ItemSnapshot[]) => readonly Planned[],
): Promise<readonly Outcome[]> {
  const keys = Array.from({ length: many }, (_, n) =>
    shelfIdempotency(shelf.member, `${change.cause}-${n + 1}`),
  );
  for (let round = 0; round < mostRounds; round += 1) {
    const before = await shelf.store.get(keys);
    if (before[0] !== undefined)
      return before.map((one, n) => ({ ...outcomeOf(read(idempotencyKind, keys[n]!, one)), repeated: true }));
    const planned = plan(await readShelf(shelf));
    const once = planned.map(({ outcome }, n) =>
      add(keys[n]!, written(idempotencyKind, kept(outcome, change))),
    );
    const result = await shelf.store.commit([...once, ...planned.flatMap(({ writes }) => writes)]);
    if (result.done) return planned.map(({ outcome }) => ({ ...outcome, repeated: false }));
  }
  throw new StoreFailure('busy', 'write', `${anonymous(keys[0] ?? '')}: other changes kept coming between`);
}

/** What a removed jar was called is not kept. */
const kept = (
  { change, left, lowAt, name, ...rest }: Planned['outcome'],
  { cause, at, press }: Change,
): RecordOf<typeof idempotencyKind> => ({
  ...rest,
  at,
  ...(press !== undefined && press !== cause && { press }),
  name: rest.action === 'remove' ? '' : name,
  change: change === undefined ? undefined : toMilligrams(change),
  left: left === undefined ? undefined : toMilligrams(left),
  lowAt: lowAt === undefined ? undefined : toMilligrams(lowAt),
});

const outcomeOf = ({
  change,
  left,
  lowAt,
  at: _at,
  press: _press,
  ...rest
}: RecordOf<typeof idempotencyKind>): Planned['outcome'] => ({
  ...rest,
  change: change === undefined ? undefined : toGrams(change),
  left: left === undefined ? undefined : toGrams(left),
  lowAt: lowAt === undefined ? undefined : toGrams(lowAt),
});
