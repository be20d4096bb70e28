import { execFileSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { validate } from 'dockerfile-utils';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { readEnvironment, SETTINGS } from '../../src/environment.ts';
import { restore } from '../../src/records/backup/backup.ts';
import { openStore } from '../../src/records/open.ts';
import { put } from '../../src/records/store.ts';
import { PATIENT } from '../records/patience.ts';
import { isDue } from '../walk.ts';

const read = (file: string) => readFileSync(new URL(`../../docker/${file}`, import.meta.url), 'utf8');
const manifest = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
  engines: { node: string };
  scripts: { start: string };
  devDependencies: Record<string, string>;
};

/** What the backup service of a compose file runs, as its shell gets it. */
const backupOf = (file: string) => {
  const [, indented = ''] =
    /entrypoint: \["(?:sh|bash)", "-c"\]\n {4}command:\n {6}- \|\n((?: {8}.*\n)+)/.exec(read(file)) ?? [];
  return indented.replaceAll(/^ {8}/gm, '').replaceAll('$$', '$');
};

test('the runbook starts what npm start starts, but without npm between it and its signals', () => {
  const [, started] = /^```sh\n(node .+src\/main\.js)\n```$/m.exec(read('RUNBOOK.md')) ?? [];
  expect(started).toBe(manifest.scripts.start);
});

describe('the image', () => {
  const dockerfile = read('Dockerfile');

  test('has no fault that a linter finds', () => {
    expect(validate(dockerfile)).toEqual([]);
  });

  test('runs the major version of Node that the tests run on, and not as root', () => {
    const [major] = (manifest.devDependencies.node ?? '').split('.');
    expect(dockerfile.match(/^FROM node:(\d+)/gm)).toEqual([`FROM node:${major}`, `FROM node:${major}`]);
    expect(dockerfile).toMatch(/^USER node$/m);
  });

  test('copies only what its ignore file lets in', () => {
    const allowed = [...read('Dockerfile.dockerignore').matchAll(/^!(.+)$/gm)].map(match => match[1]);
    const copied = [...dockerfile.matchAll(/^COPY (?!--from)(.+) \S+$/gm)].flatMap(
      match => match[1]?.split(' ') ?? [],
    );
    expect(copied.filter(path => !allowed.includes(path))).toEqual([]);
  });

  test('tells whether it is alive, where its health is served', () => {
    const [, command] = /HEALTHCHECK .*\\\n\s+CMD (\[.+\])/.exec(dockerfile) ?? [];
    const [node, flag, script] = JSON.parse(command ?? '[]') as string[];
    expect([node, flag]).toEqual(['node', '-e']);
    expect(script).toContain('/healthz');
    const address = /TINTMOOT_OPERATIONS=(\S+)/.exec(dockerfile)?.[1];
    expect(readEnvironment({ TINTMOOT_OPERATIONS: address }).TINTMOOT_OPERATIONS).toEqual({
      host: '127.0.0.1',
      port: 9464,
    });
  });

  test.for(['compose.yaml', 'compose.shards.yaml', 'compose.valkey.yaml'])(
    '%s runs it with a read-only root, without privileges, and names only settings that there are',
    file => {
      const composed = read(file);
      for (const line of [
        'read_only: true',
        'cap_drop:',
        'no-new-privileges:true',
        'restart: unless-stopped',
      ])
        expect(composed).toContain(line);
      const named = [...composed.matchAll(/^\s+((?:TINTMOOT|DISCORD)_\w+):/gm)].map(match => match[1] ?? '');
      expect(named.length).toBeGreaterThan(2);
      expect(SETTINGS).toEqual(expect.arrayContaining(named));
    },
  );
});

