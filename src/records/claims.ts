import type { Store } from './store.ts';

/** True for the first caller in any process, false ever after: an interaction is answered once. */
export async function claim(_store: Store, _interaction: string, _now: Date): Promise<boolean> {
  throw new Error('not yet');
}

/** Forgets the claims whose time is over; returns how many. Safe to run in several processes at once. */
export async function sweepClaims(_store: Store, _now: Date): Promise<number> {
  throw new Error('not yet');
}
