import {
  informationOf,
  inverseOf,
  logDeterminant,
  plus,
  type SquareMatrix,
  traceOfProduct,
} from './information-matrix.ts';
import { type Criterion, lossWith, type Run, runOf } from './run-gain.ts';

export type DesignAsk = {
  /** What each run that may be made would tell: a row for each number read off it, in units of its error, a column an unknown. */
  readonly candidates: readonly (readonly (readonly number[])[])[];
  /** What is known before any run; positive definite. */
  readonly prior: SquareMatrix;
  readonly runs: number;
  readonly criterion: Criterion;
  /** How often one candidate may be taken: 1 unless said. */
  readonly repeats?: number;
  /** Different beginnings that are tried: 12 unless said. */
  readonly starts?: number;
};

/** Places in the list of candidates, rising, and what all of them tell with the prior. */
export type Design = {
  readonly chosen: readonly number[];
  readonly information: SquareMatrix;
  /** The criterion as a loss: less is better. */
  readonly loss: number;
};

const BETTER = 1e-9;

/**
 * The best design of so many runs that exchange finds: from several beginnings, half of them filled up run by run with what
 * helps most and half scattered, runs are exchanged one after another for the best candidate in their place until none is better (the exchange of
 * V. V. Fedorov, Theory of Optimal Experiments, 1972, as modified by R. D. Cook and C. J. Nachtsheim, Technometrics 22
 * (1980) 315-324). Throws RangeError when there are fewer candidates than runs.
 */
export function exchangeDesign(ask: DesignAsk): Design {
  const { candidates, runs, repeats = 1, starts = 12 } = ask;
  if (runs > candidates.length * repeats) throw new RangeError('fewer candidates than runs');
  const search: Search = { ...ask, repeats, tells: candidates.map(runOf) };
  if (runs === 0) return settled([], search);
  // What helps most from run to run may lie where no single exchange leads out: half of the beginnings are scattered.
  const greedy = Math.min(Math.ceil(starts / 2), candidates.length);
  let best: Design | undefined;
  for (let start = 0; start < starts; start++) {
    const first = Math.floor((start * candidates.length) / greedy);
    const begun = start < greedy ? filled([first], search) : settled(scattered(start, search), search);
    const design = exchanged(begun, search);
    if (!best || design.loss < best.loss - BETTER) best = design;
  }
  return best!;
}

type Search = DesignAsk & { readonly repeats: number; readonly tells: readonly Run[] };

/** The loss of an information matrix; Infinity where it leaves something wholly unknown. */
export function lossOf(information: SquareMatrix, criterion: Criterion): number {
  if (criterion.by === 'D') return -logDeterminant(information);
  const covariance = inverseOf(information);
  return covariance ? traceOfProduct(criterion.weights, covariance) : Number.POSITIVE_INFINITY;
}

function settled(chosen: readonly number[], { candidates, prior, criterion }: DesignAsk): Design {
  const information = chosen.reduce(
    (sum, at) => plus(sum, informationOf(candidates[at]!, prior.size)),
    prior,
  );
  return { chosen: chosen.toSorted((a, b) => a - b), information, loss: lossOf(information, criterion) };
}

/** The candidate that helps most beside those chosen, and what is lost with it; undefined where none may be taken. */
function mostHelpful(
  chosen: readonly number[],
  information: SquareMatrix,
  { tells, criterion, repeats }: Search,
): { readonly at: number; readonly loss: number } | undefined {
  const loss = lossWith(information, criterion);
  let best: { readonly at: number; readonly loss: number } | undefined;
  tells.forEach((run, at) => {
    if (chosen.filter(one => one === at).length >= repeats) return;
    const lost = loss?.(run) ?? Number.POSITIVE_INFINITY;
    if (!best || lost < best.loss) best = { at, loss: lost };
  });
  return best;
}

/**
 * Runs without any pattern, the same for the same beginning, none more often than it may be. The congruential generator of
 * W. H. Press and others, Numerical Recipes (1992), section 7.1.
 */
function scattered(start: number, { candidates, runs, repeats }: Search): readonly number[] {
  const pool = candidates.flatMap((_, at) => new Array<number>(repeats).fill(at));
  let state = start;
  for (let at = 0; at < runs; at++) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    const other = at + Math.floor((state / 2 ** 32) * (pool.length - at));
    [pool[at], pool[other]] = [pool[other]!, pool[at]!];
  }
  return pool.slice(0, runs);
}

/** Adds the candidate that helps most until the design is full. */
function filled(begun: readonly number[], search: Search): Design {
  let design = settled(begun, search);
  while (design.chosen.length < search.runs) {
    const best = mostHelpful(design.chosen, design.information, search);
    if (!best) break;
    design = settled([...design.chosen, best.at], search);
  }
  return design;
}

/** Exchanges one run after another for the best there is in its place, until a round changes none. */
function exchanged(begun: Design, search: Search): Design {
  let design = begun;
  for (let since = 0, place = 0; since < design.chosen.length; since++, place++) {
    const rest = design.chosen.toSpliced(place % design.chosen.length, 1);
    const into = mostHelpful(rest, settled(rest, search).information, search);
    if (!into || !(into.loss < design.loss - BETTER)) continue;
    const next = settled([...rest, into.at], search);
    if (!(next.loss < design.loss)) continue;
    design = next;
    since = -1;
  }
  return design;
}
