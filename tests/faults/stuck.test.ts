import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { expect, test } from 'vitest';
import { openWorkers } from '../../src/workers/workers.ts';

/** What the thread is inside for, ms: an ordinary exit would wait for that. */
const STUCK = 60_000;

test.each([0, 1])(
  'a process with a thread that nothing can end exits all the same, with its code %i',
  async code => {
    const script = new URL('./stuck-process.ts', import.meta.url).pathname;
    const child = spawn(process.execPath, [script, String(code)], { stdio: ['ignore', 'pipe', 'inherit'] });
    const exited = once(child, 'exit');
    await once(child.stdout, 'data');
    const began = performance.now();
    child.kill('SIGTERM');
    expect(await exited).toEqual([code, null]);
    const took = performance.now() - began;
    console.info(`exited after ${Math.round(took)} ms`);
    // A grace of 0.1 s here, a second for the thread, and another program to start: 1.3 s on a quiet machine.
    expect(took).toBeLessThan(STUCK / 3);
  },
);

test('workers whose threads end are not taken for stuck', async () => {
  const workers = openWorkers({ script: new URL('../workers/odd-worker.ts', import.meta.url), threads: 1 });
  expect(await workers.run('readPhoto', { act: 'wait', said: 'here' } as never, { owner: 'ana' })).toBe(
    'here',
  );
  await workers.close();
  expect(workers.isStuck()).toBe(false);
});
