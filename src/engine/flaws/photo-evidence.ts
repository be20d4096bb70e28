import type { Evidence } from './diagnosis.ts';
import type { FindingId } from './findings.ts';

/**
 * A picture never speaks louder than this. A plain "no" of the maker leaves the odds of a finding at 1 to 9 (see
 * `denied` in findings.ts), a plain "yes" at 49 to 1: 8 outweighs neither.
 */
export const MOST_RATIO = 8;

/**
 * What a reading of a photo is worth as evidence. `ratio` is how much oftener the reading answers so where the finding
 * is than where it is not, measured on bars drawn in a way that it had not been trained on. Virtual evidence (Pearl
 * 1988, section 2.2.2) of that likelihood ratio, not over {@link MOST_RATIO}. A finding that is not seen is no evidence:
 * the picture shows one face of the bar.
 */
export function photographed(finding: FindingId, ratio: number): Evidence {
  const bounded = Math.min(MOST_RATIO, ratio);
  return { finding, probability: bounded / (1 + bounded), via: 'photo', from: 'photo' };
}
