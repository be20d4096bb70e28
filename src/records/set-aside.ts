import { anonymous, type StoreFailure } from './failure.ts';

/** A record that could not be read and was left out, its neighbours were not. `key` names it without saying whose it is. */
export type SetAside = { readonly kind: string; readonly key: string; readonly failure: StoreFailure };

/** More distinct ones are counted no further: by then the store is broken as a whole. */
const MOST_COUNTED = 10_000;

const counted = new Map<string, string>();
const listeners = new Set<(one: SetAside) => void>();

/** Leaves a record out: counts it and tells those who listen, once a key and process. */
export function setAside(kind: string, key: string, failure: StoreFailure): void {
  const named = anonymous(key);
  if (counted.has(named) || counted.size >= MOST_COUNTED) return;
  counted.set(named, kind);
  for (const listener of listeners) listener({ kind, key: named, failure });
}

/** How many records were left out since the process began, by kind. */
export function setAsideByKind(): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const kind of counted.values()) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return counts;
}

/** Calls for each record left out from now on; returns the unsubscriber. */
export function onSetAside(listener: (one: SetAside) => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
