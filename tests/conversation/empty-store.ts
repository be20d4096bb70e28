import type { Store } from '../../src/records/store.ts';

/** A store in which nothing is kept, for commands that keep nothing. */
export const emptyStore: Store = {
  get: async keys => keys.map(() => undefined),
  range: async () => [],
  commit: async () => {
    throw new Error('nothing is kept here');
  },
  close: async () => {},
};
