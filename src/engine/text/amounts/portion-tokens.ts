import { knowsColour } from '../colours/known-colours.ts';
import { isName } from '../names/listed-names.ts';
import { isEverydayWord } from './everyday-words.ts';
import { shareAt } from './share-at.ts';
import { isStopWord } from './stop-words.ts';

/** What a word of a division tells. */
export type Token =
  | { readonly is: 'colour'; readonly name: string }
  | { readonly is: 'share'; readonly canonical: string }
  | { readonly is: 'figure'; readonly value: number }
  /** So many equal parts, such as "thirds". */
  | { readonly is: 'even'; readonly parts: number }
  /** `bound`: a colour goes into another, or turns to it. `first`: what follows is told from the bottom up. */
  | { readonly is: 'bottom' | 'middle' | 'top' | 'first' | 'bound' };

/** What is made of a batter, and how its parts lie: none of them tells how much. */
const PARTING =
  /^(?:layers?|stripes?|bands?|colou?rs?|shades?|tones?|parts?|drizzle|swirl|base|background|line|batter|soap|loaf|then|second|third|fourth|fifth|last|next|finally|end(?:ing|s)?|finish(?:ing)?|up|down|upwards?|downwards?|mostly|mainly|ways|apiece|each|them|equal|even|same|split|capas?|franjas?|bandas?|rayas?|tonos?|color(?:es)?|partes?|remolino|fondo|linea|masa|jabon|luego|despues|segund[oa]|tercer[oa]?|cuart[oa]|quint[oa]|ultim[oa]|final(?:mente)?|terminar|termino|terminando|seguid[oa]|encima de|iguales)$/u;
/** "Al medio crema": half of nothing. */
const MIDDLE = /^(?:al |en (?:el )?|por el )(?:medio|centro)(?!\p{L})/iu;
const BOTTOM = /^(?:bottom|under(?:neath)?|below|abajo|debajo|fondo)$/u;
const IN_MIDDLE = /^(?:middle|cent(?:er|re)|between|medio|centro|entre)$/u;
const FIRST =
  /^(?:first|start(?:s|ing|ed)?|begin(?:s|ning)?|primer[oa]?|empez(?:ar|ando|amos)|empiezo|comenz(?:ar|ando))$/u;
const TOP = /^(?:top|over|above|arriba|encima)$/u;
const EVEN: ReadonlyMap<string, number> = new Map([
  ['halves', 2],
  ['mitades', 2],
  ['thirds', 3],
  ['tercios', 3],
  ['quarters', 4],
  ['cuartos', 4],
  ['fifths', 5],
  ['quintos', 5],
]);
/** Between two colours. */
const BOUND = /^(?:with|wi|con|to|a|al|as|than|que)$/u;
const LEFT =
  /^(?:and |y )?(?:for )?(?:(?:the|el|la|lo) )?(?:what(?:ever)?(?:['’]?s| is) left(?: over)?|what remains|(?:the )?remaining (?:stuff|bit|batter|part|soap)|left ?overs?|que (?:quede|queda|sobre|sobra|falte|falta)|lo que (?:quede|queda|sobre|sobra|falte|falta))(?!\p{L})/iu;

const LONGEST_NAME = 4;
/** A word without accents, in small letters. */
export const plain = (word: string): string => word.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/** "Morao", "dorao": as they are spoken in Andalusia and round the Caribbean. */
const asWritten = (name: string): string => name.replace(/ao(?=s?(?:\s|$))/giu, 'ado');

const JOINT = /^(?:and|with|in|y|e|con|en|plus|n)$/iu;

/** The longest colour that begins here within one clause, and how many letters name it. */
function colourAt(words: readonly string[]): { readonly name: string; readonly letters: number } | undefined {
  for (let length = Math.min(LONGEST_NAME, words.length); length > 0; length -= 1) {
    const span = words.slice(0, length);
    // "Azul y", "the blue": joined to a colour, these would be taken for part of its name.
    const isJoined =
      length > 1 && (isStopWord(span[0]!) || isStopWord(span.at(-1)!) || span.some(word => JOINT.test(word)));
    const name = span.join(' ');
    const known = isJoined ? undefined : [span, span.map(asWritten)].find(one => isName(one, knowsColour));
    if (known !== undefined) return { name: known.join(' '), letters: name.length };
  }
  return undefined;
}

/** Every word of a division as what it tells; undefined where one tells something else. Pure. */
export function tokensOf(text: string): readonly Token[] | undefined {
  const tokens: Token[] = [];
  for (let at = 0; at < text.length; ) {
    const rest = text.slice(at);
    const gap = /^[^\p{L}\p{N}]+/u.exec(rest)?.[0];
    if (gap !== undefined) {
      if (/[^\s,.;:()!?¡¿/&+–—-]/u.test(gap)) return undefined;
      at += gap.length;
      continue;
    }
    const taken = tokenAt(rest);
    if (!taken) return undefined;
    if (taken.token && !isGround(taken.token, tokens.at(-1))) tokens.push(taken.token);
    at += taken.length;
  }
  const isBound = tokens.some(
    ({ is }, at) => is === 'bound' && tokens[at - 1]?.is === 'colour' && tokens[at + 1]?.is === 'colour',
  );
  return isBound ? undefined : tokens.filter(({ is }) => is !== 'bound');
}

/** "Charcoal base": the colour was told before. */
const isGround = (token: Token, before: Token | undefined): boolean =>
  token.is === 'colour' && plain(token.name) === 'base' && before?.is === 'colour';

function tokenAt(rest: string): { readonly token?: Token; readonly length: number } | undefined {
  const left = LEFT.exec(rest)?.[0];
  if (left !== undefined) return { token: { is: 'share', canonical: 'rest' }, length: left.length };
  const middle = MIDDLE.exec(rest)?.[0];
  if (middle !== undefined) return { token: { is: 'middle' }, length: middle.length };
  const [word = ''] = /^[\p{L}\p{M}'’]+|^\d+(?:[.,]\d+)?/u.exec(rest) ?? [];
  const even = EVEN.get(plain(word));
  if (even !== undefined) return { token: { is: 'even', parts: even }, length: word.length };
  const share = shareAt(rest);
  if (share && /%$|parts$|^rest$/u.test(share.canonical))
    return { token: { is: 'share', canonical: share.canonical }, length: share.length };
  if (share) return undefined;
  if (/^\d/u.test(word))
    return { token: { is: 'figure', value: Number(word.replace(',', '.')) }, length: word.length };
  const clause = /^[\p{L}\p{M}'’ ]+/u.exec(rest)?.[0].trim() ?? '';
  const colour = colourAt(clause.split(/\s+/u));
  if (colour) return { token: { is: 'colour', name: colour.name }, length: colour.letters };
  const said = plain(word);
  if (BOTTOM.test(said)) return { token: { is: 'bottom' }, length: word.length };
  if (TOP.test(said)) return { token: { is: 'top' }, length: word.length };
  if (IN_MIDDLE.test(said)) return { token: { is: 'middle' }, length: word.length };
  if (FIRST.test(said)) return { token: { is: 'first' }, length: word.length };
  if (BOUND.test(said)) return { token: { is: 'bound' }, length: word.length };
  return PARTING.test(said) || isEverydayWord(word) ? { length: word.length } : undefined;
}
