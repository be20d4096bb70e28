import { unbroken } from '../../over-lines.ts';
import { plainText, readDecimal } from '../../quantities/number.ts';
import { refuse } from '../../refusal.ts';
import { excerpt } from '../../text/excerpt.ts';
import type { LyeChoice } from '../request.ts';
import { DEFAULT_KOH_SHARE } from './lye.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'lye-unreadable': { text: string };
    'lye-shares-sum': { sum: number };
    /** Two shares, or one that may be a purity, and no word of which alkali is which. */
    'lye-shares-unclear': { text: string };
    'lye-solution-of-both': Record<never, never>;
    /** A salt of the same metal that makes no soap. */
    'lye-not-hydroxide': { text: string };
    /** It may hold aluminium, bleach, perfume or acid beside the lye. */
    'lye-drain-cleaner': { text: string };
    /** Potash is the hydroxide to some and the carbonate to others. */
    'lye-potash-unclear': { text: string };
    /** Caustic in some countries, household bleach in others. */
    'lye-or-bleach': { text: string };
    'lye-by-volume': { text: string };
    'lye-weight-told': { text: string };
  }
}

const SODIUM =
  /\b(?:naoh|sodium(?: hydroxide)?|caustic soda|sosa(?: c[aá]ustica)?|soda c[aá]ustica|hidr[oó]xido s[oó]dico|hidr[oó]xido de sodio)\b/iu;
const POTASSIUM =
  /\b(?:koh|potassium(?: hydroxide)?|(?:caustic )?potash|potasa(?: c[aá]ustica)?|hidr[oó]xido pot[aá]sico|hidr[oó]xido de potasio)\b/iu;
/** Salts of sodium and potassium that share a word with lye and make no soap with an oil. */
const OTHER_SALT = new RegExp(
  unbroken`
    \b(?:(?:bi|per|sesqui)?carbonat\w*|na2co3|k2co3|nahco3|soda ash|pearl ?ash|washing soda|baking soda|
    (?:hypo)?chlor(?:ide|ite)|(?:hipo)?clor(?:uro|ito)|silicat\w*|lact?at[eo]|citrat[eo]|sul(?:f|ph)at[eo]|
    nitrat[eo]|benzoat[eo])\b
  `,
  'iu',
);
const DRAIN_CLEANER =
  /\b(?:drain|unblocker|unclogger|oven cleaner|desatascador|destapa(?:ca[nñ]os|ca[nñ]er[ií]as|desag[uü]es)|limpiahornos)\b/iu;
const LEJIA = /\blej[ií]a\b/iu;
const POTASH = /\b(?:potash|potasa)\b/iu;
const POTASH_SETTLED = /\b(?:koh|caustic potash|potasa c[aá]ustica|hydroxide|hidr[oó]xido)\b/iu;
const BY_VOLUME =
  /\b(?:by vol(?:ume)?|v\/v|(?:por|en) volumen|ml|cc|cups?|tazas?|tsp|tbsp|teaspoons?|tablespoons?|cdtas?|cdas?|cucharad(?:it)?as?|fl oz)\b/iu;
const WEIGHT = /\d ?(?:g|gr|grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)\b/iu;
const BOTH = /\b(?:both|dual|mixed|ambas|ambos|las dos|mixta|doble)\b/iu;
const PERCENT = /([\d.,]+) ?%/gu;
const NUMBER = /\d+(?:[.,]\d+)?/gu;
/** Lye that is dissolved in its own water and kept so. */
const SOLUTION = new RegExp(
  unbroken`
    \b(?:solution|master ?-?batch(?:ed)?|pre-?mixed|pre-?dissolved|liquid (?:lye|caustic)|soluci[oó]n|
    disuelt[ao]|premezcla(?:da)?|lej[ií]a (?:madre|preparada)|(?:sosa|potasa) l[ií]quida)\b
  `,
  'iu',
);
/** What lye kept dissolved nearly always is: its own weight of water (common practice). */
const USUAL_SOLUTION = 50;
/** Percent that dry potassium hydroxide is sold at, so that with both alkalis it may be meant as a purity. */
const LIKE_A_PURITY = 80;

/** True where a text speaks of lye kept dissolved. */
export const speaksOfMasterbatch = (text: string): boolean =>
  /\b(?:master ?-?batch(?:ed)?|lej[ií]a madre|premezcla(?:da)?)\b/iu.test(plainText(text));

/**
 * Reads which alkali: `NaOH`, `KOH 90%` (its purity), `both`, `NaOH 95% + KOH 5%` or `both 10% KOH` (shares of the
 * saponification), `50% lye solution` or `masterbatch 1:1` (lye that is dissolved already; water to lye). English or
 * Spanish. Throws a Refusal: `lye-unreadable`, `lye-shares-sum`, `lye-shares-unclear`, `lye-solution-of-both`,
 * `lye-not-hydroxide`, `lye-drain-cleaner`, `lye-potash-unclear`, `lye-or-bleach`, `lye-by-volume`, `lye-weight-told`.
 */
