import type { Evidence } from './diagnosis.ts';
import type { FindingId } from './findings.ts';

/** How often a bar that somebody asks about has a given flaw that a picture shows. Estimate. */
const USUAL_SHARE = 0.15;
/** A picture is never surer than this. */
const MOST = 0.98;

/**
 * What a reading of a photo is worth as evidence. `confidence`, 0.5 to 1, is the chance that the flaw is there once it
 * was seen; as evidence only what the picture added to the usual share counts (the odds of the one over the other).
 */
export function photographed(finding: FindingId, confidence: number): Evidence {
  const odds = (chance: number) => chance / (1 - chance);
  const ratio = odds(Math.min(MOST, confidence)) / odds(USUAL_SHARE);
  return { finding, probability: Math.min(MOST, ratio / (1 + ratio)), via: 'photo', from: 'photo' };
}
