import { refuse } from '../engine/refusal.ts';
import type { RecordAdapter } from './adapters/adapter.ts';
import { SqliteAdapter } from './adapters/sqlite.ts';
import type { Store } from './store.ts';
import { StrictStore } from './strict.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'store-scheme-unknown': { readonly address: string; readonly known: readonly string[] };
  }
}

type Opener = (address: string) => Promise<RecordAdapter>;

/** What an address starts with, and who opens it. */
const openers: Readonly<Record<string, Opener>> = {
  'sqlite:': address => SqliteAdapter.open(address.slice('sqlite:'.length)),
};

/**
 * Opens the store that an address names: `sqlite:PATH` or `sqlite::memory:`.
 * Refuses an unknown scheme, naming those that work; rejects with a `StoreFailure` if it cannot be reached.
 */
export async function openStore(address: string): Promise<Store> {
  const scheme = Object.keys(openers).find(
    known => address.startsWith(known) && address.length > known.length,
  );
  const opener = scheme === undefined ? undefined : openers[scheme];
  if (!opener) {
    return refuse('store-scheme-unknown', {
      // Never more than the scheme: what follows may hold a password.
      address: address.split(':')[0] ?? '',
      known: ['sqlite:PATH', 'sqlite::memory:'],
    });
  }
  return new StrictStore(await opener(address));
}
