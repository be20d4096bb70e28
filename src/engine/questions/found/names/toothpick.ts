import { unbroken } from '../../../over-lines.ts';

/** One word of a thing that colours and of a stick that one draws with. */
const STICK = /^palillos?$/u;
const WITH = /^(?:con|un|unos|punta)$/u;
const DRAWN = new RegExp(
  unbroken`
    ^(?:dibuj\p{L}+|remolin\p{L}+|hund\p{L}+|pinch\p{L}+|clav\p{L}+|arrastr\p{L}+|raya\p{L}*|surco\p{L}*|
    swirl\p{L}*|marmol\p{L}+|veta\p{L}*|profund\p{L}*|dient\p{L}+|madera|bambu)$
  `,
  'u',
);

/** Whether a word that names turmeric is the stick that a swirl is drawn with: "el dibujo de arriba con palillo". Pure. */
export const isToothpick = (
  words: readonly string[],
  { text, from }: { readonly text: string; readonly from: number },
): boolean =>
  STICK.test(text) &&
  (words.some(word => DRAWN.test(word)) || (WITH.test(words[from - 1] ?? '') && !words.includes('polvo')));
