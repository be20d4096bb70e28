import { MOST_IN_MIX } from '../mixing/mix-kernel.ts';
import { colourDifference } from '../spectra/cielab.ts';
import type { MatchRequest } from './match-request.ts';
import { spoonDoses } from './spoon-grid.ts';
import { type Doses, SpoonRounding } from './spoon-rounding.ts';
import { SubsetSolver } from './subset-solver.ts';

export type RoundedRecipe = {
  /** Candidate numbers and teaspoons. */
  readonly doses: readonly { readonly member: number; readonly teaspoons: number }[];
  readonly deltaE: number;
  readonly deltaEUnrounded: number;
};

/** A subset of candidates, its size, and the weighted difference its best doses leave. */
type Subset = {
  readonly members: readonly number[];
  readonly count: number;
  difference: number;
  /** A member is not wanted, so that a smaller subset does as well. */
  reducible: boolean;
};

/** Subsets that get the widest rounding search, and any at all, of the most promising. */
const WIDEST = 12;
const ROUNDED = 80;
/** Steps that tell whether a subset can compete; it is solved to the end before it is rounded. */
const SCREENING_STEPS = 4;
/** Recipes handed on to be ranked by more than their colour. */
const DESCRIBED = 40;
/** What is better than so many roundings is still worth solving. */
const KEPT = 12;
/** The linear promise of a subset may be wrong by this factor and offset before the subset is given up. */
const DOUBT = { factor: 1.3, offset: 0.6 } as const;

/** The best spoon recipe of every set of colourants that was worth rounding. */
export function searchRecipes(request: MatchRequest): RoundedRecipe[] {
  const grids = request.candidates.map(({ ceilingTspPerCup }) =>
    spoonDoses(ceilingTspPerCup * request.portion.cups, request.owned),
  );
  const components = request.candidates.map(({ optics, gramsPerTeaspoon, ceilingTspPerCup }) => ({
    optics,
    gramsPerUnit: (100 * ceilingTspPerCup * request.portion.cups * gramsPerTeaspoon) / request.portion.grams,
  }));
  const solver = new SubsetSolver(components, request.base, request.target);
  const shares = grids.map((grid, at) => {
    const ceiling = request.candidates[at]!.ceilingTspPerCup * request.portion.cups;
    return Float64Array.from(grid, teaspoons => teaspoons / ceiling);
  });
  const rounding = new SpoonRounding(solver, shares);
  const usable = request.candidates.flatMap((_, at) => (grids[at]!.length > 1 ? [at] : []));
  const colours = usable.filter(at => !request.candidates[at]!.white);
  const whites = usable.filter(at => request.candidates[at]!.white);
  const ranked = promising(solver, subsets(colours, whites.slice(0, 1), request.most, solver.kernel.nothing));
  const others = ranked.slice(0, ROUNDED).flatMap(subset => withOtherWhites(solver, subset, whites));
  const worth = [...ranked.slice(0, 4 * ROUNDED), ...others].sort(byPromise);
  roundAll(solver, rounding, worth);
  return rounding
    .best()
    .slice(0, DESCRIBED)
    .map(found => recipe(found, grids, solver));
}

/** Every subset of 1 to `most` colours, with the white as its last member where there is one. */
function subsets(
  colours: readonly number[],
  whites: readonly number[],
  most: number,
  nothing: number,
): Subset[] {
  const found: Subset[] = [];
  const add = (chosen: readonly number[]) => {
    const members = [...chosen, ...whites];
    const count = members.length;
    if (count === 0) return;
    while (members.length < MOST_IN_MIX) members.push(nothing);
    found.push({ members, count, difference: Number.POSITIVE_INFINITY, reducible: false });
  };
  const grow = (chosen: readonly number[], from: number) => {
    add(chosen);
    if (chosen.length === most) return;
    for (let at = from; at < colours.length; at++) grow([...chosen, colours[at]!], at + 1);
  };
  grow([], 0);
  return found;
}

/** Solves the subsets in the order of their linear promise, giving up early on those that cannot compete. */
function promising(solver: SubsetSolver, all: Subset[]): Subset[] {
  for (const subset of all) subset.difference = solver.start(subset.members, subset.count);
  all.sort((a, b) => a.difference - b.difference);
  const best: number[] = [];
  for (const subset of all) {
    const limit = (best[KEPT - 1] ?? Number.POSITIVE_INFINITY) * DOUBT.factor + DOUBT.offset;
    if (subset.difference > 2 * limit + 3) break;
    subset.difference = solver.solve(subset.members, subset.count, { limit, steps: SCREENING_STEPS });
    subset.reducible = isReducible(solver, subset.count);
    keepLeast(best, subset.difference);
  }
  return all.sort(byPromise);
}

/** A dose this small a share of its ceiling is none. */
const NO_DOSE = 0.004;

/** Whether a colour beside the last member (the white, if any) came out at nothing. */
function isReducible({ amounts }: SubsetSolver, count: number): boolean {
  for (let at = 0; at < count - 1; at++) if (amounts[at]! < NO_DOSE) return true;
  return false;
}

const byPromise = (a: Subset, b: Subset) =>
  Number(a.reducible) - Number(b.reducible) || a.difference - b.difference || a.count - b.count;

/** Keeps the least differences seen, sorted. */
function keepLeast(best: number[], value: number): void {
  if (best.length === KEPT && value >= best.at(-1)!) return;
  const at = best.findIndex(other => other > value);
  best.splice(at === -1 ? best.length : at, 0, value);
  if (best.length > KEPT) best.pop();
}

/** The same colours with each of the other whites. */
function withOtherWhites(
  solver: SubsetSolver,
  { members, count }: Subset,
  whites: readonly number[],
): Subset[] {
  const last = members[count - 1]!;
  if (!whites.includes(last)) return [];
  return whites
    .filter(white => white !== last)
    .map(white => {
      const exchanged = members.map(member => (member === last ? white : member));
      const difference = solver.solve(exchanged, count);
      return { members: exchanged, count, difference, reducible: isReducible(solver, count) };
    });
}

function roundAll(solver: SubsetSolver, rounding: SpoonRounding, worth: readonly Subset[]): void {
  let bar = Number.POSITIVE_INFINITY;
  worth.slice(0, ROUNDED).forEach((subset, rank) => {
    if (rank % 8 === 0) bar = rounding.bar();
    if (subset.difference > bar + DOUBT.offset) return;
    const unrounded = solver.solve(subset.members, subset.count);
    rounding.round(subset.members, subset.count, unrounded, rank < WIDEST);
  });
  rounding.polish();
}

function recipe(found: Doses, grids: readonly (readonly number[])[], solver: SubsetSolver): RoundedRecipe {
  const doses = found.members
    .map((member, at) => ({
      member,
      teaspoons: member === solver.kernel.nothing ? 0 : grids[member]![found.steps[at]!]!,
    }))
    .filter(({ teaspoons }) => teaspoons > 0);
  const unrounded = unroundedDifference(
    solver,
    doses.map(({ member }) => member),
  );
  return { doses, deltaE: found.deltaE, deltaEUnrounded: unrounded };
}

/** CIEDE2000 that the best doses of just these colourants leave. */
function unroundedDifference(solver: SubsetSolver, members: readonly number[]): number {
  const { kernel, target, amounts } = solver;
  const padded = Array.from({ length: MOST_IN_MIX }, (_, at) => members[at] ?? kernel.nothing);
  solver.solve(padded, members.length);
  kernel.predict(padded, amounts);
  return colourDifference({ l: kernel.lab[0]!, a: kernel.lab[1]!, b: kernel.lab[2]! }, target);
}
