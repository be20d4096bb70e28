/**
 * How one jar differs from its kind. `strength` and `covering`: natural logarithms of the scales on K and S. `hue`: how far
 * K lies further along the spectrum, in tens of nanometres. `dust`: how much grey comes with it, on a scale that begins at
 * next to none, see `greyShare`.
 */
export type JarParameters = readonly [strength: number, covering: number, hue: number, dust: number];
export const PARAMETERS = 4;
export const AS_ITS_KIND: JarParameters = [0, 0, 0, 0];

/** Which of the parameters is the dust. */
export const DUST = 3;

/**
 * What is believed of a jar that nobody tried, one standard deviation each: jars sold under one name are up to twice as
 * strong as another, a shade apart in hue, some of them dull. From memory; see the tests for what it holds.
 */
export const USUAL_SPREAD: JarParameters = [0.4, 0.4, 0.9, 1.5];

/** What is believed of a jar: where, and the covariance about it in four rows of four. */
export type JarBelief = {
  readonly parameters: JarParameters;
  readonly covariance: readonly (readonly number[])[];
  /** What its bars were off beyond their readings, stated CIEDE2000: something else is in it that no parameter tells. */
  readonly unexplained?: number;
};

/** Independent standard deviations as a covariance. */
export const independent = (spread: readonly number[]): readonly (readonly number[])[] =>
  spread.map((one, at) => spread.map((_, to) => (at === to ? one * one : 0)));
