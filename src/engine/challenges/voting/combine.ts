import { groupedBy } from '../../grouped.ts';
/** What an entry's two places add up to; the lower the better. */
export type Combined = { readonly entry: string; readonly byVotes: number; readonly byColour: number };

/**
 * The place of each entry counted from 1, those that share one given the mean of the places they take up
 * together (two on second: 2.5 each), so that sharing neither gains nor costs anybody else anything.
 * Source: M. G. Kendall, "The treatment of ties in ranking problems", Biometrika 33 (1945).
 */
export function meanPlaces(ranking: readonly (readonly string[])[]): ReadonlyMap<string, number> {
  const places = new Map<string, number>();
  let taken = 0;
  for (const tied of ranking) {
    for (const entry of tied) places.set(entry, taken + (tied.length + 1) / 2);
    taken += tied.length;
  }
  return places;
}

/**
 * Joins the places by votes and by measured colour: the two places of each entry are added, the lowest sum is
 * first, equal sums share a place. Places, not points, are added, so neither the number of voters nor the scale
 * of colour differences gives one side more weight (Borda's rule with two judges). Whoever one ranking lacks,
 * such as a bar that could not be measured, shares its last place.
 */
export function combinePlaces(
  byVotes: readonly (readonly string[])[],
  byColour: readonly (readonly string[])[],
): { readonly ranking: readonly (readonly string[])[]; readonly sums: readonly Combined[] } {
  const entries = [...new Set([...byVotes.flat(), ...byColour.flat()])].sort();
  const whole = (ranking: readonly (readonly string[])[]) => {
    const present = new Set(ranking.flat());
    const lacking = entries.filter(entry => !present.has(entry));
    return meanPlaces([...ranking, lacking]);
  };
  const [votes, colour] = [whole(byVotes), whole(byColour)];
  const sums = entries.map(entry => ({ entry, byVotes: votes.get(entry)!, byColour: colour.get(entry)! }));
  const bySum = groupedBy(sums, sum => sum.byVotes + sum.byColour);
  const ranking = [...bySum.keys()]
    .sort((a, b) => a - b)
    .map(sum => bySum.get(sum)!.map(({ entry }) => entry));
  return { ranking, sums };
}
