import { shownSlack } from '../engine/quantities/told/stock.ts';
import { OUNCE_G } from '../engine/quantities/units.ts';
import { type GramsBetween, type MassSaid, massesIn } from '../engine/text/amounts/masses-in-sentence.ts';
import { numbersIn } from './numbers.ts';
import type { Language } from './sentence.ts';

/** Less than this is left in grams: a scale in ounces shows hundredths, and this is a tenth. */
const LEAST_GRAMS = OUNCE_G / 10;

/**
 * A sentence for whoever weighs in ounces: each mass that stands in grams alone has its ounces before it, rounded down, so
 * that nobody takes more than was meant; but 56.7 g are two ounces, being rounded themselves. A range is told in one unit.
 * Masses that come in both units already, what members wrote, and what is too little for ounces stay.
 */
export function ouncesFirst(text: string, language: Language): string {
  const { down, two } = numbersIn(language);
  const ounces = (grams: number) => down((grams + shownSlack(grams)) / OUNCE_G, 2);
  const between = ({ low, joint, high }: GramsBetween) =>
    `${two(low / OUNCE_G)} ${joint} ${two(high / OUNCE_G)} oz`;
  const said = (mass: MassSaid): string => {
    if ((mass.is === 'range' ? mass.high : mass.grams) < LEAST_GRAMS) return mass.written;
    switch (mass.is) {
      case 'estimate':
        return `${ounces(mass.grams)} oz (${mass.figure} g), ${mass.lead}${between(mass.range)}`;
      case 'range':
        return `${between(mass)} (${mass.written})`;
      case 'mass':
        return `${ounces(mass.grams)} oz (${mass.written})`;
    }
  };
  return massesIn(text)
    .map(piece => (typeof piece === 'string' ? piece : said(piece)))
    .join('');
}
