import { fahrenheit } from '../engine/quantities/units.ts';

const whole = (value: number) => `${Math.round(value)}`;

/** A temperature as sentences tell it, °C: `38 °C (100 °F)`. */
export const degrees = (celsius: number): string => `${whole(celsius)} °C (${whole(fahrenheit(celsius))} °F)`;

/** From one to another, with the language's own word between them: `52 to 82 °C (126 to 180 °F)`. */
export const degreesBetween = (low: number, high: number, to: string): string =>
  `${whole(low)} ${to} ${whole(high)} °C (${whole(fahrenheit(low))} ${to} ${whole(fahrenheit(high))} °F)`;

const FIGURES = String.raw`-?\d+(?:(?: \p{L}{1,3} |-)\d+)?`;
const CELSIUS_FIRST = new RegExp(String.raw`(${FIGURES}) °C \((${FIGURES}) °F\)`, 'gu');

/** A sentence with °F before °C, for whoever reads a thermometer of that kind. */
export const fahrenheitFirst = (text: string): string => text.replace(CELSIUS_FIRST, '$2 °F ($1 °C)');
