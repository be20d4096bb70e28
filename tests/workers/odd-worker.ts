import { spawnSync } from 'node:child_process';
import { threadId } from 'node:worker_threads';
import { type Start, starts } from '../../src/workers/thread-time.ts';

type Asked = {
  start: Start;
  input: {
    act: 'spin' | 'native' | 'work' | 'wait' | 'die';
    ms?: number;
    said?: string;
    /** Set to 1 by who is about to be where nothing can end it. */
    begun?: Int32Array;
  };
};

/** A thread that does what a test asks of it: never ends, in our code or where nothing can end it, works for so much of its own time, waits, or dies. Named as jobs are, for the type only. */
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
  if (input.act === 'native') {
    if (input.begun) Atomics.store(input.begun, 0, 1);
    spawnSync('sleep', [String((input.ms ?? 0) / 1_000)]);
  }
  await new Promise(resolve => setTimeout(resolve, input.ms ?? 0));
  return { output: input.said };
};
