import { unbroken } from '../over-lines.ts';
import { refuse, unlessRefused } from '../refusal.ts';
import { excerpt } from '../text/excerpt.ts';
import type { Amount } from './amount.ts';
import { plainText, printMixed, printNumber, readDecimal } from './number.ts';
import { plainWord } from './unit-words.ts';
import { readWritten } from './written.ts';

/** How deep a colour is wanted. Shares are of the full dose of that colourant. */
export type StrengthName = 'tint' | 'pastel' | 'medium' | 'full';

export type Strength =
  | { readonly by: 'name'; readonly name: StrengthName }
  | { readonly by: 'share'; readonly ofFull: number }
  /** By weight of the oils in the portion. */
  | { readonly by: 'percent-of-oils'; readonly percent: number }
  | { readonly by: 'cup'; readonly tspPerCup: number }
  | { readonly by: 'pound-of-oils'; readonly tspPerPound: number };

/**
 * How deep a colour is said to be in one portion: a strength, which holds for a portion of any size, or so much of what is in
 * the jar, in the whole of this one.
 */
export type ToldStrength = Strength | { readonly by: 'amount'; readonly amount: Amount };

/** The same, or what is usual of that colourant. */
export type WantedStrength = ToldStrength | { readonly by: 'usual' };

/** Nothing was said of how deep. */
export const USUAL: WantedStrength = { by: 'usual' };

