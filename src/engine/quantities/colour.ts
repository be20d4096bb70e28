import { formatHex, parse } from 'culori';
import { refuse } from '../refusal.ts';
import { excerpt } from '../text/excerpt.ts';
import { plainText } from './number.ts';

declare module '../refusal.ts' {
  interface Reasons {
    /** `nearest`: names of colours that are spelt most like it. */
    'colour-unreadable': { text: string; nearest?: readonly string[] };
  }
}

/** A colour name, maybe in two words, or a function of plain numbers. */
const WRITTEN = /^(?:[a-z]+(?: [a-z]+)*|(?:rgb|hsl)a?\([\d\s.,%/+-]+(?:deg)?[\d\s.,%/+-]*\))$/u;

/**
 * Reads a colour as `#rrggbb` in sRGB: hex of three or six digits with or without `#` (`4b3f9e`, `#4BF`), a CSS colour
 * name (`rebeccapurple`, either spelling of grey) or an `rgb()` or `hsl()` form (CSS Color Module 4). Transparency is
 * dropped. Throws a Refusal `colour-unreadable`.
 */
export function parseColour(text: string): string {
  const plain = plainText(text.slice(0, 60)).toLowerCase();
  const hex = /^#?([\da-f]{3}|[\da-f]{6})$/u.exec(plain)?.[1];
  // The library's parser stumbles over stray characters, so only what looks like CSS reaches it.
  const css = text.length <= 60 && WRITTEN.test(plain) ? plain.replace(/(?<=[a-z]) (?=[a-z])/gu, '') : '';
  const colour = parse(hex === undefined ? css : `#${hex}`);
  if (!colour) refuse('colour-unreadable', { text: excerpt(text) });
  return formatHex(colour);
}
