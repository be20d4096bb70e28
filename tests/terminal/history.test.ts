import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { keepPastLines, readPastLines } from '../../src/terminal/history.ts';

test('lines typed before come back, newest first, 500 at most, readable by their owner only', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'past-'));
  const file = join(folder, 'kept', 'history');
  expect(await readPastLines(file)).toEqual([]);
  const typed = Array.from({ length: 600 }, (_, index) => `/dose portion:"${index} cups"`);
  await keepPastLines(file, typed.toReversed());
  const past = await readPastLines(file);
  expect(past).toHaveLength(500);
  expect(past[0]).toBe('/dose portion:"599 cups"');
  expect((await stat(file)).mode & 0o077).toBe(0);
  await rm(folder, { recursive: true });
});
