import { refuse } from '../engine/refusal.ts';
import type { RecordAdapter } from './adapters/adapter.ts';
import { SqliteAdapter } from './adapters/sqlite.ts';
import { divideDues } from './dues/dues.ts';
import { allFoldedAnswers, fillingKey, formatKey, under } from './keys.ts';
import { noteAll, noting } from './privacy/owned-index.ts';
import { ReadingHere } from './reading/reading-here.ts';
import { add, put, type Store } from './store.ts';
import { StrictStore } from './strict.ts';
import { WriteBehind } from './write-behind.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'store-half-filled': Record<never, never>;
    'store-newer': { readonly format: number; readonly known: number };
    'store-scheme-unknown': { readonly address: string; readonly known: readonly string[] };
  }
}

type Opener = (address: string, onLost?: (why: string) => void) => Promise<RecordAdapter>;

// The clients of shared stores are loaded by those who use one.
const redis: Opener = async address => (await import('./adapters/redis.ts')).RedisAdapter.open(address);
const postgres: Opener = async address =>
  (await import('./adapters/postgres.ts')).PostgresAdapter.open(address);

/** What an address starts with, and who opens it. */
const openers: Readonly<Record<string, Opener>> = {
  'sqlite:': (address, onLost) =>
    SqliteAdapter.open(address.slice('sqlite:'.length), undefined, { ...(onLost && { onLost }) }),
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
 * be reached. A store of an earlier format is brought to this one, unless it is opened `asItIs` (as by whoever fills
 * it): then nothing is written to it but what is committed. `onLost` hears why when the store is gone for as long as this
 * process lives; a server that is away comes back, and tells nobody.
 */
export async function openStore(
  address: string,
  patience?: number,
  {
    filling = false,
    asItIs = filling,
    onLost,
  }: {
    readonly filling?: boolean;
    readonly asItIs?: boolean;
    readonly onLost?: (why: string) => void;
  } = {},
): Promise<Store> {
  const scheme = Object.keys(openers).find(
    start => address.startsWith(start) && address.length > start.length,
  );
  const opener = scheme === undefined ? undefined : openers[scheme];
  if (!opener) {
    // Never more than the scheme: what follows may hold a password.
    return refuse('store-scheme-unknown', { address: address.split(':')[0] ?? '', known });
  }
  const store = new StrictStore(await opener(address, onLost), patience);
  try {
    const format = await formatOf(store);
    if (!filling) await checkFilled(store);
    if (!asItIs) await bringUp(store, format);
  } catch (error) {
    await store.close();
    throw error;
  }
  const noted = asItIs ? store : noting(store);
  const read = scheme === 'sqlite:' ? ReadingHere.of(noted, address.slice(scheme.length)) : noted;
  return asItIs ? read : new WriteBehind(read, under(allFoldedAnswers()));
}

/**
 * The format of a store as a whole: it goes up when an older program could no longer work on it without harm. Kinds of
 * record have versions of their own.
 */
export const FORMAT = 2;

/** The format of a store; marks one that nobody has used. Throws a Refusal `store-newer` for one that a newer program has taken over. */
async function formatOf(store: Store): Promise<number> {
  const [stored] = await store.get([formatKey()]);
  if (stored === undefined) {
    await store.commit([add(formatKey(), { v: 1, format: FORMAT })]);
    return FORMAT;
  }
  const { format } = stored as { format?: unknown };
  if (typeof format === 'number' && format <= FORMAT) return format;
  return refuse('store-newer', { format: Number(format) || 0, known: FORMAT });
}

/**
 * Format 2: dues lie in buckets, and whose every record is is noted. The format first, so that no older program begins
 * on what it would not understand; each step can be stopped halfway, and is done again at the next opening where
 * anything is left to do: a program of format 1 that ran on for a while may have left something.
 */
async function bringUp(store: Store, format: number): Promise<void> {
  if (format < FORMAT) await store.commit([put(formatKey(), { v: 1, format: FORMAT })]);
  await divideDues(store);
  await noteAll(store);
}

/** Throws a Refusal `store-half-filled` for a store whose restore or move was broken off: what is missing would be taken for gone. */
async function checkFilled(store: Store): Promise<void> {
  const [half] = await store.get([fillingKey()]);
  if (half !== undefined) refuse('store-half-filled', {});
}
