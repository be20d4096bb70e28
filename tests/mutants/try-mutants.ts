import { readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import type { LogLevel, MutantResult } from '@stryker-mutator/api/core';
import { Stryker } from '@stryker-mutator/core';
import { EQUIVALENT } from './equivalent.ts';
import { type Draw, isDrawn } from './sample.ts';

export type Trial = {
  readonly root: string;
  /** Files, or lines of them: `file.ts`, `file.ts:3-7`. */
  readonly places: readonly string[];
  readonly testFiles: readonly string[];
  readonly draw: Draw;
  /** Processor time that a test is left beyond what it usually takes, before its mutant counts as endless. */
  readonly graceMillis?: number;
};

/** What became of the mutants that were drawn; `missed`, and those that ran out of time and count as noticed, as lines to print. */
export type Tried = {
  readonly noticed: number;
  readonly of: number;
  readonly missed: readonly string[];
  readonly endless: readonly string[];
};

/** Mutants of these places that a test could notice and that were drawn. */
async function resultsOf({ places, testFiles, draw, graceMillis }: Trial): Promise<readonly MutantResult[]> {
  process.env.MUTANT_TESTS = testFiles.join(',');
  process.env.MUTANT_FILES = String(testFiles.length);
  process.env.MUTANT_SOURCES = [...new Set(places.map(place => place.replace(/:[\d-]+$/, '')))].join(',');
  process.env.MUTANT_DRAW = JSON.stringify(draw);
  if (graceMillis !== undefined) process.env.MUTANT_GRACE_MILLIS = String(graceMillis);
  const measured = join(tmpdir(), `mutants-${process.pid}-measured.json`);
  process.env.MUTANT_MEASURED = measured;
  process.env.NODE_COMPILE_CACHE ??= join(tmpdir(), 'node-compile-cache');
  const results = await new Stryker({
    mutate: [...places],
    testRunner: 'switching',
    plugins: ['./tests/mutants/stryker-runner.ts'],
    coverageAnalysis: 'perTest',
    // Spellings are for the sets that other hands wrote, not for one letter more or less in a pattern.
    mutator: { excludedMutations: ['Regex'] },
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
    .finally(() => rmSync(measured, { force: true }));
  return results.filter(
    ({ id, status }) => status !== 'Ignored' && status !== 'CompileError' && isDrawn(id, draw),
  );
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

export async function tryMutants(trial: Trial): Promise<Tried> {
  const fileOf = ({ fileName }: MutantResult) => relative(trial.root, fileName);
  const lineOf = (mutant: MutantResult) =>
    `${mutant.status}  ${fileOf(mutant)}:${mutant.location.start.line}  ${original(mutant)}  ->  ${mutant.replacement}`;
  const isEquivalent = (mutant: MutantResult) =>
    EQUIVALENT.some(
      one => one.file === fileOf(mutant) && one.from === original(mutant) && one.to === mutant.replacement,
    );
  const mutants = (await resultsOf(trial)).filter(mutant => !isEquivalent(mutant));
  const missed = mutants.filter(({ status }) => status === 'Survived' || status === 'NoCoverage');
  return {
    noticed: mutants.length - missed.length,
    of: mutants.length,
    missed: missed.map(lineOf),
    endless: mutants.filter(({ status }) => status === 'Timeout').map(lineOf),
  };
}
