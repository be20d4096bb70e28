import { execFileSync } from 'node:child_process';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import { defineConfig } from 'vitest/config';
import LongestFirst from './tests/longest-first.ts';

// Test files, the threads and the processes that they start are plain Node running TypeScript: what one of them
// has compiled, the next one reads. The folder is the one that the program itself uses.
process.env.NODE_COMPILE_CACHE ??= join(tmpdir(), 'node-compile-cache');

// Which sample the long walks draw (tests/walk.ts): the commit's own. Without a repository it is always the same one.
process.env.WALKS ||= git('rev-parse', 'HEAD');

// What a dear check is about that differs from the main branch makes it due, whichever ones the commit draws.
process.env.CHANGED ??= git('diff', '--name-only', git('merge-base', 'HEAD', 'main') || 'HEAD');

/** Nothing where there is no repository, or none of those commits. */
function git(...args: readonly string[]): string {
  try {
    return execFileSync('git', args, { cwd: import.meta.dirname, encoding: 'utf8', stdio: 'pipe' }).trim();
  } catch {
    return '';
  }
}

/** What counts threads, memory or calls: each file in a process of its own, which costs some five seconds. */
const alone = ['tests/workers/**/*.test.ts', 'tests/faults/{soak,stuck,long-lists,names-compared}.test.ts'];

/**
 * What `npm run test:quick` leaves out: fits, walks through thousands of made-up texts, whole answers and processes. Said here: what
 * `--exclude` says does not reach projects that exclude something themselves.
 */
const dear = process.env.QUICK
  ? [
      '**/learned.test.ts',
      '**/structure/{third-language,engine-pack,vulnerabilities,what-a-start-loads,samples}.test.ts',
      '**/flaws/{tuning,makers,diagnose,wording}.test.ts',
      '**/colour/{stated-error,exchange,match}.test.ts',
      '**/stability/{check,slips-of-names}.test.ts',
      '**/batch/{jug-strength,portions}.test.ts',
      '**/hazards/evidence.test.ts',
      '**/lye/{said-beside,told-in-chat}.test.ts',
      '**/recipe-line/doubts/{recipe-taken-back,other-pot,anothers-pot}.test.ts',
      '**/*-properties.test.ts',
      '**/{numbers,shares-and-layers}.test.ts',
    ]
  : [];

export default defineConfig({
  test: {
    // Bounds for what never ends: a machine may be fifteen times busier than it should be.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    expect: { poll: { timeout: 60_000 } },
    setupFiles: ['tests/seed.ts', 'tests/given.ts'],
    // With ANY_ORDER, the order of the tests within files that have none (tests/any-order.ts): the commit's own, as the walks.
    ...(process.env.ANY_ORDER && { runner: 'tests/any-order.ts' }),
    sequence: { sequencer: LongestFirst, seed: crc32(process.env.WALKS) },
    // One more than there are cores: files that wait, for a clock or for a process, leave room for another.
    maxWorkers: availableParallelism() + 1,
    // Node itself loads what is tested, as in production, instead of a bundler's module runner.
    experimental: { viteModuleRunner: false },
    projects: [
      {
        extends: true,
        test: {
          name: 'shared',
          globalSetup: 'tests/run.ts',
          include: ['tests/**/*.test.ts'],
          exclude: [...alone, ...dear],
          isolate: false,
          // Hundreds of files go through one process, each with much that is soon forgotten and code that the next one runs again: with
          // more room for what is young, and code kept, a sixth less processor time. What counts memory is alone.
          execArgv: ['--max-semi-space-size=64', '--no-flush-bytecode'],
          benchmark: { include: ['tests/bench/**/*.bench.ts'] },
        },
      },
      { extends: true, test: { name: 'alone', include: alone, benchmark: { include: [] } } },
    ],
  },
});
