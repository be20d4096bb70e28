import type { CommitResult, Entry, Span, Store, Write } from '../store.ts';
import { isOwned, kinds } from './kinds.ts';
import { sweepDue } from './retention.ts';

const day = 86_400_000;
/** As many groups are remembered to have been noted; then all are noted anew. */
const MOST_NOTED = 10_000;

/** For each store, the groups noted by this process and the day (since 1970 UTC) of it. */
const noted = new WeakMap<Store, Map<string, number>>();

/**
 * The store as one question writes to it: with the first record of a member's that is kept in a group, the group's
 * next look for what retention asks for is set, in the same commit; from then on once a day.
 */
export class LookedAfter implements Store {
  readonly #store: Store;
  readonly #group: string;
  /** ms since 1970 UTC. */
  readonly #at: number;

  readonly patience?: number;

  constructor(store: Store, { group, at }: { readonly group: string; readonly at: number }) {
    this.#store = store;
    this.#group = group;
    this.#at = at;
    if (store.patience !== undefined) this.patience = store.patience;
  }

  atHand(spans: readonly Span[], limit: number): readonly (readonly Entry[])[] | undefined {
    return this.#store.atHand?.(spans, limit);
  }

  get(keys: readonly string[]): Promise<readonly unknown[]> {
    return this.#store.get(keys);
  }

  range(from: string, to: string, limit: number): Promise<readonly Entry[]> {
    return this.#store.range(from, to, limit);
  }

  ranges(spans: readonly Span[], limit: number): Promise<readonly (readonly Entry[])[]> {
    return this.#store.ranges
      ? this.#store.ranges(spans, limit)
      : Promise.all(spans.map(({ from, to }) => this.#store.range(from, to, limit)));
  }

  commit(writes: readonly Write[]): Promise<CommitResult> {
    const groups = notedFor(this.#store);
    const today = Math.floor(this.#at / day);
    if (groups.get(this.#group) === today || !writes.some(isKept)) return this.#store.commit(writes);
    return this.#commitWithLook(writes, { groups, today });
  }

  close(): Promise<void> {
    return this.#store.close();
  }

  async #commitWithLook(
    writes: readonly Write[],
    { groups, today }: { readonly groups: Map<string, number>; readonly today: number },
  ): Promise<CommitResult> {
    const due = sweepDue(this.#group, new Date(this.#at));
    const all = writes.some(({ key }) => key === due.key) ? writes : [...writes, due];
    const result = await this.#store.commit(all);
    if (groups.size >= MOST_NOTED) groups.clear();
    if (result.done) groups.set(this.#group, today);
    return result;
  }
}

function notedFor(store: Store): Map<string, number> {
  const groups = noted.get(store) ?? new Map<string, number>();
  noted.set(store, groups);
  return groups;
}

/** True for a record of somebody's that is kept until they want it gone: what buttons go on with goes by itself. */
function isKept(write: Write): boolean {
  if (write.kind !== 'put' && write.kind !== 'add') return false;
  const kind = write.key.split('/')[0] ?? '';
  const held = kinds.get(kind);
  return isOwned(held) && held.topic !== 'recent' && kind !== 'due';
}
