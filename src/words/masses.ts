import { shownSlack } from '../engine/quantities/told/stock.ts';
import { OUNCE_G } from '../engine/quantities/units.ts';
import { numbersIn } from './numbers.ts';
import type { Language } from './sentence.ts';

/** Less than this is left in grams: a scale in ounces shows hundredths, and this is a tenth. */
const LEAST_GRAMS = OUNCE_G / 10;

/** What somebody wrote themselves stays as it is. */
const QUOTED = /(“[^”]*”|«[^»]*»|"[^"]*")/u;
const FIGURE = String.raw`(?<![\d.,(/])(\d+(?:[.,]\d+)?)`;
const G = String.raw`[ \u00a0]g(?![\p{L}/])`;
/** `2.8 to 5.2 g`, `de 2,8 a 5,2 g`. */
const RANGE = String.raw`(\d+(?:[.,]\d+)?) (to|a) (\d+(?:[.,]\d+)?)${G}`;
/**
 * An estimate with its range (`4 g (2.8 to 5.2 g)`), a range, and a mass in grams alone: not in brackets behind its ounces, not
 * before a range or ounces of its own, no density.
 */
const GRAMS = new RegExp(
  String.raw`${FIGURE}${G} \((de )?${RANGE}\)|(?<![\d.,(/])${RANGE}|${FIGURE}${G}(?! \()`,
  'gu',
);

/**
 * A sentence for whoever weighs in ounces: each mass that stands in grams alone has its ounces before it, rounded down, so
 * that nobody takes more than was meant; but 56.7 g are two ounces, being rounded themselves. A range is told in one unit.
 * Masses that come in both units already, what members wrote, and what is too little for ounces stay.
 */
export function ouncesFirst(text: string, language: Language): string {
  const { down, two } = numbersIn(language);
  const gramsIn = (figure: string) => Number(figure.replace(',', '.'));
  const ounces = (grams: number) => down((grams + shownSlack(grams)) / OUNCE_G, 2);
  const between = (low: string, word: string, high: string) =>
    `${two(gramsIn(low) / OUNCE_G)} ${word} ${two(gramsIn(high) / OUNCE_G)} oz`;
  return text
    .split(QUOTED)
    .map((piece, at) =>
      at % 2 === 1
        ? piece
        : piece.replaceAll(GRAMS, (written: string, ...found: readonly (string | undefined)[]) => {
            const [about, of = '', low, to, high, least, word, most, alone] = found;
            const grams = gramsIn(about ?? most ?? alone ?? '0');
            if (grams < LEAST_GRAMS) return written;
            if (about !== undefined)
              return `${ounces(grams)} oz (${about} g), ${of}${between(low!, to!, high!)}`;
            if (most !== undefined) return `${between(least!, word!, most)} (${written})`;
            return `${ounces(grams)} oz (${written})`;
          }),
    )
    .join('');
}
