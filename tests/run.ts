import { fork, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, existsSync, globSync, mkdtempSync, statfsSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

let isOpen = false;

/** Bytes that all stores, pictures and browsers of a run take at once: a tenth of it was seen. */
const ROOM = 4e9;

/**
 * Where temporary files of this run lie: in memory, where there is room. What a disk does once power fails is not
 * tested; a process that is killed loses no more there. What a store takes is measured where stores lie: on a disk.
 */
function temporary(): string {
  const memory = '/dev/shm';
  const space = existsSync(memory) ? statfsSync(memory) : undefined;
  const isBench = process.argv.includes('bench');
  const isRoomy = !isBench && space !== undefined && space.bavail * space.bsize > ROOM;
  const folder = mkdtempSync(join(isRoomy ? memory : tmpdir(), 'tests-'));
  // PostgreSQL runs as another account.
  chmodSync(folder, 0o755);
  return folder;
}

/** Whether every test of every file had its turn, so that what none of them did is done by none. */
function isWhole({ vitest, config }: TestProject): boolean {
  const all = globSync('tests/**/*.test.ts', { cwd: vitest.config.root });
  return config.testNamePattern === undefined && vitest.state.getFiles().length === all.length;
}

/**
 * Before and after one run of all files: the folder of its temporary files, the worker threads that its processes share,
 * and their notes of which options they gave (`given.ts`). While somebody edits and watches there are none, since what was
 * computed an edit ago may be otherwise now.
 */
export default async function run(project: TestProject) {
  const { config } = project;
  if (config.watch || isOpen) return undefined;
  isOpen = true;
  const folder = temporary();
  const { TMPDIR } = process.env;
  process.env.TMPDIR = folder;
  const socket = join(folder, 'workers');
  const service = fork(join(import.meta.dirname, 'workers/service.ts'), [socket], { execArgv: [] });
  const [said] = await Promise.race([once(service, 'message'), once(service, 'exit')]);
  if (said !== 'listening') throw new Error('the worker threads of this run did not start');
  process.env.WORKERS_OF_THIS_RUN = socket;
  // Kept where a file is named.
  process.env.GIVEN_IN_THIS_RUN ||= join(folder, 'given');
  const notes = process.env.GIVEN_IN_THIS_RUN;
  console.log(`tests in any order: seed ${config.sequence.seed} (again by --sequence.seed)`);
  return async () => {
    isOpen = false;
    delete process.env.WORKERS_OF_THIS_RUN;
    service.disconnect();
    await once(service, 'exit');
    if (TMPDIR === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = TMPDIR;
    const { status } = isWhole(project)
      ? spawnSync(process.execPath, [join(import.meta.dirname, 'never-given.ts'), notes], {
          stdio: 'inherit',
        })
      : { status: 0 };
    await rm(folder, { recursive: true, force: true });
    if (status !== 0) throw new Error('commands or options that no test gives, named above');
  };
}
