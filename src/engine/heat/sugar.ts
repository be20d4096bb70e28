import type { Band, Origin } from '../origin.ts';

/**
 * Heat that sugars give off in lye, kJ a gram of sugar. Reducing sugars break down to acids that take up lye: for two
 * molecules of lactic acid from one of glucose about -140 kJ/mol, and twice -55.8 for neutralising them, 1.4 kJ/g in
 * all; in soap only part of the sugar goes that way.
 */
export const SUGAR_HEAT: Band & { readonly origin: Origin } = {
  low: 0.1,
  typical: 0.4,
  high: 1.4,
  origin: {
    trust: 'from memory',
    source:
      'alkaline degradation of glucose: standard enthalpies of formation and of neutralisation; the share that reacts in soap is an estimate',
  },
};

/** How many times as fast batter reacts, from a little sugar (a teaspoon a pound) to a lot (estimate). */
const FELT_PERCENT = 0.5;
const FELT_SPEED = 0.3;
const MORE_PERCENT = 10;
const MORE_SPEED = 0.3;

/** The speed of batter with that much sugar in percent of the oils: 1 without, never slower with more (common practice, numbers estimated). */
export function sugarSpeed(percent: number): number {
  const felt = Math.min(1, percent / FELT_PERCENT);
  const more = Math.min(1, percent / MORE_PERCENT);
  return 1 + FELT_SPEED * felt + MORE_SPEED * more;
}
