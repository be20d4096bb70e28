import Keyv from 'keyv';
import type { RecordAdapter, TextEntry, TextWrite } from './adapters/adapter.ts';
import { anonymous, StoreFailure } from './failure.ts';
import { type CommitResult, type Entry, type Span, type Store, Unreadable, type Write } from './store.ts';

/**
 * The way to what would not come back as it went in: a Date, Map, NaN, undefined or class of any kind; undefined where
 * there is nothing of the sort.
 */
function oddIn(value: unknown): string | undefined {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return undefined;
  if (typeof value === 'number' && Number.isFinite(value)) return undefined;
  if (Array.isArray(value)) {
    for (let index = 0; index < value.length; index += 1) {
      const odd = oddIn(value[index]);
      if (odd !== undefined) return `[${index}]${odd}`;
    }
    return undefined;
  }
  if (!isPlain(value)) return '';
  for (const name of Object.keys(value)) {
    const one = value[name];
    // A field that is undefined is a field that is not there, before and after.
    const odd = one === undefined ? undefined : oddIn(one);
    if (odd !== undefined) return `.${name}${odd}`;
  }
  return undefined;
}

/** An object of no class, by its fields. */
function isPlain(value: unknown): value is Readonly<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null) return false;
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
}

/** keyv's envelope `{"value": ...}`, told apart from anything else: to keyv itself `null` or `5` is "absent". */
const envelope = {
  stringify(data: unknown): string {
    const odd = oddIn((data as { value: unknown }).value);
    if (odd !== undefined) throw new TypeError(`value${odd} is not plain JSON`);
    return JSON.stringify(data);
  },
  parse<T>(text: string): T {
    const data: unknown = JSON.parse(text);
    if (typeof data !== 'object' || data === null || !('value' in data)) throw new SyntaxError('no record');
    return data as T;
  },
};

/**
 * Records that are written together, each as the envelope writes it. What is the very same thing in several of them is looked through
 * and written down once: as the folds of an answer that is given again and again.
 */
class Together {
  readonly #known = new Map<object, string>();

  /** Throws a TypeError where something would not come back as it went in. */
  text(value: unknown): string {
    if (!isPlain(value)) return envelope.stringify({ value });
    let fields = '';
    for (const [name, one] of Object.entries(value)) {
      if (one === undefined) continue;
      fields += `${fields === '' ? '' : ','}${JSON.stringify(name)}:${this.#once(name, one)}`;
    }
    return `{"value":{${fields}}}`;
  }

  #once(name: string, value: unknown): string {
    const isOne = typeof value === 'object' && value !== null;
    const before = isOne ? this.#known.get(value) : undefined;
    if (before !== undefined) return before;
    const odd = oddIn(value);
    if (odd !== undefined) throw new TypeError(`value.${name}${odd} is not plain JSON`);
    const text = JSON.stringify(value);
    if (isOne) this.#known.set(value, text);
    return text;
  }
}

/**
 * The strict store over keyv. keyv without an `error` listener rejects where with one it would answer
 * "absent" or "false": so the instance stays in here, and nobody can attach one.
 */
export class StrictStore implements Store {
  readonly #adapter: RecordAdapter;
  readonly #keyv: Keyv;
  readonly #inFlight = new Set<Promise<unknown>>();
  #closing: Promise<void> | undefined;

  readonly patience: number;

  /** `patience` is how long a call may take, ms: whoever asked is then told that the records cannot be reached. */
  constructor(adapter: RecordAdapter, patience = 2_000) {
    this.#adapter = adapter;
    this.patience = patience;
    this.#keyv = new Keyv({ store: adapter, serialization: envelope });
  }

  get(keys: readonly string[]): Promise<readonly unknown[]> {
    return this.#track('read', async () => {
      if (keys.length === 0) return [];
      checkKeys(keys, 'read');
      try {
        return await this.#keyv.getMany([...keys]);
      } catch (error) {
        if (error instanceof StoreFailure) throw error;
        // One of them does not read: each by itself, so that the others do.
        return await Promise.all(keys.map(key => this.#one(key)));
      }
    });
  }

