import { SPOONS, type Spoon, type SpoonCount, teaspoonsIn } from '../../quantities/spoons.ts';

/** Thirty-seconds of a teaspoon in each spoon, largest first. */
const SIZES: readonly (readonly [Spoon, number])[] = SPOONS.map(spoon => [
  spoon,
  32 * teaspoonsIn([{ spoon, count: 1 }]),
]);

const sizesOf = (owned: readonly Spoon[]) => SIZES.filter(([spoon]) => owned.includes(spoon));

/** A third kind of spoon is beyond what level spoons repeat to. */
const MOST_KINDS = 2;

/** The fewest of the spoons that are `owned` that hold so many thirty-seconds of a teaspoon; what they cannot hold is left. */
export function spoonsHolding(thirtySeconds: number, owned: readonly Spoon[] = SPOONS): SpoonCount[] {
  let rest = thirtySeconds;
  return sizesOf(owned).flatMap(([spoon, size]) => {
    const count = Math.floor(rest / size);
    rest -= count * size;
    return count > 0 ? [{ spoon, count }] : [];
  });
}

/** Every dose up to `most` teaspoons that one or two kinds of the spoons `owned` can measure; teaspoons, rising, 0 first. */
export function spoonDoses(most: number, owned: readonly Spoon[] = SPOONS): number[] {
  const doses = [0];
  const step = sizesOf(owned).at(-1)?.[1] ?? Number.POSITIVE_INFINITY;
  const end = Math.floor(most * 32 * (1 + 1e-9));
  for (let held = step; held <= end; held += step) {
    if (spoonsHolding(held, owned).length <= MOST_KINDS) doses.push(held / 32);
  }
  return doses;
}
