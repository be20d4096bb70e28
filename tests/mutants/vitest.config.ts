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
    testTimeout: 60_000,
    experimental: { viteModuleRunner: false },
  },
});
