import { unbroken } from '../../over-lines.ts';
import { openNames } from './colour-lists.ts';
import { between, type FoundColour as Found } from './colour-shades.ts';
import { FOLDED_WORDS } from './folded-colours.ts';

/* Colours that are told by way of two others: "between teal and navy", "olive but greener", "white with a bit of pink". */

/** Hue turns towards the other colour: "purple but more on the blue side", "white with a tiny bit of pink". */
const TOWARDS = new RegExp(
  unbroken`
    ^(.+?)\s+(?:but |pero )?(?:w|with|con|and|y)?\s*(?:more on the|leaning(?: to| toward)?s?|tirando a|
    mas hacia el|hacia el|toward|towards|que tira a|un toque de|tiny bit of|a tiny bit of|hint of|a hint of|
    touch of|a touch of|a drop of|una pizca de|con un toque|a little|a bit of|mas)\s+(.+?)(?: side| tone)?$
  `,
  'u',
);
/** "somewhere between teal and navy", "a medio camino entre azul y morado". */
const BETWEEN = /\b(?:between|entre)\s+(.+?)\s+(?:and|y|n)\s+(.+)$/u;
/** "more orange than peach", "less yellow than mustard", "mas verde que el oliva". */
const MORE_THAN =
  /\b(more|less|mas|menos) (\p{L}+(?: \p{L}+)?) (?:than|que) (?:the |el |la |a |an |un |una )?(.+)$/u;
/** "olive but greener", "teal leaning green", "slate, leaning to blue": a hue in -er, -ish or -y. */
const HUED = new RegExp(
  unbroken`
    ^(.+?) (?:but|pero|only|leaning|tirando a?) (?:a bit |a little |slightly |un poco |more |mas |to |
    towards )*(red|orange|yellow|green|blue|purple|pink|brown|gre?y|white|black|redd|bluer?|greener?|
    pinker?|redder|yellower|browner|rojo|naranja|amarillo|verde|azul|morado|rosa|gris|blanco|negro|rojizo|
    verdoso|azulado|rosado|amarillento|grisaceo)(?:er|r|ish)?$
  `,
  'u',
);
const PLAIN_HUE: Readonly<Record<string, string>> = {
  redder: 'red',
  greener: 'green',
  bluer: 'blue',
  pinker: 'pink',
  yellower: 'yellow',
  browner: 'brown',
  rojizo: 'rojo',
  verdoso: 'verde',
  azulado: 'azul',
  rosado: 'rosa',
  amarillento: 'amarillo',
  grisaceo: 'gris',
};
/** The longest run of words that is a colour's name; among equals the trade's own words, then the last. */
export function longestName(words: readonly string[]): Found | undefined {
  let best: Found | undefined;
  for (let length = Math.min(6, words.length); length > 0; length -= 1) {
    for (let at = 0; at + length <= words.length; at += 1) {
      const name = words.slice(at, at + length).join(' ');
      const trade = FOLDED_WORDS.get(name);
      const hex = trade ?? (length > 1 || words.length === 1 ? openNames().get(name) : undefined);
      if (hex !== undefined && (best === undefined || (trade !== undefined && !best.trade)))
        best = { hex, name, length, trade: trade !== undefined };
    }
    if (best?.trade) return best;
  }
  return best;
}

/** A colour between two, or past one: "more orange than peach", "slate, leaning to blue". As hex. */
export function comparedIn(said: string): string | undefined {
  const ends = BETWEEN.exec(said)
    ?.slice(1)
    .map(end => longestName(end.split(' ')));
  if (ends?.[0] && ends[1]) return between(ends[0].hex, ends[1].hex, 0.5);
  const more = MORE_THAN.exec(said);
  const hue = HUED.exec(said);
  const [towards, base] = more
    ? [longestName(more[2]!.split(' ')), longestName(more[3]!.split(' '))]
    : [longestName([PLAIN_HUE[hue?.[2] ?? ''] ?? hue?.[2] ?? '']), longestName((hue?.[1] ?? '').split(' '))];
  if (!towards || !base || towards.name === base.name) return undefined;
  const isLess = more?.[1] === 'less' || more?.[1] === 'menos';
  return between(base.hex, towards.hex, isLess ? -0.2 : 0.25);
}

/** A colour that turns a little towards another: "purple but more on the blue side". As hex. */
export function turnedIn(said: string): string | undefined {
  const towards = TOWARDS.exec(said);
  const [first, second] = [towards?.[1], towards?.[2]].map(part => part && longestName(part.split(' ')));
  if (first && second && first.name !== second.name) {
    const little = /\b(?:tiny|hint|touch|drop|pizca|toque|little|bit)\b/u.test(said);
    return between(first.hex, second.hex, little ? 0.15 : 0.4);
  }
  return undefined;
}
