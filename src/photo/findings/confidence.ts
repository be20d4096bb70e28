import type { PhotoFinding, PhotoQuality } from '../reading.ts';
import type { Found } from './sight.ts';

/** Below this a sight is not told: a guess helps nobody. */
export const LEAST_CONFIDENCE = 0.5;
/** A reading is never surer than this: a photo is not the bar. */
const MOST_CONFIDENCE = 0.97;
/** Resolution (pixels along the bar) and noise (L*) at which half the trust is gone; chosen on rendered bars. */
const HALF_RESOLUTION = 130;
const HALF_NOISE = 7;

/**
 * Weighs what was found by how good the picture is. Blur counts against the size of the thing: specks go first, rings
 * last. Sure, clear findings first.
 */
export function weighed(found: readonly Found[], quality: PhotoQuality): PhotoFinding[] {
  return found
    .map(({ clarity, size, ...finding }) => ({
      ...finding,
      confidence: Math.min(MOST_CONFIDENCE, clarity * trust(quality, size)),
    }))
    .filter(({ confidence }) => confidence >= LEAST_CONFIDENCE)
    .toSorted((one, other) => other.confidence - one.confidence);
}

function trust({ blur, noise, glare, resolution }: PhotoQuality, size: number): number {
  const blurred = (blur * resolution) / (2 * size + 2);
  return (
    (1 / (1 + blurred ** 4)) *
    (1 / (1 + (noise / HALF_NOISE) ** 2)) *
    (1 / (1 + (HALF_RESOLUTION / resolution) ** 3)) *
    Math.max(0, 1 - 2.5 * glare)
  );
}
