import { setTimeout as pause } from 'node:timers/promises';
import { DatabaseError, Pool, type PoolClient } from 'pg';
import { type FailureKind, StoreFailure } from '../failure.ts';
import type { CommitResult, Span } from '../store.ts';
import { RecordAdapter, type TextEntry, type TextWrite } from './adapter.ts';

/** SQLSTATE codes (PostgreSQL manual, appendix A) after which the same transaction may well go through. */
const again: ReadonlySet<string | undefined> = new Set([
  '40001', // serialization_failure
  '40P01', // deadlock_detected
  '23505', // unique_violation: somebody added the key since we looked
]);

/** More rounds than even a crowd on one key needs: each that fails lets another transaction through. */
const mostRounds = 200;

// Key order is byte order whatever the database's own collation.
const table = `CREATE TABLE IF NOT EXISTS tintmoot_records (
  ns text COLLATE "C", key text COLLATE "C", text text NOT NULL, PRIMARY KEY (ns, key))`;

/** Records in a PostgreSQL database, shared by processes on any machine. */
export class PostgresAdapter extends RecordAdapter {
  readonly #pool: Pool;
  #closed = false;

  private constructor(pool: Pool) {
    super();
    this.#pool = pool;
  }

  /** Connects to `postgres://` or `postgresql://`, making the table where it is missing. */
  static async open(address: string): Promise<PostgresAdapter> {
    const pool = new Pool({
      connectionString: address,
      max: 8,
      connectionTimeoutMillis: 10_000,
      query_timeout: 10_000,
      keepAlive: true,
      // An idle store keeps no process alive.
      allowExitOnIdle: true,
    });
    // A connection lost while idle is replaced; a call that fails says so itself.
    pool.on('error', () => {});
    try {
      // Two processes that create it at once: one of them is told off, and finds it made.
      await pool.query(table).catch(() => pool.query(table));
      await checkDurable(pool);
    } catch (error) {
      await pool.end();
      if (error instanceof StoreFailure) throw error;
      throw new StoreFailure('unreachable', 'open', 'cannot use the PostgreSQL server', { cause: error });
    }
    return new PostgresAdapter(pool);
  }

  texts(keys: readonly string[]): Promise<readonly (string | undefined)[]> {
    return this.#read(async () => {
      const { rows } = await this.#pool.query<{ key: string; text: string }>({
        name: 'texts',
        text: 'SELECT key, text FROM tintmoot_records WHERE ns = $1 AND key = ANY($2)',
        values: [this.namespace ?? '', keys],
      });
      const found = new Map(rows.map(({ key, text }) => [key, text]));
      return keys.map(key => found.get(key));
    });
  }

  range(from: string, to: string, limit: number): Promise<readonly TextEntry[]> {
    return this.#read(async () => {
      const { rows } = await this.#pool.query<{ key: string; text: string }>({
        name: 'range',
        text: 'SELECT key, text FROM tintmoot_records WHERE ns = $1 AND key >= $2 AND key < $3 ORDER BY key LIMIT $4',
        values: [this.namespace ?? '', from, to, limit],
      });
      return rows.map(({ key, text }) => [key, text] as const);
    });
  }

  /** One query: asked one by one they would open every connection of the pool, a process of the server each. */
  override ranges(spans: readonly Span[], limit: number): Promise<readonly (readonly TextEntry[])[]> {
    return this.#read(async () => {
      const { rows } = await this.#pool.query<{ at: number; key: string; text: string }>({
        name: 'ranges',
        text: `SELECT span.at::int, found.key, found.text
          FROM unnest($2::text[], $3::text[]) WITH ORDINALITY AS span(low, high, at), LATERAL (
            SELECT key, text FROM tintmoot_records
            WHERE ns = $1 AND key >= span.low AND key < span.high ORDER BY key LIMIT $4) AS found
          ORDER BY span.at, found.key`,
        values: [this.namespace ?? '', spans.map(({ from }) => from), spans.map(({ to }) => to), limit],
      });
      const found: TextEntry[][] = spans.map(() => []);
      for (const { at, key, text } of rows) found[at - 1]?.push([key, text]);
      return found;
    });
  }

  async commit(writes: readonly TextWrite[]): Promise<CommitResult> {
    this.#checkOpen('write');
    for (let round = 0; round < mostRounds; round += 1) {
      const result = await this.#attempt(writes);
      if (result !== 'again') return result;
      await pause(Math.random() * Math.min(2 ** round, 50));
    }
    throw new StoreFailure('busy', 'write', 'other transactions kept coming between');
  }

  async disconnect(): Promise<void> {
    if (this.#closed) return;
    this.#closed = true;
    await this.#pool.end();
  }

  #checkOpen(during: 'read' | 'write'): void {
    if (this.#closed) throw new StoreFailure('closed', during, 'the store is closed');
  }

  async #read<T>(work: () => Promise<T>): Promise<T> {
    this.#checkOpen('read');
    try {
      return await work();
    } catch (error) {
      throw new StoreFailure(kindOf(error), 'read', (error as Error).message, { cause: error });
    }
  }

  /** One transaction, serializable: what it found absent is still absent when it commits, or it must try again. */
  async #attempt(writes: readonly TextWrite[]): Promise<CommitResult | 'again'> {
    let client: PoolClient | undefined;
    let committing = false;
    let broken = false;
    try {
      client = await this.#pool.connect();
      await client.query('BEGIN ISOLATION LEVEL SERIALIZABLE; SET LOCAL synchronous_commit = on');
      const clash = await findClash(client, this.namespace ?? '', writes);
      if (clash === undefined) await apply(client, this.namespace ?? '', writes);
      committing = clash === undefined;
      await client.query(committing ? 'COMMIT' : 'ROLLBACK');
      return clash === undefined ? { done: true } : { done: false, clash };
    } catch (error) {
      const answered = error instanceof DatabaseError;
      broken = !answered;
      if (client && answered && !committing) {
        broken = await client.query('ROLLBACK').then(
          () => false,
          () => true,
        );
      }
      if (answered && again.has(error.code)) return 'again';
      const saved = committing && !answered ? 'unknown' : 'no';
      throw new StoreFailure(kindOf(error), 'write', (error as Error).message, { saved, cause: error });
    } finally {
      client?.release(broken);
    }
  }
}

