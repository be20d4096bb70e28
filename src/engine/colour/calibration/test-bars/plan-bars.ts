import type { Spoon } from '../../../quantities/spoons.ts';
import { type ColourJar, opticsOfJar } from '../../jars/jar.ts';
import { spoonDoses } from '../../matching/spoon-grid.ts';
import { type BarPrediction, predictBar } from '../../mixing/bar.ts';
import { baseSoap, type ShadeShare } from '../../mixing/base-soap.ts';
import type { BaseOptics, Optics } from '../../mixing/optics.ts';
import { believedOptics, LEAST_STATED } from '../joint/jar-model.ts';
import { AS_ITS_KIND, independent, PARAMETERS, USUAL_SPREAD } from '../joint/jar-parameters.ts';
import { axisSpread } from '../joint/stated-error.ts';
import { type BarMix, type KnownJar, knownInformation, sensitivityOf } from './bar-information.ts';
import { type Design, exchangeDesign } from './exchange.ts';
import { informationOf, inverseOf, plus, type SquareMatrix } from './information-matrix.ts';

/** A jar that is to be known. Spoons are teaspoons to the US cup, of what is in the jar. */
export type PlannedJar = {
  readonly id: string;
  readonly jar: ColourJar;
  readonly gramsPerTeaspoon: number;
  readonly fullTspPerCup: number;
  readonly ceilingTspPerCup: number;
};

export type BarPlanAsk = {
  readonly jars: readonly PlannedJar[];
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
  /** The size of one test bar: US cups and grams of batter. */
  readonly portion: { readonly cups: number; readonly grams: number };
  /** The spoons there are to measure with; every one unless said. */
  readonly owned?: readonly Spoon[] | undefined;
  /** Error of reading a bar's colour, CIEDE2000. */
  readonly reading: number;
  /** Known well enough: what is stated at full dose and at a quarter is to be at most this, CIEDE2000. */
  readonly within: number;
  /** Whether two jars may share a bar. */
  readonly mixes: boolean;
  readonly mostBars: number;
};

export type PlannedDose = {
  readonly id: string;
  /** In one test bar. */
  readonly teaspoons: number;
  readonly tspPerCup: number;
};

export type PlannedBar = { readonly doses: readonly PlannedDose[]; readonly predicted: BarPrediction };

export type BarPlan = {
  /** Weakest first within a jar; mixes last. */
  readonly bars: readonly PlannedBar[];
  /** Stated in that soap, at full dose or a quarter of it, before and after the bars, CIEDE2000, as every prediction states it. */
  readonly jars: readonly { readonly id: string; readonly before: number; readonly after: number }[];
  /** Every jar is known well enough after the bars. */
  readonly reached: boolean;
};

/** Strengths a test bar is poured at, shares of full. */
const SHARES = [1 / 8, 1 / 4, 1 / 2, 1];
/** A bar fuller than this is coloured lather, not a test: sum of dose over ceiling. */
const FULLEST = 1 + 1e-9;
/** Strengths at which a jar is to be known: deep colours tell covering, tints strength. */
const USED_AT = [1, 1 / 4];
/** Beginnings of a thorough search. */
const STARTS = 3;
/** Strengths at which jars meet in one bar, the weakest of those they are poured at alone: deep mixes hide one another. */
const MIXED = 3;

type Candidate = {
  readonly doses: readonly (PlannedDose & { readonly jar: number })[];
  readonly mix: BarMix;
};

/**
 * The fewest test bars after which every jar is known well enough, and which they are: bars of one jar at real spoons, and of
 * two where mixes are allowed. For each number of bars the design is the one whose expected squared error at full dose and a quarter,
 * summed over the jars, is least (the linear criterion), found by exchange.
 */
export function planBars(ask: BarPlanAsk): BarPlan {
  const base = baseSoap(ask.shades, ask.gelled);
  const optics = ask.jars.map(({ jar }) => opticsOfJar(jar));
  const jars = optics.map(knownJar);
  const candidates = candidatesOf(ask);
  const error = axisSpread(Math.hypot(ask.reading, LEAST_STATED));
  const told = candidates.map(({ mix }) => sensitivityOf(mix, jars, { base, error }));
  const weights = jars
    .map((_, at) => usedWeights(ask, at, { jars, base }))
    .reduce((sum, one) => plus(sum, one));
  const prior = knownInformation(jars);
  const design = (runs: number, starts: number) =>
    exchangeDesign({ candidates: told, prior, runs, criterion: { by: 'A', weights }, starts });
  const most = Math.min(ask.mostBars, candidates.length);
  const stated = (jar: number, one: Optics) =>
    Math.max(
      ...USED_AT.map(share => {
        const grams = share * fullGramsOf(ask, ask.jars[jar]!);
        return predictBar([{ optics: one, grams }], base).plusMinus;
      }),
    );
  const before = optics.map((one, jar) => stated(jar, one));
  const statedAfter = ({ chosen, information }: Design) =>
    chosen.length === 0 ? before : statedWith(information, jars, stated);
  const found = fewest(design, {
    most,
    isEnough: one => isWithin(ask, statedAfter(one)),
  });
  const after = statedAfter(found);
  return described(found, { ask, candidates, jars: optics, base, before, after });
}

/** To a tenth, as errors are told. */
const isWithin = ({ within }: BarPlanAsk, errors: readonly number[]): boolean =>
  errors.every(error => Math.round(error * 10) <= Math.round(within * 10));

