import { z } from 'zod';
import { seen, seenExpired, seenUntil } from './keys.ts';
import { moment, read, recordKind, written } from './record.ts';
import { add, drop, put, type Store } from './store.ts';

const claimed = recordKind('claim', { at: moment });
const expiry = recordKind('claim expiry', { interaction: z.string() });

/**
 * How long a claim is kept, ms. The platform's interactions live 15 minutes; a day outlasts any redelivery
 * after a lost connection.
 */
const kept = 24 * 60 * 60 * 1000;

/**
 * True for the first caller in any process, false for every other one: an interaction is answered once,
 * however often it is delivered.
 */
export async function claim(store: Store, interaction: string, now: Date): Promise<boolean> {
  const until = new Date(now.getTime() + kept);
  const result = await store.commit([
    add(seen(interaction), written(claimed, { at: now })),
    put(seenUntil(until, interaction), written(expiry, { interaction })),
  ]);
  return result.done;
}

/** Forgets the claims whose time is over; returns how many. Safe to run in several processes at once. */
export async function sweepClaims(store: Store, now: Date): Promise<number> {
  const { from, to } = seenExpired(now);
  let forgotten = 0;
  while (true) {
    const expired = await store.range(from, to, 500);
    if (expired.length === 0) return forgotten;
    await store.commit(
      expired.flatMap(({ key, value }) => [drop(seen(read(expiry, key, value).interaction)), drop(key)]),
    );
    forgotten += expired.length;
  }
}
