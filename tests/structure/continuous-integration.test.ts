import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { hasChanged } from '../walk.ts';

const folder = mkdtempSync(join(tmpdir(), 'results-'));
afterAll(() => rmSync(folder, { recursive: true }));
const root = new URL('../../', import.meta.url).pathname;

/** What CI makes of a run in which these tests ended so. */
function told(tests: readonly (readonly [file: string, status: string])[]) {
  const results = join(folder, 'results.json');
  const passed = tests.filter(([, status]) => status === 'passed').length;
  const testResults = tests.map(([file, status]) => ({
    name: join(root, file),
    assertionResults: [{ fullName: 'a test', status }],
  }));
  const numPendingTests = tests.length - passed;
  writeFileSync(
    results,
    JSON.stringify({ numPassedTests: passed, numFailedTests: 0, numPendingTests, testResults }),
  );
  return spawnSync(process.execPath, [join(root, '.ci/skipped.mjs'), results], { encoding: 'utf8' });
}

describe('a run in CI', () => {
  const ran = ['tests/records/sqlite.test.ts', 'passed'] as const;

  test('fails where a store, a browser or an earlier release was not there to be tested', () => {
    for (const file of ['tests/records/redis.test.ts', 'tests/faults/upgrade.test.ts']) {
      const { status, stderr } = told([ran, [file, 'pending']]);
      expect([status, stderr]).toEqual([1, expect.stringContaining(file)]);
    }
  });

  test('passes where only a dear check was not drawn, and fails where nothing ran', () => {
    expect(told([ran, ['tests/engine/hazards/emergencies/learned.test.ts', 'skipped']]).status).toBe(0);
    expect(told([]).status).toBe(1);
  });
});

test.each([
  ['src/words/es/index.ts', 'third language'],
  ['src/engine/hazards/index.ts', 'emergencies'],
  ['src/engine/questions/read.ts', 'jobs'],
  ['src/engine/colourants/catalogue/oxides.ts', 'jobs'],
  ['tests/engine/questions/technique/ordinary/en.txt', 'jobs'],
  ['tests/engine/flaws/examples.ts', 'jobs'],
  ['tests/sets/market-seller.json', 'jobs'],
  ['src/engine/questions/lye/topics/topics.ts', 'matters'],
  ['src/engine/questions/technique/parts.ts', 'techniques'],
  ['src/records/store.ts', 'batch kills'],
  ['commands/challenge/vote.ts', 'challenge at the terminal'],
  ['src/page/room.ts', 'challenge in a browser'],
  ['src/records/challenges/votes.ts', 'crowd at the vote'],
  ['docker/Dockerfile', 'image'],
  ['src/main.js', 'killed process'],
  ['src/words/en/batch/plan.ts', 'longest replies'],
  ['src/local-room.ts', 'room at home'],
  ['src/engine/index.ts', 'pack'],
  ['packing/engine-pack.ts', 'pack'],
  ['package-lock.json', 'pack'],
  ['src/page/view.ts', 'page'],
  ['src/photo/network/session.ts', 'photos'],
  ['commands/dose/view.ts', 'screens'],
  ['src/deadlines/scheduler.ts', 'shards'],
  ['src/engine/remembered.ts', 'soak'],
  ['src/records/open.ts', 'upgrade'],
] as const)('a change of %s makes the check of %s due', (file, what) => {
  expect(hasChanged(what, `README.md\n${file}`)).toBe(true);
  expect(hasChanged(what, 'README.md')).toBe(false);
});
