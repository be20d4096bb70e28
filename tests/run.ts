import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

/**
 * Before and after one run of all files: a folder where its processes leave what worker threads computed, for one another. While
 * somebody edits and watches there is none, since what was computed an edit ago may be otherwise now.
 */
export default async function run({ config }: TestProject) {
  if (config.watch) return undefined;
  const folder = await mkdtemp(join(tmpdir(), 'computed-'));
  process.env.COMPUTED_IN_THIS_RUN = folder;
  return async () => {
    delete process.env.COMPUTED_IN_THIS_RUN;
    await rm(folder, { recursive: true, force: true });
  };
}
