import type { Evidence } from './diagnosis.ts';
import { EXAMPLES } from './examples.ts';
import type { FindingId } from './findings.ts';
import { infer, type Posterior, type TurnedOut } from './inference.ts';
import { readWords } from './reading/read.ts';
import { learn, likeness, type Wording } from './reading/wording.ts';

/** What is known beside the words: measured in a picture, answered to a question, learned by the group. */
export type Known = {
  readonly evidence?: readonly Evidence[];
  /** Findings the member took back ("that's not it"). */
  readonly withdrawn?: readonly FindingId[];
  readonly turnedOut?: TurnedOut;
};

/** Everything that bears on one flaw, weighed. */
export type Considered = {
  readonly evidence: readonly Evidence[];
  readonly posterior: Posterior;
  /** Natural log, by place in `CAUSE_IDS`: how the wording leans. */
  readonly wording: Float64Array;
  readonly cut: boolean;
};

/**
 * The words' logarithms of likelihood count for this share: they overlap with the findings read from the same words.
 * Chosen by ten-fold cross-validation over the examples, of shares from 0 to 0.4.
 */
export const WORDING_SHARE = 0.15;

let learned: Wording | undefined;

/** Learns once, at the first description: a tenth of a second. */
function wordings(): Wording {
  learned ??= learn(EXAMPLES.map(({ text, cause }) => ({ gist: readWords(text).gist, cause })));
  return learned;
}

/** Reads the words, joins what else is known, and weighs it all by Bayes' rule. */
export function consider(words: string, known: Known = {}): Considered {
  const read = readWords(words);
  const withdrawn = new Set(known.withdrawn);
  const evidence = [...read.evidence, ...(known.evidence ?? [])].filter(item => !withdrawn.has(item.finding));
  const wording = likeness(read.gist, wordings()).map(log => log * WORDING_SHARE);
  const posterior = infer(evidence, {
    wording,
    ...(known.turnedOut === undefined ? {} : { turnedOut: known.turnedOut }),
  });
  return { evidence, posterior, wording, cut: read.cut };
}
