import { anonymous, type StoreFailure } from './failure.ts';

/** A record that could not be read and was left out, its neighbours were not. `key` names it without saying whose it is. */
export type SetAside = { readonly kind: string; readonly key: string; readonly failure: StoreFailure };

/** More distinct ones are counted no further: by then the store is broken as a whole. */
const MOST_COUNTED = 10_000;

const counted = new Set<string>();
const listeners = new Set<(one: SetAside) => void>();

/** Leaves a record out: counts it and tells those who listen, once a key and process. */
export function setAside(kind: string, key: string, failure: StoreFailure): void {
  const named = anonymous(key);
  if (counted.has(named) || counted.size >= MOST_COUNTED) return;
  counted.add(named);
  for (const listener of listeners) listener({ kind, key: named, failure });
}

/** Calls for each record left out from now on; returns the unsubscriber. */
export function onSetAside(listener: (one: SetAside) => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
