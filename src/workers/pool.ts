import { availableParallelism } from 'node:os';
import type { Piscina } from 'piscina';
import type { JobName } from './jobs.ts';
import type { Finished } from './worker.ts';

/** A piece of work for a thread. */
export type Task = { readonly name: JobName; readonly input: unknown };

/** Threads that run one task at a time each; nobody waits in here. */
export type Pool = {
  readonly threads: number;
  /** Rejects with a {@link TookTooLong} after `limitMs`: the thread is then ended, and another takes its place. */
  run(
    task: Task,
    more: { readonly limitMs: number; readonly moves: readonly ArrayBuffer[] },
  ): Promise<Finished>;
  /** Ends every thread, whatever it is doing, and waits a second at most for that. */
  end(): Promise<void>;
};

/** A task that was stopped since it had run for as long as it may. */
export class TookTooLong extends Error {
  override readonly name = 'TookTooLong';
}

/** One thread fewer than cores, so that the thread that answers members is never starved. */
const THREADS = Math.max(1, availableParallelism() - 1);
const MEMORY_MB = 256;
const END_WITHIN_MS = 1_000;

/** Opens the pool; `script` is what its threads run, and they start with the first task. */
export function openPool(script: URL, threads = THREADS): Pool {
  let opening: Promise<Piscina> | undefined;
  const open = async () => {
    // A process that is asked for nothing heavy never loads it.
    const library = await import('piscina');
    return new library.Piscina({
      filename: script.href,
      minThreads: 0,
      maxThreads: threads,
      idleTimeout: 60_000,
      resourceLimits: { maxOldGenerationSizeMb: MEMORY_MB },
    });
  };
  return {
    threads,
    async run(task, { limitMs, moves }) {
      opening ??= open();
      const pool = await opening;
      const limit = AbortSignal.timeout(limitMs);
      try {
        return (await pool.run(task, { transferList: [...moves] as never, signal: limit })) as Finished;
      } catch (error) {
        if (limit.aborted) throw new TookTooLong(`${task.name} ran for more than ${limitMs} ms`);
        throw error;
      }
    },
    async end() {
      const pool = await opening;
      if (!pool) return;
      // Ending a thread that is inside native code waits for that code; stopping does not.
      let timer: NodeJS.Timeout | undefined;
      const patience = new Promise<void>(resolve => {
        timer = setTimeout(resolve, END_WITHIN_MS);
      });
      await Promise.race([pool.destroy(), patience]).finally(() => clearTimeout(timer));
    },
  };
}
