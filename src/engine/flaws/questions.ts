import { consider, type Known } from './consider.ts';
import type { Evidence } from './diagnosis.ts';
import { FINDING_IDS, FINDINGS, type FindingId } from './findings.ts';
import { informationGain, type Posterior } from './inference.ts';

/** Below this many bits a question is not worth a member's thumb. */
export const LEAST_BITS = 0.02;
/** No member is asked more than this about one flaw. */
export const MOST_QUESTIONS = 5;
/** A cause this likely needs no more questions. */
export const SURE_ENOUGH = 0.85;

/** What a conversation about one flaw knows so far. */
export type Inquiry = Known & {
  readonly words: string;
  /** Asked and answered "I don't know": not asked again. */
  readonly unanswered?: readonly FindingId[];
};

/** Findings worth looking at, the most telling first, with the bits each is expected to tell. */
export function tellingFindings(
  posterior: Posterior,
  known: ReadonlySet<FindingId>,
): { finding: FindingId; bits: number }[] {
  return FINDING_IDS.filter(id => FINDINGS[id].ask && !known.has(id))
    .map(finding => ({ finding, bits: informationGain(posterior, finding) }))
    .sort((a, b) => b.bits - a.bits);
}

/** The finding to ask about next, or undefined when one cause is at 85 % or nothing useful is left. */
export function nextQuestion(inquiry: Inquiry): FindingId | undefined {
  const { evidence, posterior } = consider(inquiry.words, inquiry);
  if (Math.max(...Object.values(posterior.causes)) >= SURE_ENOUGH) return undefined;
  const settled = [
    ...evidence.map(item => item.finding),
    ...(inquiry.unanswered ?? []),
    ...(inquiry.withdrawn ?? []),
  ];
  const best = tellingFindings(posterior, new Set(settled))[0];
  return best && best.bits >= LEAST_BITS ? best.finding : undefined;
}

/** A button pressed, as evidence: people misjudge, so a yes or no is nearly but not quite certain. */
export function answered(finding: FindingId, there: boolean): Evidence {
  return { finding, probability: there ? 0.93 : 0.07, via: 'answer', from: 'answer' };
}
