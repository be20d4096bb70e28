import { Refusal } from '../refusal.ts';
import { hurt } from './danger.ts';
import { FINDINGS, type FindingGroup, type FindingId } from './findings.ts';
import { refuseMetalPowder } from './reading/metal-powder.ts';
import { readWords } from './reading/read.ts';

/** Groups whose findings show a flaw; what was done and when only tells causes apart. */
const SIGNS: ReadonlySet<FindingGroup> = new Set(['seen', 'felt', 'batter', 'named']);

/** Whether a finding shows a flaw: something that a maker complains of. */
export const isSign = (finding: FindingId): boolean => SIGNS.has(FINDINGS[finding].group);

/**
 * How many signs of a flaw a text tells, whether as there or as missing; nothing is weighed, so it is quick. A metal powder that
 * was put into soap is one, whatever else is told.
 */
export function signsIn(words: string): number {
  const { evidence } = readWords(words);
  try {
    refuseMetalPowder(words, hurt(evidence, words));
  } catch (refusal) {
    if (refusal instanceof Refusal) return 1;
    throw refusal;
  }
  return evidence.filter(({ finding }) => isSign(finding)).length;
}
