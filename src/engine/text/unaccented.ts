import { unfolded } from './bounded.ts';

/** Lower case without accents, of bounded length: how every reader here takes a text before it compares. */
export const unaccented = (text: string, most?: number): string =>
  unfolded(text, 'NFKD', most).replace(/\p{M}/gu, '').toLowerCase();
