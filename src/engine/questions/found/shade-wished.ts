import { spaced } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';
import type { NamedThing } from './names/named-thing.ts';
import { type Target, wishIn } from './target-in.ts';
import type { Words } from './words-of.ts';

/** Plain hues tell what a powder is or how strong it is wanted, and no shade of their own. */
const PLAIN_HUES = new Set(
  spaced`
    red green blue yellow orange purple violet pink white black brown grey gray rojo roja verde azul
    amarillo amarilla naranja morado morada violeta rosa blanco blanca negro negra marron cafe gris
  `.split(' '),
);
const isPlainHue = (text: string): boolean =>
  unaccented(text)
    .split(' ')
    .every(word => PLAIN_HUES.has(word) || DEGREE.test(word));
const DEGREE =
  /^(?:light|pale|soft|pastel|medium|full|deep|dark|strong|bright|nice|good|clar[oa]|clarit[oa]|palid[oa]|suave|medio|fuerte|intens[oa]|oscur[oa])$/u;

/**
 * The shade that a dose is to come to, said in whatever words: "denim, not navy", "the colour of a brick chimney". A plain hue is none. Pure.
 */
export function shadeWished(words: Words, things: readonly NamedThing[]): Target | undefined {
  const wish = wishIn(words, things);
  return wish && !isPlainHue(wish.text) ? wish : undefined;
}
