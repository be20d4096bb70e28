import type { Origin } from '../origin.ts';
import type { Spoon } from './spoons.ts';

/** Millilitres in one level US customary teaspoon: 231 cubic inches a gallon, 768 teaspoons a gallon, exact. */
export const US_TEASPOON_ML = 4.92892159375;
/** Millilitres in one US customary cup: 48 teaspoons, exact. */
export const US_CUP_ML = 236.5882365;
/** Grams in one avoirdupois pound, exact. */
export const POUND_G = 453.59237;
/** Grams in one avoirdupois ounce, exact. */
export const OUNCE_G = POUND_G / 16;

/** A set of spoons and cups as one kitchen owns it, all in millilitres. */
export type Measures = {
  readonly id: 'us' | 'label' | 'metric';
  readonly teaspoon: number;
  readonly tablespoon: number;
  readonly cup: number;
  /** The spoons that are there to measure with; every one unless said. */
  readonly owned?: readonly Spoon[] | undefined;
  readonly origin: Origin;
};

/** The kitchens a member can choose from; `us` unless they say otherwise. */
export const MEASURES: Readonly<Record<Measures['id'], Measures>> = {
  us: {
    id: 'us',
    teaspoon: US_TEASPOON_ML,
    tablespoon: 3 * US_TEASPOON_ML,
    cup: US_CUP_ML,
    origin: { trust: 'published', source: 'NIST Handbook 44, Appendix C: the US gallon is 231 cubic inches' },
  },
  label: {
    id: 'label',
    teaspoon: 5,
    tablespoon: 15,
    cup: 240,
    origin: { trust: 'published', source: '21 CFR 101.9(b)(5)(viii)' },
  },
  metric: {
    id: 'metric',
    teaspoon: 5,
    tablespoon: 15,
    cup: 250,
    origin: {
      trust: 'from memory',
      source: 'cup of 250 ml: AS 1325-1972, metric cups and spoons; spoons of 5 and 15 ml: common practice',
    },
  },
};

/** Degrees Fahrenheit from degrees Celsius. Exact by definition. */
export function fahrenheit(celsius: number): number {
  return celsius * 1.8 + 32;
}

/** Degrees Celsius from degrees Fahrenheit. Exact by definition. */
export function celsius(degreesFahrenheit: number): number {
  return (degreesFahrenheit - 32) / 1.8;
}
