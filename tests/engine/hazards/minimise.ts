/** Fills `slope` with the gradient at `at` and gives the value there. */
export type Slope = (at: Float64Array, slope: Float64Array) => number;

const MEMORY = 8;
/** Sufficient decrease of a step (Armijo). */
const DECREASE = 1e-4;

const dot = (a: Float64Array, b: Float64Array) => {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i]! * b[i]!;
  return sum;
};
const add = (to: Float64Array, by: number, what: Float64Array) => {
  for (let i = 0; i < to.length; i += 1) to[i]! += by * what[i]!;
};

/**
 * The minimum of a smooth convex function, by limited-memory BFGS with backtracking: Nocedal and Wright, Numerical
 * Optimization, 2nd ed., algorithms 7.4 and 7.5.
 */
export function minimise(start: Float64Array, rounds: number, slopeAt: Slope): Float64Array {
  let here = start.slice();
  let slope = new Float64Array(start.length);
  let value = slopeAt(here, slope);
  const past: { moved: Float64Array; turned: Float64Array; bend: number }[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const way = slope.slice();
    const shares = past.toReversed().map(({ moved, turned, bend }) => {
      const share = dot(moved, way) / bend;
      add(way, -share, turned);
      return share;
    });
    const last = past.at(-1);
    const scale = last ? last.bend / dot(last.turned, last.turned) : 1 / Math.sqrt(dot(slope, slope));
    for (let i = 0; i < way.length; i += 1) way[i]! *= scale;
    past.forEach(({ moved, turned, bend }, at) => {
      add(way, shares[past.length - 1 - at]! - dot(turned, way) / bend, moved);
    });
    const fall = dot(way, slope);
    const next = new Float64Array(start.length);
    const nextSlope = new Float64Array(start.length);
    let step = 1;
    let nextValue = Number.POSITIVE_INFINITY;
    for (; step > 1e-6; step /= 2) {
      next.set(here);
      add(next, -step, way);
      nextValue = slopeAt(next, nextSlope);
      if (nextValue <= value - DECREASE * step * fall) break;
    }
    const moved = next.slice();
    add(moved, -1, here);
    const turned = nextSlope.slice();
    add(turned, -1, slope);
    const bend = dot(moved, turned);
    if (bend > 0) past.push({ moved, turned, bend });
    if (past.length > MEMORY) past.shift();
    [here, slope, value] = [next, nextSlope, nextValue];
  }
  return here;
}
