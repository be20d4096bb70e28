import { LONGEST_TEXT, unfolded } from './bounded.ts';

/** What has neither accents nor another form: nearly every word of the lexicons. */
const PLAIN = /^[\x20-\x7e]*$/;

/** Lower case without accents, of bounded length: how every reader here takes a text before it compares. */
export const unaccented = (text: string, most = LONGEST_TEXT): string =>
  text.length <= most && PLAIN.test(text)
    ? text.toLowerCase()
    : unfolded(text, 'NFKD', most).replace(/\p{M}/gu, '').toLowerCase();

/**
 * {@link unaccented} for readers of amounts, to which ½ is one character: lower case without accents, all else as it is written.
 * For words, and for texts that were bounded before.
 */
export const deaccented = (text: string): string =>
  PLAIN.test(text) ? text.toLowerCase() : text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
