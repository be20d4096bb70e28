import type { Spoon, SpoonCount } from '../../quantities/spoons.ts';

/** Thirty-seconds of a teaspoon in each spoon, largest first. */
const SIZES: readonly (readonly [Spoon, number])[] = [
  ['1 Tbsp', 96],
  ['1 tsp', 32],
  ['1/2 tsp', 16],
  ['1/4 tsp', 8],
  ['1/8 tsp', 4],
  ['1/16 tsp', 2],
  ['1/32 tsp', 1],
];

/** A third kind of spoon is beyond what level spoons repeat to. */
const MOST_KINDS = 2;

/** The fewest real spoons that hold so many thirty-seconds of a teaspoon. */
export function spoonsHolding(thirtySeconds: number): SpoonCount[] {
  let rest = thirtySeconds;
  return SIZES.flatMap(([spoon, size]) => {
    const count = Math.floor(rest / size);
    rest -= count * size;
    return count > 0 ? [{ spoon, count }] : [];
  });
}

/** Every dose up to `most` teaspoons that one or two kinds of spoon can measure; teaspoons, rising, 0 first. */
export function spoonDoses(most: number): number[] {
  const doses = [0];
  const end = Math.floor(most * 32 * (1 + 1e-9));
  for (let held = 1; held <= end; held++) {
    if (spoonsHolding(held).length <= MOST_KINDS) doses.push(held / 32);
  }
  return doses;
}
