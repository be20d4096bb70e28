import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import type { LogLevel, MutantResult } from '@stryker-mutator/api/core';
import { Stryker } from '@stryker-mutator/core';
import { type Change, keyOf, NOT_MADE } from './changes.ts';
import { isEquivalent, takenOnOneLine } from './equivalence.ts';

export type Trial = {
  readonly root: string;
  /** What is tried; nothing else is built in, so that tests stay as quick as they are. */
  readonly changes: readonly Change[];
  readonly testFiles: readonly string[];
  /** Processor time that a test is left beyond what it usually takes, before its mutant counts as endless. */
  readonly graceMillis?: number;
};

/** What became of one change. One that ran out of time is `endless` and counts as noticed. */
export type Outcome = {
  readonly file: string;
  readonly fate: 'noticed' | 'endless' | 'missed';
  /** The change, to print. */
  readonly line: string;
};

/** A place as Stryker is told it. */
const rangeOf = ({ file, start, end }: Change) =>
  `${file}:${start.line}:${start.column}-${end.line}:${end.column}`;

/** What became of these changes, but of those that stand in no function. */
async function resultsOf({ root, changes, testFiles, graceMillis }: Trial): Promise<readonly MutantResult[]> {
  const wanted = new Set(changes.map(keyOf));
  const kept = (what: string) => join(tmpdir(), `mutants-${process.pid}-${what}.json`);
  process.env.MUTANT_TESTS = testFiles.join(',');
  process.env.MUTANT_FILES = String(testFiles.length);
  process.env.MUTANT_SOURCES = [...new Set(changes.map(({ file }) => file))].join(',');
  process.env.MUTANT_ROOT = root;
  process.env.MUTANT_WANTED = kept('wanted');
  writeFileSync(process.env.MUTANT_WANTED, JSON.stringify([...wanted]));
  if (graceMillis !== undefined) process.env.MUTANT_GRACE_MILLIS = String(graceMillis);
  process.env.MUTANT_MEASURED = kept('measured');
  process.env.NODE_COMPILE_CACHE ??= join(tmpdir(), 'node-compile-cache');
  const results = await new Stryker({
    mutate: [...new Set(changes.map(rangeOf))],
    testRunner: 'switching',
    plugins: ['./tests/mutants/stryker-runner.ts'],
    coverageAnalysis: 'perTest',
    mutator: { excludedMutations: [...NOT_MADE] },
    // What runs once, while a file is loaded, would need all tests loaded anew for each mutant.
    ignoreStatic: true,
    concurrency: 1,
    // What never ends is stopped by how often it comes by its change, or by its processor time; on a crowded machine a clock
    // stops others too.
    timeoutMS: 600_000,
    reporters: ['progress-append-only'],
    logLevel: 'error' as LogLevel,
    // There is none of that name: Stryker would rewrite it with an interface that TypeScript 7 no longer has.
    tsconfigFile: 'none.json',
    tempDirName: join(tmpdir(), `mutants-${process.pid}`),
    ignorePatterns: ['.tintmoot', '*.sqlite', 'src/photo/training', 'tests/photo', 'coverage'],
    allowConsoleColors: false,
  })
    .runMutationTest()
    .finally(() => {
      for (const what of ['wanted', 'measured']) rmSync(kept(what), { force: true });
    });
  return results.filter(
    mutant =>
      mutant.status !== 'Ignored' &&
      mutant.status !== 'CompileError' &&
      wanted.has(keyOf(changeOf(root, mutant))),
  );
}

/** Stryker tells columns of what became of a change from 1. */
const changeOf = (
  root: string,
  { fileName, location: { start, end }, replacement }: Omit<MutantResult, 'status'>,
): Change => ({
  file: relative(root, fileName),
  start: { line: start.line, column: start.column - 1 },
  end: { line: end.line, column: end.column - 1 },
  replacement: replacement ?? '',
});

const FATES: Readonly<Record<string, Outcome['fate']>> = {
  Survived: 'missed',
  NoCoverage: 'missed',
  Timeout: 'endless',
};

/** What became of all that a test could notice. */
export async function tryMutants(trial: Trial): Promise<readonly Outcome[]> {
  const texts = new Map<string, readonly string[]>();
  const linesOf = (file: string) => {
    const lines = texts.get(file) ?? readFileSync(join(trial.root, file), 'utf8').split('\n');
    texts.set(file, lines);
    return lines;
  };
  return (await resultsOf(trial))
    .map(({ status, ...mutant }) => ({ status, change: changeOf(trial.root, mutant) }))
    .filter(({ change }) => !isEquivalent(change, linesOf(change.file)))
    .map(({ status, change }) => ({
      file: change.file,
      fate: FATES[status] ?? 'noticed',
      line: `${status}  ${change.file}:${change.start.line}  ${takenOnOneLine(linesOf(change.file), change)}  ->  ${change.replacement}`,
    }));
}
