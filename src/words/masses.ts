import { OUNCE_G } from '../engine/quantities/units.ts';
import { numbersIn } from './numbers.ts';
import type { Language } from './sentence.ts';

/** Less than this is left in grams: a scale in ounces shows hundredths, and this is a tenth. */
const LEAST_GRAMS = OUNCE_G / 10;

/** What somebody wrote themselves stays as it is. */
const QUOTED = /(“[^”]*”|«[^»]*»|"[^"]*")/u;
/** A mass in grams alone: not in brackets behind its ounces, not before a range or ounces of its own, no density. */
const GRAMS = /(?<![\d.,(/])(\d+(?:[.,]\d+)?)[ \u00a0]g(?![\p{L}/])(?! \()/gu;

/**
 * A sentence for whoever weighs in ounces: each mass that stands in grams alone has its ounces before it, rounded down, so
 * that nobody takes more than was meant. Masses that come in both units already, what members wrote, and what is too
 * little for ounces stay.
 */
export function ouncesFirst(text: string, language: Language): string {
  const { down } = numbersIn(language);
  return text
    .split(QUOTED)
    .map((piece, at) =>
      at % 2 === 1
        ? piece
        : piece.replaceAll(GRAMS, (written, figure: string) => {
            const grams = Number(figure.replace(',', '.'));
            return grams < LEAST_GRAMS ? written : `${down(grams / OUNCE_G, 2)} oz (${written})`;
          }),
    )
    .join('');
}
