import { knownOil } from '../../batch/oils/find-oil.ts';
import type { Carrier } from '../../colourants/colourant.ts';
import { unbroken } from '../../over-lines.ts';
import { refuse } from '../../refusal.ts';
import { cut } from '../excerpt.ts';
import { foldedWords } from '../fold.ts';
import { acidIn } from './acid-words.ts';

/** Why a liquid wets no colour. */
export type HarmfulLiquid = 'acid' | 'bleach' | 'lye' | 'petroleum';

declare module '../../refusal.ts' {
  interface Reasons {
    /** A scent is no wetting liquid: what it does to the batter is another matter. */
    'carrier-is-fragrance': { text: string };
    'carrier-is-alcohol': { text: string };
    /** A liquid that spoils the colour, the soap or who makes it, although its name says water or oil. */
    'carrier-harms': { text: string; why: HarmfulLiquid };
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

const SOUR =
  /\b(?:lemon|lime|limon|lima|juice|zumo|jugo|orange water|kombucha|wine|vino|cider|sidra|buttermilk|yogh?urt|yogur|cola)\b/u;
const BLEACH =
  /\b(?:bleach(?:es)?|bleached|chlorine|hypochlorite|peroxide|lejia|cloro|lavandina|hipoclorito|peroxido|agua oxigenada|oxygenated)\b/u;
const LYE =
  /\b(?:lye|naoh|koh|caustic|drain cleaner|sosa|soda caustica|potasa|hidroxido|hydroxide|desatascador|destapacanos)\b/u;
const PETROLEUM = new RegExp(
  unbroken`
    \b(?:(?:motor|engine|lamp|mineral|baby|fuel|machine|hydraulic|transformer|diesel|heating|silicone|gear|
    paraffin|white) oil|aceite (?:de |para )?(?:motor|lampara|mineral|bebe|maquina|silicona|coche|parafina)|
    kerosene|queroseno|petrol|gasoline|gasolina|diesel|paraffin|parafina|petroleum jelly|jalea de petroleo|
    petrolato|petrolatum|petroleum|silicone|silicona|turpentine|trementina|paint thinner|white spirit|
    aguarras)\b
  `,
  'u',
);
const PLANT = unbroken`
  peppermint|spearmint|mint|lavender|lavandin|tea tree|eucalyptus|rosemary|lemongrass|citronella|clove|
  cinnamon|patchouli|ylang|ylang ylang|bergamot|geranium|cedarwood|sandalwood|frankincense|lemon|lime|
  orange|sweet orange|grapefruit|tangerine|thyme|oregano|basil|sage|vetiver|anise|wintergreen|pine|fir|
  juniper|rose|jasmine|neroli|vanilla|camphor|menta|lavanda|arbol de te|eucalipto|romero|citronela|clavo|
  canela|pachuli|bergamota|geranio|cedro|sandalo|incienso|limon|lima|naranja|pomelo|mandarina|tomillo|
  albahaca|salvia|anis|gaulteria|pino|enebro|rosa|jazmin|vainilla|alcanfor
`;
/** Oils steamed or pressed for their smell; "rose hip oil" and "sage seed oil" are fats. */
const ESSENTIAL = new RegExp(`\\b(?:${PLANT}) oil\\b|\\baceite de (?:${PLANT})\\b(?! mosqueta)`, 'u');

function harmOf(said: string): HarmfulLiquid | undefined {
  if (BLEACH.test(said)) return 'bleach';
  if (LYE.test(said)) return 'lye';
  if (PETROLEUM.test(said)) return 'petroleum';
  return SOUR.test(said) || acidIn(said) !== undefined ? 'acid' : undefined;
}

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
 * "rice bran", "oliva"). Undefined where none is named, or two different ones. Throws a Refusal `carrier-is-fragrance`,
 * `carrier-is-alcohol` or `carrier-harms`.
 */
export function carrierNamed(text: string): Carrier | undefined {
  const words = foldedWords(text.slice(0, 200));
  const said = words.join(' ');
  if (FRAGRANCE.test(said) || ESSENTIAL.test(said))
    refuse('carrier-is-fragrance', { text: cut(text.trim(), 80) });
  if (ALCOHOL.test(said)) refuse('carrier-is-alcohol', { text: cut(text.trim(), 80) });
  const why = harmOf(said);
  if (why !== undefined) refuse('carrier-harms', { text: cut(text.trim(), 80), why });
  const named = new Set(words.flatMap(word => WORDS.get(word) ?? []));
  if (named.size === 0 && !OTHER_LIQUID.test(said) && oilIn(words)) return 'oil';
  return named.size === 1 ? [...named][0] : undefined;
}
