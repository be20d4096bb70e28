import type { LengthUnit } from '../engine/pouring/pour-mould.ts';
import { numbersIn } from './numbers.ts';
import type { Language } from './sentence.ts';

/** By definition (NIST Handbook 44, Appendix C). */
const CM_PER_INCH = 2.54;
/** What a ruler in inches shows without counting lines. */
const PARTS = 8;

/** Lengths in centimetres as one language writes them for whoever measures so: `2.1 cm`, `7/8 in`. */
export function lengthsIn(language: Language, inch: string): (cm: number, unit?: LengthUnit) => string {
  const { one, mixed } = numbersIn(language);
  return (cm, unit = 'cm') =>
    unit === 'in' ? `${mixed(Math.round((cm / CM_PER_INCH) * PARTS) / PARTS)} ${inch}` : `${one(cm)} cm`;
}
