import { Refusal } from '../engine/refusal.ts';
import { Budget, MOST, type Most } from './budget.ts';
import { DRAWING } from './drawing.ts';
import { FairQueue, type Place } from './fair-queue.ts';
import type { JobName, Jobs } from './jobs.ts';
import { type Finished, type Limits, openPool, type Pool, type Task, TookTooLong } from './pool.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'work-took-too-long': Record<string, never>;
  }
}

type Input<Name extends JobName> = Parameters<Jobs[Name]>[0];
type Output<Name extends JobName> = Awaited<ReturnType<Jobs[Name]>>;

/** Whose work it is, and buffers handed over instead of copied. */
export type WorkFor = {
  readonly owner: string;
  /** Without it the work counts as a group's of its own. */
  readonly group?: string;
  readonly moves?: readonly ArrayBuffer[];
};

/** Runs heavy work off the main thread, fairly between those who ask. */
export type Workers = {
  /**
   * Runs a job for `owner` (a member's id, or a group's for what everybody there sees). Throws a Refusal
   * `workers-busy` when too much is waiting already, `work-took-too-long`, and those of the job.
   */
  run<Name extends JobName>(name: Name, input: Input<Name>, more: WorkFor): Promise<Output<Name>>;
  /** Takes nothing more; gives what runs a moment to end, then ends it. */
  close(): Promise<void>;
};

/** Workers, and what they have to do. */
export type WatchedWorkers = Workers & {
  load(): { readonly waiting: number; readonly running: number };
  /** True once they are closed and a thread is still inside native code: no ordinary exit would come. */
  isStuck(): boolean;
};

export type WorkersSettings = {
  /** What the threads run. */
  readonly script?: URL;
  readonly threads?: number;
  readonly most?: Most;
  /** How long one piece may run, ms of its thread's processor time. */
  readonly limitMs?: number;
  /** How long it may take by the clock, ms, the start of a thread included. */
  readonly wallMs?: number;
  /** How long closing waits for what runs, ms. */
  readonly graceMs?: number;
};

/** Twice what the largest HEIC that a photo may be asks for; everything else takes a tenth of that. */
const LIMIT_MS = 15_000;
/** For what waits and has no time of its own, and for code that no thread can be asked in. */
const WALL_MS = 120_000;
const GRACE_MS = 2_000;
/** How long a piece is taken to last before any has been seen, seconds, and the weight of each one seen. */
const FIRST_GUESS = 1;
const NEWEST_WEIGHT = 0.2;

type Waiting = {
  readonly task: Task;
  readonly moves: readonly ArrayBuffer[];
  readonly resolve: (finished: Finished) => void;
  readonly reject: (error: unknown) => void;
};

/** Opens the workers; their threads start with the first job. */
export function openWorkers({
  script = new URL('./worker.ts', import.meta.url),
  threads,
  most = MOST,
  limitMs = LIMIT_MS,
  wallMs = WALL_MS,
  graceMs = GRACE_MS,
}: WorkersSettings = {}): WatchedWorkers {
  const line = new Line(openPool(script, threads), { limitMs, wallMs });
  const budget = new Budget(most);
  return {
    async run(name, input, { owner, group = owner, moves = [] }) {
      const free = budget.take({ owner, group }, line.waitFor({ owner, group }));
      try {
        const finished = await line.join({ name, input }, moves, { owner, group });
        if ('refused' in finished) throw new Refusal(finished.refused.id, finished.refused.values as never);
        return finished.output as never;
      } catch (error) {
        throw error instanceof TookTooLong ? new Refusal('work-took-too-long', {}) : error;
      } finally {
        free();
      }
    },
    load: () => ({ waiting: line.waiting, running: line.running }),
    isStuck: () => line.isStuck,
    close: () => line.close(graceMs),
  };
}

/** What waits for a thread, and what has one. */
class Line {
  readonly #pool: Pool;
  readonly #limits: Limits;
  readonly #queue = new FairQueue<Waiting>();
  readonly #running = new Set<Promise<void>>();
  #seconds = FIRST_GUESS;
  #closed = false;
  isStuck = false;

  constructor(pool: Pool, limits: Limits) {
    this.#pool = pool;
    this.#limits = limits;
  }

  get waiting(): number {
    return this.#queue.size;
  }

  get running(): number {
    return this.#running.size;
  }

  /** Each group, and then each member of it, has a turn before one who has had one has another. */
  waitFor({ group }: Place): { readonly rounds: number; readonly secondsEach: number } {
    const rounds = Math.max(1, this.#queue.groups) * Math.max(1, this.#queue.membersOf(group));
    return { rounds, secondsEach: this.#seconds / this.#pool.threads };
  }

  join(task: Task, moves: readonly ArrayBuffer[], place: Place): Promise<Finished> {
    if (this.#closed) return Promise.reject(new Error('the workers are closed'));
    return new Promise((resolve, reject) => {
      this.#queue.push({ task, moves, resolve, reject }, place, { first: DRAWING.has(task.name) });
      this.#next();
    });
  }

  async close(graceMs: number): Promise<void> {
    this.#closed = true;
    for (let left = this.#queue.shift(); left; left = this.#queue.shift())
      left.reject(new Error('the workers were closed'));
    let timer: NodeJS.Timeout | undefined;
    const grace = new Promise<void>(resolve => {
      timer = setTimeout(resolve, graceMs);
    });
    await Promise.race([Promise.all(this.#running), grace]).finally(() => clearTimeout(timer));
    this.isStuck = !(await this.#pool.end());
  }

  #next(): void {
    while (this.#running.size < this.#pool.threads) {
      const waiting = this.#queue.shift();
      if (!waiting) return;
      const running = this.#run(waiting).finally(() => {
        this.#running.delete(running);
        this.#next();
      });
      this.#running.add(running);
    }
  }

  async #run({ task, moves, resolve, reject }: Waiting): Promise<void> {
    const began = performance.now();
    try {
      resolve(await this.#pool.run(task, { ...this.#limits, moves }));
    } catch (error) {
      reject(error);
    } finally {
      const seconds = (performance.now() - began) / 1000;
      this.#seconds += NEWEST_WEIGHT * (seconds - this.#seconds);
    }
  }
}
