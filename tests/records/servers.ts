import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { chmodSync, chownSync, existsSync, mkdtempSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

/** A server started for a test, at an address of its own. */
export type Server = { readonly address: string; stop(): Promise<void> };

/** One that can be taken away, and brought back with what it kept. */
type LosableServer = Server & { lose(): Promise<void>; back(): Promise<void> };

const onPath = (name: string, more: readonly string[] = []) =>
  [...(process.env.PATH ?? '').split(delimiter), ...more].map(folder => join(folder, name)).find(existsSync);

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as { port: number };
  server.close();
  await once(server, 'close');
  return port;
}

function ending(server: ChildProcess, folder: string, signal: NodeJS.Signals): () => Promise<void> {
  const exited = once(server, 'exit');
  return async () => {
    server.kill(signal);
    await exited;
    rmSync(folder, { recursive: true });
  };
}

const redisServer = onPath('redis-server') ?? onPath('valkey-server');
export const hasRedis = redisServer !== undefined;

/** Starts a Redis that keeps what it acknowledges, with these settings instead where given. */
export async function startRedis(settings: readonly string[] = []): Promise<Server> {
  const folder = mkdtempSync(join(tmpdir(), 'redis-'));
  const port = String(await freePort());
  const durable = ['--appendonly', 'yes', '--appendfsync', 'always'];
  const flags = [
    '--port',
    port,
    '--bind',
    '127.0.0.1',
    '--dir',
    folder,
    '--save',
    '',
    ...durable,
    ...settings,
  ];
  const server = spawn(redisServer!, flags, { stdio: 'pipe' });
  const stop = ending(server, folder, 'SIGTERM');
  for await (const chunk of server.stdout) if (String(chunk).includes('eady to accept')) break;
  server.stdout.resume();
  return { address: `redis://127.0.0.1:${port}`, stop };
}

const versions = '/usr/lib/postgresql';
const postgresFolders = existsSync(versions)
  ? readdirSync(versions).map(one => join(versions, one, 'bin'))
  : [];
const initdb = onPath('initdb', postgresFolders);
const postgres = onPath('postgres', postgresFolders);

/** PostgreSQL will not run as root: then the account that its package makes runs it. */
function account(): { uid: number; gid: number } | undefined {
  if (process.getuid?.() !== 0) return undefined;
  try {
    const id = (flag: string) =>
      Number(execFileSync('id', [flag, 'postgres'], { encoding: 'utf8', stdio: 'pipe' }));
    return { uid: id('-u'), gid: id('-g') };
  } catch {
    return undefined;
  }
}
const runner = account();
export const hasPostgres =
  initdb !== undefined && postgres !== undefined && (process.getuid?.() !== 0 || runner !== undefined);

/** A temporary folder that outlives a run of tests (run.ts). */
const LASTING = dirname(process.env.NODE_COMPILE_CACHE ?? join(tmpdir(), 'any'));

/**
 * The folder of a server that holds nothing yet. To make one takes two seconds of processor time, to copy it a twentieth of
 * that, so it stays in the temporary folder for every process and every run, as the compile cache does.
 */
function emptyData(): string {
  // A collation that sorts unlike bytes, to show that key order does not depend on it; a log that is short to copy.
  const made = ['--locale-provider=icu', '--icu-locale=en-US', '--locale=C.UTF-8', '--encoding=UTF8'];
  made.push('--wal-segsize=1');
  const by = createHash('sha256')
    .update([initdb, ...made].join(' '))
    .digest('hex')
    .slice(0, 8);
  const kept = join(LASTING, `tintmoot-initdb-${by}-${runner?.uid ?? process.getuid?.()}`);
  if (existsSync(kept)) return kept;
  const making = mkdtempSync(`${kept}-`);
  chmodSync(making, 0o700);
  if (runner) chownSync(making, runner.uid, runner.gid);
  execFileSync(initdb!, ['-D', making, '-U', 'postgres', '-A', 'trust', '--no-sync', ...made], {
    stdio: 'pipe',
    cwd: making,
    ...runner,
  });
  try {
    // All of it or nothing: another process may have made it meanwhile, and then that one serves.
    renameSync(making, kept);
  } catch {
    rmSync(making, { recursive: true });
  }
  return kept;
}

/** Starts a PostgreSQL that answers on a socket in a folder of its own, with these settings (`name=value`). */
export async function startPostgres(settings: readonly string[] = []): Promise<LosableServer> {
  const folder = mkdtempSync(join(tmpdir(), 'postgres-'));
  chmodSync(folder, 0o700);
  if (runner) chownSync(folder, runner.uid, runner.gid);
  const data = join(folder, 'data');
  execFileSync('cp', ['-a', emptyData(), data], { stdio: 'pipe', cwd: folder, ...runner });
  const flags = [
    '-D',
    data,
    '-k',
    folder,
    '-c',
    'listen_addresses=',
    // What a store of a test holds; the usual 128 MB are made ready at every start.
    '-c',
    'shared_buffers=8MB',
    ...settings.flatMap(one => ['-c', one]),
  ];
  const start = async () => {
    const server = spawn(postgres!, flags, { stdio: 'pipe', cwd: folder, ...runner });
    server.stdout.resume();
    for await (const chunk of server.stderr) if (String(chunk).includes('ready to accept connections')) break;
    server.stderr.resume();
    await pause(50);
    return server;
  };
  const end = async () => {
    const exited = once(server, 'exit');
    server.kill('SIGINT');
    await exited;
  };
  let server = await start();
  return {
    address: `postgres://postgres@localhost/postgres?host=${encodeURIComponent(folder)}`,
    lose: end,
    async back() {
      server = await start();
    },
    async stop() {
      await end();
      rmSync(folder, { recursive: true });
    },
  };
}