/* The steps of the Dockerfile by hand, with the packages that are here: no container runs where tests do. */
describe('what the image holds', () => {
  const root = new URL('../../', import.meta.url).pathname;
  const PRUNED = 'onnxruntime-web';
  let folder: string;
  const steps = [...read('Dockerfile').matchAll(/^RUN ((?:.*\\\n)*.*)$/gm)].map(([, step = '']) =>
    step.replaceAll('\\\n', ' '),
  );
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'image-'));
    const packages = join(folder, 'node_modules');
    mkdirSync(packages);
    // Links, but for the package of which only a part is kept: what is taken away must not be taken from here.
    for (const name of readdirSync(join(root, 'node_modules')))
      if (name !== PRUNED && !name.startsWith('.'))
        symlinkSync(join(root, 'node_modules', name), join(packages, name));
    cpSync(join(root, 'node_modules', PRUNED), join(packages, PRUNED), { recursive: true });
    const left = read('Dockerfile.dockerignore')
      .split('\n')
      .filter(line => /^\w/.test(line));
    for (const path of ['package.json', 'src', 'commands'])
      cpSync(join(root, path), join(folder, path), {
        recursive: true,
        filter: from => !left.includes(from.slice(root.length)),
      });
    for (const step of steps.filter(one => one.startsWith('find ')))
      execFileSync('sh', ['-c', step], { cwd: folder, stdio: 'pipe' });
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  const run = (...args: string[]) =>
    execFileSync(process.execPath, args, {
      cwd: folder,
      encoding: 'utf8',
      env: { ...process.env, TINTMOOT_STORE: 'sqlite::memory:' },
      stdio: ['ignore', 'pipe', 'pipe'],
    });

  test('is without what trains the network and without most of its runtime', () => {
    expect(existsSync(join(folder, 'src/photo/training'))).toBe(false);
    expect(existsSync(join(folder, 'src/photo/model'))).toBe(true);
    expect(readdirSync(join(folder, 'node_modules', PRUNED, 'dist')).toSorted()).toEqual([
      'ort-wasm-simd-threaded.mjs',
      'ort-wasm-simd-threaded.wasm',
      'ort.node.min.mjs',
    ]);
    expect(existsSync(join(folder, 'node_modules', PRUNED, 'types.d.ts'))).toBe(false);
    // Of what is only linked nothing is taken away.
    expect(existsSync(join(root, 'node_modules/zod/index.d.ts'))).toBe(true);
  });

  const whenDue = isDue('image') ? test : test.todo;

  whenDue('answers, as the step that fills its compile cache asks it to', () => {
    const asks = steps.map(one => /node (src\/main\.js ask \S+)/.exec(one)?.[1]?.split(' ')).find(Boolean);
    expect(run(...(asks ?? []))).toContain('/dose');
  });

  whenDue('compiles, as the user that it runs as, what answers on the platform too', () => {
    const dockerfile = read('Dockerfile');
    const [user, filled] = [dockerfile.indexOf('USER node'), dockerfile.indexOf('src/main.js ask /help')];
    expect(user).toBeGreaterThan(0);
    expect(filled).toBeGreaterThan(user);
    // What it is written into belongs to that user before.
    expect(dockerfile.slice(0, user)).toMatch(/mkdir .*compiled && chown node:node .*compiled/);
    const script = steps.map(one => /--input-type=module -e "([^"]+)"/.exec(one)?.[1]).find(Boolean) ?? '';
    const cache = join(folder, 'compiled');
    execFileSync(process.execPath, ['--input-type=module', '-e', script], {
      cwd: folder,
      env: { ...process.env, NODE_COMPILE_CACHE: cache },
      stdio: 'pipe',
    });
    const [kept = '', ...others] = readdirSync(cache);
    expect(others).toEqual([]);
    // By version and user: another user's would lie beside it, and never be read.
    expect(kept).toMatch(new RegExp(`^${process.version}-.+-${process.getuid?.()}$`));
    expect(readdirSync(join(cache, kept)).length).toBeGreaterThan(200);
  });

  whenDue('looks at a photo with the network', () => {
    const script = `
      const { said } = await import('./src/photo/network/session.ts');
      const { maps, answers } = await said(new Float32Array(3 * 64 * 64).fill(0.5), 64);
      console.log(JSON.stringify([maps.length % (32 * 32), answers.length > 2, answers.every(Number.isFinite)]));`;
    expect(JSON.parse(run('--input-type=module', '-e', script))).toEqual([0, true, true]);
  });
});

describe('the backup service of one machine', () => {
  let folder: string;
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'backups-'));
    const store = await openStore(`sqlite:${join(folder, 'tintmoot.sqlite')}`, PATIENT);
    await store.commit([put('shelf/7/1', { v: 1 })]);
    await store.close();
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  /** One round of it, in a folder of its own instead of the container's. */
  const round = (store = `sqlite:${join(folder, 'tintmoot.sqlite')}`) => {
    const script = backupOf('compose.yaml')
      .replaceAll('/backups', `${folder}/backups`)
      .replace('while true; do', 'for once in 1; do')
      .replace(/sleep \d+/, ':');
    return execFileSync('sh', ['-c', `exec 2>&1; mkdir -p ${folder}/backups; ${script}`], {
      cwd: new URL('../../', import.meta.url),
      env: { ...process.env, TINTMOOT_STORE: store },
      encoding: 'utf8',
    });
  };

  test('says so where no copy could be made, and leaves no half of one', () => {
    mkdirSync(join(folder, 'backups'));
    writeFileSync(join(folder, 'backups', 'tintmoot-2026-01-01.sqlite.part'), 'half');
    expect(round('sqlite:/dev/null/no-folder')).toMatch(/backup failed: .*\.sqlite/);
    expect(readdirSync(join(folder, 'backups'))).toEqual([]);
    expect(round()).not.toContain('backup failed');
  });

  test.each(['compose.yaml', 'compose.shards.yaml', 'compose.valkey.yaml'])(
    'of %s is unhealthy without a new copy, and hears when it is told to stop',
    file => {
      const backup = read(file).slice(read(file).indexOf('\n  backup:'));
      expect(backup).toMatch(/find \/backups -name '\*\.(?:sqlite|dump|rdb)' -mmin -1560/);
      expect(backup).not.toContain('disable: true');
      expect(read(file).match(/^ {4}init: true$/gm)).toHaveLength(file === 'compose.yaml' ? 1 : 2);
      expect(backupOf(file)).toMatch(/\|\| echo "backup failed: \$file" >&2/);
    },
  );

  test('leaves a copy that a restore takes, one a day and fourteen at most', async () => {
    round();
    for (let n = 10; n < 30; n += 1) {
      const old = join(folder, 'backups', `tintmoot-2026-01-${n}.sqlite`);
      writeFileSync(old, '');
      utimesSync(old, n, n);
    }
    round();
    const kept = readdirSync(join(folder, 'backups')).toSorted();
    expect(kept).toHaveLength(14);
    expect(kept.filter(name => name.endsWith('.part'))).toEqual([]);
    const target = `sqlite:${join(folder, 'restored.sqlite')}`;
    await restore(join(folder, 'backups', kept.at(-1)!), target);
    const store = await openStore(target, PATIENT);
    expect(await store.get(['shelf/7/1'])).toEqual([{ v: 1 }]);
    await store.close();
  });
});
