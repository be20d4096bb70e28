import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { linesOf } from '../mutants/changed.ts';
import { changesIn, drawnOf } from '../mutants/changes.ts';
import { nearestFirst } from '../mutants/nearest-first.ts';
import { filesOf, ROOMS } from '../mutants/rooms.ts';
import { interval, stratified } from '../mutants/sample.ts';
import { drawn, WHOLE } from '../walk.ts';

/** What samples stand for is only as true as they are drawn. */
describe('a sample of a long walk', () => {
  const all = Array.from({ length: 1000 }, (_, at) => at);

  test.skipIf(WHOLE)('has as many as were asked for, in their order, and is the same each time', () => {
    const some = drawn(all, 100, 'a');
    expect(some).toHaveLength(100);
    expect(some).toEqual(some.toSorted((a, b) => a - b));
    expect(new Set(some).size).toBe(100);
    expect(drawn(all, 100, 'a')).toEqual(some);
    expect(drawn(all, 100, 'b')).not.toEqual(some);
  });

  test.skipIf(WHOLE)('comes from everywhere, each about as often', () => {
    const often = new Array<number>(10).fill(0);
    for (let word = 0; word < 200; word += 1)
      for (const at of drawn(all, 50, String(word))) often[Math.floor(at / 100)]! += 1;
    // 200 draws of 50 from ten tenths: 1,000 each; six standard deviations are 180.
    for (const times of often) expect(Math.abs(times - 1000)).toBeLessThan(180);
  });

  test('leaves short walks whole', () => {
    expect(drawn([1, 2, 3], 3)).toEqual([1, 2, 3]);
  });
});

describe('a sample of mutants', () => {
  const at = (line: number, column: number) => ({ line, column });
  const root = join(import.meta.dirname, '../mutants/endless');

  test('holds what stands in functions alone, and a larger one holds the smaller', async () => {
    const changes = await changesIn(root, ['steps.ts']);
    const { drawn: all, of } = drawnOf(root, changes, changes.length);
    expect(all).toHaveLength(of);
    expect(of).toBeGreaterThan(2);
    const { drawn: two } = drawnOf(root, changes, 2);
    expect(two).toEqual(all.slice(0, 2));
    const seeds = ['a', 'b', 'c', 'd'].map(seed => drawnOf(root, changes, 2, seed).drawn);
    expect(seeds.some(drawn => JSON.stringify(drawn) !== JSON.stringify(two))).toBe(true);
    // A constant is read once, while its file is loaded.
    const [line] = readFileSync(join(root, 'steps-down.ts'), 'utf8').split('\n');
    expect(line).toBe('const GROUND = 0;');
    const atTheTop = { file: 'steps-down.ts', start: at(1, 15), end: at(1, 16), replacement: '1' };
    expect(drawnOf(root, [atTheTop], 1)).toEqual({ drawn: [], of: 0 });
  });

  // Weights 0.9 and 0.1, shares 0.5 and 1: 0.55; the variance of the first is 0.81 * 52 / 104 * 52 / 104 / 104.
  test('of parts is weighed by how many each part has, and a part that was tried whole is known', () => {
    const { share, low, high } = stratified([
      { all: 900, noticed: 50, of: 100 },
      { all: 100, noticed: 100, of: 100 },
    ]);
    expect(share).toBeCloseTo(0.55, 12);
    expect(high - share).toBeCloseTo(1.95996 * Math.sqrt((0.81 * 0.25) / 104), 6);
    expect(share - low).toBeCloseTo(high - share, 12);
  });

  // Wilson's interval of 4 in 20 at 95 %: 0.0807 to 0.4160 (from memory; E. B. Wilson, JASA 22 (1927)).
  test('tells how surely', () => {
    const { low, high } = interval(4, 20);
    expect(low).toBeCloseTo(0.0807, 4);
    expect(high).toBeCloseTo(0.416, 4);
    expect(interval(0, 0)).toEqual({ low: 0, high: 1 });
    expect(interval(10, 10).high).toBeCloseTo(1, 12);
  });
});

test('lines that a patch adds or changes are read by file; what is only taken away is none', () => {
  const patch = [
    'diff --git a/one.ts b/one.ts',
    '--- a/one.ts',
    '+++ b/one.ts',
    '@@ -3 +3 @@ function one() {',
    '-old',
    '+new',
    '@@ -9,0 +10,3 @@',
    '+a',
    '+b',
    '+c',
    '@@ -20,2 +23,0 @@',
    '-gone',
    '-gone',
    '--- a/two.ts',
    '+++ b/two.ts',
    '@@ -1,2 +1,2 @@',
  ].join('\n');
  expect([...linesOf(patch)]).toEqual([
    [
      'one.ts',
      [
        [3, 3],
        [10, 12],
      ],
    ],
    ['two.ts', [[1, 2]]],
  ]);
});

describe('rooms of mutants', () => {
  const root = join(import.meta.dirname, '../..');

  test('hold every file of the engine, each once', () => {
    const held = Object.values(ROOMS).flatMap(({ sources }) => filesOf(root, sources));
    expect(held.toSorted()).toEqual(filesOf(root, ['src/engine/**/*.ts']));
  });

  test.each(Object.entries(ROOMS))('%s: every glob of its tests finds some', (_, { tests }) => {
    expect(tests.filter(glob => filesOf(root, [glob.replace(/^!/, '')]).length === 0)).toEqual([]);
  });
});

test('a change is asked of the tests of its own room first, of the quickest before others as near', () => {
  const tests = [
    { file: 'tests/engine/batch/lye/lye.test.ts', millis: 1 },
    { file: 'tests/engine/heat/slow.test.ts', millis: 9 },
    { file: 'tests/engine/heat/quick.test.ts', millis: 2 },
    { file: 'tests/standards/heat.test.ts', millis: 0 },
  ];
  const order = nearestFirst(tests, 'src/engine/heat/gel.ts').map(({ millis }) => millis);
  expect(order).toEqual([2, 9, 1, 0]);
});
