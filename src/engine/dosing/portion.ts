import { type Batter, batterFromOils, CARRIER_DENSITY } from '../dispersion/batter.ts';
import type { Portion } from '../quantities/amount.ts';
import { refuse } from '../refusal.ts';

/** 200 l: nobody colours more at home, and a slip of the finger should not be answered. */
const MOST_MILLILITRES = 200_000;

/**
 * Millilitres of batter in a portion, whichever way it was told. Throws a Refusal `amount-out-of-range` when the oils
 * given make more than 200 l of batter.
 */
export function portionMillilitres(portion: Portion, batter: Batter): number {
  const millilitres = inBatter(portion, batter);
  if (millilitres > MOST_MILLILITRES * 1.001) {
    refuse('amount-out-of-range', {
      text: { value: millilitres / 1000, unit: 'l' },
      low: { value: 1, unit: 'ml' },
      high: { value: MOST_MILLILITRES / 1000, unit: 'l' },
    });
  }
  return millilitres;
}

function inBatter(portion: Portion, batter: Batter): number {
  if (portion.of === 'oils') {
    const grams = portion.measure === 'mass' ? portion.grams : portion.millilitres * CARRIER_DENSITY.oil;
    return batterFromOils(grams, batter);
  }
  return portion.measure === 'volume' ? portion.millilitres : portion.grams / batter.gramsPerMillilitre;
}
