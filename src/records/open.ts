import { refuse } from '../engine/refusal.ts';
import type { RecordAdapter } from './adapters/adapter.ts';
import { SqliteAdapter } from './adapters/sqlite.ts';
import { fillingKey, formatKey } from './keys.ts';
import { ReadingHere } from './reading-here.ts';
import { add, type Store } from './store.ts';
import { StrictStore } from './strict.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'store-half-filled': Record<never, never>;
    'store-newer': { readonly format: number; readonly known: number };
    'store-scheme-unknown': { readonly address: string; readonly known: readonly string[] };
  }
}

type Opener = (address: string) => Promise<RecordAdapter>;

// The clients of shared stores are loaded by those who use one.
const redis: Opener = async address => (await import('./adapters/redis.ts')).RedisAdapter.open(address);
const postgres: Opener = async address =>
  (await import('./adapters/postgres.ts')).PostgresAdapter.open(address);

/** What an address starts with, and who opens it. */
const openers: Readonly<Record<string, Opener>> = {
  'sqlite:': address => SqliteAdapter.open(address.slice('sqlite:'.length)),
  'redis://': redis,
  'rediss://': redis,
  'postgres://': postgres,
  'postgresql://': postgres,
};
const known = ['sqlite:PATH', 'sqlite::memory:', 'redis://HOST', 'rediss://HOST', 'postgres://HOST/DATABASE'];

/**
 * Opens the store that an address names: `sqlite:PATH`, `sqlite::memory:`, `redis://...`, `postgres://...`.
 * `patience` is how long one call may take, ms; 2 s unless said. Refuses an unknown scheme, naming those that work, and a
 * store that was filled only in part, except to whoever goes on `filling` it; rejects with a `StoreFailure` if it cannot
 * be reached.
 */
export async function openStore(
  address: string,
  patience?: number,
  { filling = false }: { readonly filling?: boolean } = {},
): Promise<Store> {
  const scheme = Object.keys(openers).find(
    start => address.startsWith(start) && address.length > start.length,
  );
  const opener = scheme === undefined ? undefined : openers[scheme];
  if (!opener) {
    // Never more than the scheme: what follows may hold a password.
    return refuse('store-scheme-unknown', { address: address.split(':')[0] ?? '', known });
  }
  const store = new StrictStore(await opener(address), patience);
  try {
    await checkFormat(store);
    if (!filling) await checkFilled(store);
  } catch (error) {
    await store.close();
    throw error;
  }
  return scheme === 'sqlite:' ? ReadingHere.of(store, address.slice(scheme.length)) : store;
}

/**
 * The format of a store as a whole: it goes up when an older program could no longer work on it without harm. Kinds of
 * record have versions of their own.
 */
export const FORMAT = 1;

/** Throws a Refusal `store-newer` for a store that a newer program has taken over; marks one that nobody has. */
async function checkFormat(store: Store): Promise<void> {
  const [stored] = await store.get([formatKey()]);
  if (stored === undefined) return void (await store.commit([add(formatKey(), { v: 1, format: FORMAT })]));
  const { format } = stored as { format?: unknown };
  if (typeof format !== 'number' || format > FORMAT)
    refuse('store-newer', { format: Number(format) || 0, known: FORMAT });
}

/** Throws a Refusal `store-half-filled` for a store whose restore or move was broken off: what is missing would be taken for gone. */
async function checkFilled(store: Store): Promise<void> {
  const [half] = await store.get([fillingKey()]);
  if (half !== undefined) refuse('store-half-filled', {});
}
