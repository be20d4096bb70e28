import { afterEach, describe, expect, test } from 'vitest';
import { readEnvironment } from '../../src/environment.ts';
import { openMetrics } from '../../src/operations/metrics.ts';
import { type OperationsServer, type Readiness, serveOperations } from '../../src/operations/server.ts';
import { StoreFailure } from '../../src/records/failure.ts';
import { whyNotStarted } from '../../src/why-not-started.ts';

const servers: OperationsServer[] = [];
afterEach(async () => {
  for (const server of servers.splice(0)) await server.close();
});

async function open(ready: Readiness = async () => undefined) {
  const metrics = openMetrics(() => ({ waiting: 3, running: 1 }));
  const server = await serveOperations({ host: '127.0.0.1', port: 0 }, { ready, metrics });
  servers.push(server);
  const look = async (path: string, method = 'GET') => {
    const response = await fetch(`http://127.0.0.1:${server.port}${path}`, { method });
    return {
      status: response.status,
      body: await response.text(),
      type: response.headers.get('content-type'),
    };
  };
  return { metrics, look };
}

/** One sample (Prometheus reads numbers whatever their capitals) of the text format, https://prometheus.io/docs/instrumenting/exposition_formats/. */
const SAMPLE = /^[a-zA-Z_:][\w:]*(?:\{[^}]*\})? (?:[-+]?[\d.e+-]+|Na[Nn]|[-+]Inf)$/;

describe('health', () => {
  test('the process turns, even when it is not ready', async () => {
    const { look } = await open(async () => 'not connected');
    expect(await look('/healthz')).toMatchObject({ status: 200, body: 'ok\n' });
    expect(await look('/readyz')).toMatchObject({ status: 503, body: 'not connected\n' });
  });

  test('records that fail, or never answer, are told instead of waited for', async () => {
    const failing = await open(() => Promise.reject(new Error('key shelf/4711 is torn')));
    expect(await failing.look('/readyz')).toMatchObject({
      status: 503,
      body: 'the records cannot be read\n',
    });
    const stalled = await open(() => new Promise(() => undefined));
    expect(await stalled.look('/readyz')).toMatchObject({ status: 503, body: 'the records do not answer\n' });
  });

  test('nothing else is served, and nothing is taken', async () => {
    const { look } = await open();
    expect((await look('/readyz')).status).toBe(200);
    expect((await look('/')).status).toBe(404);
    expect((await look('/healthz', 'POST')).status).toBe(405);
  });

  test('an address that is taken is an error, not silence', async () => {
    await open();
    const taken = { host: '127.0.0.1', port: servers[0]?.port ?? 0 };
    const metrics = openMetrics(() => ({ waiting: 0, running: 0 }));
    await expect(serveOperations(taken, { ready: async () => undefined, metrics })).rejects.toThrow(
      'EADDRINUSE',
    );
  });
});

describe('metrics', () => {
  test('count answers, waits, failures, dues and the queue, in the text format', async () => {
    const { metrics, look } = await open();
    metrics.answered({ command: 'dose', outcome: 'answered', seconds: 0.007 });
    metrics.answered({ command: 'dose', outcome: 'refused', seconds: 0.2 });
    metrics.rateLimited();
    metrics.storeFailed({ during: 'write', kind: 'full' });
    metrics.dues({ count: 2, seconds: 90 });
    const { body, type } = await look('/metrics');
    expect(type).toContain('text/plain; version=0.0.4');
    const lines = body.split('\n').filter(line => line !== '' && !line.startsWith('#'));
    expect(lines.filter(line => !SAMPLE.test(line))).toEqual([]);
    for (const line of [
      'tintmoot_answers_total{command="dose",outcome="answered"} 1',
      'tintmoot_answers_total{command="dose",outcome="refused"} 1',
      'tintmoot_answer_seconds_bucket{le="0.01",command="dose"} 1',
      'tintmoot_answer_seconds_count{command="dose"} 2',
      'tintmoot_rate_limited_total 1',
      'tintmoot_store_failures_total{during="write",kind="full"} 1',
      'tintmoot_dues_late 2',
      'tintmoot_dues_late_seconds 90',
      'tintmoot_work{state="waiting"} 3',
      'tintmoot_work{state="running"} 1',
    ])
      expect(lines).toContain(line);
    expect(body).toContain('process_resident_memory_bytes');
  });

  test('a store that failed a moment ago is trouble; one torn record is not', () => {
    const metrics = openMetrics(() => ({ waiting: 0, running: 0 }));
    metrics.storeFailed({ during: 'read', kind: 'corrupt' });
    expect(metrics.storeTrouble()).toBeUndefined();
    metrics.storeFailed({ during: 'write', kind: 'full' });
    expect(metrics.storeTrouble()).toBe('the records cannot be written');
    metrics.storeSound();
    expect(metrics.storeTrouble()).toBeUndefined();
  });
});

