const GROUND = 0;

/** How many steps of that size lead from a height to the ground. */
export function stepsDown(height: number, size: number): number {
  let steps = 0;
  for (let left = height; left > GROUND; left -= size) steps += 1;
  return steps;
}
