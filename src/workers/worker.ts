import { type JobName, jobs } from './jobs.ts';

/** What a thread of the pool runs: the job by that name. */
export default ({ name, input }: { name: JobName; input: never }): unknown =>
  (jobs[name] as (input: never) => unknown)(input);
