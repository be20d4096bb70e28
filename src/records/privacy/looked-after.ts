import { instead, type Store, type Write } from '../store.ts';
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
export function lookedAfter(
  store: Store,
  { group, at }: { readonly group: string; readonly at: number },
): Store {
  const groups = noted.get(store) ?? new Map<string, number>();
  noted.set(store, groups);
  const today = Math.floor(at / day);
  return instead(store, {
    async commit(writes) {
      if (groups.get(group) === today || !writes.some(isKept)) return await store.commit(writes);
      const due = sweepDue(group, new Date(at));
      const all = writes.some(({ key }) => key === due.key) ? writes : [...writes, due];
      const result = await store.commit(all);
      if (groups.size >= MOST_NOTED) groups.clear();
      if (result.done) groups.set(group, today);
      return result;
    },
  });
}

/** True for a record of somebody's that is kept until they want it gone: what buttons go on with goes by itself. */
function isKept(write: Write): boolean {
  if (write.kind !== 'put' && write.kind !== 'add') return false;
  const kind = write.key.split('/')[0] ?? '';
  const held = kinds.get(kind);
  return isOwned(held) && held.topic !== 'recent' && kind !== 'due';
}
