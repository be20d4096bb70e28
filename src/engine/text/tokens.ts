import { unaccented } from './unaccented.ts';

/** A word, number or mark of the text, folded for comparison, with where it stood. */
export type Token = {
  readonly kind: 'word' | 'number' | 'mark';
  /** Lower case, no accents, no apostrophes, one spelling of colour and grey. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
};

/** Longest text read, in UTF-16 units: a chat message holds 4,000. */
export const LONGEST_WORDS = 5000;

const PIECES =
  /\d+(?:[.,]\d+)?|[\p{L}\p{M}][\p{L}\p{M}\d'’‘`´]*|[½¼¾⅓⅔⅛⅜⅝⅞]|\.{2,}|[.,;:!?¿¡()\n/%+–—→]|->| - /gu;

const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/\bcolor/g, 'colour'],
  [/\bdiscolor/g, 'discolour'],
  [/gray/g, 'grey'],
  [/\bmold(?=$|s|y|ed|ing|er|iness)/g, 'mould'],
  [/\bunmold/g, 'unmould'],
  [/fiber/g, 'fibre'],
  [/glycerine|glycerin|glicerin$/g, 'glycerin'],
];
/** Something that one of the spellings is about; most words are not. */
const SPELT_TWO_WAYS = /color|gray|mold|fiber|gl[iy]cerin/;

/** Folds one word: case, accents, apostrophes, drawn-out letters ("soooo"), US and UK spelling. */
export function foldToken(raw: string): string {
  let text = unaccented(raw, LONGEST_WORDS)
    .replace(/['’‘`´]/g, '')
    .replace(/(\p{L})\1{2,}/gu, '$1$1');
  if (!SPELT_TWO_WAYS.test(text)) return text;
  for (const [pattern, spelling] of SPELLINGS) text = text.replace(pattern, spelling);
  return text;
}

/** Cuts a text into tokens; what is neither letter, digit nor mark (emoji, symbols) is left out. */
export function tokenise(words: string): Token[] {
  const tokens: Token[] = [];
  for (const match of words.matchAll(PIECES)) {
    const raw = match[0];
    const kind = /^\p{L}/u.test(raw) ? 'word' : /^[\d½¼¾⅓⅔⅛⅜⅝⅞]/u.test(raw) ? 'number' : 'mark';
    const text = kind === 'word' ? foldToken(raw) : raw.trim();
    if (text !== '' || raw === '\n')
      tokens.push({
        kind,
        text: raw === '\n' ? '\n' : text,
        start: match.index,
        end: match.index + raw.length,
      });
  }
  return tokens;
}

/**
 * The part of a word that stays when its ending changes, English or Spanish: plural, -ing, -ed,
 * the last vowel of a longer word. Rough on purpose; lexicon and text pass through the same sieve.
 */
export function stem(word: string): string {
  if (word.length <= 3) return word;
  let text = word;
  if (text.endsWith('s') && !text.endsWith('ss')) text = text.slice(0, -1);
  if (word.endsWith('ies')) text = `${word.slice(0, -3)}y`;
  for (const ending of ['ing', 'ed']) {
    const left = text.slice(0, -ending.length);
    if (!text.endsWith(ending) || left.length < 3 || !/[aeiouy]/.test(left)) continue;
    const doubled = /([bdgklmnprt])\1$/.test(left);
    if (doubled) text = left.slice(0, -1);
    else if (left.length >= 4) text = left;
    break;
  }
  if (text.length > 4 && /[aeo]$/.test(text)) text = text.slice(0, -1);
  return text;
}
