import type { Worker } from 'node:worker_threads';

/** Shared between a task's thread and the one that watches it: the thread's id, and its processor time, ms, at the start. */
export type Start = SharedArrayBuffer;

const SLOTS = 2;

/** For a task that has not started yet. */
export const notStarted = (): Start => new SharedArrayBuffer(SLOTS * Float64Array.BYTES_PER_ELEMENT);

const milliseconds = ({ user, system }: NodeJS.CpuUsage): number => (user + system) / 1000;

/** Called in the thread when the task starts; loading the thread's own code is then behind it. */
export function starts(start: Start, threadId: number): void {
  const slots = new Float64Array(start);
  slots[1] = milliseconds(process.threadCpuUsage());
  slots[0] = threadId;
}

/**
 * Processor time, ms, that the thread of a task has had since it started: on a crowded machine a task waits long and
 * has little. 0 before the start, and after the thread's end.
 */
export async function timeOf(start: Start, threads: readonly Worker[]): Promise<number> {
  const [id = 0, before = 0] = new Float64Array(start);
  const thread = id === 0 ? undefined : threads.find(({ threadId }) => threadId === id);
  if (!thread) return 0;
  return await thread.cpuUsage().then(
    now => milliseconds(now) - before,
    () => 0,
  );
}
