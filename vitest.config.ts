import { defineConfig } from 'vitest/config';

/** Pure rooms share a worker's modules between files; rooms with threads, sockets and native code do not. */
const pure = ['engine', 'standards', 'conversation', 'words', 'terminal'].map(
  room => `tests/${room}/**/*.test.ts`,
);

export default defineConfig({
  test: {
    testTimeout: 60_000,
    hookTimeout: 60_000,
    setupFiles: ['tests/seed.ts'],
    projects: [
      {
        extends: true,
        test: {
          name: 'pure',
          include: pure,
          isolate: false,
          benchmark: { include: ['tests/bench/**/*.bench.ts'] },
        },
      },
      {
        extends: true,
        test: { name: 'rooms', include: ['tests/**/*.test.ts'], exclude: pure, benchmark: { include: [] } },
      },
    ],
  },
});
