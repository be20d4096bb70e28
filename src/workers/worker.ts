import { constants, setPriority } from 'node:os';
import { setFlagsFromString } from 'node:v8';
import { threadId } from 'node:worker_threads';
import { Refusal } from '../engine/refusal.ts';
import { jobs } from './jobs.ts';
import type { Finished, Started } from './pool.ts';
import { starts } from './thread-time.ts';

// Of two threads that want a core, the one that answers members goes first. On Linux this sets this thread alone.
if (process.platform === 'linux') setPriority(constants.priority.PRIORITY_BELOW_NORMAL);

// V8 compiles WebAssembly anew, faster code for slower, on as many threads as there are cores, and each holds some 100 MB
// for the network's large functions meanwhile: measured at the peak, 470 to 500 MB so and 290 MB with one at a time.
setFlagsFromString('--wasm-num-compilation-tasks=1');

/** What a thread of the pool runs: the job by that name. */
export default async ({ name, input, start }: Started): Promise<Finished> => {
  starts(start, threadId);
  try {
    return { output: await (jobs[name] as (input: never) => unknown)(input as never) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { refused: { id: error.id, values: error.values } };
  }
};
