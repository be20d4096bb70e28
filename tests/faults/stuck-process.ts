/*
 * A process that stops as the assistant does, with a thread that is inside native code for a minute: `stuck-process.ts CODE`.
 * Prints `stuck` once it is.
 */
import { endAtOnce } from '../../src/end-at-once.ts';
import { openWorkers } from '../../src/workers/workers.ts';

/** What it exits with where the thread ended after all. */
const NOT_STUCK = 9;

const workers = openWorkers({
  script: new URL('../workers/odd-worker.ts', import.meta.url),
  threads: 1,
  graceMs: 100,
});
const begun = new Int32Array(new SharedArrayBuffer(4));
const input = { act: 'native', ms: 60_000, begun };
workers.run('readPhoto', input as never, { owner: 'ana' }).catch(() => undefined);
const looking = setInterval(() => {
  if (Atomics.load(begun, 0) === 0) return;
  clearInterval(looking);
  // Some moments more, until it really is.
  setTimeout(() => process.stdout.write('stuck\n'), 500);
}, 20);
async function stop(): Promise<void> {
  await workers.close();
  if (workers.isStuck()) endAtOnce(Number(process.argv[2]));
  process.exitCode = NOT_STUCK;
}
process.once('SIGTERM', () => void stop());
