import type { MessagePort } from 'node:worker_threads';
import { Refusal } from '../engine/refusal.ts';
import { type JobName, jobs } from './jobs.ts';

/** What comes back from a thread: errors lose their class on the way, so an expected "no" travels as data. */
export type Finished =
  | { readonly output: unknown }
  | { readonly refused: { readonly id: Refusal['id']; readonly values: object } };

type Task = { readonly name: JobName; readonly input: never; readonly begun: MessagePort };

/** What a thread of the pool runs: the job by that name. Says when it begins, since a job may run only so long. */
export default async ({ name, input, begun }: Task): Promise<Finished> => {
  begun.postMessage('begun');
  begun.close();
  try {
    return { output: await (jobs[name] as (input: never) => unknown)(input) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { refused: { id: error.id, values: error.values } };
  }
};
