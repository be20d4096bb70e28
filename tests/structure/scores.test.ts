import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { ALL_AT_LEAST, overallOf, type Score, surelyBelow } from '../mutants/overall.ts';
import { ROOMS } from '../mutants/rooms.ts';
import { Scores } from '../mutants/scores.ts';

const folder = mkdtempSync(join(tmpdir(), 'scores-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A file of scores with these rooms in it, and what it holds now. */
function fileOf(rooms: Readonly<Record<string, Score & { percent: number }>>) {
  const file = join(mkdtempSync(join(folder, 'one-')), 'scores.json');
  writeFileSync(file, JSON.stringify(rooms));
  return { file, read: () => JSON.parse(readFileSync(file, 'utf8')) as Record<string, unknown> };
}

const sampleOf80 = { percent: 80, noticed: 80, of: 100, all: 900 };
const wholeOf80 = { percent: 80, noticed: 80, of: 100 };

describe('what is kept of a room', () => {
  test.each([
    ['a sample as large that is surely lower', { noticed: 40, of: 100, all: 900 }],
    ['a larger sample that is surely lower', { noticed: 400, of: 800, all: 900 }],
    ['a larger sample that is a little lower', { noticed: 159, of: 200, all: 900 }],
    ['a smaller sample, though it is better', { noticed: 50, of: 50, all: 900 }],
    ['a whole that is lower than the sample before it', { noticed: 719, of: 900 }],
  ])('stays beside %s', (_, score) => {
    const { file, read } = fileOf({ heat: sampleOf80 });
    const scores = new Scores(file);
    scores.keep('heat', score);
    expect(scores.of('heat')).toEqual(sampleOf80);
    expect(read().heat).toEqual(sampleOf80);
  });

  test.each([
    ['a sample as large that is better', { noticed: 81, of: 100, all: 950 }, 81],
    ['a larger sample that is as good', { noticed: 160, of: 200, all: 900 }, 80],
    ['the whole, as good as its sample', { noticed: 720, of: 900 }, 80],
  ])('gives way to %s', (_, score, percent) => {
    const { file, read } = fileOf({ heat: sampleOf80 });
    new Scores(file).keep('heat', score);
    expect(read().heat).toEqual({ percent, ...score });
  });

  test('of a whole gives way to no sample, and to no whole that is worse, however many changes it has now', () => {
    const { file } = fileOf({ heat: wholeOf80 });
    const scores = new Scores(file);
    scores.keep('heat', { noticed: 100, of: 100, all: 900 });
    scores.keep('heat', { noticed: 798, of: 1000 });
    expect(scores.of('heat')).toEqual(wholeOf80);
    scores.keep('heat', { noticed: 801, of: 1000 });
    expect(scores.of('heat')).toEqual({ percent: 80.1, noticed: 801, of: 1000 });
  });

  test('is nothing where a run fails, though it is the first', () => {
    const scores = new Scores(fileOf({}).file);
    expect(scores.keepUnlessBelow('heat', { noticed: 40, of: 100, all: 900 }, 80)).toBe(80);
    expect(scores.of('heat')).toBeUndefined();
    expect(scores.keepUnlessBelow('heat', { noticed: 85, of: 100, all: 900 }, 80)).toBeUndefined();
    expect(scores.keepUnlessBelow('heat', { noticed: 719, of: 900 }, 70)).toBe(85);
    expect(scores.of('heat')).toEqual({ percent: 85, noticed: 85, of: 100, all: 900 });
  });

  test('is told down to a tenth, never as more than it was', () => {
    const { file } = fileOf({});
    const scores = new Scores(file);
    scores.keep('heat', { noticed: 2, of: 3 });
    expect(scores.of('heat')?.percent).toBe(66.6);
  });
});

test('of the tables a larger sample is kept that is no worse, beside the rooms', () => {
  const { file, read } = fileOf({ heat: wholeOf80 });
  const scores = new Scores(file);
  scores.keepTables({ noticed: 15, of: 20, all: 300 });
  scores.keepTables({ noticed: 10, of: 10, all: 300 });
  scores.keepTables({ noticed: 29, of: 40, all: 300 });
  expect(read().tables).toEqual({ percent: 75, noticed: 15, of: 20, all: 300 });
  expect(read().heat).toEqual(wholeOf80);
  expect(new Scores(file).tables).toEqual(scores.tables);
  scores.keepTables({ noticed: 30, of: 40, all: 300 });
  expect(read().tables).toEqual({ percent: 75, noticed: 30, of: 40, all: 300 });
});

describe('what all rooms come to', () => {
  // Weights 0.9 and 0.1, shares 0.5 and 1: 0.55; by Cochran's stratified sample (samples.test.ts) 0.0961 to either side.
  const rooms = { a: { noticed: 50, of: 100, all: 900 }, b: { noticed: 100, of: 100 } };

  test('is weighed by how many changes each has, with its interval', () => {
    expect(overallOf(Object.values(rooms))).toEqual({
      percent: 55,
      low: 46.3,
      high: 63.6,
      of: 200,
      all: 1000,
    });
  });

  test('is written beside them whenever one is kept', () => {
    const { file, read } = fileOf({});
    const scores = new Scores(file);
    scores.keep('a', rooms.a);
    scores.keep('b', rooms.b);
    expect(read().all).toEqual(overallOf(Object.values(rooms)));
    expect(new Scores(file).all).toEqual(scores.all);
  });

  test('and the kept file says so of its own rooms, each of which is kept', () => {
    const kept = new Scores();
    const each = Object.keys(ROOMS).map(name => kept.of(name)!);
    expect(each).not.toContain(undefined);
    expect(kept.all).toEqual(overallOf(each));
    expect(surelyBelow(kept.all!, ALL_AT_LEAST)).toBeUndefined();
  });
});

describe('a share is surely below a bound', () => {
  test('by its own figure where all was tried, by the upper end of its interval where a sample was', () => {
    expect(surelyBelow({ noticed: 79, of: 100 }, 80)).toBe(80);
    expect(surelyBelow({ noticed: 80, of: 100 }, 80)).toBeUndefined();
    // Wilson's interval of 4 in 20 ends at 0.416 (samples.test.ts).
    expect(surelyBelow({ noticed: 4, of: 20, all: 99 }, 41)).toBeUndefined();
    expect(surelyBelow({ noticed: 4, of: 20, all: 99 }, 42)).toBe(42);
    expect(surelyBelow({ percent: 77, low: 73, high: 79.9, of: 9, all: 99 }, 80)).toBe(80);
    expect(surelyBelow({ percent: 77, low: 73, high: 80, of: 9, all: 99 }, 80)).toBeUndefined();
  });

  test('of several bounds by the first that it misses; what was never kept binds nothing', () => {
    expect(surelyBelow({ noticed: 85, of: 100 }, 80, 90)).toBe(90);
    expect(surelyBelow({ noticed: 85, of: 100 }, 80, undefined)).toBeUndefined();
  });
});
