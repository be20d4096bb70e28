/**
 * Mutation tests of the engine, room by room: `npm run mutants` all of them, `npm run mutants -- lye tally` some,
 * `npm run mutants -- --changed` the files of the engine that differ from the main branch. Survivors are printed; a
 * room's share of noticed changes may not fall below the one kept in `scores.json`, which rises by itself.
 */
import { execFileSync } from 'node:child_process';
import { globSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, matchesGlob, relative, resolve } from 'node:path';
import type { LogLevel, MutantResult } from '@stryker-mutator/api/core';
import { Stryker } from '@stryker-mutator/core';
import { EQUIVALENT } from './equivalent.ts';
import { ROOMS, type Room } from './rooms.ts';

const root = resolve(import.meta.dirname, '../..');
const scoresFile = join(import.meta.dirname, 'scores.json');

type Score = { readonly percent: number; readonly noticed: number; readonly of: number };
const kept = JSON.parse(readFileSync(scoresFile, 'utf8')) as Record<string, Score>;

/** The files of a room; a glob that begins with `!` takes away. */
function sourcesOf({ sources }: Room): readonly string[] {
  const away = sources.filter(glob => glob.startsWith('!')).map(glob => glob.slice(1));
  const files = globSync(
    sources.filter(glob => !glob.startsWith('!')),
    { cwd: root },
  );
  return files.filter(file => !away.some(glob => matchesGlob(file, glob))).toSorted();
}

const git = (...args: readonly string[]): string =>
  execFileSync('git', args, { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });

/** Files of the engine that differ from the main branch, committed or not; from the last commit where there is none. */
function changed(): ReadonlySet<string> {
  const hasMain = git('branch', '--list', 'main').trim() !== '';
  const since = hasMain ? ['--merge-base', 'main'] : ['HEAD'];
  const paths = git('diff', '--name-only', '--diff-filter=d', ...since, '--', 'src/engine').split('\n');
  return new Set(paths.filter(path => path !== ''));
}

/** Every mutant of these files that a test could notice, and what became of it. */
async function mutantsOf(
  files: readonly string[],
  tests: readonly string[],
): Promise<readonly MutantResult[]> {
  const testFiles = globSync(tests, { cwd: root });
  process.env.MUTANT_TESTS = testFiles.join(',');
  process.env.MUTANT_FILES = String(testFiles.length);
  process.env.NODE_COMPILE_CACHE ??= join(tmpdir(), 'node-compile-cache');
  const results = await new Stryker({
    mutate: [...files],
    testRunner: 'switching',
    plugins: ['./tests/mutants/stryker-runner.ts'],
    coverageAnalysis: 'perTest',
    // Spellings are for the sets that other hands wrote, not for one letter more or less in a pattern.
    mutator: { excludedMutations: ['Regex'] },
    // What runs once, while a file is loaded, would need all tests loaded anew for each mutant.
    ignoreStatic: true,
    concurrency: 1,
    timeoutMS: 20_000,
    reporters: ['progress-append-only'],
    logLevel: 'error' as LogLevel,
    // There is none of that name: Stryker would rewrite it with an interface that TypeScript 7 no longer has.
    tsconfigFile: 'none.json',
    tempDirName: join(tmpdir(), `mutants-${process.pid}`),
    ignorePatterns: ['.tintmoot', '*.sqlite', 'src/photo/training', 'tests/photo', 'coverage'],
    allowConsoleColors: false,
  }).runMutationTest();
  return results.filter(({ status }) => status !== 'Ignored' && status !== 'CompileError');
}

/** The text of a mutant's place, on one line. */
function original({ fileName, location: { start, end } }: MutantResult): string {
  const lines = readFileSync(fileName, 'utf8')
    .split('\n')
    .slice(start.line - 1, end.line);
  lines[lines.length - 1] = lines.at(-1)!.slice(0, end.column - 1);
  lines[0] = lines[0]!.slice(start.column - 1);
  return lines.join(' ').replaceAll(/\s+/g, ' ');
}

function isEquivalent(mutant: MutantResult): boolean {
  const file = relative(root, mutant.fileName);
  return EQUIVALENT.some(
    one => one.file === file && one.from === original(mutant) && one.to === mutant.replacement,
  );
}

async function scoreOf(files: readonly string[], tests: readonly string[]): Promise<Score> {
  const mutants = (await mutantsOf(files, tests)).filter(mutant => !isEquivalent(mutant));
  const missed = mutants.filter(({ status }) => status === 'Survived' || status === 'NoCoverage');
  for (const mutant of missed) {
    const where = `${relative(root, mutant.fileName)}:${mutant.location.start.line}`;
    process.stdout.write(`  ${mutant.status}  ${where}  ${original(mutant)}  ->  ${mutant.replacement}\n`);
  }
  const noticed = mutants.length - missed.length;
  return { percent: Math.floor((1000 * noticed) / mutants.length) / 10, noticed, of: mutants.length };
}

const asked = process.argv.slice(2);
const onlyChanged = asked.includes('--changed') ? changed() : undefined;
const names = asked.filter(name => !name.startsWith('--'));
const unknown = names.filter(name => !ROOMS[name]);
if (unknown.length > 0)
  throw new Error(`no such room: ${unknown.join(', ')}; there are ${Object.keys(ROOMS).join(', ')}`);

for (const [name, room] of Object.entries(ROOMS)) {
  if (names.length > 0 && !names.includes(name)) continue;
  const files = sourcesOf(room).filter(file => onlyChanged?.has(file) ?? true);
  if (files.length === 0) continue;
  const score = await scoreOf(files, room.tests);
  const before = kept[name];
  process.stdout.write(
    `${name}: ${score.percent} % (${score.noticed} of ${score.of}), kept ${before?.percent ?? 'none'}\n`,
  );
  // Of some files only, the kept share says nothing; what the room should reach does.
  const floor = onlyChanged ? Math.min(room.atLeast, before?.percent ?? 0) : (before?.percent ?? 0);
  if (score.percent < floor) {
    process.stdout.write(`${name}: below ${floor} %\n`);
    process.exitCode = 1;
  } else if (!onlyChanged && score.percent >= floor) {
    kept[name] = score;
    writeFileSync(scoresFile, `${JSON.stringify(kept, undefined, 2)}\n`);
  }
}
