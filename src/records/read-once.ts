import { type Entry, instead, type Store } from './store.ts';

/**
 * The store as one question sees it: what it has read under one of `spans` (starts of keys, such as `preference/`) is
 * not read again, until it writes. For records that a question asks for in several places and that nothing else
 * changes while it is answered.
 */
export function readOnce(store: Store, ...spans: readonly string[]): Store {
  const gets = new Map<string, Promise<readonly unknown[]>>();
  const ranges = new Map<string, Promise<readonly Entry[]>>();
  const isKnown = (key: string) => spans.some(span => key.startsWith(span));
  return instead(store, {
    get: keys => (keys.every(isKnown) ? once(gets, keys.join(' '), () => store.get(keys)) : store.get(keys)),
    range(from, to, limit) {
      if (!isKnown(from)) return store.range(from, to, limit);
      const name = `${from} ${to} ${limit}`;
      const reading = once(ranges, name, () => store.range(from, to, limit));
      // What is read in pieces may have changed between two of them: whoever looks again then looks anew.
      return reading.then(found => {
        if (found.length >= limit) ranges.delete(name);
        return found;
      });
    },
    async commit(writes) {
      try {
        return await store.commit(writes);
      } finally {
        gets.clear();
        ranges.clear();
      }
    },
  });
}

function once<T>(known: Map<string, Promise<T>>, name: string, read: () => Promise<T>): Promise<T> {
  const before = known.get(name);
  if (before) return before;
  const reading = read();
  known.set(name, reading);
  // A failure is nothing to remember: the next one who asks may be luckier.
  reading.catch(() => known.delete(name));
  return reading;
}
