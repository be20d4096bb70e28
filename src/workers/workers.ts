import { availableParallelism } from 'node:os';
import { MessageChannel } from 'node:worker_threads';
import { Piscina } from 'piscina';
import { Refusal, refuse } from '../engine/refusal.ts';
import { FairQueue } from './fair-queue.ts';
import type { JobName, Jobs } from './jobs.ts';
import type { Finished } from './worker.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'workers-busy': Record<string, never>;
    'workers-too-long': Record<string, never>;
  }
}

type Input<Name extends JobName> = Parameters<Jobs[Name]>[0];
type Output<Name extends JobName> = Awaited<ReturnType<Jobs[Name]>>;

/** Runs heavy work off the main thread, fairly between those who ask. */
export type Workers = {
  /**
   * Runs a job for `owner` (a member's id). `moves` are buffers handed over instead of copied.
   * Throws a Refusal when too much is waiting already or the job takes too long, and those of the job.
   */
  run<Name extends JobName>(
    name: Name,
    input: Input<Name>,
    more: { owner: string; moves?: readonly ArrayBuffer[] },
  ): Promise<Output<Name>>;
  close(): Promise<void>;
};

/** One thread fewer than cores, so that the thread that answers members is never starved. */
const THREADS = Math.max(1, availableParallelism() - 1);
const LONGEST_QUEUE = 40;
const MEMORY_MB = 256;
/** A job that has run for so long will not end: its thread is stopped, another takes its place. Milliseconds. */
const LONGEST_JOB = 60_000;

/** Opens the pool; its threads start with the first job. */
export function openWorkers({ longestJob = LONGEST_JOB }: { readonly longestJob?: number } = {}): Workers {
  let pool: Piscina | undefined;
  const started = () =>
    (pool ??= new Piscina({
      filename: new URL('./worker.ts', import.meta.url).href,
      minThreads: 0,
      maxThreads: THREADS,
      idleTimeout: 60_000,
      maxQueue: LONGEST_QUEUE,
      taskQueue: new FairQueue() as never,
      resourceLimits: { maxOldGenerationSizeMb: MEMORY_MB },
    }));
  return {
    async run(name, input, { owner, moves = [] }) {
      const threads = started();
      if (threads.queueSize >= LONGEST_QUEUE) refuse('workers-busy', {});
      const clock = jobClock(longestJob);
      const task = { name, input, begun: clock.begun, [Piscina.queueOptionsSymbol]: { owner } };
      const transferList = [...moves, clock.begun] as never;
      const finished: Finished = await threads
        .run(task, { transferList, signal: clock.signal })
        .catch(error => (clock.signal.aborted ? refuse('workers-too-long', {}) : Promise.reject(error)))
        .finally(clock.stop);
      if ('refused' in finished) throw new Refusal(finished.refused.id, finished.refused.values as never);
      return finished.output as never;
    },
    async close() {
      await pool?.close();
    },
  };
}

/** Tells when a job has run too long; the time it waits for its turn does not count. The thread posts when it begins. */
function jobClock(longest: number) {
  const { port1, port2 } = new MessageChannel();
  const controller = new AbortController();
  let timer: NodeJS.Timeout | undefined;
  port1.once('message', () => {
    timer = setTimeout(() => controller.abort(), longest);
  });
  port1.unref();
  return {
    begun: port2,
    signal: controller.signal,
    stop: () => {
      clearTimeout(timer);
      port1.close();
    },
  };
}
