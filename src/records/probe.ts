import { randomBytes } from 'node:crypto';
import { probeKey } from './keys.ts';
import { drop, put, type Store } from './store.ts';

/** This process among others that look at the same store. */
const me = randomBytes(6).toString('hex');

/** Rejects with a `StoreFailure` where nothing can be written just now. Leaves nothing behind. */
export async function probeWriting(store: Store): Promise<void> {
  await store.commit([put(probeKey(me), { v: 1 })]);
  await store.commit([drop(probeKey(me))]);
}
