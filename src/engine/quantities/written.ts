import { countOf, partOf, plainText, type Readings, readDecimal } from './number.ts';
import { plainWord, qualifiedUnit, type Unit, unitOfWord } from './unit-words.ts';

/** One piece of what was written: a count with its possible readings, and its unit when one follows. */
export type Term = {
  readonly counts: readonly number[];
  readonly written: string;
  readonly unit: Unit | undefined;
  /** Whether a word or sign says that it is added to the one before, or taken from it. */
  readonly isAdded: boolean;
  /** Whether a comma, a bracket or an equals sign parts it from the one before. */
  readonly isApart: boolean;
};

/** What a text says, before any range is checked. `words` are those that are neither count nor unit. */
export type Written = {
  readonly terms: readonly Term[];
  readonly words: readonly string[];
  readonly negative: boolean;
};

/** No honest amount is longer; anything beyond is not looked at. */
export const LONGEST_AMOUNT = 100;

const TOKEN =
  /\d{1,3}(?:[ '’]\d{3})+(?![\d/])(?: ?\/ ?)?(?:[.,]\d+)?|\d[\d.,]*\d|[.,]?\d+|cm3|[\p{L}\p{M}]+\.?|[#+/-]|\S/giu;

const JOINING: ReadonlySet<string> = new Set([
  'and',
  'y',
  'e',
  'plus',
  'mas',
  'con',
  '+',
  'of',
  'de',
  'del',
  'the',
  'los',
  'las',
  ',',
  '(',
  ')',
  '=',
]);
/** Between two amounts, these make one sum of them. */
const ADDING: ReadonlySet<string> = new Set(['and', 'y', 'e', 'plus', 'mas', 'con', '+']);
const APART: ReadonlySet<string> = new Set([',', '(', '=']);
const LESS: ReadonlySet<string> = new Set(['less', 'minus', 'menos']);
const IMPERIAL: ReadonlySet<string> = new Set(['imperial', 'uk', 'british']);
/** Cups, spoons and pints are those of the United States unless said. */
const CUSTOMARY: ReadonlySet<string> = new Set([
  'us',
  'usa',
  'american',
  'americana',
  'americanas',
  'gringa',
  'gringas',
]);
const METRIC: ReadonlySet<string> = new Set(['metric', 'metrica', 'metricas']);

/** Splits a text into counts with units and the words around them. Undefined when a number in it cannot be read. */
export function readWritten(text: string): Written | undefined {
  if (text.length > LONGEST_AMOUNT) return undefined;
  const tokens = plainText(text).match(TOKEN) ?? [];
  const negative = tokens[0] === '-';
  const terms: Term[] = [];
  const words: string[] = [];
  let at = negative ? 1 : 0;
  let end = at;
  while (at < tokens.length) {
    // "a cup less a tablespoon"
    const isLess = terms.length > 0 && LESS.has(plainWord(tokens[at]!));
    if (isLess && readCount(tokens, at + 1) !== undefined) at += 1;
    const taken = isLess && LESS.has(plainWord(tokens[at - 1]!));
    const count = readCount(tokens, at);
    // A minus inside ("1 cup - 2 Tbsp") or a figure we cannot read is never guessed at.
    if (count === undefined && (tokens[at] === '-' || (/\d/u.test(tokens[at]!) && tokens[at] !== 'cm3')))
      return undefined;
    const unit = readUnit(tokens, count?.next ?? at);
    if (count === undefined && unit === undefined) {
      const word = plainWord(tokens[at]!);
      if (!JOINING.has(word)) words.push(word);
      at += 1;
      continue;
    }
    const next = unit?.next ?? count!.next;
    const half = unit === undefined ? undefined : readHalf(tokens, next);
    // A unit alone is a count of one only in "taza y media"; otherwise the count is missing.
    if (count === undefined && half === undefined) return undefined;
    const counts = (count?.readings ?? [1]).map(value => (taken ? -1 : 1) * (value + (half?.more ?? 0)));
    const between = tokens.slice(end, at).map(plainWord);
    at = half?.next ?? next;
    end = at;
    terms.push({
      counts,
      written: count?.written ?? '1',
      unit: unit?.unit,
      isAdded: taken || between.some(word => ADDING.has(word)),
      isApart: between.some(word => APART.has(word)),
    });
  }
  return { terms, words, negative };
}

type Count = { readonly readings: readonly number[]; readonly written: string; readonly next: number };

function readCount(tokens: readonly string[], at: number): Count | undefined {
  const first = tokens[at];
  if (first === undefined) return undefined;
  const word = plainWord(first);
  const part = partOf(word);
  if (part !== undefined) return { readings: [part], written: word, next: skipArticle(tokens, at + 1) };
  const counted = countOf(word);
  const readings: Readings = counted === undefined ? readDecimal(first) : [counted];
  if (readings.length === 0) return undefined;
  if (tokens[at + 1] === '/') return readFraction(tokens, at, 0);
  if (readings.length === 2) return { readings, written: first, next: at + 1 };
  return readMixed(tokens, at, readings[0]!) ?? { readings, written: first, next: at + 1 };
}

/** `1 1/2`, `1-1/2`, `two and a half`, `three quarters of a`. */
function readMixed(tokens: readonly string[], at: number, whole: number): Count | undefined {
  const named = partOf(plainWord(tokens[at + 1] ?? ''));
  if (named !== undefined) {
    return { readings: [whole * named], written: tokens[at]!, next: skipArticle(tokens, at + 2) };
  }
  const half = readHalf(tokens, at + 1);
  if (half !== undefined) return { readings: [whole + half.more], written: tokens[at]!, next: half.next };
  const next = ['-', 'and', 'y'].includes(tokens[at + 1] ?? '') ? at + 2 : at + 1;
  if (!Number.isInteger(whole) || tokens[next + 1] !== '/') return undefined;
  const fraction = readFraction(tokens, next, whole);
  return fraction !== undefined && fraction.readings[0]! < whole + 1 ? fraction : undefined;
}

function readFraction(tokens: readonly string[], at: number, whole: number): Count | undefined {
  const [over, , under] = [tokens[at] ?? '', tokens[at + 1], tokens[at + 2] ?? ''];
  if (!/^\d{1,4}$/u.test(over) || !/^\d{1,4}$/u.test(under) || Number(under) === 0) return undefined;
  const written = `${whole === 0 ? '' : `${whole} `}${over}/${under}`;
  return { readings: [whole + Number(over) / Number(under)], written, next: skipArticle(tokens, at + 3) };
}

/** What comes on top of a count, and where reading goes on. */
type Half = { readonly more: number; readonly next: number };

/** After "and a half" or "y media": where reading goes on, or undefined when it is not there. */
function readHalf(tokens: readonly string[], at: number): Half | undefined {
  const words = [0, 1, 2].map(step => plainWord(tokens[at + step] ?? ''));
  if (words[0] === 'y' && (words[1] === 'media' || words[1] === 'medio')) return { more: 0.5, next: at + 2 };
  if (words[0] === 'y' && words[1] === 'cuarto') return { more: 0.25, next: at + 2 };
  if (words[0] !== 'and' || (words[1] !== 'a' && words[1] !== 'half')) return undefined;
  if (words[1] === 'half') return { more: 0.5, next: at + 2 };
  if (words[2] === 'half') return { more: 0.5, next: at + 3 };
  return words[2] === 'quarter' ? { more: 0.25, next: at + 3 } : undefined;
}

/** Skips "of a", "a", "de" between a part and its unit: "half a cup", "un cuarto de taza". */
function skipArticle(tokens: readonly string[], at: number): number {
  let next = at;
  if (['of', 'de'].includes(plainWord(tokens[next] ?? ''))) next += 1;
  if (['a', 'an', 'una', 'un'].includes(plainWord(tokens[next] ?? ''))) next += 1;
  return readUnit(tokens, next) === undefined ? at : next;
}

function readUnit(tokens: readonly string[], from: number): { unit: Unit; next: number } | undefined {
  let at = from;
  let word = plainWord(tokens[at] ?? '');
  const before = qualifierOf(word);
  if (before !== undefined || CUSTOMARY.has(word)) word = plainWord(tokens[++at] ?? '');
  let unit: Unit | undefined;
  const second = plainWord(tokens[at + 1] ?? '');
  if (['fl', 'fluid'].includes(word) && unitOfWord(second) === 'ounce') [unit, at] = ['fluid-ounce', at + 1];
  else if (unitOfWord(word) === 'ounce' && /^(?:liquid|fluid)as?$/u.test(second))
    [unit, at] = ['fluid-ounce', at + 1];
  else unit = unitOfWord(tokens[at] ?? '');
  if (unit === undefined) return undefined;
  const behind = plainWord(tokens[at + 1] ?? '');
  if (before === undefined && CUSTOMARY.has(behind)) return { unit, next: at + 2 };
  const after = before ?? qualifierOf(behind);
  if (after === undefined) return { unit, next: at + 1 };
  const qualified = qualifiedUnit(unit, after);
  return qualified === undefined ? undefined : { unit: qualified, next: at + (before === undefined ? 2 : 1) };
}

function qualifierOf(word: string): 'imperial' | 'metric' | undefined {
  if (IMPERIAL.has(word)) return 'imperial';
  return METRIC.has(word) ? 'metric' : undefined;
}
