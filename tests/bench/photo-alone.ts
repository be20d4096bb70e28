/**
 * Measures the photo reading in a process of its own, as it runs in production: the test runner's module layer and
 * memory would be measured with it. Prints one JSON object.
 */
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { readPhoto } from '../../src/workers/bare-photo.ts';
import { markPhoto } from '../../src/workers/mark-photo.ts';
import { openWorkers } from '../../src/workers/workers.ts';

const ROUNDS = 7;
/** How long the main thread is watched while nothing is asked of it, ms. */
const QUIET = 2_000;

const bytes = new Uint8Array(await standardInput());
const report = process.argv[2] === 'ten' ? await tenAtOnce() : await answered();
process.stdout.write(JSON.stringify(report));

async function standardInput(): Promise<Buffer> {
  const pieces: Buffer[] = [];
  for await (const piece of process.stdin) pieces.push(piece as Buffer);
  return Buffer.concat(pieces);
}

function middle(times: readonly number[]): number {
  return times.toSorted((a, b) => a - b)[times.length >> 1] ?? 0;
}

/**
 * Processor time of the whole process for one answer, reading and marking, ms: the middle one once the model is open, and
 * the first. What else the machine does has no part in it; on two cores the clock shows less, on a crowded machine more.
 */
async function answered() {
  const times: number[] = [];
  const clock: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const before = process.cpuUsage();
    const began = performance.now();
    const { reading, photo } = await readPhoto({ bytes });
    await markPhoto({ photo, reading, title: 'What I see', labels: reading.findings.map(({ id }) => id) });
    clock.push(performance.now() - began);
    const { user, system } = process.cpuUsage(before);
    times.push((user + system) / 1000);
  }
  return { first: times[0] ?? 0, warm: middle(times.slice(1)), clock: middle(clock.slice(1)) };
}

/** The 99th percentile of the main thread's delay, ms, while `work` is done. */
async function delayDuring(work: () => Promise<unknown>): Promise<number> {
  const delay = monitorEventLoopDelay({ resolution: 1 });
  delay.enable();
  await work();
  delay.disable();
  return delay.percentile(99) / 1e6;
}

async function tenAtOnce() {
  const workers = openWorkers();
  let resident = 0;
  const watch = setInterval(() => {
    resident = Math.max(resident, process.memoryUsage.rss());
  }, 10);
  const quiet = await delayDuring(() => new Promise(resolve => setTimeout(resolve, QUIET)));
  const busy = await delayDuring(() =>
    Promise.all(
      Array.from({ length: 10 }, (_, i) => workers.run('readPhoto', { bytes }, { owner: `member-${i}` })),
    ),
  );
  clearInterval(watch);
  await workers.close();
  return { resident, quiet, busy };
}
