import { plainText, readDecimal } from '../../quantities/number.ts';
import { refuse } from '../../refusal.ts';
import type { FragranceAsk, LyeChoice } from '../request.ts';
import { shown } from '../shown.ts';
import { DEFAULT_KOH_SHARE } from './lye.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'lye-unreadable': { text: string };
    'lye-shares-sum': { sum: number };
    'percent-unreadable': { text: string };
  }
}

const SODIUM =
  /\b(?:naoh|sodium(?: hydroxide)?|caustic soda|sosa(?: c[aá]ustica)?|soda c[aá]ustica|hidr[oó]xido s[oó]dico|hidr[oó]xido de sodio)\b/iu;
const POTASSIUM =
  /\b(?:koh|potassium(?: hydroxide)?|potash|potasa(?: c[aá]ustica)?|hidr[oó]xido pot[aá]sico|hidr[oó]xido de potasio)\b/iu;
const BOTH = /\b(?:both|dual|mixed|ambas|ambos|las dos|mixta)\b/iu;
const PERCENT = /([\d.,]+) ?%/gu;

/**
 * Reads which alkali: `NaOH`, `KOH 90%` (its purity), `both`, `NaOH 95% + KOH 5%` or `both 10% KOH` (shares of the
 * saponification). English or Spanish. Throws a Refusal: `lye-unreadable`, `lye-shares-sum`.
 */
export function parseLye(text: string): LyeChoice {
  const plain = plainText(text);
  const sodium = SODIUM.exec(plain);
  const potassium = POTASSIUM.exec(plain);
  const percents = [...plain.matchAll(PERCENT)].map(match => readDecimal(match[1]!)[0] ?? Number.NaN);
  if (BOTH.test(plain) || (sodium && potassium))
    return { kind: 'both', kohShare: kohShareOf(plain, percents) };
  if (!sodium && !potassium) return refuse('lye-unreadable', { text: shown(text) });
  if (percents.length > 1) refuse('lye-unreadable', { text: shown(text) });
  const purity = percents[0] === undefined ? undefined : percents[0] / 100;
  if (sodium) return { kind: 'NaOH', ...(purity === undefined ? {} : { naohPurity: purity }) };
  return { kind: 'KOH', ...(purity === undefined ? {} : { kohPurity: purity }) };
}

/** One percent is that of the alkali named next to it; two must make a whole, in the order they are named. */
function kohShareOf(text: string, percents: readonly number[]): number {
  if (percents.length === 0) return DEFAULT_KOH_SHARE;
  const potassium = POTASSIUM.exec(text)?.index ?? Number.POSITIVE_INFINITY;
  const sodium = SODIUM.exec(text)?.index ?? Number.POSITIVE_INFINITY;
  if (percents.length === 1) {
    const ofSodium = SODIUM.test(text) && !/(?:%\s*(?:koh|pot))|(?:(?:koh|pot\S*)\s*[\d.,]+ ?%)/iu.test(text);
    return ofSodium ? 1 - percents[0]! / 100 : percents[0]! / 100;
  }
  const sum = percents.reduce((total, percent) => total + percent, 0);
  if (percents.length > 2 || Math.abs(sum - 100) > 0.5) refuse('lye-shares-sum', { sum });
  return (potassium < sodium ? percents[0]! : percents[1]!) / 100;
}

/**
 * Reads a fragrance: `3%`, `3% of oils, vanillin 8%`. Percent of the oils, and of vanillin in the fragrance (0 unless
 * said). Throws a Refusal `percent-unreadable`.
 */
export function parseFragrance(text: string): FragranceAsk {
  const plain = plainText(text);
  const vanillin =
    /(?:vanill?in\w*|vainillina)\D{0,12}?([\d.,]+) ?%|([\d.,]+) ?% ?(?:of |de )?(?:vanill?in|vainillina)/iu.exec(
      plain,
    );
  const load = /([\d.,]+) ?%/u.exec(vanillin ? plain.replace(vanillin[0], ' ') : plain);
  const percentOfOils = readDecimal(load?.[1] ?? '')[0];
  const vanillinPercent = vanillin ? readDecimal(vanillin[1] ?? vanillin[2]!)[0] : 0;
  const sane = (value: number | undefined, most: number) =>
    value !== undefined && value >= 0 && value <= most;
  if (!sane(percentOfOils, 15) || !sane(vanillinPercent, 100))
    refuse('percent-unreadable', { text: shown(text) });
  return { percentOfOils: percentOfOils!, vanillinPercent: vanillinPercent! };
}
