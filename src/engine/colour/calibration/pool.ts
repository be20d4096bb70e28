import type { Belief, ScaleBelief } from './test-bar.ts';

/**
 * What the calibrations of one product by several members say of the next member's jar: a random-effects pool on each
 * scale. Jars differ by `between` (R. DerSimonian and N. Laird, Controlled Clinical Trials 7 (1986) 177-188); the
 * common mean is shrunk toward the kind's own prior; the next jar is uncertain by the mean's error and by `between`.
 * @param evidence of each member: what their bars say without any prior
 * @param kind what is believed of the kind before anybody calibrated
 */
export function poolCalibrations(evidence: readonly ScaleBelief[], kind: ScaleBelief): ScaleBelief {
  return {
    k: pooled(
      evidence.map(({ k }) => k),
      kind.k,
    ),
    s: pooled(
      evidence.map(({ s }) => s),
      kind.s,
    ),
  };
}

/** Two lots of one product differ by a tenth at least (common practice). */
const LEAST_BETWEEN = 0.1;

function pooled(found: readonly Belief[], kind: Belief): Belief {
  if (found.length === 0) return kind;
  const between = Math.max(varianceBetween(found), LEAST_BETWEEN ** 2);
  const weights = found.map(({ spread }) => 1 / (spread ** 2 + between));
  const kindWeight = kind.spread ** -2;
  const total = weights.reduce((sum, weight) => sum + weight, kindWeight);
  const mean = found.reduce((sum, { ln }, at) => sum + weights[at]! * ln, kindWeight * kind.ln) / total;
  return { ln: mean, spread: Math.min(Math.sqrt(1 / total + between), kind.spread) };
}

/** DerSimonian and Laird's moment estimate, 0 at least. */
function varianceBetween(found: readonly Belief[]): number {
  const weights = found.map(({ spread }) => spread ** -2);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = found.reduce((sum, { ln }, at) => sum + weights[at]! * ln, 0) / total;
  const scatter = found.reduce((sum, { ln }, at) => sum + weights[at]! * (ln - mean) ** 2, 0);
  const scale = total - weights.reduce((sum, weight) => sum + weight ** 2, 0) / total;
  return scale > 0 ? Math.max(0, (scatter - (found.length - 1)) / scale) : 0;
}