/** The smallest design that is enough, else the one of most runs: quick ones up to the first that is, thorough ones down from it. */
function fewest(
  design: (runs: number, starts: number) => Design,
  { most, isEnough }: { readonly most: number; readonly isEnough: (one: Design) => boolean },
): Design {
  let runs = 0;
  let found = design(0, 1);
  while (runs < most && !isEnough(found)) {
    runs += 1;
    found = design(runs, 1);
  }
  const thorough = design(runs, STARTS);
  if (thorough.loss < found.loss && isEnough(thorough) === isEnough(found)) found = thorough;
  while (runs > 0) {
    const smaller = design(runs - 1, STARTS);
    if (!isEnough(smaller)) return found;
    runs -= 1;
    found = smaller;
  }
  return found;
}

function described(
  { chosen }: Design,
  found: {
    readonly ask: BarPlanAsk;
    readonly candidates: readonly Candidate[];
    readonly jars: readonly Optics[];
    readonly base: BaseOptics;
    readonly before: readonly number[];
    readonly after: readonly number[];
  },
): BarPlan {
  const { ask, candidates, jars, base, before, after } = found;
  return {
    bars: chosen.map(at => {
      const { doses, mix } = candidates[at]!;
      return {
        doses: doses.map(({ id, teaspoons, tspPerCup }) => ({ id, teaspoons, tspPerCup })),
        predicted: predictBar(
          mix.map(({ jar, grams }) => ({ optics: jars[jar]!, grams })),
          base,
        ),
      };
    }),
    jars: ask.jars.map(({ id }, at) => ({ id, before: before[at]!, after: after[at]! })),
    reached: isWithin(ask, after),
  };
}

/** Bars of one jar, jar by jar and weakest first, then of every two jars that fit one bar together. */
function candidatesOf({ jars, portion, owned, mixes }: BarPlanAsk): readonly Candidate[] {
  const single = jars.map((jar, at) => dosesOf(jar, { portion, owned }).map(dose => ({ ...dose, jar: at })));
  const grams = ({ jar, teaspoons }: Candidate['doses'][number]) =>
    (100 * teaspoons * jars[jar]!.gramsPerTeaspoon) / portion.grams;
  const bar = (doses: Candidate['doses']): Candidate => ({
    doses,
    mix: doses.map(dose => ({ jar: dose.jar, grams: grams(dose) })),
  });
  const fullness = (doses: Candidate['doses']) =>
    doses.reduce((sum, { jar, tspPerCup }) => sum + tspPerCup / jars[jar]!.ceilingTspPerCup, 0);
  const pairs = single.flatMap((ones, at) =>
    single
      .slice(at + 1)
      .flatMap(others =>
        ones.slice(0, MIXED).flatMap(one => others.slice(0, MIXED).map(other => [one, other])),
      ),
  );
  return [
    ...single.flatMap(doses => doses.map(dose => bar([dose]))),
    ...(mixes ? pairs.filter(doses => fullness(doses) <= FULLEST).map(bar) : []),
  ];
}

/** The real spoons nearest the usual strengths in one test bar, each once, weakest first. */
function dosesOf(
  { id, fullTspPerCup, ceilingTspPerCup }: PlannedJar,
  { portion: { cups }, owned }: Pick<BarPlanAsk, 'portion' | 'owned'>,
): readonly PlannedDose[] {
  const spoons = spoonDoses(ceilingTspPerCup * cups, owned).filter(teaspoons => teaspoons > 0);
  const near = SHARES.map(share => nearest(spoons, share * fullTspPerCup * cups));
  return [...new Set(near)]
    .filter(teaspoons => teaspoons !== undefined)
    .map(teaspoons => ({ id, teaspoons, tspPerCup: teaspoons / cups }));
}

const nearest = (values: readonly number[], wanted: number): number | undefined =>
  values.toSorted((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted))[0];

const fullGramsOf = ({ portion }: BarPlanAsk, { fullTspPerCup, gramsPerTeaspoon }: PlannedJar): number =>
  (100 * fullTspPerCup * portion.cups * gramsPerTeaspoon) / portion.grams;

/** The squared error of one jar's colour at the strengths it is used at, as weights on the covariance of all scales. */
function usedWeights(
  ask: BarPlanAsk,
  jar: number,
  { jars, base }: { readonly jars: readonly KnownJar[]; readonly base: BaseOptics },
): SquareMatrix {
  return USED_AT.map(share => {
    const mix = [{ jar, grams: share * fullGramsOf(ask, ask.jars[jar]!) }];
    return informationOf(sensitivityOf(mix, jars, { base, error: 1 }), PARAMETERS * jars.length);
  }).reduce((sum, one) => plus(sum, one));
}

/** What is believed of a jar before the bars: what bars told, else as of any jar of its kind. */
const knownJar = (optics: Optics): KnownJar =>
  optics.belief
    ? { kind: optics.belief.kind, belief: optics.belief }
    : { kind: optics, belief: { parameters: AS_ITS_KIND, covariance: independent(USUAL_SPREAD) } };

/** What is stated of each jar once so much is known, the jar being as it was believed. */
function statedWith(
  information: SquareMatrix,
  jars: readonly KnownJar[],
  stated: (jar: number, optics: Optics) => number,
): readonly number[] {
  const covariance = inverseOf(information);
  if (!covariance) return jars.map(() => Number.POSITIVE_INFINITY);
  const { size, values } = covariance;
  return jars.map(({ kind, belief }, jar) => {
    const own = Array.from({ length: PARAMETERS }, (_, row) =>
      Array.from(
        { length: PARAMETERS },
        (__, column) => values[(PARAMETERS * jar + row) * size + PARAMETERS * jar + column]!,
      ),
    );
    return stated(jar, believedOptics(kind, { parameters: belief.parameters, covariance: own }));
  });
}
