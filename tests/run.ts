import { fork } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

let isOpen = false;

/**
 * Before and after one run of all files: a folder where its processes leave what they drew, for one another, and the worker
 * threads that they share. While somebody edits and watches there is neither, since what was computed an edit ago
 * may be otherwise now.
 */
export default async function run({ config }: TestProject) {
  if (config.watch || isOpen) return undefined;
  isOpen = true;
  const folder = await mkdtemp(join(tmpdir(), 'computed-'));
  const socket = join(folder, 'workers');
  const service = fork(join(import.meta.dirname, 'workers/service.ts'), [socket], { execArgv: [] });
  const [said] = await Promise.race([once(service, 'message'), once(service, 'exit')]);
  if (said !== 'listening') throw new Error('the worker threads of this run did not start');
  process.env.COMPUTED_IN_THIS_RUN = folder;
  process.env.WORKERS_OF_THIS_RUN = socket;
  return async () => {
    isOpen = false;
    delete process.env.COMPUTED_IN_THIS_RUN;
    delete process.env.WORKERS_OF_THIS_RUN;
    service.disconnect();
    await once(service, 'exit');
    await rm(folder, { recursive: true, force: true });
  };
}
