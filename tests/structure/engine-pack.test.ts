import { execFileSync, spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { isDue } from '../walk.ts';

const root = resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(join(tmpdir(), 'engine-pack-'));
const house = join(folder, 'house');
const stranger = join(folder, 'stranger');
afterAll(() => rmSync(folder, { recursive: true }));

type Manifest = {
  readonly version: string;
  readonly engines: { readonly node: string };
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
};
type Lock = { readonly packages: Readonly<Record<string, Manifest | undefined>> };
const read = <Shape = Manifest>(path: string) => JSON.parse(readFileSync(path, 'utf8')) as Shape;
const quiet = { encoding: 'utf8', stdio: 'pipe' } as const;
const npm = (cwd: string, ...args: readonly string[]) =>
  execFileSync('npm', [...args, '--offline', '--no-audit', '--no-fund', '--cache', join(folder, 'cache')], {
    ...quiet,
    cwd,
  });

/** Those packages and what they need themselves, by the lock file. */
function withTheirs(names: readonly string[]): readonly string[] {
  const { packages } = read<Lock>(join(root, 'package-lock.json'));
  const all = new Set<string>();
  const add = (name: string): void => {
    if (all.has(name)) return;
    all.add(name);
    Object.keys(packages[`node_modules/${name}`]?.dependencies ?? {}).forEach(add);
  };
  names.forEach(add);
  return [...all];
}

/** A Node that the machine has of its own, without the package that brings ours. */
const own = (process.env.PATH ?? '')
  .split(delimiter)
  .filter(path => !path.includes('node_modules'))
  .map(path => join(path, 'node'))
  .find(existsSync);

const whenDue = isDue('pack') ? test : test.todo;

beforeAll(() => {
  if (!isDue('pack')) return;
  // In a copy: other tests read the house's own manifest meanwhile.
  mkdirSync(house);
  mkdirSync(stranger);
  for (const path of [
    'package.json',
    'tsconfig.json',
    'packing',
    'src/engine',
    'LICENSE',
    'NOTICE.md',
    'README.md',
  ])
    cpSync(join(root, path), join(house, path), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(house, 'node_modules'));
  npm(house, 'pack', '--pack-destination', folder);

  // What a registry would bring, packed from what is installed here, so that nothing is asked of a network.
  execFileSync('tar', ['-xzf', join(folder, 'tintmoot-0.1.0.tgz'), '-C', folder, 'package/package.json']);
  const { dependencies } = read(join(folder, 'package/package.json'));
  const needed = withTheirs(Object.keys(dependencies));
  const tarballs = needed.map(name => {
    const tarball = join(folder, `${name.replace('@', '').replace('/', '-')}.tgz`);
    const from = join(root, 'node_modules', name);
    execFileSync('tar', ['-czf', tarball, '--transform', 's,^\\.,package,', '-C', from, '.']);
    return tarball;
  });
  writeFileSync(join(stranger, 'package.json'), '{ "type": "module", "private": true }');
  npm(stranger, 'install', ...tarballs, join(folder, 'tintmoot-0.1.0.tgz'));
});

describe('the engine in another program', () => {
  whenDue('packing leaves the manifest of the house as it was', () => {
    expect(readFileSync(join(house, 'package.json'), 'utf8')).toBe(
      readFileSync(join(root, 'package.json'), 'utf8'),
    );
  });

  whenDue('brings neither source nor a chat client along', () => {
    const packed = join(stranger, 'node_modules/tintmoot');
    expect(existsSync(join(packed, 'src'))).toBe(false);
    expect(existsSync(join(packed, 'dist/engine/index.js'))).toBe(true);
    for (const name of ['discord.js', 'sharp', 'pg', 'pino'])
      expect(existsSync(join(stranger, 'node_modules', name))).toBe(false);
  });

  const nodes = [process.execPath, ...(own && dirname(own) !== dirname(process.execPath) ? [own] : [])];
  whenDue.each(nodes)('answers in plain Node: %s', node => {
    // Each entry point has an example in its comment (`engine-index.test.ts`): that of `diagnose`, and a US cup, which is
    // 236.588 ml (NIST Handbook 44, appendix C).
    writeFileSync(
      join(stranger, 'ask.js'),
      `import { diagnose, parsePortion, readQuestion } from 'tintmoot/engine';
       const cause = diagnose('orange spots on old bars and a rancid smell').causes[0].id;
       const portion = parsePortion('2 cups');
       const { command } = readQuestion('how much ultramarine for 2 cups?').readings[0];
       console.log(JSON.stringify({ cause, portion, command }));`,
    );
    const { stdout, stderr, status } = spawnSync(node, ['ask.js'], { ...quiet, cwd: stranger });
    expect({ status, stderr }).toMatchObject({ status: 0 });
    const told = JSON.parse(stdout) as { portion: { millilitres: number } };
    expect(told).toMatchObject({ cause: 'rancidity', command: 'dose' });
    expect(told.portion.millilitres).toBeCloseTo(2 * 236.588, 2);
  });

  whenDue('has types: what fits compiles, what does not is told', () => {
    writeFileSync(
      join(stranger, 'fits.ts'),
      `import { type DoseAnswer, parsePortion, practicalSpoons, type Portion } from 'tintmoot/engine';
      export const portion: Portion = parsePortion('2 cups');
      export const teaspoons: number = practicalSpoons(4.93).teaspoons;
      export type Told = DoseAnswer;`,
    );
    writeFileSync(
      join(stranger, 'amiss.ts'),
      `import { parsePortion } from 'tintmoot/engine'; export const portion: string = parsePortion('2 cups');`,
    );
    const { stdout } = spawnSync(
      process.execPath,
      [join(root, 'node_modules/typescript/bin/tsc'), '--noEmit', '--strict', 'fits.ts', 'amiss.ts']
        .concat(['--module', 'nodenext', '--target', 'es2023', '--lib', 'es2023'])
        .concat(['--types', '']),
      { ...quiet, cwd: stranger },
    );
    // Of both files the one that does not fit, alone.
    const errors = stdout.split('\n').filter(line => line.includes('error TS'));
    expect(errors).toEqual([expect.stringMatching(/^amiss\.ts\(1,\d+\): error TS2322:/u)]);
  });
});

describe('the Node that it needs', () => {
  const { engines, devDependencies } = read(join(root, 'package.json'));
  const major = devDependencies.node?.split('.')[0];

  test('is the one that comes along, in the manifest, at the start, and in what is written of it', () => {
    expect(engines.node).toBe(`>=${major}`);
    const texts = ['src/main.js', 'README.md', 'DEVELOPERS.md', 'docker/RUNBOOK.md'];
    const silent = texts.filter(path => !readFileSync(join(root, path), 'utf8').includes(`Node ${major}`));
    expect(silent).toEqual([]);
    expect(read<Lock>(join(root, 'package-lock.json')).packages['']?.engines).toEqual(engines);
  });
});
