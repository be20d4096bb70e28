import { once } from 'node:events';
import { setTimeout } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import { afterEach, describe, expect, test } from 'vitest';
import { Overrun, processorMillis } from './overrun.ts';

const GRACE_MILLIS = 50;
const never = new Promise<string>(() => {});
const threads: Worker[] = [];
afterEach(async () => {
  await Promise.all(threads.splice(0).map(thread => thread.terminate()));
});

/** A thread of this process that takes all the processor time it can get. */
async function busy(): Promise<void> {
  const thread = new Worker('for (;;);', { eval: true });
  threads.push(thread);
  await once(thread, 'online');
}

test('a test that takes no time has ten seconds of processor time unless told otherwise', async () => {
  await busy();
  const overrun = new Overrun({ quick: 0 });
  overrun.begins('quick');
  const early = setTimeout(1000, 'not yet');
  await expect(overrun.orOver(early)).resolves.toBe('not yet');
});

describe('a test of another thread', () => {
  test('that never ends is over once it has taken three times its time and the grace', async () => {
    await busy();
    const overrun = new Overrun({ quick: 0, slow: 200 }, GRACE_MILLIS);
    for (const [name, least] of [
      ['quick', GRACE_MILLIS],
      ['slow', GRACE_MILLIS + 3 * 200],
    ] as const) {
      const before = processorMillis();
      overrun.begins(name);
      await expect(overrun.orOver(never)).resolves.toBeUndefined();
      const taken = processorMillis() - before;
      expect(taken).toBeGreaterThanOrEqual(least);
      // It is looked at ten times a second, and less often on a crowded machine.
      expect(taken).toBeLessThan(least + 5000);
    }
  });

  test('that answers is heard, however little time it was left', async () => {
    const overrun = new Overrun({ quick: 0 }, 0);
    overrun.begins('quick');
    await expect(overrun.orOver(Promise.resolve('red'))).resolves.toBe('red');
  });

  test('that only waits is waited for: a clock counts for nothing', async () => {
    const overrun = new Overrun({ quick: 0 }, 300);
    overrun.begins('quick');
    const waited = setTimeout(700, 'green');
    await expect(overrun.orOver(waited)).resolves.toBe('green');
  });

  test('that another follows in time has no time left over from it', async () => {
    await busy();
    const overrun = new Overrun({ quick: 0, slow: 4000 }, GRACE_MILLIS);
    overrun.begins('slow');
    const before = processorMillis();
    overrun.begins('quick');
    await expect(overrun.orOver(never)).resolves.toBeUndefined();
    expect(processorMillis() - before).toBeLessThan(10 * 1000);
  });
});
