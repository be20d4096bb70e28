import type { Evidence } from './diagnosis.ts';
import { FINDING_IDS, FINDINGS, type FindingId } from './findings.ts';
import { informationGain, type Posterior } from './inference.ts';

/** Below this many bits a question is not worth a member's thumb. */
export const LEAST_BITS = 0.02;
/** No member is asked more than this about one flaw. */
export const MOST_QUESTIONS = 5;
/** A cause this likely needs no more questions. */
export const SURE_ENOUGH = 0.85;

/** Findings worth looking at, the most telling first, with the bits each is expected to tell. */
export function tellingFindings(
  posterior: Posterior,
  known: ReadonlySet<FindingId>,
): { finding: FindingId; bits: number }[] {
  return FINDING_IDS.filter(id => FINDINGS[id].ask && !known.has(id))
    .map(finding => ({ finding, bits: informationGain(posterior, finding) }))
    .sort((a, b) => b.bits - a.bits);
}

/** The most telling finding, or undefined when one cause is at 85 % or nothing useful is left. */
export function worthAsking(
  { causes }: Posterior,
  telling: ReturnType<typeof tellingFindings>,
): FindingId | undefined {
  if (Math.max(...Object.values(causes)) >= SURE_ENOUGH) return undefined;
  const [best] = telling;
  return best && best.bits >= LEAST_BITS ? best.finding : undefined;
}

/** A button pressed, as evidence: people misjudge, so a yes or no is nearly but not quite certain. */
export function answered(finding: FindingId, there: boolean): Evidence {
  return { finding, probability: there ? 0.93 : 0.07, via: 'answer', from: 'answer' };
}
