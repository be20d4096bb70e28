import { describe, expect, test } from 'vitest';
import { linesOf } from '../mutants/changed.ts';
import { interval, isDrawn } from '../mutants/sample.ts';
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
  test('is the share that was asked for, and all for a share of one', () => {
    const ids = Array.from({ length: 10_000 }, (_, at) => String(at));
    const share = (of: number) => ids.filter(id => isDrawn(id, { share: of, word: 'w' })).length;
    expect(share(1)).toBe(10_000);
    expect(share(0)).toBe(0);
    // Binomial: six standard deviations are 180.
    expect(Math.abs(share(0.1) - 1000)).toBeLessThan(180);
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