export function parseLye(text: string): LyeChoice {
  const plain = plainText(text);
  if (/-\s?\d/u.test(plain)) refuse('lye-unreadable', { text: excerpt(text) });
  if (DRAIN_CLEANER.test(plain)) refuse('lye-drain-cleaner', { text: excerpt(text) });
  if (OTHER_SALT.test(plain)) refuse('lye-not-hydroxide', { text: excerpt(text) });
  if (POTASH.test(plain) && !POTASH_SETTLED.test(plain))
    refuse('lye-potash-unclear', { text: excerpt(text) });
  if (BY_VOLUME.test(plain)) refuse('lye-by-volume', { text: excerpt(text) });
  if (WEIGHT.test(plain)) refuse('lye-weight-told', { text: excerpt(text) });
  if (
    LEJIA.test(plain) &&
    !/\b(?:sosa|potasa|naoh|koh|lye|hidr[oó]xido|c[aá]ustica|madre|preparada)\b/iu.test(plain)
  )
    refuse('lye-or-bleach', { text: excerpt(text) });
  const sodium = SODIUM.exec(plain);
  const potassium = POTASSIUM.exec(plain);
  const both = BOTH.test(plain) || (sodium !== null && potassium !== null);
  if (SOLUTION.test(plain)) {
    if (both) refuse('lye-solution-of-both', {});
    return { kind: potassium ? 'KOH' : 'NaOH', solutionPercent: solutionPercent(plain, text) };
  }
  const percents = percentsOf(plain);
  if (both) return { kind: 'both', kohShare: kohShareOf(plain, percents, text) };
  if (!sodium && !potassium) return refuse('lye-unreadable', { text: excerpt(text) });
  if (percents.length > 1) refuse('lye-unreadable', { text: excerpt(text) });
  const purity = percents[0] === undefined ? undefined : percents[0] / 100;
  if (sodium) return { kind: 'NaOH', ...(purity === undefined ? {} : { naohPurity: purity }) };
  return { kind: 'KOH', ...(purity === undefined ? {} : { kohPurity: purity }) };
}

/** With a percent sign, or bare: `95/5`, `KOH 90`. */
function percentsOf(text: string): readonly number[] {
  const signed = [...text.matchAll(PERCENT)].map(match => match[1]!);
  const all = [...text.matchAll(NUMBER)].map(match => match[0]);
  return (signed.length === all.length ? signed : all).map(one => readDecimal(one)[0] ?? Number.NaN);
}

/** `50%`, `1:1`, `50/50`; half where nothing is said. The ratio is water to lye, as everywhere. */
function solutionPercent(text: string, typed: string): number {
  const ratio = /(\d+(?:[.,]\d+)?) ?(?::|\/|\bto\b|\ba\b) ?(\d+(?:[.,]\d+)?)/u.exec(text);
  const percents = percentsOf(text);
  if (!ratio && percents.length > 1) return refuse('lye-unreadable', { text: excerpt(typed) });
  const [water, lye] = ratio ? percents : [];
  const percent = ratio ? (100 * lye!) / (water! + lye!) : (percents[0] ?? USUAL_SOLUTION);
  return percent > 0 ? percent : refuse('lye-unreadable', { text: excerpt(typed) });
}

/** One percent is that of the alkali named next to it; two must make a whole, in the order the alkalis are named. */
function kohShareOf(text: string, percents: readonly number[], typed: string): number {
  if (percents.length === 0) return DEFAULT_KOH_SHARE;
  const potassium = POTASSIUM.exec(text)?.index;
  const sodium = SODIUM.exec(text)?.index;
  if (percents.length === 1) {
    if (potassium === undefined && sodium === undefined)
      refuse('lye-shares-unclear', { text: excerpt(typed) });
    const ofSodium =
      sodium !== undefined && !/(?:\d ?%? ?(?:koh|pot))|(?:(?:koh|pot\S*)\s*[\d.,]+ ?%?)/iu.test(text);
    const likeAPurity = percents[0]! >= LIKE_A_PURITY && percents[0]! < 100;
    if (!ofSodium && likeAPurity) refuse('lye-shares-unclear', { text: excerpt(typed) });
    return ofSodium ? 1 - percents[0]! / 100 : percents[0]! / 100;
  }
  const sum = percents.reduce((total, percent) => total + percent, 0);
  if (percents.length > 2 || !(Math.abs(sum - 100) <= 0.5)) refuse('lye-shares-sum', { sum });
  if (percents[0] === percents[1]) return 0.5;
  if (potassium === undefined || sodium === undefined) refuse('lye-shares-unclear', { text: excerpt(typed) });
  return (potassium < sodium ? percents[0]! : percents[1]!) / 100;
}
