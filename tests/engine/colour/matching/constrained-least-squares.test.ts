import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { ConstrainedLeastSquares } from '../../../../src/engine/colour/matching/constrained-least-squares.ts';

type Problem = {
  /** Three numbers an unknown. */
  readonly slopes: Float64Array;
  readonly residual: Float64Array;
  readonly amounts: Float64Array;
};

/** The nearest amounts of 0 or more whose sum is 1 or less: Held, Wolfe and Crowder, Math. Program. 6 (1974) 62-88. */
function projected(amounts: readonly number[]): readonly number[] {
  const clipped = amounts.map(one => Math.max(0, one));
  if (clipped.reduce((sum, one) => sum + one, 0) <= 1) return clipped;
  const sorted = amounts.toSorted((a, b) => b - a);
  let [sum, taken] = [0, 0];
  for (const [at, one] of sorted.entries()) {
    sum += one;
    if (one - (sum - 1) / (at + 1) > 0) taken = (sum - 1) / (at + 1);
  }
  return amounts.map(one => Math.max(0, one - taken));
}

function squared({ slopes, residual, amounts }: Problem, to: readonly number[]): number {
  return [0, 1, 2].reduce((sum, row) => {
    const moved = to.reduce((all, one, at) => all + slopes[3 * at + row]! * (one - amounts[at]!), 0);
    return sum + (residual[row]! + moved) ** 2;
  }, 0);
}

/** The same by projected gradients, which needs no sets of bounds. */
function byGradient(problem: Problem): number {
  const { slopes, residual, amounts } = problem;
  const length = slopes.reduce((sum, one) => sum + one ** 2, 1e-9);
  let at: readonly number[] = [...amounts];
  for (let step = 0; step < 500; step++) {
    const left = [0, 1, 2].map(
      row => residual[row]! + at.reduce((sum, one, i) => sum + slopes[3 * i + row]! * (one - amounts[i]!), 0),
    );
    at = projected(
      at.map(
        (one, i) => one - [0, 1, 2].reduce((sum, row) => sum + slopes[3 * i + row]! * left[row]!, 0) / length,
      ),
    );
  }
  return squared(problem, at);
}

const problems = fc.integer({ min: 1, max: 4 }).chain(count =>
  fc.record({
    slopes: fc.array(fc.double({ min: -60, max: 60, noNaN: true }), {
      minLength: 3 * count,
      maxLength: 3 * count,
    }),
    residual: fc.array(fc.double({ min: -40, max: 40, noNaN: true }), { minLength: 3, maxLength: 3 }),
    shares: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: count, maxLength: count }),
  }),
);

describe('the step within bounds', () => {
  test.prop([problems])(
    'lowers the residual as much as any does, and keeps them',
    ({ slopes, residual, shares }) => {
      const sum = Math.max(
        1,
        shares.reduce((all, one) => all + one, 0),
      );
      const amounts = Float64Array.from({ length: 4 }, (_, at) => (shares[at] ?? 0) / sum);
      const solver = new ConstrainedLeastSquares();
      solver.solve(Float64Array.from(slopes), Float64Array.from(residual), amounts, shares.length);
      const reached = shares.map((_, at) => amounts[at]! + solver.step[at]!);
      for (const one of reached) expect(one).toBeGreaterThan(-1e-9);
      expect(reached.reduce((all, one) => all + one, 0)).toBeLessThan(1 + 1e-8);
      const problem = {
        slopes: Float64Array.from(slopes),
        residual: Float64Array.from(residual),
        amounts: amounts.slice(0, shares.length),
      };
      const found = squared(problem, reached);
      // A millionth of the slopes' squares holds the step back where two unknowns are alike.
      const tolerance = 2e-6 * slopes.reduce((all, one) => all + one ** 2, 0) + 1e-6;
      expect(found).toBeLessThanOrEqual(byGradient(problem) + tolerance);
      const before = squared(problem, [...problem.amounts]);
      expect(Math.abs(solver.change - (found - before))).toBeLessThanOrEqual(tolerance);
    },
  );

  test.prop([problems, fc.nat({ max: 3 })])(
    'leaves one where it is that is held, and does as well as any does with the others',
    ({ slopes, residual, shares }, which) => {
      const held = which % shares.length;
      const sum = Math.max(
        1,
        shares.reduce((all, one) => all + one, 0),
      );
      const amounts = Float64Array.from({ length: 4 }, (_, at) => (shares[at] ?? 0) / sum);
      const solver = new ConstrainedLeastSquares();
      solver.solve(Float64Array.from(slopes), Float64Array.from(residual), amounts, shares.length, held);
      expect(solver.step[held]).toBe(0);
      // Without any slope the same one moves nothing, so that the others alone are judged.
      const others = Float64Array.from(slopes, (slope, at) => (Math.floor(at / 3) === held ? 0 : slope));
      const problem = {
        slopes: others,
        residual: Float64Array.from(residual),
        amounts: amounts.slice(0, shares.length),
      };
      const found = squared(
        problem,
        shares.map((_, at) => amounts[at]! + solver.step[at]!),
      );
      const tolerance = 2e-6 * slopes.reduce((all, one) => all + one ** 2, 0) + 1e-6;
      const before = squared(problem, [...problem.amounts]);
      expect(Math.abs(solver.change - (found - before))).toBeLessThanOrEqual(tolerance);
      // Alone beside one that is held there is one unknown: its best step, cut at its bounds (calculus).
      if (shares.length !== 2) return;
      const free = 1 - held;
      const of = (row: number) => slopes[3 * free + row]!;
      const square = of(0) ** 2 + of(1) ** 2 + of(2) ** 2;
      if (square < 1) return;
      const wanted = -(of(0) * residual[0]! + of(1) * residual[1]! + of(2) * residual[2]!) / square;
      const room = 1 - amounts[0]! - amounts[1]!;
      const best = Math.min(Math.max(wanted, -amounts[free]!), room);
      const length = slopes.reduce((all, one) => all + one ** 2, 0);
      expect(solver.step[free]).toBeCloseTo(best, length / square < 100 ? 3 : 1);
    },
  );
});
