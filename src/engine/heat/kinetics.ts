import type { Band, Origin } from '../origin.ts';
import { spaced } from '../over-lines.ts';

/**
 * How fast batter saponifies. Soap helps lye and oil to meet, so the rate grows with what has reacted already:
 * d(converted)/dt = rate(T) x converted x (1 - converted), an S-curve with Arrhenius' dependence on temperature.
 */
export type Kinetics = {
  /** At 40 C, per hour. */
  readonly rateAt40C: Band;
  /** kJ/mol. */
  readonly activation: number;
  /** What has reacted when the batter is poured at trace, 0 to 1. */
  readonly convertedAtPour: number;
  readonly origin: Origin;
};

export const SAPONIFICATION: Kinetics = {
  rateAt40C: { low: 0.7, typical: 1.2, high: 2 },
  activation: 50,
  convertedAtPour: 0.1,
  origin: {
    trust: 'from memory',
    source: spaced`
      activation energy of alkaline ester hydrolysis, 45 to 55 kJ/mol; rate set so that a wrapped loaf gels
      in one to four hours and a chilled one takes a day (common practice)
    `,
  },
};

/** Heat of saponification, kJ for each mole of hydroxide used up. */
export const SAPONIFICATION_HEAT: Band & { readonly origin: Origin } = {
  low: 52,
  typical: 65,
  high: 78,
  origin: {
    trust: 'from memory',
    source:
      'low: heats of ester hydrolysis (+3.6) and of neutralisation (-55.8 kJ/mol); high: 65 kcal per kg of tallow in soap manufacture textbooks',
  },
};

const GAS_CONSTANT = 8.314462618e-3;
const FORTY_C = 313.15;

/** Rates are looked up, not computed, in the inner loop: by half degrees from 0 to 150 C. */
const TABLE_STEP = 0.5;
const TABLE_END = 150;

/** The rate at any temperature from 0 to 150 C, per second, as a table by {@link rateFrom}. */
export function rateTable(kinetics: Kinetics, rateAt40C: number): Float64Array {
  const size = TABLE_END / TABLE_STEP + 1;
  return Float64Array.from({ length: size }, (_, at) => {
    const kelvin = at * TABLE_STEP + 273.15;
    const factor = Math.exp((-kinetics.activation / GAS_CONSTANT) * (1 / kelvin - 1 / FORTY_C));
    return (rateAt40C * factor) / 3600;
  });
}

/** The rate at a temperature, per second; the end values beyond the table. */
export function rateFrom(table: Float64Array, celsius: number): number {
  const place = celsius / TABLE_STEP;
  if (!(place > 0)) return table[0]!;
  // Cut off rather than rounded down: the same above zero, and what the inner loop has most of.
  const below = place | 0;
  if (below >= table.length - 1) return table[table.length - 1]!;
  const low = table[below]!;
  return low + (table[below + 1]! - low) * (place - below);
}

/**
 * By how much the odds of having converted grow in a step of `seconds`, at the temperatures of a {@link rateTable}: the
 * logistic curve's own solution, so no step overshoots. Look it up by {@link rateFrom}.
 */
export const growthTable = (rates: Float64Array, seconds: number): Float64Array =>
  rates.map(rate => Math.exp(rate * seconds));
