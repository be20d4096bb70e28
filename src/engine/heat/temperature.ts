import { plainText, readDecimal } from '../quantities/number.ts';
import { celsius } from '../quantities/units.ts';
import { refuse } from '../refusal.ts';
import { excerpt } from '../text/excerpt.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'temperature-without-unit': { text: string };
    'temperature-out-of-range': { text: string };
  }
}

/** What a room, a batter or a soap oven may be, C. */
const COLDEST = -5;
const HOTTEST = 120;

/**
 * Degrees Celsius of `38 C`, `100F`, `-1 °C`. A bare number is refused: 60 is a room in one country and a hot batter in
 * another. Throws a Refusal: `temperature-without-unit`, `temperature-out-of-range`.
 */
export function parseTemperature(text: string): number {
  // An o: the º of Spanish keyboards, folded.
  const read = /^(-?)([\d.,]+) ?(?:°|o|deg(?:rees)?|grados)? ?(c|f)?(?:elsius|ahrenheit)?$/iu.exec(
    plainText(text),
  );
  const size = readDecimal(read?.[2] ?? '')[0];
  if (!read || size === undefined) return refuse('temperature-without-unit', { text: excerpt(text) });
  if (read[3] === undefined) refuse('temperature-without-unit', { text: excerpt(text) });
  const value = read[1] === '-' ? -size : size;
  const degrees = read[3].toLowerCase() === 'f' ? celsius(value) : value;
  if (degrees < COLDEST || degrees > HOTTEST) refuse('temperature-out-of-range', { text: excerpt(text) });
  return degrees;
}
