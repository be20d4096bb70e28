import { defineConfig } from 'vitest/config';

/** One worker that keeps every test file loaded: `switching-runner.ts` then runs single tests on demand. */
export default defineConfig({
  test: {
    include: (process.env.MUTANT_TESTS ?? '').split(',').filter(path => path !== ''),
    setupFiles: ['tests/seed.ts', 'tests/mutants/setup.ts'],
    runner: 'tests/mutants/switching-runner.ts',
    reporters: [],
    pool: 'threads',
    maxWorkers: 1,
    isolate: false,
    // For what waits without end; the machine may be many times busier than it should be.
    testTimeout: 300_000,
    experimental: { viteModuleRunner: false },
  },
});
