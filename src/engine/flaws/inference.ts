import { CAUSE_IDS, type CauseId } from './cause.ts';
import { prior } from './causes.ts';
import type { Evidence, Weight } from './diagnosis.ts';
import { FINDINGS, type FindingId } from './findings.ts';
import { LEVEL, type Level } from './levels.ts';
import { LIKELIHOODS } from './likelihoods.ts';

/** None (-1), one or two causes at once, by their place in {@link CAUSE_IDS}. */
type Hypothesis = readonly [first: number, second: number];

/** The chance of every hypothesis and, summed from them, of every cause. */
export type Posterior = {
  readonly hypotheses: Float64Array;
  readonly causes: Readonly<Record<CauseId, number>>;
  /** The chance that none of the known causes is at work. */
  readonly unknown: number;
};

/** What it turned out to be, counted per cause: shifts the priors, by at most {@link MOST_COUNTED} each. */
export type TurnedOut = { readonly [Id in CauseId]?: number };

/** The most cases of one cause that count. */
export const MOST_COUNTED = 20;
/** How many made-up cases the priors are worth beside real ones. */
const PRIOR_WORTH = 100;
/** The share left for what is not among the causes. From memory. */
const UNKNOWN = 0.1;

const COUNT = CAUSE_IDS.length;

/**
 * One story under two names: heat and water part the soap into two textures, told as crackle where white pigment shows
 * it and as rivers where none does. Never both at once, so their chances share one whole.
 */
const ONE_STORY: ReadonlySet<CauseId> = new Set(['white-pigment-crackle', 'glycerin-rivers']);

const HYPOTHESES: readonly Hypothesis[] = [
  [-1, -1],
  ...CAUSE_IDS.map((_, i): Hypothesis => [i, -1]),
  ...CAUSE_IDS.flatMap((first, i) =>
    CAUSE_IDS.slice(i + 1).flatMap((second, k): Hypothesis[] =>
      ONE_STORY.has(first) && ONE_STORY.has(second) ? [] : [[i, i + 1 + k]],
    ),
  ),
];

/** Chance that each cause alone brings the finding about, by place in {@link CAUSE_IDS}. */
const strengths = new Map<FindingId, Float64Array>();
CAUSE_IDS.forEach((cause, at) => {
  for (const [level, findings] of Object.entries(LIKELIHOODS[cause]) as [Level, readonly FindingId[]][])
    for (const finding of findings) {
      const row = strengths.get(finding) ?? new Float64Array(COUNT);
      row[at] = LEVEL[level];
      strengths.set(finding, row);
    }
});
const NO_CAUSE = new Float64Array(COUNT);

/**
 * Chance, 0 to 1, that the finding is there under each hypothesis, by noisy-OR with a leak
 * (Pearl 1988, Probabilistic Reasoning in Intelligent Systems, section 4.3).
 */
function presence(finding: FindingId): Float64Array {
  const kept = presences.get(finding);
  if (kept) return kept;
  const row = strengths.get(finding) ?? NO_CAUSE;
  const quiet = 1 - LEVEL[FINDINGS[finding].leak];
  const all = Float64Array.from(
    HYPOTHESES,
    ([a, b]) => 1 - quiet * (1 - (row[a] ?? 0)) * (1 - (row[b] ?? 0)),
  );
  presences.set(finding, all);
  return all;
}
const presences = new Map<FindingId, Float64Array>();

function priors(turnedOut: TurnedOut): Float64Array {
  const counts = CAUSE_IDS.map(id => Math.min(MOST_COUNTED, Math.max(0, turnedOut[id] ?? 0)));
  const total = counts.reduce((sum, count) => sum + count, 0);
  const each = CAUSE_IDS.map((id, i) => (prior(id) * PRIOR_WORTH + counts[i]!) / (PRIOR_WORTH + total));
  const odds = each.map(p => p / (1 - p));
  return normalised(
    Float64Array.from(HYPOTHESES, ([a, b]) => (a < 0 ? UNKNOWN : odds[a]! * (b < 0 ? 1 : odds[b]!))),
  );
}

function normalised(weights: Float64Array): Float64Array {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map(weight => weight / sum);
}

/** How likely the witness's report is under each hypothesis (virtual evidence, Pearl 1988, section 2.2.2). */
function report(evidence: Evidence): Float64Array {
  const p = evidence.probability;
  return presence(evidence.finding).map(there => p * there + (1 - p) * (1 - there));
}