  range(from: string, to: string, limit: number): Promise<readonly Entry[]> {
    return this.#track('read', async () => {
      checkLimit(limit);
      return await this.#decoded(await this.#adapter.range(from, to, limit));
    });
  }

  ranges(spans: readonly Span[], limit: number): Promise<readonly (readonly Entry[])[]> {
    return this.#track('read', async () => {
      checkLimit(limit);
      if (spans.length === 0) return [];
      const found = await this.#adapter.ranges(spans, limit);
      return await Promise.all(found.map(entries => this.#decoded(entries)));
    });
  }

  commit(writes: readonly Write[]): Promise<CommitResult> {
    return this.#track('write', async () => {
      if (writes.length === 0) return { done: true };
      checkKeys(
        writes.map(({ key }) => key),
        'write',
      );
      const together = new Together();
      return this.#adapter.commit(writes.map(write => encoded(write, together)));
    });
  }

  close(): Promise<void> {
    this.#closing ??= Promise.allSettled([...this.#inFlight]).then(() => this.#keyv.disconnect());
    return this.#closing;
  }

  #track<T>(during: 'read' | 'write', work: () => Promise<T>): Promise<T> {
    if (this.#closing) return Promise.reject(new StoreFailure('closed', during, 'the store is closed'));
    const running = work().finally(() => this.#inFlight.delete(running));
    this.#inFlight.add(running);
    return inTime(running, this.patience, during);
  }

  async #one(key: string): Promise<unknown> {
    const [text] = await this.#adapter.texts([key]);
    return text === undefined ? undefined : await this.#decode(text);
  }

  #decoded(entries: readonly TextEntry[]): Promise<readonly Entry[]> {
    return Promise.all(entries.map(async ([key, text]) => ({ key, value: await this.#decode(text) })));
  }

  async #decode(text: string): Promise<unknown> {
    try {
      return (await this.#keyv.decode(text))?.value;
    } catch {
      return new Unreadable();
    }
  }
}

function encoded(write: Write, together: Together): TextWrite {
  if (write.kind === 'absent' || write.kind === 'drop') return { kind: write.kind, key: write.key };
  try {
    return { kind: write.kind, key: write.key, text: together.text(write.value) };
  } catch (error) {
    throw new StoreFailure('unfit', 'write', `${anonymous(write.key)}: not a value to store`, {
      cause: error,
    });
  }
}

/**
 * The same, or a failure once it has taken too long: a write may then be done after all. Where it was this thread that
 * was held up, the answer has come and waits to be read: it is read before the call is given up.
 */
function inTime<T>(work: Promise<T>, ms: number, during: 'read' | 'write'): Promise<T> {
  return new Promise((resolve, reject) => {
    const giveUp = () => {
      const saved = during === 'write' ? 'unknown' : 'no';
      reject(new StoreFailure('unreachable', during, `no answer in ${ms} ms`, { saved }));
    };
    // Two turns: the first reads what has come from a thread or a server, the second what that was an answer to.
    const timer = setTimeout(() => setImmediate(() => setImmediate(giveUp)), ms);
    work.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}

function checkLimit(limit: number): void {
  if (!Number.isSafeInteger(limit) || limit < 1) throw new RangeError(`limit ${limit}`);
}

function checkKeys(keys: readonly string[], during: 'read' | 'write'): void {
  for (const key of keys) {
    if (!/^[A-Za-z0-9_-]+(\/[A-Za-z0-9_-]+)*$/.test(key)) {
      throw new StoreFailure('unfit', during, `not a key, of ${key.length} characters`);
    }
  }
  if (during === 'write' && new Set(keys).size < keys.length) {
    throw new StoreFailure('unfit', during, `a key twice in one commit: ${keys.map(anonymous).join(', ')}`);
  }
}
