import { threadId } from 'node:worker_threads';
import { type Start, starts } from '../../src/workers/thread-time.ts';

type Asked = { start: Start; input: { act: 'spin' | 'work' | 'wait' | 'die'; ms?: number; said?: string } };

/** A thread that does what a test asks of it: never ends, works for so much of its own time, waits, or dies. Named as jobs are, for the type only. */
export default async ({ input, start }: Asked) => {
  starts(start, threadId);
  if (input.act === 'die') process.exit(1);
  if (input.act === 'work') {
    const had = () => process.threadCpuUsage().user / 1000;
    const before = had();
    while (had() - before < (input.ms ?? 0));
    return { output: input.said };
  }
  if (input.act === 'spin') for (;;);
  await new Promise(resolve => setTimeout(resolve, input.ms ?? 0));
  return { output: input.said };
};
