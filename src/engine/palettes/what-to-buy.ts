import { opticsOfJar } from '../colour/jars/jar.ts';
import type { JarCandidate } from '../colour/matching/match-jars.ts';
import { SubsetSolver } from '../colour/matching/subset-solver.ts';
import { barLab } from '../colour/mixing/bar.ts';
import { baseSoap, type ShadeShare } from '../colour/mixing/base-soap.ts';
import { MOST_IN_MIX } from '../colour/mixing/mix-kernel.ts';
import { colourDifference, hexOfLab, type Lab } from '../colour/spectra/cielab.ts';

export type BuyAsk = {
  readonly targets: readonly Lab[];
  readonly own: readonly JarCandidate[];
  /** What might be bought. */
  readonly offered: readonly JarCandidate[];
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
  readonly portion: { readonly cups: number; readonly grams: number };
  /** What the jars there are were found to make of each target already; nothing is told to come less near than that. */
  readonly made?: readonly (Nearest | undefined)[];
};

/** The colour that comes nearest to a target, and how far off it is, CIEDE2000. */
type Nearest = { readonly hex: string; readonly deltaE: number };

/** How near a set of jars comes to each target. */
export type Reach = readonly { readonly hex: string; readonly deltaE: number }[];

export type Purchase = {
  readonly ids: readonly string[];
  readonly reach: Reach;
  /** CIEDE2000 a colour still off on average, what is as good as reached counted as such. */
  readonly off: number;
  /** CIEDE2000 from each colour, on average. */
  readonly mean: number;
};

export type BuyAnswer = {
  readonly now: Omit<Purchase, 'ids'>;
  /** The single purchases that bring the most, best first. */
  readonly one: readonly Purchase[];
  /** The best two together; undefined where they bring no more than the best one. */
  readonly two: Purchase | undefined;
};

/** Nearer than this (CIEDE2000) is reached: what two bars of one batch show (common practice). */
const REACHED = 3;
const SHOWN = 3;
/** Gains under this, CIEDE2000 on average, nobody should spend money on. */
const WORTH = 0.5;
const STEPS = 5;

/**
 * Which one and which two of the jars on offer bring a whole palette nearest, beside the jars there are. Every mix of up to two
 * colours with or without a white, of which at most two are bought, is solved for its best doses; a purchase is as good as the
 * best mixes it opens, summed over the palette.
 */
export function whatToBuy(ask: BuyAsk): BuyAnswer {
  const { targets, offered } = ask;
  const tables = targets.map((target, at) => withMade(nearestByPurchase(target, ask), ask.made?.[at]));
  const purchase = (bought: readonly number[]): Purchase => {
    const reach = tables.map(table => nearestWith(table, bought));
    return { ids: bought.map(at => offered[at]!.id), reach, off: offOf(reach), mean: meanOf(reach) };
  };
  const { reach, off, mean } = purchase([]);
  const singles = offered.map((_, at) => purchase([at])).toSorted((a, b) => a.off - b.off);
  const pairs = offered.flatMap((_, at) =>
    offered.slice(at + 1).map((__, step) => purchase([at, at + 1 + step])),
  );
  const best = pairs.reduce<Purchase | undefined>(
    (least, one) => (least && least.off <= one.off ? least : one),
    undefined,
  );
  const one = singles.filter(single => off - single.off >= WORTH).slice(0, SHOWN);
  const before = one[0]?.off ?? off;
  return { now: { reach, off, mean }, one, two: best && before - best.off >= WORTH ? best : undefined };
}

const offOf = (reach: Reach): number =>
  reach.reduce((sum, { deltaE }) => sum + Math.max(0, deltaE - REACHED), 0) / Math.max(1, reach.length);

const meanOf = (reach: Reach): number =>
  reach.reduce((sum, { deltaE }) => sum + deltaE, 0) / Math.max(1, reach.length);

/** The nearest colour by what has to be bought for it: `''`, `3`, `3+7`. */
type Table = ReadonlyMap<string, Nearest>;

/** Without buying anything there is at least what was made already. */
function withMade(table: Table, made: Nearest | undefined): Table {
  const own = table.get('');
  return made && own && made.deltaE < own.deltaE ? new Map([...table, ['', made]]) : table;
}

const keyOf = (bought: readonly number[]): string => bought.toSorted((a, b) => a - b).join('+');

function nearestWith(table: Table, bought: readonly number[]): Nearest {
  const sets = [[], ...bought.map(one => [one]), ...(bought.length === 2 ? [bought] : [])];
  return sets
    .flatMap(set => table.get(keyOf(set)) ?? [])
    .reduce((least, one) => (one.deltaE < least.deltaE ? one : least));
}

function nearestByPurchase(target: Lab, { own, offered, shades, gelled, portion }: BuyAsk): Table {
  const base = baseSoap(shades, gelled);
  const all = [...own, ...offered];
  const solver = new SubsetSolver(
    all.map(({ jar, ceilingTspPerCup, gramsPerTeaspoon }) => ({
      optics: opticsOfJar(jar),
      gramsPerUnit: (100 * ceilingTspPerCup * portion.cups * gramsPerTeaspoon) / portion.grams,
    })),
    base,
    target,
  );
  const plain = barLab([], base);
  const table = new Map<string, Nearest & { readonly weighted: number }>([
    [
      '',
      { hex: hexOfLab(plain), deltaE: colourDifference(plain, target), weighted: Number.POSITIVE_INFINITY },
    ],
  ]);
  const tried = (members: readonly number[]) => {
    const bought = members.filter(at => at >= own.length).map(at => at - own.length);
    if (members.length === 0 || bought.length > 2) return;
    const padded = Array.from({ length: MOST_IN_MIX }, (_, at) => members[at] ?? solver.kernel.nothing);
    const weighted = solver.solve(padded, members.length, { steps: STEPS });
    const key = keyOf(bought);
    if (weighted >= (table.get(key)?.weighted ?? Number.POSITIVE_INFINITY)) return;
    solver.kernel.predict(padded, solver.amounts);
    const [l, a, b] = solver.kernel.lab;
    const lab = { l: l!, a: a!, b: b! };
    const deltaE = colourDifference(lab, target);
    if (deltaE < (table.get(key)?.deltaE ?? Number.POSITIVE_INFINITY))
      table.set(key, { hex: hexOfLab(lab), deltaE, weighted });
  };
  for (const mix of mixesOf(all, own.length)) tried(mix);
  return table;
}

/** Up to two colours, alone or with the first white there is or the first on offer. */
function mixesOf(all: readonly JarCandidate[], owned: number): readonly (readonly number[])[] {
  const colours = all.flatMap(({ white }, at) => (white ? [] : [at]));
  const whites = all.flatMap(({ white }, at) => (white ? [at] : []));
  const ownWhite = whites.find(at => at < owned);
  const white = ownWhite ?? whites.find(at => at >= owned);
  const pairs = colours.flatMap((one, at) => [[one], ...colours.slice(at + 1).map(other => [one, other])]);
  if (white === undefined) return pairs;
  return [[white], ...pairs, ...pairs.map(mix => [...mix, white])];
}
