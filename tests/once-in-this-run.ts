import { createHash } from 'node:crypto';
import { readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';

/**
 * What `compute` gives, unless another process of this run has left it in the run's folder (`run.ts`). `key` names the
 * computation and all of its input.
 */
export async function onceInThisRun<Output>(key: string, compute: () => Promise<Output>): Promise<Output> {
  const folder = process.env.COMPUTED_IN_THIS_RUN;
  if (!folder) return await compute();
  const file = join(folder, createHash('sha256').update(key).digest('hex'));
  const found = await readFile(file).catch(() => undefined);
  if (found) return deserialize(found) as Output;
  const output = await compute();
  const draft = `${file}.${process.pid}`;
  await writeFile(draft, serialize(output));
  await rename(draft, file);
  return output;
}