/** An acknowledged write has to outlive the server: it must reach the disk, and no page be torn when the power goes. */
async function checkDurable(pool: Pool): Promise<void> {
  const { rows } = await pool.query<{ name: string; setting: string }>(
    "SELECT name, setting FROM pg_settings WHERE name IN ('fsync', 'full_page_writes')",
  );
  const wrong = rows.filter(({ setting }) => setting !== 'on').map(({ name }) => `${name} = on`);
  if (wrong.length > 0) {
    throw new StoreFailure(
      'unreachable',
      'open',
      `the PostgreSQL server may lose records: set ${wrong.join(', ')}`,
    );
  }
}

/** The first key that must not be there and is. */
async function findClash(
  client: PoolClient,
  ns: string,
  writes: readonly TextWrite[],
): Promise<string | undefined> {
  const keys = writes.filter(({ kind }) => kind === 'add' || kind === 'absent').map(({ key }) => key);
  if (keys.length === 0) return undefined;
  const { rows } = await client.query<{ key: string }>({
    name: 'present',
    text: 'SELECT key FROM tintmoot_records WHERE ns = $1 AND key = ANY($2)',
    values: [ns, keys],
  });
  const present = new Set(rows.map(({ key }) => key));
  return keys.find(key => present.has(key));
}

async function apply(client: PoolClient, ns: string, writes: readonly TextWrite[]): Promise<void> {
  // In the order of keys, so that two transactions take their rows in the same order.
  const sorted = [...writes].sort((a, b) => (a.key < b.key ? -1 : 1));
  const texts = sorted.filter(write => 'text' in write);
  const added = texts.filter(({ kind }) => kind === 'add');
  const replaced = texts.filter(({ kind }) => kind === 'put');
  const dropped = sorted.filter(write => write.kind === 'drop');
  const insert =
    'INSERT INTO tintmoot_records (ns, key, text) SELECT $1, * FROM unnest($2::text[], $3::text[])';
  const columns = (some: readonly Extract<TextWrite, { text: string }>[]) => [
    ns,
    some.map(({ key }) => key),
    some.map(({ text }) => text),
  ];
  if (added.length > 0) await client.query({ name: 'add', text: insert, values: columns(added) });
  if (replaced.length > 0) {
    const text = `${insert} ON CONFLICT (ns, key) DO UPDATE SET text = excluded.text`;
    await client.query({ name: 'put', text, values: columns(replaced) });
  }
  if (dropped.length > 0) {
    const text = 'DELETE FROM tintmoot_records WHERE ns = $1 AND key = ANY($2)';
    await client.query({ name: 'drop', text, values: [ns, dropped.map(({ key }) => key)] });
  }
}

/** By the class of the SQLSTATE: 53 is insufficient resources, 55 and 57 are locks and shutdowns. */
function kindOf(error: unknown): FailureKind {
  const code = error instanceof DatabaseError ? (error.code ?? '') : '';
  if (code === '53100' || code === '53200') return 'full';
  if (code.startsWith('55') || code === '53300') return 'busy';
  if (code.startsWith('XX')) return 'corrupt';
  return 'unreachable';
}
