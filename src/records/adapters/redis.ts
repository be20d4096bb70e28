import { randomUUID } from 'node:crypto';
import { ClientOfflineError, createClient, ErrorReply } from '@redis/client';
import { anonymous, StoreFailure } from '../failure.ts';
import type { CommitResult, Span } from '../store.ts';
import { RecordAdapter, type TextEntry, type TextWrite } from './adapter.ts';
import { commitScript, EMPTIED, rangesScript } from './redis-scripts.ts';

/** Keys and texts in turns, as a script gives them. */
function entriesIn(flat: readonly (string | null)[]): readonly TextEntry[] {
  return flat.flatMap((key, index): TextEntry[] => {
    if (index % 2 === 1) return [];
    const text = flat[index + 1];
    if (typeof text !== 'string')
      throw new StoreFailure('corrupt', 'read', `${anonymous(String(key))}: listed but not there`);
    return [[String(key), text]];
  });
}

/** Tries to connect at opening: while much is being loaded the answer may lie unread until the time for it is over. */
const MOST_TRIES = 4;

type Client = ReturnType<typeof clientOf>;

/** A client that comes back by itself after a lost connection once `stays()`, and gives up after a few tries before. */
function clientOf(address: string, stays: () => boolean) {
  return createClient({
    url: address,
    // While it is not connected a call fails at once, rather than wait and be done when nobody expects it.
    disableOfflineQueue: true,
    pingInterval: 4000,
    socket: {
      connectTimeout: 5000,
      socketTimeout: 10_000,
      reconnectStrategy: tries =>
        stays() || tries < MOST_TRIES - 1 ? Math.min(2000, 50 * 2 ** tries) : false,
    },
  });
}

/** Records in a Redis or Valkey server, shared by processes on any machine. */
export class RedisAdapter extends RecordAdapter {
  readonly #client: Client;
  #closed = false;
  /** The mark of the server as it was opened. */
  #known: string | undefined;
  /** Rejects while the server that was reconnected to must not be used. */
  #sound: Promise<void> = Promise.resolve();

  private constructor(client: Client) {
    super();
    this.#client = client;
  }

  /** Connects to `redis://` or `rediss://`; rejects where the server would not keep what it acknowledges. */
  static async open(address: string): Promise<RedisAdapter> {
    let opened = false;
    const client = clientOf(address, () => opened);
    // Every call that fails says so itself; without a listener the event would end the process.
    client.on('error', () => {});
    try {
      await client.connect();
      await checkDurable(client);
    } catch (error) {
      if (client.isOpen) client.destroy();
      if (error instanceof StoreFailure) throw error;
      throw new StoreFailure('unreachable', 'open', 'cannot reach the Redis server', { cause: error });
    }
    opened = true;
    return await RedisAdapter.#watched(client);
  }

