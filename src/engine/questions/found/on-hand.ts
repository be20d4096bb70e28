import { unbroken } from '../../over-lines.ts';
import type { NamedThing } from './names/named-thing.ts';
import type { Words } from './words-of.ts';

/** Colours that stand for a powder where a list of what is at hand names them alone: the plain pigment of the hue (common practice). */
const PLAIN_PIGMENT: Readonly<Record<string, string>> = {
  red: 'red iron oxide',
  yellow: 'yellow iron oxide',
  orange: 'orange iron oxide',
  brown: 'brown iron oxide',
  black: 'black iron oxide',
  blue: 'ultramarine blue',
  violet: 'ultramarine violet',
  pink: 'ultramarine pink',
  green: 'chromium oxide green',
  white: 'titanium dioxide',
};
/** The hues as both languages call them, lower case without accents. */
const HUES: ReadonlyMap<string, string> = new Map(
  Object.entries({
    red: 'red roj[oa]s?',
    yellow: 'yellow amarill[oa]s?',
    orange: 'orange naranjas?',
    brown: 'brown marron(?:es)? cafe',
    black: 'black negr[oa]s?',
    blue: 'blue azul(?:es)?',
    violet: 'violet purple morad[oa]s? violetas? lila',
    pink: 'pink rosas? rosad[oa]s?',
    green: 'green verdes?',
    white: 'white blanc[oa]s?',
  }).map(([hue, names]) => [names.replaceAll(' ', '|'), hue]),
);
const HUE_OF: readonly (readonly [RegExp, string])[] = [...HUES].map(([names, hue]) => [
  new RegExp(`^(?:${names})$`, 'u'),
  PLAIN_PIGMENT[hue]!,
]);

/** What opens a list of what is at hand, or of what a colour is to be made from. */
const OPENS = new RegExp(
  unbroken`
    ^(?:hand|mano|have|got|ive|i've|own|tengo|tenemos|hay|having|using|usando|from|with|con|desde|teniendo|partir|only|solo|solamente|between|entre)$
  `,
  'u',
);
/** What may stand within such a list, and joins it to what is told of it: "con el rojo y el azul que tengo". */
const LIST_WORD = new RegExp(
  unbroken`
    ^(?:[,:+&]|and|or|y|e|o|plus|mas|a|an|the|some|el|la|los|las|un|una|my|mi|mis|just|only|solo|solamente|nada|de|of|de:|both|
    oxides?|oxidos?|pigments?|pigmentos?|micas?|powders?|polvos?|mineral(?:es)?|little|bit|poco|poquito|tambien|also|i|have|tengo|is|are|es|son|
    what|lo|que|to|hand|mano)$
  `,
  'u',
);
const OWNS = /^(?:hand|mano|have|got|ive|i've|own|tengo|tenemos|hay|having|teniendo|only|solo|solamente)$/u;
/** What is not there, whatever stands behind it. */
const DENIED = /^(?:no|not|without|sin|don't|dont|haven't|havent|ni|nunca|never)$/u;

/**
 * The colourants that a question tells to be at hand, or that a colour is to be made from, two and more: each by its name, a bare hue by the plain
 * pigment of it ("I have red, white and yellow"). Empty where fewer are told. Pure.
 */
export function onHandIn({ words }: Words, things: readonly NamedThing[]): readonly string[] {
  let best: readonly string[] = [];
  for (const [at, word] of words.entries()) {
    if (!OPENS.test(word)) continue;
    if (words.slice(Math.max(0, at - 2), at).some(one => DENIED.test(one))) continue;
    const { names, to } = listFrom(at + 1, words, things);
    // "Purple from red + blue": which powders, nobody told; what hues come to is told in general.
    const isOwned = OWNS.test(word) || words.slice(at, to).some(one => OWNS.test(one));
    const isNamed = things.some(({ from }) => at < from && from < to);
    if ((isOwned || isNamed) && names.length > best.length) best = names;
  }
  return best.length > 1 ? best : [];
}

/** Names and hues from a place on, as long as nothing but what joins a list stands between them. */
function listFrom(
  start: number,
  words: readonly string[],
  things: readonly NamedThing[],
): { readonly names: readonly string[]; readonly to: number } {
  const names = new Set<string>();
  let at = start;
  while (at < words.length) {
    const thing = things.find(({ from, to }) => from <= at && at < to);
    const hue = thing ? undefined : HUE_OF.find(([pattern]) => pattern.test(words[at]!))?.[1];
    if (thing && thing.colourants.length > 0) names.add(thing.text);
    else if (hue !== undefined) names.add(hue);
    else if (!LIST_WORD.test(words[at]!)) break;
    at = thing ? thing.to : at + 1;
  }
  return { names: [...names], to: at };
}
