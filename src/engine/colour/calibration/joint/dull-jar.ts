import type { Optics } from '../../mixing/optics.ts';
import { BAND_COUNT } from '../../spectra/spectrum.ts';
import { dustOf } from './jar-model.ts';
import { DUST, type JarBelief, type JarParameters, USUAL_SPREAD } from './jar-parameters.ts';

/**
 * K of the grey in a full dose of a dull jar: an eighth of what black oxide has at its full dose. The same amount of dirt
 * shows the more, the less colour there is in the kind. From memory, with the spread: so that on invented makers of the market
 * for fitting 95 in 100 very dusty jars of every kind are held; what is held elsewhere, tests/engine/colour/calibration/joint/stated-error.test.ts
 * judges by makers of another market.
 */
const DULL_GREY = 1.8;
/** Nor more than so many times the mean K that the eye sees of its own: what is mostly dirt nobody sells as that colour, least of all a white. From memory. */
const MOST_GREY = 2;
/** How unlike dull jars are, in units of the dust (one standard deviation). From memory. */
const DULL_SPREAD = 0.6;

/** A jar as it would be were it one of the dull ones, and by how much bars bear that out rather than a usual one: 1 where they said nothing. */
export type IfDull = { readonly belief: JarBelief; readonly odds: number };

/** Below this band (420 nm) white absorbs as no eye sees it. */
const SEEN_FROM = 4;

/** The dust of a dull jar of a kind. */
function dullDust({ full, k }: Optics): number {
  const mean = k.reduce((sum, value) => sum + value, 0) / BAND_COUNT;
  const seen = k.slice(SEEN_FROM).reduce((sum, value) => sum + value, 0) / (BAND_COUNT - SEEN_FROM);
  return dustOf(Math.min(DULL_GREY / full, MOST_GREY * seen) / mean);
}

/**
 * What is believed of a jar is about the usual one; some are dull, and no spread about the usual one holds these. So both are
 * kept: this is the belief under the other prior of the dust, and the odds that bars gave it over the usual prior (Bayes
 * factor). In closed form, as the change of one factor of a normal density.
 */
export function ifDull(kind: Optics, { parameters, covariance }: JarBelief): IfDull {
  const usual = USUAL_SPREAD[DUST];
  const dull = dullDust(kind);
  const now = covariance[DUST]![DUST]!;
  const at = parameters[DUST];
  const precision = 1 / now - 1 / usual ** 2 + 1 / DULL_SPREAD ** 2;
  const middle = (at / now + dull / DULL_SPREAD ** 2) / precision;
  const along = covariance.map(row => row[DUST]! / now);
  const less = now - 1 / precision;
  // The integral of the belief times the ratio of the two priors.
  const exponent = precision * middle ** 2 - at ** 2 / now - (dull / DULL_SPREAD) ** 2;
  const odds = (usual / DULL_SPREAD) * Math.sqrt(1 / (precision * now)) * Math.exp(exponent / 2);
  return {
    belief: {
      parameters: parameters.map(
        (value, which) => value + along[which]! * (middle - at),
      ) as unknown as JarParameters,
      covariance: covariance.map((row, one) =>
        row.map((value, other) => value - along[one]! * along[other]! * less),
      ),
    },
    odds,
  };
}
