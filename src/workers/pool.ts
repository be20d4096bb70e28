import { availableParallelism } from 'node:os';
import type { Piscina } from 'piscina';
import type { Refusal } from '../engine/refusal.ts';
import type { JobName } from './jobs.ts';
import { notStarted, type Start, timeOf } from './thread-time.ts';

/** What comes back from a thread: errors lose their class on the way, so an expected "no" travels as data. */
export type Finished =
  | { readonly output: unknown }
  | { readonly refused: { readonly id: Refusal['id']; readonly values: object } };

/** A piece of work for a thread. */
export type Task = { readonly name: JobName; readonly input: unknown };

/** What a task's thread is told with it: where to note its start. */
export type Started = Task & { readonly start: Start };

/** How long a task may run, ms: `limitMs` of its thread's processor time, and `wallMs` by the clock, its start included. */
export type Limits = { readonly limitMs: number; readonly wallMs: number };

/** Threads that run one task at a time each; nobody waits in here. */
export type Pool = {
  readonly threads: number;
  /** Rejects with a {@link TookTooLong} beyond its limits: the thread is then ended, and another takes its place. */
  run(task: Task, more: Limits & { readonly moves: readonly ArrayBuffer[] }): Promise<Finished>;
  /** Ends every thread, whatever it is doing, and waits a second at most for that: false where one is still at it. */
  end(): Promise<boolean>;
};

/** A task that was stopped since it had run for as long as it may. */
export class TookTooLong extends Error {
  override readonly name = 'TookTooLong';
}

/** One thread fewer than cores, so that the thread that answers members is never starved. */
const THREADS = Math.max(1, availableParallelism() - 1);
const MEMORY_MB = 256;
const END_WITHIN_MS = 1_000;

/** How often a thread is asked how much it has had, ms: a task that is stuck runs that much longer at most. */
const ASKED_EVERY_MS = 250;

/** Aborts the signal when a task has had more than it may. */
function watched(timeHad: () => Promise<number>, { limitMs, wallMs }: Limits) {
  const control = new AbortController();
  const wall = setTimeout(() => control.abort(`${wallMs} ms by the clock`), wallMs);
  let ended = false;
  let next: NodeJS.Timeout | undefined;
  const look = async () => {
    // A thread inside native code answers when it comes out of it; the clock goes on.
    const had = await timeHad();
    if (had > limitMs) control.abort(`${limitMs} ms of processor time`);
    else if (!ended) ask();
  };
  const ask = () => {
    next = setTimeout(() => void look(), ASKED_EVERY_MS);
  };
  ask();
  return {
    signal: control.signal,
    end() {
      ended = true;
      clearTimeout(wall);
      clearTimeout(next);
    },
  };
}

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
    async run(task, { moves, ...limits }) {
      opening ??= open();
      const pool = await opening;
      const start = notStarted();
      const watch = watched(() => timeOf(start, pool.threads), limits);
      const started: Started = { ...task, start };
      try {
        return (await pool.run(started, {
          transferList: [...moves] as never,
          signal: watch.signal,
        })) as Finished;
      } catch (error) {
        if (watch.signal.aborted) throw new TookTooLong(`${task.name}: ${String(watch.signal.reason)}`);
        throw error;
      } finally {
        watch.end();
      }
    },
    async end() {
      const pool = await opening;
      if (!pool) return true;
      // Ending a thread that is inside native code waits for that code; stopping does not.
      let timer: NodeJS.Timeout | undefined;
      const patience = new Promise<boolean>(resolve => {
        timer = setTimeout(() => resolve(false), END_WITHIN_MS);
      });
      const ended = pool.destroy().then(() => true);
      return await Promise.race([ended, patience]).finally(() => clearTimeout(timer));
    },
  };
}
