import type { Store } from './store.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'store-scheme-unknown': { readonly address: string; readonly known: readonly string[] };
  }
}

/**
 * Opens the store that an address names: `sqlite:PATH` or `sqlite::memory:`.
 * Refuses an unknown scheme, naming those that work; rejects with a `StoreFailure` if it cannot be reached.
 */
export async function openStore(address: string): Promise<Store> {
  throw new Error(`not yet: ${address}`);
}
