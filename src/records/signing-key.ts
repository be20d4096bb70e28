import { randomBytes } from 'node:crypto';
import { z } from 'zod';
import { signingKey } from './keys.ts';
import { read, recordKind, written } from './record.ts';
import { add, type Store } from './store.ts';

const bytes = 32;
const secret = recordKind('signing key', { key: z.base64url().length(43) });

/** The key that follow-ups are signed with, 32 bytes: the same in every process and after every restart. */
export async function signingKeyOf(store: Store): Promise<Uint8Array> {
  const stored = async () => (await store.get([signingKey()]))[0];
  let value = await stored();
  if (value === undefined) {
    // Whoever adds first has made the key for all; the others read it.
    const made = written(secret, { key: randomBytes(bytes).toString('base64url') });
    await store.commit([add(signingKey(), made)]);
    value = await stored();
  }
  return Buffer.from(read(secret, signingKey(), value).key, 'base64url');
}
