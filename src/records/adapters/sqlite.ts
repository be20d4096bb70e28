import { Worker } from 'node:worker_threads';
import { type FailureKind, StoreFailure } from '../failure.ts';
import type { CommitResult } from '../store.ts';
import { RecordAdapter, type TextEntry, type TextWrite } from './adapter.ts';
import {
  type Call,
  type Done,
  IN_MEMORY,
  type Opening,
  SqliteDatabase,
  type Task,
} from './sqlite-database.ts';

type Waiting = {
  readonly during: 'read' | 'write';
  readonly resolve: (answer: never) => void;
  readonly reject: (failure: StoreFailure) => void;
};

/** By SQLite's primary result code (sqlite.org/rescode.html). */
const kinds: Readonly<Record<number, FailureKind>> = {
  5: 'busy',
  6: 'busy',
  11: 'corrupt',
  13: 'full',
  26: 'corrupt',
};

/** Whoever has the database: takes calls, and tells what became of each. */
type Owner = {
  ask(call: Call): void;
  /** Whether the process goes on for as long as an answer is waited for. */
  hold(isWaitedFor: boolean): void;
  /** Ends when what it was asked is answered. */
  end(): void;
};
type OwnerListener = { answered(done: Done): void; lost(why: string): void; ended(): void };

/** Its rows live for one call: the collector would otherwise give them as much room as all else together. */
const YOUNG_MB = 3;

/** A file: waiting for the lock of another process, or for the disk, holds up a thread of its own. */
function inThread(opening: Opening, told: OwnerListener): Owner {
  const worker = new Worker(new URL('./sqlite-thread.ts', import.meta.url), {
    workerData: opening,
    resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB },
  });
  worker.on('message', (all: readonly Done[]) => {
    for (const done of all) told.answered(done);
  });
  worker.on('error', (error: Error) => told.lost(`the store's thread failed: ${error.message}`));
  worker.once('exit', () => told.ended());
  // What is asked at once goes in one message, and is in one flush to the disk.
  let asked: Call[] = [];
  const send = () => {
    worker.postMessage(asked);
    asked = [];
  };
  return {
    ask(call) {
      if (asked.length === 0) process.nextTick(send);
      asked.push(call);
    },
    hold(isWaitedFor) {
      if (isWaitedFor) worker.ref();
      else worker.unref();
    },
    end: () => process.nextTick(() => worker.postMessage('close')),
  };
}

/**
 * Memory: nobody else holds a lock and no disk is waited for, so a message to another thread would take longer than what
 * is asked. As there, what one turn of the loop asks is answered together, reads first.
 */
function here(opening: Opening, told: OwnerListener): Owner {
  const db = new SqliteDatabase(opening);
  let asked: Call[] = [];
  let isEnding = false;
  let isDue = false;
  const answer = () => {
    isDue = false;
    const calls = asked;
    asked = [];
    for (const done of db.answers(calls)) told.answered(done);
    if (!isEnding) return;
    db.close();
    told.ended();
  };
  const soon = () => {
    if (!isDue) setImmediate(answer);
    isDue = true;
  };
  return {
    ask(call) {
      asked.push(call);
      soon();
    },
    // What is due at the end of this turn keeps the process by itself.
    hold: () => {},
    end() {
      isEnding = true;
      soon();
    },
  };
}

/** Why, without the words around it. */
const reasonOf = (failure: unknown): string =>
  failure instanceof Error ? failure.message.replace(/^the store's thread failed: /, '') : String(failure);

/**
 * Records in one SQLite file, shared by as many processes as open it on this machine. A path, or `:memory:`
 * for one that lives as long as the adapter.
 */
export class SqliteAdapter extends RecordAdapter {
  readonly #owner: Owner;
  readonly #waiting = new Map<number, Waiting>();
  readonly #exited: Promise<void>;
  #ended: string | undefined;
  #calls = 0;

  private constructor(opening: Opening, onLost?: (why: string) => void) {
    super();
    const exited = Promise.withResolvers<void>();
    this.#exited = exited.promise;
    const told: OwnerListener = {
      answered: done => this.#settle(done),
      lost: why => {
        const isUnasked = this.#ended === undefined;
        this.#lose(why);
        if (isUnasked) onLost?.(why);
      },
      ended: () => {
        told.lost("the store's thread ended");
        exited.resolve();
      },
    };
    this.#owner = opening.path === IN_MEMORY ? here(opening, told) : inThread(opening, told);
  }

  /**
   * Opens the file, making it and its folder where they are missing. `patience` is how long a call waits for
   * the lock of another process, ms: with none, two processes that write at once lose half their writes. `mostPages`
   * bounds the file, in pages of 4 KB. `onLost` hears why when the file's thread ends though nobody closed it: every
   * later call is refused then, and only a new process has it again.
   */
  static async open(
    path: string,
    patience = 5000,
    { mostPages, onLost }: { readonly mostPages?: number; readonly onLost?: (why: string) => void } = {},
  ): Promise<SqliteAdapter> {
    const opening: Opening = { path, patience, ...(mostPages !== undefined && { mostPages }) };
    const adapter = new SqliteAdapter(opening, onLost);
    try {
      // The first answer tells that the file is open.
      await adapter.texts([]);
    } catch (failure) {
      throw new StoreFailure('unreachable', 'open', `cannot open ${path}: ${reasonOf(failure)}`, {
        cause: failure,
      });
    }
    return adapter;
  }

  texts(keys: readonly string[]): Promise<readonly (string | undefined)[]> {
    return this.#call('read', { task: 'texts', keys });
  }

  range(from: string, to: string, limit: number): Promise<readonly TextEntry[]> {
    return this.#call('read', { task: 'range', from, to, limit });
  }

  commit(writes: readonly TextWrite[]): Promise<CommitResult> {
    return this.#call('write', { task: 'commit', writes });
  }

  async disconnect(): Promise<void> {
    this.#owner.hold(true);
    if (this.#ended === undefined) this.#owner.end();
    this.#ended ??= 'the store is closed';
    await this.#exited;
  }

  #call<Answer>(during: 'read' | 'write', task: Task): Promise<Answer> {
    if (this.#ended !== undefined) {
      return Promise.reject(new StoreFailure('closed', during, this.#ended));
    }
    this.#calls += 1;
    const id = this.#calls;
    const call: Call = { id, namespace: this.namespace ?? '', ...task };
    return new Promise((resolve, reject) => {
      this.#waiting.set(id, { during, resolve, reject });
      this.#owner.hold(true);
      this.#owner.ask(call);
    });
  }

  #settle(done: Done): void {
    const waiting = this.#waiting.get(done.id);
    if (!waiting) return;
    this.#waiting.delete(done.id);
    if (this.#waiting.size === 0) this.#owner.hold(false);
    if ('answer' in done) waiting.resolve(done.answer as never);
    else {
      const kind = kinds[done.fault.sqlite] ?? 'unreachable';
      waiting.reject(new StoreFailure(kind, waiting.during, done.fault.message));
    }
  }

  /** The thread is gone: what it was doing may or may not have reached the disk. */
  #lose(why: string): void {
    this.#ended ??= why;
    for (const { during, reject } of this.#waiting.values()) {
      reject(new StoreFailure('unreachable', during, why, { saved: during === 'write' ? 'unknown' : 'no' }));
    }
    this.#waiting.clear();
  }
}
