import { constants, setPriority } from 'node:os';
import { Refusal } from '../engine/refusal.ts';
import { type JobName, jobs } from './jobs.ts';

/** What comes back from a thread: errors lose their class on the way, so an expected "no" travels as data. */
export type Finished =
  | { readonly output: unknown }
  | { readonly refused: { readonly id: Refusal['id']; readonly values: object } };

// Of two threads that want a core, the one that answers members goes first. On Linux this sets this thread alone.
if (process.platform === 'linux') setPriority(constants.priority.PRIORITY_BELOW_NORMAL);

/** What a thread of the pool runs: the job by that name. */
export default async ({ name, input }: { name: JobName; input: never }): Promise<Finished> => {
  try {
    return { output: await (jobs[name] as (input: never) => unknown)(input) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { refused: { id: error.id, values: error.values } };
  }
};
