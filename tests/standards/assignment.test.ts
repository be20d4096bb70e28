import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { leastAssignment } from '../../src/engine/colour/measuring/assignment.ts';

/** The least total over every way to give the rows columns: brute force. */
function leastTotal(costs: readonly (readonly number[])[]): number {
  const [row, ...rest] = costs;
  if (!row) return 0;
  const ways = row.map((cost, column) => cost + leastTotal(rest.map(other => other.toSpliced(column, 1))));
  // With more rows than columns somebody goes without; here it may be this row.
  if (costs.length > row.length) ways.push(leastTotal(rest));
  return Math.min(...ways);
}

const table = (rows: number, columns: number) =>
  fc.array(
    fc.array(fc.oneof(fc.double({ min: 0, max: 120, noNaN: true }), fc.integer({ min: 0, max: 3 })), {
      minLength: columns,
      maxLength: columns,
    }),
    { minLength: rows, maxLength: rows },
  );
const anyTable = fc
  .tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }))
  .chain(size => table(...size));

describe('an assignment of palette colours to bar colours', () => {
  test.prop([anyTable], { numRuns: 500 })('costs as little as the best of all, tried one by one', costs => {
    const { columnOf, total } = leastAssignment(costs);
    const given = columnOf.filter(column => column !== undefined);
    expect(given).toHaveLength(Math.min(costs.length, costs[0]!.length));
    expect(new Set(given).size).toBe(given.length);
    const paid = columnOf.reduce<number>(
      (sum, column, row) => sum + (column === undefined ? 0 : costs[row]![column]!),
      0,
    );
    expect(total).toBeCloseTo(paid, 9);
    expect(total).toBeCloseTo(leastTotal(costs), 9);
  });

  test('gives the answers of worked examples', () => {
    // Source: documentation of SciPy, scipy.optimize.linear_sum_assignment, example (from memory).
    const scipy = [
      [4, 1, 3],
      [2, 0, 5],
      [3, 2, 2],
    ];
    expect(leastAssignment(scipy)).toEqual({ columnOf: [1, 0, 2], total: 5 });
    // Source: a worked example of the Hungarian method printed in many places, 4 workers and 4 jobs (from memory).
    const workers = [
      [82, 83, 69, 92],
      [77, 37, 49, 92],
      [11, 69, 5, 86],
      [8, 9, 98, 23],
    ];
    expect(leastAssignment(workers)).toEqual({ columnOf: [2, 1, 0, 3], total: 140 });
  });

  test('with nothing to choose from, gives nothing', () => {
    expect(leastAssignment([[], []])).toEqual({ columnOf: [undefined, undefined], total: 0 });
    expect(leastAssignment([])).toEqual({ columnOf: [], total: 0 });
  });
});
