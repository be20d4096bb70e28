import { unbroken } from '../../over-lines.ts';
import { openNames } from '../../text/colours/colour-lists.ts';
import { colourNamed } from '../../text/colours/colour-name.ts';
import { FOLDED_WORDS, foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import type { NamedThing } from './names/named-thing.ts';
import type { Words } from './words-of.ts';

/** A wished colour: as it was typed, and what was understood. */
export type Target = { readonly text: string; readonly hex: string; readonly name: string };

const BEFORE_TARGET = new RegExp(
  unbroken`
    \b(?:to get|to make|make it|make me|make|get|achieve|mix|reach|for|hit|match|hago|hacer|saco|sacar|
    consigo|conseguir|logro|lograr|obtengo|obtener|busco|buscaba|buscando|se hace|quiero|want|need|necesito|
    salga|quede|lograr|recipe for|receta (?:de|para))\s+(?:it |me |mi |my |this |to |get |make |a |an |the |
    un |una |el |la |al |colou?r |tono |de |of |some |like )*(.+)$
  `,
  'u',
);
const AFTER_TARGET = new RegExp(
  unbroken`
    \s+(?:from|with|out of|using|i (?:only |just )?(?:got|have)|con|usando|de mi|de lo que|in (?:cp|cold|my|
    soap|lye|\d)|for \d|para \d|en (?:cp|jabon|mi|\d)|on my shelf|soaps?|bars?|jabon(?:es)?|pastillas?|how|
    if|but i|sin|without|please|porfa\w*|por favor|because|since|so|my (?:base|batter|soap|oils)|mi (?:base|
    masa|mezcla|jabon)|pero|porque|and i do|(?:and |but )?all i|lo unico|[?!;.,]|en que|que no|solo con|
    si (?:tengo|solo)|that|which)(?:\s.*|$)
  `,
  'u',
);

/** "Verde oliva cómo lo saco, tengo …": the wish first, then how it is made. */
const HEADED = new RegExp(
  unbroken`
    ^(?:hi |hello |hola |a |an |un |una |el |the )*((?:\p{L}+ ){0,3}\p{L}+)\s*,?\s+(?:como|how) (?:lo |la |
    se |do (?:i|you) |to |can i )*(?:saco|saca|consigo|hago|hace|logro|obtengo|get|make|mix|
    do)(?: it| that)?(?=\s*[,;.?!]|$)
  `,
  'u',
);
/** What somebody owns stands behind a verb of making and is no wish. */
const OWNED = /^[^\p{L}\d#]*(?:tengo|i have|ive|i got|have|got|solo tengo|only have)(?!\p{L})/u;

/** "#7fa37a", "hex 808000", "8a9a5b", "rgb(120, 80, 90)". */
const HEX = new RegExp(
  unbroken`
    #[\da-f]{6}\b|#[\da-f]{3}\b|(?<=\bhex(?:adecimal)? (?:(?:code|value|colou?r|codigo) )?)[\da-f]{6}\b|
    \b(?=[\da-f]*\d)(?=[\da-f]*[a-f])[\da-f]{6}\b|\brgb ?\([\d ,.%]{5,24}\)
  `,
  'iu',
);

/** The colour that a question wishes, as far as a turn of phrase tells that it is one. */
export function targetIn(question: string, words: Words, things: readonly NamedThing[]): Target | undefined {
  const { text } = words;
  const hex = HEX.exec(question.slice(0, 2000))?.[0].toLowerCase();
  const read = hex === undefined ? undefined : colourNamed(/^[\da-f]{6}$/u.test(hex) ? `#${hex}` : hex)?.hex;
  if (hex !== undefined && read !== undefined)
    return { text: hex.startsWith('rgb') ? read : hex.replace(/^(?!#)/u, '#'), hex: read, name: read };
  const given = GIVES.exec(text)?.[1];
  const gives = given !== undefined && isColourWord(foldedColour(given)) ? colourNamed(given) : undefined;
  if (given !== undefined && gives) return { text: given, hex: gives.hex, name: gives.name };
  const asked = /\b(?:what|que|which) ((?:\p{L}+ )?\p{L}+) (?:can i|could i|puedo|podria)\b/u.exec(text)?.[1];
  const head = /\b(?:como|how)\s*\?*$/u.test(text)
    ? text.replace(/\s+(?:solo|only|con|with|sin|,|how|como).*$/u, '')
    : HEADED.exec(text)?.[1];
  const fallback = WISHES.test(text) ? wishIn(words, things) : undefined;
  const behind = BEFORE_TARGET.exec(text)?.[1]?.replace(AFTER_TARGET, '').trim();
  const phrase = asked ?? (behind !== undefined && !OWNED.test(behind) ? behind : undefined) ?? head;
  if (phrase === undefined || phrase === '' || phrase.split(' ').length > 8 || /\d/u.test(phrase))
    return fallback;
  // What can be wetted is no wish: "how do I mix titanium dioxide".
  if (
    things.some(
      thing =>
        thing.text === phrase &&
        thing.colourants.length > 0 &&
        /\b(?:oxide|mica|clay|oxido|arcilla|dioxide|lake)\b/u.test(phrase),
    )
  )
    return undefined;
  // "Para que el azul no quede gris": what is not to happen is no colour that is wished.
  if (NOT_TO_BECOME.test(text)) return fallback;
  const named = colourNamed(phrase);
  // "A recipe of maize cakes" wishes no colour: a thing is one only where colour is spoken of.
  if (!named || (isOnlyThing(named.name) && !/\b(?:colou?r|tono|tone|shade|like|como)\b/u.test(text)))
    return fallback;
  return { text: phrase, hex: named.hex, name: named.name };
}

/** "Pa q el azul no quede gris", "so that it does not go grey": what a colour is kept from. */
const NOT_TO_BECOME = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:para|pa) (?:que|q) (?:\p{L}+ ){0,4}?no (?:se |me |le |te )*(?:qued|salg|pong|vuelv|
    v[ae]y|hag|vir|cambi|agris|oscure)\p{L}*|(?:stop|keep|prevent) (?:\p{L}+ ){1,4}?(?:from )?(?:going|
    turning|becoming|looking)|so (?:that )?(?:\p{L}+ ){1,4}?(?:doesn?'?t|does not|wont|won't|
    will not) (?:go|turn|become|look))(?!\p{L})
  `,
  'u',
);

/** "Azul + rosa da lila?": what a mix is to come to. */
const GIVES = /\b(?:da|dan|dara|gives?|yields?)\s+(?:me |a |an |un |una )?(\p{L}+)(?! (?:or|o) )/u;

const isOnlyThing = (name: string): boolean =>
  !name.includes(' ') && !isColourWord(name) && !/^#/u.test(name);

/** Turns of phrase that ask for a mix, whatever the order of words: "olive green what colors do i use". */
const WISHES = new RegExp(
  unbroken`
    \b(?:mix|blend|combin\w+|mezcl[oa]\w*|junto|what colors?|which (?:colors?|pigments?|micas?)|
    que (?:colores|uso)|how would i|close to|yields?|gives?|con que)\b
  `,
  'u',
);
const MARK = /^[^\p{L}\d#]+$/u;
const DEPTH = new RegExp(
  unbroken`
    ^(?:light|dark|deep|pale|dusty|bright|warm|soft|muted|burnt|hot|baby|claro|clara|oscuro|oscura|viejo|
    quemado|palido|fuerte|pastel|clarit[oa]|oscurit[oa]|suavecit[oa]|palidit[oa])$
  `,
  'u',
);

/**
 * The longest of the trade's words for a colour that is no part of a colourant's name, else a name of several words from the
 * open list: what is wished where a mix is asked for in whatever order of words.
 */
export function wishIn({ words: all }: Words, things: readonly NamedThing[]): Target | undefined {
  return longest(all, things, name => isColourWord(name)) ?? longest(all, things, isLongName);
}

/** As {@link wishIn}, and where a mix is surely asked for by a thing that has the colour: "calipso", "como las orquídeas". */
export const wishOfThing = (words: Words, things: readonly NamedThing[]): Target | undefined =>
  longest(words.words, things, name => name.length > 3 && FOLDED_WORDS.has(name)) ??
  longest(words.words, things, name => name.length > 4 && FOLDED_WORDS.has(name.replace(/s$/u, '')));

/** "Clarito" is pale as "claro" is. */
const DIMINUTIVE = /(?<!\p{L})(clar|oscur)it([oa])(?!\p{L})/gu;

const OLIVE = /^(?:olives?|oliva)$/u;
const OILS = /^(?:oils?|aceites?)$/u;
const OF_AN_OIL = /^(?:olives?|oils?|aceites?)$/u;
const NOT_LIKE = new RegExp(
  unbroken`
    (?<!\p{L})(?:not|isn'?t|don'?t want|no|ni|sin|instead of|en vez de)(?: (?:look\p{L}*|be|quiero|parezca|
    parecer|sea|quede|salga|todo|all))*(?: (?:like|as|como|a|an|un|una|hot|too|tan|muy))*$
  `,
  'u',
);

const isLongName = (name: string): boolean => name.includes(' ') && name.length > 8 && openNames().has(name);

function longest(
  all: readonly string[],
  things: readonly NamedThing[],
  isName: (name: string) => boolean,
): Target | undefined {
  const words = all.slice(0, 60);
  const isFree = (from: number, to: number) => !things.some(one => from < one.to && one.from < to);
  for (let length = 4; length > 0; length -= 1)
    for (let at = 0; at + length <= words.length; at += 1) {
      const name = foldedColour(words.slice(at, at + length).join(' '));
      if (words.slice(at, at + length).some(word => MARK.test(word))) continue;
      // "That dark green olive": an oil by its hue, and no colour that is wished.
      if (
        OF_AN_OIL.test(words[at + length] ?? '') ||
        (OLIVE.test(words[at + length - 1]!) && words.some(word => OILS.test(word)))
      )
        continue;
      // "Que no parezca cemento", "not like asphalt": what it is not to be.
      if (NOT_LIKE.test(words.slice(Math.max(0, at - 4), at).join(' '))) continue;
      if (!isFree(at, at + length) || !isName(name)) continue;
      const from = DEPTH.test(words[at - 1] ?? '') ? at - 1 : at;
      const to = DEPTH.test(words[at + length] ?? '') ? at + length + 1 : at + length;
      const wish = words.slice(from, to).join(' ');
      const named = colourNamed(wish.replace(DIMINUTIVE, '$1$2'));
      if (named) return { text: wish, hex: named.hex, name: named.name };
    }
  return undefined;
}
