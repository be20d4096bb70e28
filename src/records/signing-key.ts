import { randomBytes } from 'node:crypto';
import { link, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { z } from 'zod';
import { StoreFailure } from './failure.ts';
import { signingKey } from './keys.ts';
import { read, recordKind } from './record.ts';
import { drop, type Store } from './store.ts';

const bytes = 32;
const text = z.base64url().length(43);
const secret = recordKind('signing key', { key: text });

/** The file that the key of a store is in: beside an SQLite file, else in this machine's own folder; none in memory. */
export function signingKeyFile(address: string): string | undefined {
  if (address === 'sqlite::memory:') return undefined;
  const [, path] = /^sqlite:(.+)$/.exec(address) ?? [];
  return join(path === undefined ? '.tintmoot' : dirname(path), 'signing-key');
}

/**
 * The key that follow-ups are signed with, 32 bytes, from a file of its own, made where it is missing: whoever has
 * only the store can forge nothing. A key that an earlier version kept in the store moves to the file. Without a file
 * it is new each time. Throws a StoreFailure where the file holds no key.
 */
export async function signingKeyOf(store: Store, file: string | undefined): Promise<Uint8Array> {
  if (file === undefined) return randomBytes(bytes);
  const before = await inFile(file);
  if (before) return before;
  const [stored] = await store.get([signingKey()]);
  const key =
    stored === undefined ? randomBytes(bytes).toString('base64url') : read(secret, signingKey(), stored).key;
  await makeFile(file, key);
  if (stored !== undefined) await store.commit([drop(signingKey())]);
  // Whoever was first has made the key for all.
  return (await inFile(file)) ?? Buffer.from(key, 'base64url');
}

async function inFile(file: string): Promise<Uint8Array | undefined> {
  const found = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return undefined;
    throw new StoreFailure('unreachable', 'open', `cannot read ${file}: ${error.message}`, { cause: error });
  });
  if (found === undefined) return undefined;
  const key = text.safeParse(found.trim());
  if (!key.success)
    throw new StoreFailure(
      'corrupt',
      'open',
      `${file} holds no signing key: remove it, and a new one is made`,
    );
  return Buffer.from(key.data, 'base64url');
}

/** Puts the whole file in its place at once, unless another process has. */
async function makeFile(file: string, key: string): Promise<void> {
  await mkdir(dirname(file), { recursive: true, mode: 0o700 });
  const draft = `${file}.${process.pid}-${randomBytes(4).toString('hex')}`;
  await writeFile(draft, `${key}\n`, { mode: 0o600, flag: 'wx' });
  try {
    await link(draft, file);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  } finally {
    await rm(draft);
  }
}
