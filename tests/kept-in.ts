import { createHash } from 'node:crypto';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';

/**
 * What `compute` gives, unless it lies in that folder: what is there is left there, whole or not at all. `key` names all of its
 * input, and the folder whatever computes it.
 */
export async function keptIn<Output>(
  folder: string,
  key: string,
  compute: () => Promise<Output>,
): Promise<Output> {
  const file = join(folder, createHash('sha256').update(key).digest('hex'));
  const found = await readFile(file).catch(() => undefined);
  if (found) return deserialize(found) as Output;
  const output = await compute();
  await mkdir(folder, { recursive: true });
  const draft = `${file}.${process.pid}`;
  await writeFile(draft, serialize(output));
  await rename(draft, file);
  return output;
}
