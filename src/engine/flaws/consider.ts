import type { BatchNumbers } from './batch-numbers.ts';
import type { Evidence } from './diagnosis.ts';
import type { FindingId } from './findings.ts';
import { infer, type Posterior, type TurnedOut } from './inference.ts';
import { readWords } from './reading/read.ts';
import writtenWording from './reading/wording.json' with { type: 'json' };
import { likeness, readWording } from './reading/wording.ts';

/** What is known beside the words: measured in a picture, answered to a question, learned by the group. */
export type Known = {
  readonly evidence?: readonly Evidence[];
  /** Findings the member took back ("that's not it"). */
  readonly withdrawn?: readonly FindingId[];
  /** Asked and answered "I don't know": not asked again. */
  readonly unanswered?: readonly FindingId[];
  readonly turnedOut?: TurnedOut;
  /** Numbers of the batch beside those in the words. */
  readonly batch?: BatchNumbers;
};

/** Everything that bears on one flaw, weighed. */
export type Considered = {
  readonly evidence: readonly Evidence[];
  readonly posterior: Posterior;
  /** Natural log, by place in `CAUSE_IDS`: how the wording leans. */
  readonly wording: Float64Array;
  readonly batch: BatchNumbers;
  readonly cut: boolean;
};

/**
 * The words' logarithms of likelihood count for this share: they overlap with the findings read from the same words.
 * In ten-fold cross-validation over the examples, shares from 0.10 to 0.20 were alike (0.10 best by a hair).
 */
export const WORDING_SHARE = 0.15;

/** Counted over the examples; `tests/engine/flaws/wording.test.ts` says how to write it anew. */
const wordings = readWording(writtenWording);

/** Reads the words, joins what else is known, and weighs it all by Bayes' rule. */
export function consider(words: string, known: Known = {}): Considered {
  const read = readWords(words);
  const withdrawn = new Set(known.withdrawn);
  // A quote that was misread was misread whole, and its wording leans nowhere.
  const misread = read.evidence.filter(item => withdrawn.has(item.finding)).map(item => item.from);
  const evidence = [
    ...read.evidence.filter(item => !misread.includes(item.from)),
    ...(known.evidence ?? []).filter(item => !withdrawn.has(item.finding)),
  ];
  const share = misread.length > 0 ? 0 : WORDING_SHARE;
  const wording = likeness(read.gist, wordings).map(log => log * share);
  const posterior = infer(evidence, {
    wording,
    ...(known.turnedOut === undefined ? {} : { turnedOut: known.turnedOut }),
  });
  const batch = { ...known.batch, rates: [...read.rates, ...(known.batch?.rates ?? [])] };
  return { evidence, posterior, wording, batch, cut: read.cut };
}
