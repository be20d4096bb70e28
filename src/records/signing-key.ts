import type { Store } from './store.ts';

/** The key that follow-ups are signed with, 32 bytes: the same in every process and after every restart. */
export async function signingKeyOf(_store: Store): Promise<Uint8Array> {
  throw new Error('not yet');
}
