import { MOST_IN_MIX } from '../mixing/mix-kernel.ts';
import { colourDifference } from '../spectra/cielab.ts';
import type { SubsetSolver } from './subset-solver.ts';

/** Doses as steps on each member's grid, and how far their colour is off (CIEDE2000). */
export type Doses = {
  readonly members: readonly number[];
  readonly steps: Int32Array;
  readonly count: number;
  readonly deltaE: number;
  /** CIEDE2000 before rounding. */
  readonly unrounded: number;
};

/** Steps looked at on either side of a solution. */
const REACH = 2;
/** Roundings of one solution whose colour is worked out exactly. */
const EXACT = 5;
const FULL = 1 + 1e-9;
const POLISHED = 16;
/** Recipes that must be there before a subset is passed over. */
const WANTED = 6;

/**
 * Turns continuous doses into spoon doses. Around one solution, spoon sums are judged by its slopes and the best few
 * worked out exactly. Where doses can trade against one another (white above all) the nearest spoons are not the best
 * ones, so each dose in turn is walked along its own spoons with the others solved anew.
 */
export class SpoonRounding {
  readonly #solver: SubsetSolver;
  /** Shares of the ceiling that spoons can measure, one rising list a candidate. */
  readonly #grids: readonly Float64Array[];
  readonly #bySet = new Map<string, Doses>();
  readonly #steps = new Int32Array(MOST_IN_MIX);
  readonly #trial = new Float64Array(MOST_IN_MIX);
  readonly #nearest = Array.from({ length: EXACT }, () => ({
    cost: Number.POSITIVE_INFINITY,
    steps: new Int32Array(MOST_IN_MIX),
  }));

  constructor(solver: SubsetSolver, grids: readonly Float64Array[]) {
    this.#solver = solver;
    this.#grids = grids;
  }

  /** The best doses of every set of colourants seen, by colour to a tenth, then fewer colourants; none idle. */
  best(): Doses[] {
    const tenth = (doses: Doses) => Math.round(doses.deltaE * 10);
    const sorted = [...this.#bySet.values()].sort(
      (a, b) => tenth(a) - tenth(b) || used(a).length - used(b).length || a.deltaE - b.deltaE,
    );
    const kept: { readonly doses: Doses; readonly members: readonly number[] }[] = [];
    for (const doses of sorted) {
      const members = used(doses);
      const idle = kept.some(better => better.members.every(member => members.includes(member)));
      if (!idle) kept.push({ doses, members });
    }
    return kept.map(({ doses }) => doses);
  }

  /** What a subset must beat to be worth rounding. */
  bar(): number {
    return this.best()[WANTED - 1]?.deltaE ?? Number.POSITIVE_INFINITY;
  }

  /** Rounds the solver's present solution of a subset; `wide` walks every dose, else only the last (the white). */
  round(members: readonly number[], count: number, unrounded: number, wide: boolean): void {
    const solved = this.#solver.amounts.slice();
    this.#around(members, count, unrounded, -1);
    for (let walked = count - 1; walked >= (wide ? 0 : count - 1); walked--) {
      this.#solver.amounts.set(solved);
      const grid = this.#grids[members[walked]!]!;
      for (let step = 0; step < grid.length; step++) {
        this.#makeRoom(count, walked, grid[step]!);
        this.#solver.refine(members, count, { held: walked, steps: 2 });
        this.#steps[walked] = step;
        this.#around(members, count, unrounded, walked);
      }
    }
  }

  /** Puts one amount where it is wanted and shrinks the others so that all stay within the ceilings. */
  #makeRoom(count: number, at: number, value: number): void {
    const { amounts } = this.#solver;
    amounts[at] = value;
    let others = 0;
    for (let i = 0; i < count; i++) if (i !== at) others += amounts[i]!;
    if (others <= 1 - value) return;
    for (let i = 0; i < count; i++) if (i !== at) amounts[i]! *= (1 - value) / others;
  }

  /** Judges the spoons around the solver's present amounts; the step of `held` stays. */
  #around(members: readonly number[], count: number, unrounded: number, held: number): void {
    for (const entry of this.#nearest) entry.cost = Number.POSITIVE_INFINITY;
    const { residual } = this.#solver;
    let used = 0;
    if (held >= 0) used = this.#solver.amounts[held]!;
    this.#spread(members, count, held, 0, used, residual[0]!, residual[1]!, residual[2]!);
    for (const { cost, steps } of this.#nearest) {
      if (cost < Number.POSITIVE_INFINITY) this.#tryExactly(members, count, steps, unrounded);
    }
  }

  /** Goes through the steps of unknown `at` and, within each, of those after it, adding up what the slopes say. */
  #spread(
    members: readonly number[],
    count: number,
    held: number,
    at: number,
    used: number,
    r0: number,
    r1: number,
    r2: number,
  ): void {
    if (at === count) {
      this.#keep(r0 * r0 + r1 * r1 + r2 * r2);
      return;
    }
    if (at === held) {
      this.#spread(members, count, held, at + 1, used, r0, r1, r2);
      return;
    }
    const { amounts, slopes } = this.#solver;
    const grid = this.#grids[members[at]!]!;
    const middle = stepBelow(grid, amounts[at]!);
    const end = Math.min(middle + REACH, grid.length - 1);
    for (let step = Math.max(middle - REACH + 1, 0); step <= end; step++) {
      if (used + grid[step]! > FULL) break;
      const move = grid[step]! - amounts[at]!;
      this.#steps[at] = step;
      this.#spread(
        members,
        count,
        held,
        at + 1,
        used + grid[step]!,
        r0 + move * slopes[3 * at]!,
        r1 + move * slopes[3 * at + 1]!,
        r2 + move * slopes[3 * at + 2]!,
      );
    }
  }

  /** Keeps the present steps if they are among the best few. */
  #keep(cost: number): void {
    let worst = this.#nearest[0]!;
    for (const entry of this.#nearest) if (entry.cost > worst.cost) worst = entry;
    if (cost >= worst.cost) return;
    worst.cost = cost;
    worst.steps.set(this.#steps);
  }

  #tryExactly(members: readonly number[], count: number, steps: Int32Array, unrounded: number): boolean {
    const deltaE = this.#differenceAt(members, count, steps);
    return this.#enter({ members, steps, count, deltaE, unrounded });
  }

  #differenceAt(members: readonly number[], count: number, steps: Int32Array): number {
    const { kernel, target } = this.#solver;
    this.#trial.fill(0);
    for (let at = 0; at < count; at++) this.#trial[at] = this.#grids[members[at]!]![steps[at]!]!;
    kernel.predict(members, this.#trial);
    return colourDifference({ l: kernel.lab[0]!, a: kernel.lab[1]!, b: kernel.lab[2]! }, target);
  }

  /** Remembers the doses if they are the best of the colourants really in them. */
  #enter(doses: Doses): boolean {
    let set = '';
    for (let at = 0; at < doses.count; at++) if (doses.steps[at]! > 0) set += `${doses.members[at]!},`;
    const known = this.#bySet.get(set);
    if (set === '' || (known !== undefined && known.deltaE <= doses.deltaE)) return false;
    this.#bySet.set(set, { ...doses, steps: doses.steps.slice() });
    return true;
  }

  /** Walks the best recipes to where no move of one or two doses by one step is better. */
  polish(): void {
    for (const found of this.best().slice(0, POLISHED)) {
      let present: Doses | undefined = found;
      for (let round = 0; round < 12 && present !== undefined; round++) present = this.#improved(present);
    }
  }

  #improved(doses: Doses): Doses | undefined {
    let best: Doses | undefined;
    const steps = doses.steps.slice();
    const attempt = () => {
      if (!this.#fits(doses, steps)) return;
      const deltaE = this.#differenceAt(doses.members, doses.count, steps);
      if (deltaE >= (best?.deltaE ?? doses.deltaE)) return;
      best = { ...doses, steps: steps.slice(), deltaE };
    };
    for (let one = 0; one < doses.count; one++) {
      for (let other = one; other < doses.count; other++) {
        for (const [up, across] of MOVES) {
          if (one === other && across !== 0) continue;
          steps.set(doses.steps);
          steps[one]! += up;
          if (one !== other) steps[other]! += across;
          attempt();
        }
      }
    }
    if (best !== undefined) this.#enter(best);
    return best;
  }

  #fits({ members, count }: Doses, steps: Int32Array): boolean {
    let used = 0;
    for (let at = 0; at < count; at++) {
      const share = this.#grids[members[at]!]![steps[at]!];
      if (share === undefined) return false;
      used += share;
    }
    return used <= FULL;
  }
}

const MOVES: readonly (readonly [number, number])[] = [-2, -1, 1, 2].flatMap(up =>
  [-2, -1, 0, 1, 2].map(across => [up, across] as const),
);

/** The members that a recipe really uses. */
function used({ members, steps, count }: Doses): number[] {
  return members.filter((_, at) => at < count && steps[at]! > 0);
}

/** The last step at or below a share. */
function stepBelow(grid: Float64Array, share: number): number {
  let low = 0;
  let high = grid.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (grid[middle]! <= share) low = middle;
    else high = middle - 1;
  }
  return low;
}
