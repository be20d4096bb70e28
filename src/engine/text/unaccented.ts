import { LONGEST_TEXT, unfolded } from './bounded.ts';

/** What has neither accents nor another form: nearly every word of the lexicons. */
const PLAIN = /^[\x20-\x7e]*$/;

/** Where a fraction character stands right behind a whole number: "1½" is one and a half, and no eleven halves. */
const MIXED = /(?<=\d)(?=[¼-¾⅐-⅞])/gu;
/** The stroke of what a fraction character unfolds into. */
const FRACTION_STROKE = /\u2044/gu;

/** Lower case without accents, ½ as 1/2, of bounded length: how every reader here takes a text before it compares. */
export const unaccented = (text: string, most = LONGEST_TEXT): string =>
  text.length <= most && PLAIN.test(text)
    ? text.toLowerCase()
    : unfolded(text.replace(MIXED, ' '), 'NFKD', most)
        .replace(/\p{M}/gu, '')
        .replace(FRACTION_STROKE, '/')
        .toLowerCase();

/**
 * {@link unaccented} for readers of amounts, to which ½ is one character: lower case without accents, all else as it is written.
 * For words, and for texts that were bounded before.
 */
export const deaccented = (text: string): string =>
  PLAIN.test(text) ? text.toLowerCase() : text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
