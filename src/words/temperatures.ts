import { fahrenheit } from '../engine/quantities/units.ts';
import { temperaturesIn } from '../engine/text/amounts/temperatures-in-sentence.ts';
import { numbersIn } from './numbers.ts';

/** Every language of ours writes whole numbers alike. */
const { whole } = numbersIn('en');

/** A temperature as sentences tell it, °C: `38 °C (100 °F)`. */
export const degrees = (celsius: number): string => `${whole(celsius)} °C (${whole(fahrenheit(celsius))} °F)`;

/** From one to another, with the language's own word between them: `52 to 82 °C (126 to 180 °F)`. */
export const degreesBetween = (low: number, high: number, to: string): string =>
  `${whole(low)} ${to} ${whole(high)} °C (${whole(fahrenheit(low))} ${to} ${whole(fahrenheit(high))} °F)`;

/** A sentence with °F before °C, for whoever reads a thermometer of that kind. */
export const fahrenheitFirst = (text: string): string =>
  temperaturesIn(text)
    .map(piece => (typeof piece === 'string' ? piece : `${piece.fahrenheit} °F (${piece.celsius} °C)`))
    .join('');
