import { instead, type Store } from './store.ts';

/**
 * The store as one question sees it: what it has read under `span` (a start of keys, such as `preference/`) is not
 * read again, until it writes. For records that a question asks for in several places and that nothing else changes
 * while it is answered.
 */
export function readOnce(store: Store, span: string): Store {
  const known = new Map<string, Promise<readonly unknown[]>>();
  return instead(store, {
    get(keys) {
      if (!keys.every(key => key.startsWith(span))) return store.get(keys);
      const name = keys.join(' ');
      const before = known.get(name);
      if (before) return before;
      const reading = store.get(keys);
      known.set(name, reading);
      // A failure is nothing to remember: the next one who asks may be luckier.
      reading.catch(() => known.delete(name));
      return reading;
    },
    async commit(writes) {
      try {
        return await store.commit(writes);
      } finally {
        known.clear();
      }
    },
  });
}
