import { Worker } from 'node:worker_threads';
import { type FailureKind, StoreFailure } from '../failure.ts';
import type { CommitResult } from '../store.ts';
import { RecordAdapter, type TextEntry, type TextWrite } from './adapter.ts';
import type { Call, Done, Opening, Task } from './sqlite-thread.ts';

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

/** Why, without the words around it. */
const reasonOf = (failure: unknown): string =>
  failure instanceof Error ? failure.message.replace(/^the store's thread failed: /, '') : String(failure);

/**
 * Records in one SQLite file, shared by as many processes as open it on this machine. A path, or `:memory:`
 * for one that lives as long as the adapter.
 */
/** Its rows live for one call: the collector would otherwise give them as much room as all else together. */
const YOUNG_MB = 3;

export class SqliteAdapter extends RecordAdapter {
  readonly #worker: Worker;
  readonly #waiting = new Map<number, Waiting>();
  readonly #exited: Promise<void>;
  #ended: string | undefined;
  #calls = 0;

  private constructor(worker: Worker) {
    super();
    this.#worker = worker;
    worker.on('message', (done: Done) => {
      this.#settle(done);
    });
    worker.on('error', (error: Error) => {
      this.#lose(`the store's thread failed: ${error.message}`);
    });
    this.#exited = new Promise(resolve => {
      worker.once('exit', () => {
        this.#lose("the store's thread ended");
        resolve();
      });
    });
  }

  /**
   * Opens the file, making it and its folder where they are missing. `patience` is how long a call waits for
   * the lock of another process, ms: with none, two processes that write at once lose half their writes. `mostPages`
   * bounds the file, in pages of 4 KB.
   */
  static async open(path: string, patience = 5000, mostPages?: number): Promise<SqliteAdapter> {
    const opening: Opening = { path, patience, ...(mostPages !== undefined && { mostPages }) };
    const worker = new Worker(new URL('./sqlite-thread.ts', import.meta.url), {
      workerData: opening,
      resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB },
    });
    const adapter = new SqliteAdapter(worker);
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
    this.#worker.ref();
    if (this.#ended === undefined) this.#worker.postMessage('close');
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
      this.#worker.ref();
      this.#worker.postMessage(call);
    });
  }

  #settle(done: Done): void {
    const waiting = this.#waiting.get(done.id);
    if (!waiting) return;
    this.#waiting.delete(done.id);
    if (this.#waiting.size === 0) this.#worker.unref();
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
