import { refuse } from '../refusal.ts';
import { excerpt } from './excerpt.ts';
import { plainText, printMixed, printNumber, readDecimal } from './number.ts';
import { plainWord } from './unit-words.ts';
import { readWritten } from './written.ts';

/** How deep a colour is wanted. Shares are of the full dose of that colourant. */
export type StrengthName = 'tint' | 'pastel' | 'medium' | 'full';

export type Strength =
  | { readonly by: 'name'; readonly name: StrengthName }
  | { readonly by: 'share'; readonly ofFull: number }
  | { readonly by: 'cup'; readonly tspPerCup: number }
  | { readonly by: 'pound-of-oils'; readonly tspPerPound: number };

declare module '../refusal.ts' {
  interface Reasons {
    'strength-unreadable': { text: string };
    'strength-out-of-range': { text: string };
  }
}

/** Share of the full dose that each named strength takes (common practice). */
export const STRENGTH_SHARES: Readonly<Record<StrengthName, number>> = {
  tint: 1 / 8,
  pastel: 1 / 4,
  medium: 1 / 2,
  full: 1,
};

const NAMES: Readonly<Record<StrengthName, string>> = {
  tint: 'tint hint toque tinte matiz tenue',
  pastel: 'pastel pastels pale soft palido suave claro',
  medium: 'medium mid medio media mediano intermedio',
  full: 'full strong bold saturated pleno plena lleno completo completa intenso intensa fuerte total',
};

const BY_WORD: ReadonlyMap<string, StrengthName> = new Map(
  (Object.entries(NAMES) as [StrengthName, string][]).flatMap(([name, words]) =>
    words.split(' ').map(word => [word, name] as const),
  ),
);

/** Whether a strength could be meant at all; the ceiling of a colourant is another matter. */
function isPossible(strength: Strength): boolean {
  const within = (value: number, most: number) => value >= 1e-4 && value <= most;
  switch (strength.by) {
    case 'name':
      return true;
    case 'share':
      return within(strength.ofFull, 10);
    case 'cup':
      return within(strength.tspPerCup, MOST_TSP);
    case 'pound-of-oils':
      return within(strength.tspPerPound, MOST_TSP);
  }
}

/** A whole cup of powder to the cup of batter: nothing beyond is a dose. */
const MOST_TSP = 48;

/**
 * Reads how deep a colour should be: `pastel`, `full`, `25%` of full, `1/4 tsp per cup`, `0.5` (teaspoons a cup), or
 * `1 tsp ppo` (a pound of oils). English and Spanish. Throws a Refusal: `strength-unreadable`, `strength-out-of-range`.
 */
export function parseStrength(text: string): Strength {
  const word = plainWord(text.slice(0, 200))
    .replace(/\b(?:colou?r|strength|tono|un|una|a)\b/gu, '')
    .trim();
  const name = BY_WORD.get(word);
  if (name !== undefined) return { by: 'name', name };
  const strength = parseShare(plainText(text.slice(0, 40))) ?? parseSpoons(text);
  if (strength === undefined) refuse('strength-unreadable', { text: excerpt(text) });
  if (!isPossible(strength)) refuse('strength-out-of-range', { text: excerpt(text) });
  return strength;
}

/** A name such as "gold mica pastel" without its last word, and the strength that word gives; else no strength. */
export function splitStrength(text: string): { readonly rest: string; readonly strength?: Strength } {
  const cut = text.trim().lastIndexOf(' ');
  const name = BY_WORD.get(plainWord(text.trim().slice(cut + 1)));
  if (cut < 1 || name === undefined) return { rest: text.trim() };
  return { rest: text.trim().slice(0, cut).trim(), strength: { by: 'name', name } };
}

/** A strength in neutral writing that {@link parseStrength} reads back: `pastel`, `25%`, `1/4 tsp/cup`, `1 tsp/lb oils`. */
export function printStrength(strength: Strength): string {
  switch (strength.by) {
    case 'name':
      return strength.name;
    case 'share':
      return `${printNumber(strength.ofFull * 100)}%`;
    case 'cup':
      return `${printMixed(strength.tspPerCup)} tsp/cup`;
    case 'pound-of-oils':
      return `${printMixed(strength.tspPerPound)} tsp/lb oils`;
  }
}

function parseShare(text: string): Strength | undefined {
  const percent = /^(\d[\d,.]{0,8}) ?%$/u.exec(text);
  const value = readDecimal(percent?.[1] ?? '')[0];
  return value === undefined ? undefined : { by: 'share', ofFull: value / 100 };
}

const PER = /\s*(?:\/(?=\s*[a-zñ])|\bper\b|\bpor\b|\ba\b)\s*/iu;
const CUP = /^(?:(?:us|a|la|cada) )?(?:cups?|c|tazas?)(?: (?:of batter|de masa|de mezcla))?$/iu;
const POUND = /^(?:(?:a|cada) )?(?:lbs?|pounds?|libras?)(?: (?:of |de )?(?:oils?|aceites?))?$/iu;
const POUND_SHORT = /\s*\b(?:ppo|tpo)$/iu;

function parseSpoons(text: string): Strength | undefined {
  if (text.length > 60) return undefined;
  const short = text.trim().replace(POUND_SHORT, '');
  const [count, per, ...more] = short.split(PER).map(part => part.trim());
  if (count === undefined || more.length > 0) return undefined;
  const teaspoons = teaspoonsOf(count);
  if (teaspoons === undefined) return undefined;
  if (short !== text.trim() || (per !== undefined && POUND.test(per))) {
    return per === undefined || POUND.test(per) ? { by: 'pound-of-oils', tspPerPound: teaspoons } : undefined;
  }
  return per === undefined || CUP.test(per) ? { by: 'cup', tspPerCup: teaspoons } : undefined;
}

function teaspoonsOf(text: string): number | undefined {
  const written = readWritten(text);
  if (written === undefined || written.words.length > 0 || written.terms.length !== 1) return undefined;
  const { counts, unit } = written.terms[0]!;
  const sign = written.negative ? -1 : 1;
  if (unit === undefined || unit === 'teaspoon') return sign * counts[0]!;
  return unit === 'tablespoon' ? sign * counts[0]! * 3 : undefined;
}