function summed(hypotheses: Float64Array): Posterior {
  const sums = new Float64Array(COUNT);
  HYPOTHESES.forEach(([a, b], h) => {
    if (a >= 0) sums[a]! += hypotheses[h]!;
    if (b >= 0) sums[b]! += hypotheses[h]!;
  });
  const causes = Object.fromEntries(CAUSE_IDS.map((id, i) => [id, Math.min(1, sums[i]!)])) as Record<
    CauseId,
    number
  >;
  return { hypotheses, causes, unknown: hypotheses[0]! };
}

/** The chance that at least one of the causes is at work. */
export function chanceOfAny({ hypotheses }: Posterior, ids: readonly CauseId[]): number {
  const places = new Set(ids.map(id => CAUSE_IDS.indexOf(id)));
  return HYPOTHESES.reduce(
    (sum, [a, b], h) => (places.has(a) || places.has(b) ? sum + hypotheses[h]! : sum),
    0,
  );
}

/** The chance that both causes are at work together. */
export function chanceOfBoth({ hypotheses }: Posterior, one: CauseId, other: CauseId): number {
  const [low, high] = [CAUSE_IDS.indexOf(one), CAUSE_IDS.indexOf(other)].sort((a, b) => a - b);
  return hypotheses[HYPOTHESES.findIndex(([a, b]) => a === low && b === high)] ?? 0;
}

/** What bears on the causes beside findings. */
export type Leanings = {
  readonly turnedOut?: TurnedOut;
  /** Natural log of a likelihood ratio for each cause, by place in {@link CAUSE_IDS}. */
  readonly wording?: Float64Array;
};

/** Two causes at once are told in a mixture of their wordings. */
function worded([a, b]: Hypothesis, wording: Float64Array | undefined): number {
  if (a < 0 || wording === undefined) return 0;
  return b < 0 ? wording[a]! : Math.log((Math.exp(wording[a]!) + Math.exp(wording[b]!)) / 2);
}

/** Bayes' rule over every single cause and every pair, exactly. Probabilities out of 1. */
export function infer(evidence: readonly Evidence[], { turnedOut = {}, wording }: Leanings = {}): Posterior {
  const logs = priors(turnedOut).map((weight, h) => Math.log(weight) + worded(HYPOTHESES[h]!, wording));
  for (const item of evidence) {
    const likelihood = report(item);
    for (let h = 0; h < logs.length; h += 1) logs[h]! += Math.log(likelihood[h]!);
  }
  const highest = logs.reduce((most, log) => Math.max(most, log), -Infinity);
  return summed(normalised(logs.map(log => Math.exp(log - highest))));
}

/**
 * The chances where the evidence itself may have been misunderstood: `share`, 0 to 1, of what it says and the rest of
 * what was believed without it (a mixture of two witnesses).
 */
export function hedged(posterior: Posterior, share: number, turnedOut: TurnedOut = {}): Posterior {
  const before = priors(turnedOut);
  return summed(posterior.hypotheses.map((p, h) => share * p + (1 - share) * before[h]!));
}

/** Bits of doubt about a yes or no whose chance is `p`: the binary entropy (Shannon 1948). */
const doubt = (p: number): number => (p > 0 && p < 1 ? -p * Math.log2(p) - (1 - p) * Math.log2(1 - p) : 0);

/** The doubt about a finding that is left under each hypothesis. */
function doubtLeft(finding: FindingId): Float64Array {
  const kept = doubts.get(finding) ?? presence(finding).map(doubt);
  doubts.set(finding, kept);
  return kept;
}
const doubts = new Map<FindingId, Float64Array>();

/**
 * Bits, on average, that a plain yes or no about the finding would tell about the hypotheses (Lindley 1956): the doubt about the
 * answer now, less what is left of it once the hypothesis is known (mutual information is symmetric).
 */
export function informationGain({ hypotheses }: Posterior, finding: FindingId): number {
  const likelihood = presence(finding);
  const left = doubtLeft(finding);
  let [chance, rest] = [0, 0];
  for (let h = 0; h < hypotheses.length; h += 1) {
    chance += hypotheses[h]! * likelihood[h]!;
    rest += hypotheses[h]! * left[h]!;
  }
  return doubt(chance) - rest;
}

/** How much one report moved one cause against the other causes taken together: natural log of the ratio. */
export function weigh(evidence: Evidence, cause: CauseId): Weight {
  const likelihood = report(evidence);
  const own = CAUSE_IDS.indexOf(cause);
  let rest = 0;
  let mass = 0;
  CAUSE_IDS.forEach((id, i) => {
    if (i === own) return;
    rest += prior(id) * likelihood[i + 1]!;
    mass += prior(id);
  });
  return {
    finding: evidence.finding,
    via: evidence.via,
    weight: Math.log(likelihood[own + 1]! / (rest / mass)),
  };
}
