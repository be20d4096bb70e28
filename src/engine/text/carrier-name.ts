import { knownOil } from '../batch/oils/find-oil.ts';
import type { Carrier } from '../colourants/colourant.ts';
import { refuse } from '../refusal.ts';
import { foldedWords } from './fold.ts';

declare module '../refusal.ts' {
  interface Reasons {
    /** A scent is no wetting liquid: what it does to the batter is another matter. */
    'carrier-is-fragrance': { text: string };
    'carrier-is-alcohol': { text: string };
  }
}

const WORDS: ReadonlyMap<string, Carrier> = new Map([
  ...'water agua aloe hydrosol hidrolato h2o'.split(' ').map(word => [word, 'water'] as const),
  ...'oil aceite oils aceites'.split(' ').map(word => [word, 'oil'] as const),
  ...'glycerin glycerol glicerina glicerol'.split(' ').map(word => [word, 'glycerin'] as const),
]);
const FRAGRANCE =
  /\b(?:fragrance|scent|perfume|fragancia|aroma|essential oil|aceite esencial|esencia|fo|eo)\b/u;
const ALCOHOL = /\b(?:alcohol|vodka|rubbing alcohol|isopropyl|isopropilico)\b/u;

/** Their fat has the name of an oil, and they are none. */
const OTHER_LIQUID =
  /\b(?:milk|leche|cream|yogh?urt|juice|zumo|jugo|tea|coffee|cafe|beer|cerveza|wine|vino)\b/u;

/** A named oil in a text, such as "sweet almond" or "aceite de arroz"; a lone "oil" names none. */
function oilIn(words: readonly string[]): boolean {
  for (let length = Math.min(4, words.length); length > 0; length -= 1)
    for (let at = 0; at + length <= words.length; at += 1)
      if (knownOil(words.slice(at, at + length).join(' ')) !== undefined) return true;
  return false;
}

/**
 * What somebody wets a colour in, by any name they give it: water, glycerin, or an oil by its own name ("sweet almond",
 * "rice bran", "oliva"). Undefined where none is named, or two different ones. Throws a Refusal `carrier-is-fragrance` or
 * `carrier-is-alcohol`.
 */
export function carrierNamed(text: string): Carrier | undefined {
  const words = foldedWords(text.slice(0, 200));
  const said = words.join(' ');
  if (FRAGRANCE.test(said)) refuse('carrier-is-fragrance', { text: text.trim().slice(0, 80) });
  if (ALCOHOL.test(said)) refuse('carrier-is-alcohol', { text: text.trim().slice(0, 80) });
  const named = new Set(words.flatMap(word => WORDS.get(word) ?? []));
  if (named.size === 0 && !OTHER_LIQUID.test(said) && oilIn(words)) return 'oil';
  return named.size === 1 ? [...named][0] : undefined;
}
