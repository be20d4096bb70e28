import { on } from 'node:events';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { Worker } from 'node:worker_threads';
import { Color, mix } from 'spectral.js';
import { test } from 'vitest';
import { plainBase } from '../../src/engine/colour/mixing/base-soap.ts';
import { MixKernel } from '../../src/engine/colour/mixing/mix-kernel.ts';
import { candidates } from '../engine/colour/shelves.ts';
import type { MatchJob } from './colour-worker.ts';
import { hold, timesAsMany } from './figures.ts';

const base = plainBase('white', false);
const ROUNDS = 500;
const warm = { time: 800, warmupTime: 300 };

/** Mixing: the same number of components, colours at hand beforehand, CIELAB here and sRGB there. */
test.for([2, 3, 4])('mixing %i components', async (count, { bench, task }) => {
  const shelf = candidates('ultramarine-blue', 'red-iron-oxide', 'chromium-oxide-green', 'titanium-dioxide');
  const kernel = new MixKernel(
    shelf.map(({ optics, gramsPerTeaspoon }) => ({ optics, gramsPerUnit: gramsPerTeaspoon })),
    base,
  );
  const members = [0, 1, 2, 3].map(at => (at < count ? at : kernel.nothing));
  const amounts = [0.1, 0.2, 0.3, 0.1].map((amount, at) => (at < count ? amount : 0));
  const colours = ['#2b3fa8', '#8e3b2e', '#5b7440', '#ffffff'].map(css => new Color(css));
  const parts = colours.slice(0, count).map((colour, at): [Color, number] => [colour, amounts[at]!]);
  let seen = 0;
  const ours = await bench('two-constant bar, CIELAB', () => {
    for (let round = 0; round < ROUNDS; round++) {
      amounts[0] = 0.1 + round * 1e-4;
      kernel.predict(members, amounts);
      seen += kernel.lab[0]!;
    }
  }).run(warm);
  const theirs = await bench('spectral.js mix, sRGB', () => {
    for (let round = 0; round < ROUNDS; round++) {
      parts[0]![1] = 0.1 + round * 1e-4;
      seen += mix(...parts).XYZ[1];
    }
  }).run(warm);
  if (!Number.isFinite(seen)) throw new Error('no colour came out');
  hold(task, [
    {
      what: `mixing ${count} components beside spectral.js`,
      seen: timesAsMany(ours, theirs),
      least: 1,
      unit: 'times',
    },
  ]);
});

/**
 * The same 9,918 subsets of a 40-item shelf in a worker thread: our match up to its spoons, the simplex without any
 * rounding and with its customary stopping rule (values within 1e-4, at most 200 steps an unknown).
 */
test.for(['#8fb3c9', '#c0506a', '#6b3fa0'])('matching %s', async (hex, { bench, task }) => {
  const worker = new Worker(new URL('./colour-worker.ts', import.meta.url));
  let asked = 0;
  /** Answers come in the order of the questions, but a stray earlier one must not end this one. */
  const ask = async (what: MatchJob['do']) => {
    asked += 1;
    const job: MatchJob = { number: asked, do: what, hex };
    worker.postMessage(job);
    for await (const [answered] of on(worker, 'message')) if (answered === job.number) return;
  };
  const delay = monitorEventLoopDelay({ resolution: 1 });
  for (let warmUp = 0; warmUp < 5; warmUp++) await ask('match');
  delay.enable();
  const ours = await bench('every subset, rounded to spoons', () => ask('match')).run({
    time: 1000,
  });
  delay.disable();
  const theirs = await bench('downhill simplex, every subset', () => ask('simplex')).run({
    time: 1,
    iterations: 1,
    warmup: false,
  });
  await worker.terminate();
  hold(task, [
    {
      what: `matching ${hex} beside a downhill simplex`,
      seen: timesAsMany(ours, theirs),
      least: 5,
      unit: 'times',
    },
    {
      what: `matching ${hex}: the main thread late, 99 %`,
      seen: delay.percentile(99) / 1e6 - 1,
      most: 20,
      unit: 'ms',
    },
  ]);
});