describe('settings', () => {
  test('that are right are read', () => {
    const read = readEnvironment({
      TINTMOOT_OPERATIONS: '[::1]:9464',
      DISCORD_SHARDS: '1/2',
      TINTMOOT_LOG: '',
    });
    expect(read).toMatchObject({
      TINTMOOT_OPERATIONS: { host: '::1', port: 9464 },
      DISCORD_SHARDS: { id: 1, of: 2 },
      TINTMOOT_LOG: 'info',
    });
  });

  test.for([
    ['DISCORD_GUILD', 'my group'],
    ['DISCORD_API', 'localhost'],
    ['DISCORD_SHARDS', '2/2'],
    ['DISCORD_SHARDS', 'two'],
    ['TINTMOOT_PORT', 'seven'],
    ['TINTMOOT_PORT', '70000'],
    ['TINTMOOT_PORT', '0x1'],
    ['TINTMOOT_PORT', '1e3'],
    ['TINTMOOT_OPERATIONS', '9464'],
    ['TINTMOOT_OPERATIONS', '127.0.0.1:99999'],
    ['TINTMOOT_SIGNING_KEY', 'hunter2'],
    ['TINTMOOT_SIGNING_KEY_BEFORE', 'hunter2'],
    ['TINTMOOT_LOG', 'loud'],
  ] as const)('%s=%s: one sentence that says what would be right, and not what is there', ([name, value]) => {
    const read = () => readEnvironment({ [name]: value });
    expect(read).toThrow(new RegExp(`^${name} must be [^\\n]+\\.$`));
    // A digit or two may well stand in an example; a word that somebody wrote does not.
    expect(read).not.toThrow(value.length > 4 ? value : /^$/);
  });

  test('a port is read as a number, and is the usual one where none is set', () => {
    expect(readEnvironment({ TINTMOOT_PORT: '8080' }).TINTMOOT_PORT).toBe(8_080);
    expect(readEnvironment({}).TINTMOOT_PORT).toBe(4_747);
  });

  test('several that are wrong have a sentence each', () => {
    expect(() => readEnvironment({ TINTMOOT_PORT: 'x', TINTMOOT_LOG: 'y' })).toThrow(
      /^TINTMOOT_PORT must .+\.\nTINTMOOT_LOG must .+\.$/,
    );
  });
});

describe('why a start ended', () => {
  const denied = "EACCES: permission denied, open '/records/r.sqlite'";

  test('a store that may not be written to: said once, and what would be right', () => {
    const cause = new Error(`the store's thread failed: ${denied}`);
    const failure = new StoreFailure('unreachable', 'open', `cannot open /records/r.sqlite: ${denied}`, {
      cause,
    });
    expect(whyNotStarted(failure)).toBe(
      `TINTMOOT_STORE: cannot open /records/r.sqlite: ${denied}; the file and its folder must be writable by the user that runs this.`,
    );
  });

  // What SQLite says of a folder in which it may not write its log: sqlite.org/rescode.html, SQLITE_READONLY and SQLITE_CANTOPEN.
  test.for(['attempt to write a readonly database', 'unable to open database file'])(
    '“%s” is about the folder too',
    said => {
      const failure = new StoreFailure('unreachable', 'open', `cannot open r.sqlite: ${said}`);
      expect(whyNotStarted(failure)).toMatch(/: cannot open .+; the file and its folder must be writable/);
    },
  );

  test('a server that is not there has no folder', () => {
    const cause = new Error('connect ECONNREFUSED 127.0.0.1:1');
    const failure = new StoreFailure('unreachable', 'open', 'cannot reach the Redis server', { cause });
    expect(whyNotStarted(failure)).toBe(
      'TINTMOOT_STORE: cannot reach the Redis server (connect ECONNREFUSED 127.0.0.1:1).',
    );
  });

  test('a file that was named for a backup is told by its name', () => {
    const error = Object.assign(new Error("EROFS: read-only file system, open '/backups/b.sqlite'"), {
      code: 'EROFS',
      syscall: 'open',
      path: '/backups/b.sqlite',
    });
    expect(whyNotStarted(error)).toMatch(
      /^\/backups\/b\.sqlite: EROFS: .+; the file and its folder must be writable by the user that runs this\.$/,
    );
  });
});
