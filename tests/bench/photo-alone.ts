/**
 * Measures the photo reading in a process of its own, as it runs in production: the test runner's module layer and
 * memory would be measured with it. Prints one JSON object.
 */
import { monitorEventLoopDelay } from 'node:perf_hooks';
import sharp from 'sharp';
import { PHOTO_LIMITS } from '../../src/photo/limits.ts';
import { readPhoto } from '../../src/photo/read.ts';
import { openWorkers } from '../../src/workers/workers.ts';

const ROUNDS = 9;

const bytes = new Uint8Array(await standardInput());
const report = process.argv[2] === 'ten' ? await tenAtOnce() : await againstDecoding();
process.stdout.write(JSON.stringify(report));

async function standardInput(): Promise<Buffer> {
  const pieces: Buffer[] = [];
  for await (const piece of process.stdin) pieces.push(piece as Buffer);
  return Buffer.concat(pieces);
}

function middle(times: readonly number[]): number {
  return times.toSorted((a, b) => a - b)[times.length >> 1] ?? 0;
}

/** Both by turns, so that whatever else the machine does falls on both. */
async function againstDecoding() {
  const { readAt } = PHOTO_LIMITS;
  const works = [
    () => sharp(bytes).resize(readAt, readAt, { fit: 'inside' }).raw().toBuffer(),
    () => readPhoto(bytes),
  ];
  const times: number[][] = [[], []];
  for (let round = 0; round < ROUNDS + 2; round++)
    for (const [which, work] of works.entries()) {
      const began = performance.now();
      await work();
      // The first two rounds only warm up.
      if (round > 1) times[which]?.push(performance.now() - began);
    }
  return { decode: middle(times[0] ?? []), read: middle(times[1] ?? []) };
}

async function tenAtOnce() {
  const workers = openWorkers();
  const delay = monitorEventLoopDelay({ resolution: 1 });
  let resident = 0;
  const watch = setInterval(() => {
    resident = Math.max(resident, process.memoryUsage.rss());
  }, 10);
  delay.enable();
  await Promise.all(
    Array.from({ length: 10 }, (_, i) => workers.run('readPhoto', { bytes }, { owner: `member-${i}` })),
  );
  delay.disable();
  clearInterval(watch);
  await workers.close();
  return { resident, delay99: delay.percentile(99) / 1e6 };
}
