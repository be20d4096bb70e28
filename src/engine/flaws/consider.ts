import type { BatchNumbers } from './batch-numbers.ts';
import type { Evidence } from './diagnosis.ts';
import type { FindingId } from './findings.ts';
import { hedged, infer, type Posterior, type TurnedOut } from './inference.ts';
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
  /** "Do not use it" was said before the last answer. */
  readonly warned?: boolean;
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
 * Chosen on writers who were left out of the counting: from 0.25 to 0.45 the right cause came first about as often, and among
 * the first three rather less often the more it counts.
 */
export const WORDING_SHARE = 0.25;

/** Counted over the examples and what makers told; `tests/engine/flaws/wording.test.ts` says how to write it anew. */
const wordings = readWording(writtenWording);

/** One word that says it all may have meant something else: it is believed this far. Chosen, below 70 %. */
export const ONE_WORD = 0.67;

/** Whether everything that speaks for a flaw hangs on one word, and no picture, answer or plan joins it. */
function oneWord(evidence: readonly Evidence[]): boolean {
  const there = evidence.filter(item => item.probability > 0.5);
  const quoted = there.flatMap(({ from }) => from.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []);
  return there.length > 0 && there.every(({ via }) => via === 'words') && new Set(quoted).size === 1;
}

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
  const told = infer(evidence, {
    wording,
    ...(known.turnedOut === undefined ? {} : { turnedOut: known.turnedOut }),
  });
  const posterior = oneWord(evidence) ? hedged(told, ONE_WORD, known.turnedOut) : told;
  const batch = { ...known.batch, rates: [...read.rates, ...(known.batch?.rates ?? [])] };
  return { evidence, posterior, wording, batch, cut: read.cut };
}
