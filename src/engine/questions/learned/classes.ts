import { JOBS } from '../jobs/jobs.ts';

/** What a question may be: one of the jobs, or somebody else's field; in the order in which the model scores them. */
export const CLASSES = [...JOBS, 'outside'] as const;
export type Class = (typeof CLASSES)[number];
