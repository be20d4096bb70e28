import { plainText, readDecimal } from '../../quantities/number.ts';
import { refuse } from '../../refusal.ts';
import { excerpt } from '../../text/excerpt.ts';
import type { WaterAsk } from '../request.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'water-bare-percent': { percent: string };
    'water-unreadable': { text: string };
    /** More lye than water as it is written; the other way round it would be usual. */
    'water-turned-round': { text: string; water: string; lye: string };
    /** How strong the batch's lye is to be, or how the lye is kept? */
    'water-or-masterbatch': { percent: string };
  }
}

/** Percent from which a "lye solution" is more likely lye kept dissolved than the strength of a batch. */
const LIKE_A_MASTERBATCH = 45;

/** Parts of lye to one of water from which they were likelier written the other way round, and the most water there is (common practice). */
const TURNED_ROUND = 1.5;
const MOST_WATER = 4;

/** The same water in the three ways makers write it. */
export type WaterWays = {
  /** Percent of alkali in the lye water, by weighed mass. */
  readonly lyeStrength: number;
  readonly waterPerLye: number;
  readonly percentOfOils: number;
};

/**
 * Reads `33% lye`, `2:1` (water to lye) or `38% of oils`, English or Spanish. A bare percent is refused, because
 * 33 % lye and 33 % of oils are different soaps. Throws a Refusal: `water-bare-percent`, `water-unreadable`, `water-or-masterbatch`.
 */
export function parseWater(text: string): WaterAsk {
  const plain = plainText(text).toLowerCase();
  if (/-\s?\d/u.test(plain)) refuse('water-unreadable', { text: excerpt(text) });
  const ratio = /^([\d.,]+) ?(?::|to|a) ?([\d.,]+)(?: ?(?:water|agua).*)?$/u.exec(plain);
  if (ratio) {
    const [water, lye] = [positive(ratio[1]!, text), positive(ratio[2]!, text)];
    if (lye / water >= TURNED_ROUND && lye / water <= MOST_WATER)
      refuse('water-turned-round', { text: excerpt(text), water: ratio[1]!, lye: ratio[2]! });
    return { by: 'ratio', waterPerLye: water / lye };
  }
  const percent = /([\d.,]+) ?(?:%|percent|por ciento)/u.exec(plain);
  if (!percent) refuse('water-unreadable', { text: excerpt(text) });
  const value = positive(percent[1]!, text);
  const words = plain.replace(percent[0], ' ');
  const ofOils = /\b(?:oils?|fats?|aceites?|grasas?)\b/u.test(words);
  const ofLye = /\b(?:lye|sosa|lej[ií]a|concentra\w*|strength|solution|soluci[oó]n|naoh|koh)/u.test(words);
  if (value >= LIKE_A_MASTERBATCH && /\b(?:solution|soluci[oó]n)\b/u.test(words)) {
    refuse('water-or-masterbatch', { percent: percent[1]! });
  }
  if (ofOils && !ofLye) return { by: 'percent-of-oils', percent: value };
  if (ofLye && !ofOils) return { by: 'lye-strength', percent: value };
  return words.trim() === ''
    ? refuse('water-bare-percent', { percent: percent[1]! })
    : refuse('water-unreadable', { text: excerpt(text) });
}

function positive(written: string, text: string): number {
  const value = readDecimal(written)[0];
  return value !== undefined && value > 0 && value <= 1000
    ? value
    : refuse('water-unreadable', { text: excerpt(text) });
}

/** Grams of water for that much weighed alkali and oil. Infinite or negative strengths are the caller's to refuse. */
export function waterGrams(ask: WaterAsk, lyeGrams: number, oilGrams: number): number {
  switch (ask.by) {
    case 'lye-strength':
      return (lyeGrams * (100 - ask.percent)) / ask.percent;
    case 'ratio':
      return lyeGrams * ask.waterPerLye;
    case 'percent-of-oils':
      return (oilGrams * ask.percent) / 100;
  }
}

/** The three ways of writing that water. All masses in grams, all positive. */
export function waterWays(water: number, lye: number, oils: number): WaterWays {
  return {
    lyeStrength: (100 * lye) / (lye + water),
    waterPerLye: water / lye,
    percentOfOils: (100 * water) / oils,
  };
}