declare module '../refusal.ts' {
  interface Reasons {
    'strength-unreadable': { text: string };
    'strength-out-of-range': { text: string };
    'strength-percent-large': { text: string; most: number };
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
  pastel: 'pastel pastels pale soft light palido palida suave claro clara clarito clarita',
  medium: 'medium mid medio media mediano intermedio half mitad',
  full: 'full strong bold saturated dark deep rich intense pleno plena lleno completo completa intenso intensa fuerte total oscuro oscura profundo profunda',
};

/** Words for a multiple of full colour; what the ceiling allows of it is given. */
const MULTIPLES: Readonly<Record<string, number>> = {
  double: 2,
  twice: 2,
  doble: 2,
  triple: 3,
  'half strength': 0.5,
  quarter: 0.25,
  'a quarter': 0.25,
  cuarto: 0.25,
  'very light': 1 / 8,
  'muy claro': 1 / 8,
  'muy clara': 1 / 8,
  'very pale': 1 / 8,
  'very dark': 1,
  'very deep': 1,
  'muy oscuro': 1,
  'muy oscura': 1,
  'muy intenso': 1,
  'muy intensa': 1,
};

const BY_WORD: ReadonlyMap<string, StrengthName> = new Map(
  (Object.entries(NAMES) as [StrengthName, string][]).flatMap(([name, words]) =>
    words.split(' ').map(word => [word, name] as const),
  ),
);

/** Every single word for a strength, lower case without accents. */
export const STRENGTH_WORDS: readonly string[] = [
  ...BY_WORD.keys(),
  ...Object.keys(MULTIPLES).filter(name => !name.includes(' ')),
];

/** Whether a strength could be meant at all; the ceiling of a colourant is another matter. */
function isPossible(strength: Strength): boolean {
  const within = (value: number, most: number) => value >= 1e-4 && value <= most;
  switch (strength.by) {
    case 'name':
      return true;
    case 'share':
      return within(strength.ofFull, 10);
    case 'percent-of-oils':
      return within(strength.percent, MOST_PERCENT);
    case 'cup':
      return within(strength.tspPerCup, MOST_TSP);
    case 'pound-of-oils':
      return within(strength.tspPerPound, MOST_TSP);
  }
}

/** More pigment than this in a hundred of oils is no dose but a share of full colour, misnamed. */
const MOST_PERCENT = 6;

/** A whole cup of powder to the cup of batter: nothing beyond is a dose. */
const MOST_TSP = 48;

/**
 * Reads how deep a colour should be: `pastel`, `full`, `half`, `double`, `25% of full`, `1/4 tsp per cup`, `0.5` (teaspoons
 * a cup), `1 tsp ppo` (a pound of oils), or `0.5%`, which is of the oils by weight, as makers count. English and Spanish.
 * Throws a Refusal: `strength-unreadable`, `strength-out-of-range`, `strength-percent-large` over 6 % of oils.
 * @example parseStrength('1/4 tsp per cup') // { by: 'cup', tspPerCup: 0.25 }
 */
export function parseStrength(text: string): Strength {
  const word = plainWord(text.slice(0, 200))
    .replace(/\b(?:colou?r|strength|tono|un|una|a)\b/gu, '')
    .trim();
  const name = BY_WORD.get(word);
  if (name !== undefined) return { by: 'name', name };
  const times = Object.hasOwn(MULTIPLES, word) ? MULTIPLES[word] : undefined;
  if (times !== undefined) return { by: 'share', ofFull: times };
  const strength = parseShare(plainText(text.slice(0, 40))) ?? parseSpoons(text);
  if (strength === undefined) refuse('strength-unreadable', { text: excerpt(text) });
  if (strength.by === 'percent-of-oils' && strength.percent > MOST_PERCENT)
    refuse('strength-percent-large', { text: excerpt(text), most: MOST_PERCENT });
  if (!isPossible(strength)) refuse('strength-out-of-range', { text: excerpt(text) });
  return strength;
}

/** "Verde oscuro" is a colour of its own: a hue and how deep it is, and no colourant at full dose. */
const DEEP_HUE =
  /^(?:verde|azul|rojo|roja|rosa|rosado|morado|violeta|amarillo|naranja|gris|marron|cafe) (?:oscur[oa]|profund[oa]|clar[oa]|palid[oa])$/u;

/** A name such as "gold mica pastel" without its last word, and the strength that word gives; else no strength. */
export function splitStrength(text: string): { readonly rest: string; readonly strength?: Strength } {
  const cut = text.trim().lastIndexOf(' ');
  const name = BY_WORD.get(plainWord(text.trim().slice(cut + 1)));
  if (cut < 1 || name === undefined || DEEP_HUE.test(plainWord(text.trim()))) return { rest: text.trim() };
  return { rest: text.trim().slice(0, cut).trim(), strength: { by: 'name', name } };
}

/** A strength in neutral writing that {@link parseStrength} reads back: `pastel`, `25% of full`, `0.5% of oils`, `1/4 tsp/cup`. */
export function printStrength(strength: Strength): string {
  switch (strength.by) {
    case 'name':
      return strength.name;
    case 'share':
      return `${printNumber(strength.ofFull * 100)}% of full`;
    case 'percent-of-oils':
      return `${printNumber(strength.percent)}% of oils`;
    case 'cup':
      return `${printMixed(strength.tspPerCup)} tsp/cup`;
    case 'pound-of-oils':
      return `${printMixed(strength.tspPerPound)} tsp/lb oils`;
  }
}

/**
 * A strength that was kept as it was printed. Before percents named what they are of, a bare one was of full colour.
 * Undefined where it is none: a record from before must be shown all the same.
 */
export function readKeptStrength(printed: string): Strength | undefined {
  const share = /^(\d+(?:\.\d+)?)%$/u.exec(printed.trim())?.[1];
  if (share !== undefined) return { by: 'share', ofFull: Number(share) / 100 };
  return unlessRefused(() => parseStrength(printed));
}

/** "50% of full", "2 % del aceite". */
const PERCENT = new RegExp(
  unbroken`
    ^(\d[\d,.]{0,8}) ?%(?: ?(?:of|de|del|de la)? ?(?:the )?(full(?: colou?r| strength)?|pleno|plena|
    fuerza|max(?:imum)?|oils?|aceites?|los aceites|fats?|grasas?|ppo))?$
  `,
  'iu',
);

function parseShare(text: string): Strength | undefined {
  const percent = PERCENT.exec(text);
  const value = readDecimal(percent?.[1] ?? '')[0];
  if (value === undefined) return undefined;
  return /^(?:full|plen|fuerza|max)/iu.test(percent?.[2] ?? '')
    ? { by: 'share', ofFull: value / 100 }
    : { by: 'percent-of-oils', percent: value };
}

const PER = /\s*(?:\/(?=\s*[a-zñ])|\bper\b|\bpor\b|\ba\b)\s*/iu;
const CUP = /^(?:(?:us|a|la|cada) )?(?:cups?|c|tazas?)(?: (?:of batter|de masa|de mezcla))?$/iu;
const POUND = /^(?:(?:a|cada) )?(?:lbs?|pounds?|libras?)(?: (?:of |de )?(?:oils?|aceites?))?$/iu;
const POUND_SHORT = /\s*\b(?:ppo|tpo)$/iu;

function parseSpoons(text: string): Strength | undefined {
  if (text.length > 60) return undefined;
  const short = text.trim().replace(POUND_SHORT, '');
  const [count, per, ...more] = short.split(PER);
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
  // "Half" is half of full colour, never half a teaspoon.
  if (unit === undefined && !/[\d½¼¾⅓⅔⅛⅜⅝⅞]/u.test(text)) return undefined;
  const sign = written.negative ? -1 : 1;
  if (unit === undefined || unit === 'teaspoon') return sign * counts[0]!;
  return unit === 'tablespoon' ? sign * counts[0]! * 3 : undefined;
}