  /** Looks again after each reconnection: a server that came back may be another one. */
  static async #watched(client: Client): Promise<RedisAdapter> {
    const adapter = new RedisAdapter(client);
    await adapter.#mark();
    client.on('ready', () => {
      adapter.#sound = adapter.#checkSame();
      // Whoever calls next hears of it.
      adapter.#sound.catch(() => {});
    });
    return adapter;
  }

  /** Marks the server as the one that this store is in, where nobody has; and learns its mark. */
  async #mark(): Promise<void> {
    const [, , key] = this.#keys();
    await this.#client.set(key, randomUUID(), { condition: 'NX' });
    this.#known = (await this.#client.get(key)) ?? undefined;
  }

  async #checkSame(): Promise<void> {
    await checkDurable(this.#client);
    if ((await this.#client.get(this.#keys()[2])) !== this.#known) throw emptied();
  }

  texts(keys: readonly string[]): Promise<readonly (string | undefined)[]> {
    return this.#call('read', async () => {
      const [texts, , key] = this.#keys();
      // Both in one message, the mark last: where it stands then, the records stood when they were read.
      const [found, mark] = await Promise.all([this.#client.hmGet(texts, [...keys]), this.#client.get(key)]);
      if (mark !== this.#known) throw emptied();
      return found.map(text => text ?? undefined);
    });
  }

  async range(from: string, to: string, limit: number): Promise<readonly TextEntry[]> {
    const [entries] = await this.ranges([{ from, to }], limit);
    return entries ?? [];
  }

  override ranges(spans: readonly Span[], limit: number): Promise<readonly (readonly TextEntry[])[]> {
    return this.#call('read', async () => {
      const ends = spans.flatMap(({ from, to }) => [`[${from}`, `(${to}`]);
      const asked = { keys: this.#keys(), arguments: [this.#known ?? '', String(limit), ...ends] };
      return ((await this.#client.eval(rangesScript, asked)) as (string | null)[][]).map(entriesIn);
    });
  }

  commit(writes: readonly TextWrite[]): Promise<CommitResult> {
    return this.#call('write', async () => {
      const steps = writes.flatMap(write => [write.kind, write.key, 'text' in write ? write.text : '']);
      const asked = { keys: this.#keys(), arguments: [this.#known ?? '', ...steps] };
      const clash = (await this.#client.eval(commitScript, asked)) as string | null;
      return clash === null ? { done: true } : { done: false, clash };
    });
  }

  async disconnect(): Promise<void> {
    if (this.#closed) return;
    this.#closed = true;
    if (this.#client.isReady) await this.#client.close();
    else this.#client.destroy();
  }

  /** What could not be asked of a server that came back, while it was loading or busy, is asked again by the next call. */
  async #isSound(): Promise<void> {
    const looked = this.#sound;
    try {
      await looked;
    } catch (error) {
      if (error instanceof StoreFailure && error.during === 'open') throw error;
      if (this.#sound === looked) {
        this.#sound = this.#checkSame();
        this.#sound.catch(() => {});
      }
      await this.#sound;
    }
  }

  #keys(): [texts: string, keys: string, mark: string] {
    const texts = `{${this.namespace ?? ''}}:texts`;
    return [texts, `{${this.namespace ?? ''}}:keys`, `${texts}:mark`];
  }

  async #call<T>(during: 'read' | 'write', work: () => Promise<T>): Promise<T> {
    if (this.#closed) throw new StoreFailure('closed', during, 'the store is closed');
    try {
      await this.#isSound();
      return await work();
    } catch (thrown) {
      const error = thrown instanceof ErrorReply && thrown.message.includes(EMPTIED) ? emptied() : thrown;
      if (error instanceof StoreFailure && error.during === 'open')
        throw new StoreFailure(error.kind, during, error.message, { saved: 'no', cause: error });
      throw failureOf(error, during);
    }
  }
}

/** It may have been emptied while it was connected, too. */
const emptied = (): StoreFailure =>
  new StoreFailure(
    'unreachable',
    'open',
    'the Redis server came back without the records: restore them, then start anew',
  );

function failureOf(error: unknown, during: 'read' | 'write'): StoreFailure {
  if (error instanceof StoreFailure) return error;
  const { message } = error as Error;
  // A server that answers "no" ran nothing; one that was never asked neither. After that it is anyone's guess.
  const refused = error instanceof ErrorReply || error instanceof ClientOfflineError;
  const kind = message.startsWith('OOM') ? 'full' : message.startsWith('BUSY') ? 'busy' : 'unreachable';
  return new StoreFailure(kind, during, message, {
    saved: during === 'read' || refused ? 'no' : 'unknown',
    cause: error,
  });
}

/** An acknowledged write has to outlive the server: its log on, flushed at each write, and nothing evicted. */
async function checkDurable(client: Client): Promise<void> {
  const info = await client.info();
  const policy = /^maxmemory_policy:(\S+)/m.exec(info)?.[1];
  // Where a hosted server does not let anyone read its settings, its owner answers for how often it flushes.
  const flushing = await client.configGet('appendfsync').then(
    settings => settings.appendfsync,
    () => undefined,
  );
  const wrong = [
    !/^aof_enabled:1/m.test(info) && 'appendonly yes',
    flushing !== undefined && flushing !== 'always' && 'appendfsync always',
    policy !== undefined && policy !== 'noeviction' && 'maxmemory-policy noeviction',
  ].filter(setting => setting !== false);
  if (wrong.length > 0) {
    throw new StoreFailure(
      'unreachable',
      'open',
      `the Redis server may lose records: set ${wrong.join(', ')}`,
    );
  }
}
