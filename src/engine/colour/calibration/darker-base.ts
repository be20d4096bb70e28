import { barLab } from '../mixing/bar.ts';
import type { BaseOptics } from '../mixing/optics.ts';
import { colourDifference } from '../spectra/cielab.ts';
import { mapSpectrum } from '../spectra/spectrum.ts';
import type { TestBar } from './test-bar.ts';

/** A maker's soap is taken to be within six times of its usual colour, as a natural logarithm. */
const MOST = Math.log(6);
const STEPS = 80;

/**
 * How much darker a maker's soap is than its kind, as a natural logarithm of a factor on its K: what comes nearest to the plain
 * bars, as far as one factor can, with 0 believed before give or take 1. 0 without plain bars.
 */
export function darkerBy(base: BaseOptics, bars: readonly TestBar[]): number {
  const plain = bars.filter(({ grams }) => grams === 0);
  if (plain.length === 0) return 0;
  const cost = (darker: number) => {
    const lab = barLab([], darkened(base, darker));
    const misfit = plain.reduce((sum, bar) => sum + (colourDifference(lab, bar.lab) / bar.plusMinus) ** 2, 0);
    return misfit + darker * darker;
  };
  const tries = Array.from({ length: STEPS + 1 }, (_, step) => ((2 * step) / STEPS - 1) * MOST);
  return tries
    .map(darker => ({ darker, cost: cost(darker) }))
    .reduce((least, one) => (one.cost < least.cost ? one : least)).darker;
}

/** The base with its K times e to the `darker`. */
export const darkened = (base: BaseOptics, darker = 0): BaseOptics =>
  darker === 0 ? base : { ...base, k: mapSpectrum(base.k, value => value * Math.exp(darker)) };
