import { unfolded } from '../text/bounded.ts';

/** What a written decimal may mean: nothing, one value, or two when its only mark could group thousands. */
export type Readings = readonly [] | readonly [number] | readonly [decimal: number, thousands: number];

/**
 * Reads digits with a comma or a full stop as decimal mark, and thousands grouped by space, comma, stop or
 * apostrophe. `1,500` and `1.500` are both 1.5 and 1500 somewhere in the world, so both readings come back and
 * the caller decides by range or asks. Decimal marks: BIPM SI Brochure, 9th edition, 5.4.4.
 */
export function readDecimal(text: string): Readings {
  if (/^\d+$/u.test(text)) return [Number(text)];
  if (/^\d{1,3}(?:[ '’]\d{3})+(?:[.,]\d+)?$/u.test(text)) {
    return [Number(text.replace(/[ '’]/gu, '').replace(',', '.'))];
  }
  if (/^\d*[.,]\d+$/u.test(text)) {
    const decimal = Number(text.replace(',', '.'));
    return /^[1-9]\d{0,2}[.,]\d{3}$/u.test(text) ? [decimal, Number(text.replace(/[.,]/u, ''))] : [decimal];
  }
  if (/^\d{1,3}(?:,\d{3})+\.\d+$/u.test(text) || /^\d{1,3}(?:,\d{3}){2,}$/u.test(text)) {
    return [Number(text.replaceAll(',', ''))];
  }
  if (/^\d{1,3}(?:\.\d{3})+,\d+$/u.test(text) || /^\d{1,3}(?:\.\d{3}){2,}$/u.test(text)) {
    return [Number(text.replaceAll('.', '').replace(',', '.'))];
  }
  return [];
}

/**
 * A number that stands alone in a field: a decimal as {@link readDecimal} takes it, the first of its readings, with a minus
 * before it and `%` or `g` behind it if need be (`-5 %`, `0,1 g`). Undefined for anything else.
 */
export function readAlone(text: string): number | undefined {
  const [, minus, digits = ''] = /^(-?)(.*?)[%g\s]*$/u.exec(text.trim()) ?? [];
  const value = readDecimal(digits)[0];
  return value !== undefined && minus === '-' ? -value : value;
}

/** Whether a figure stands in a text. */
export const hasFigure = (text: string): boolean => /\d/u.test(text);

/** Counting words and parts in English and Spanish, without accents. */
const COUNTING: ReadonlyMap<string, number> = new Map(
  Object.entries({
    a: 1,
    an: 1,
    one: 1,
    un: 1,
    una: 1,
    uno: 1,
    two: 2,
    dos: 2,
    three: 3,
    tres: 3,
    four: 4,
    cuatro: 4,
    five: 5,
    cinco: 5,
    six: 6,
    seis: 6,
    seven: 7,
    siete: 7,
    eight: 8,
    ocho: 8,
    nine: 9,
    nueve: 9,
    ten: 10,
    diez: 10,
    eleven: 11,
    once: 11,
    twelve: 12,
    doce: 12,
  }),
);
const PARTS: ReadonlyMap<string, number> = new Map(
  Object.entries({
    half: 1 / 2,
    halves: 1 / 2,
    media: 1 / 2,
    medio: 1 / 2,
    third: 1 / 3,
    thirds: 1 / 3,
    tercio: 1 / 3,
    tercios: 1 / 3,
    quarter: 1 / 4,
    quarters: 1 / 4,
    cuarto: 1 / 4,
    cuartos: 1 / 4,
    eighth: 1 / 8,
    eighths: 1 / 8,
    octavo: 1 / 8,
    octavos: 1 / 8,
    sixteenth: 1 / 16,
    sixteenths: 1 / 16,
  }),
);

/** The whole number a word counts (`two`, `una`), or undefined. The word is lower case without accents. */
export function countOf(word: string): number | undefined {
  return COUNTING.get(word);
}

/** The part a word names (`half`, `cuarto`), or undefined. The word is lower case without accents. */
export function partOf(word: string): number | undefined {
  return PARTS.get(word);
}

/** Vulgar-fraction characters (Unicode Number Forms and Latin-1) as they are typed on a plain keyboard. */
const VULGAR: ReadonlyMap<string, string> = new Map(
  Object.entries({
    '¼': '1/4',
    '½': '1/2',
    '¾': '3/4',
    '⅓': '1/3',
    '⅔': '2/3',
    '⅕': '1/5',
    '⅖': '2/5',
    '⅗': '3/5',
    '⅘': '4/5',
    '⅙': '1/6',
    '⅚': '5/6',
    '⅛': '1/8',
    '⅜': '3/8',
    '⅝': '5/8',
    '⅞': '7/8',
    '⅒': '1/10',
  }),
);

/** One way of writing for what phones and keyboards write in many: fraction characters, wide digits, odd spaces and dashes. */
export function plainText(text: string): string {
  const plain = text.replace(/[¼-¾⅐-⅞]/gu, mark => ` ${VULGAR.get(mark) ?? mark}`);
  return unfolded(plain, 'NFKC')
    .replace(/[\u2044\u2215]/gu, '/')
    .replace(/[\u2010-\u2015\u2212]/gu, '-')
    .replace(/\s+/gu, ' ')
    .trim();
}

/** A number as written in a message: three significant digits, a full stop, never a form that could mean thousands. */
export function printNumber(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError('only finite numbers can be printed');
  const size = Math.abs(value);
  if (size >= 100) return String(Math.round(value));
  const decimals =
    size >= 10 ? 1 : size >= 1 ? 2 : size === 0 ? 0 : Math.min(12, 2 - Math.floor(Math.log10(size)));
  return String(Number(value.toFixed(decimals))).includes('e')
    ? value.toFixed(decimals)
    : String(Number(value.toFixed(decimals)));
}

const KITCHEN_PARTS = [
  [1, 8],
  [1, 4],
  [1, 3],
  [3, 8],
  [1, 2],
  [5, 8],
  [2, 3],
  [3, 4],
  [7, 8],
] as const;

/** A whole number and a part of one, as kitchens count. */
export type KitchenFraction = { readonly whole: number; readonly over: number; readonly under: number };

/** The kitchen fraction within 1 in 500 of a number from 0.1 to 21: 1 and 1/2 of 1.5; undefined where there is none. */
export function kitchenFraction(value: number): KitchenFraction | undefined {
  const whole = Math.floor(value);
  if (value < 0.1 || whole > 20) return undefined;
  // The rounded value is tried as well, so that what was printed once is printed the same again.
  const values = [value, Number(printNumber(value))];
  const near = KITCHEN_PARTS.find(([over, under]) =>
    values.some(one => Math.abs(whole + over / under - one) < one / 500),
  );
  return near && { whole, over: near[0], under: near[1] };
}

/** A number as kitchens write it, `1 1/2`, where it is a {@link kitchenFraction}; else {@link printNumber}. */
export function printMixed(value: number): string {
  const near = kitchenFraction(value);
  if (near === undefined) return printNumber(value);
  return `${near.whole === 0 ? '' : `${near.whole} `}${near.over}/${near.under}`;
}
