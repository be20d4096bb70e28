import type { Lab } from '../spectra/cielab.ts';

/** A cured test bar of one jar. */
export type TestBar = {
  /** Of the colourant, per 100 g of batter; 0 for a plain bar, which corrects the base. */
  readonly grams: number;
  readonly lab: Lab;
  /** Of the reading, CIEDE2000: about 3 for a hex typed by eye, 2 to 4 with a card, 4 to 8 with white paper. */
  readonly plusMinus: number;
};

/** How what is known explains one bar. */
export type BarFit = {
  readonly grams: number;
  readonly measured: Lab;
  readonly predicted: Lab;
  readonly predictedHex: string;
  readonly deltaE: number;
};

/** A natural logarithm that is believed to lie about `ln`, give or take `spread` (one standard deviation). */
export type Belief = { readonly ln: number; readonly spread: number };

/** What is believed of a jar's K and S beside the kind's: the logarithms of their scales. */
export type ScaleBelief = { readonly k: Belief; readonly s: Belief };
