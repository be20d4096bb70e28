import { constants, setPriority } from 'node:os';
import { threadId } from 'node:worker_threads';
import { Refusal } from '../engine/refusal.ts';
import { jobs } from './jobs.ts';
import type { Finished, Started } from './pool.ts';
import { starts } from './thread-time.ts';

// Of two threads that want a core, the one that answers members goes first. On Linux this sets this thread alone.
if (process.platform === 'linux') setPriority(constants.priority.PRIORITY_BELOW_NORMAL);

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
