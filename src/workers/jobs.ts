/**
 * The heavy work that leaves the main thread, by name. Each job is a pure function of plain data: what it is
 * given and what it returns is copied between threads, so small numbers in and small pictures out.
 */
export const jobs = {};

export type Jobs = typeof jobs;
export type JobName = keyof Jobs;
