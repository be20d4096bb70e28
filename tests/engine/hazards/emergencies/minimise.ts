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
/** Adds `by` times `what`, and gives the dot product of the sum with `other`: one walk through memory instead of two. */
const addDot = (to: Float64Array, by: number, what: Float64Array, other: Float64Array) => {
  let sum = 0;
  for (let i = 0; i < to.length; i += 1) {
    const one = to[i]! + by * what[i]!;
    to[i] = one;
    sum += other[i]! * one;
  }
  return sum;
};
/** `a` plus `by` times `b`, into `to`. */
const setSum = (to: Float64Array, a: Float64Array, by: number, b: Float64Array) => {
  for (let i = 0; i < to.length; i += 1) to[i] = a[i]! + by * b[i]!;
};

/** A step that was taken, how the slope turned on it, and the dot product of both. */
type Step = { readonly moved: Float64Array; readonly turned: Float64Array; readonly bend: number };

/** Turns the slope in `way` into the way to go, by the steps taken last (algorithm 7.4). */
function turnBy(past: readonly Step[], way: Float64Array): void {
  const last = past.at(-1);
  if (!last) {
    const scale = 1 / Math.sqrt(dot(way, way));
    for (let i = 0; i < way.length; i += 1) way[i]! *= scale;
    return;
  }
  const shares = past.map(() => 0);
  let along = dot(last.moved, way);
  for (let at = past.length - 1; at >= 0; at -= 1) {
    const { turned, bend } = past[at]!;
    shares[at] = along / bend;
    along = addDot(way, -shares[at]!, turned, (past[at - 1] ?? last).moved);
  }
  const scale = last.bend / dot(last.turned, last.turned);
  const [first] = past as readonly [Step, ...Step[]];
  let against = 0;
  for (let i = 0; i < way.length; i += 1) {
    const one = way[i]! * scale;
    way[i] = one;
    against += first.turned[i]! * one;
  }
  for (const [at, { moved, bend }] of past.entries())
    against = addDot(way, shares[at]! - against / bend, moved, (past[at + 1] ?? last).turned);
}

/**
 * The minimum of a smooth convex function, by limited-memory BFGS with backtracking: Nocedal and Wright, Numerical
 * Optimization, 2nd ed., algorithms 7.4 and 7.5. A vector may take tens of megabytes, so those that are done with serve
 * again.
 */
export function minimise(start: Float64Array, rounds: number, slopeAt: Slope): Float64Array {
  const free: Float64Array[] = [];
  const vector = (): Float64Array => free.pop() ?? new Float64Array(start.length);
  let here: Float64Array = start.slice();
  let slope = vector();
  let value = slopeAt(here, slope);
  const past: Step[] = [];
  const way = vector();
  for (let round = 0; round < rounds; round += 1) {
    way.set(slope);
    turnBy(past, way);
    const fall = dot(way, slope);
    const next = vector();
    const nextSlope = vector();
    let step = 1;
    let nextValue = Number.POSITIVE_INFINITY;
    for (; step > 1e-6; step /= 2) {
      setSum(next, here, -step, way);
      nextValue = slopeAt(next, nextSlope);
      if (nextValue <= value - DECREASE * step * fall) break;
    }
    const [moved, turned] = [vector(), vector()];
    setSum(moved, next, -1, here);
    setSum(turned, nextSlope, -1, slope);
    const bend = dot(moved, turned);
    const oldest = bend > 0 ? past.length === MEMORY && past.shift() : { moved, turned };
    if (oldest) free.push(oldest.moved, oldest.turned);
    if (bend > 0) past.push({ moved, turned, bend });
    free.push(here, slope);
    [here, slope, value] = [next, nextSlope, nextValue];
  }
  return here;
}
