import { unbroken } from '../../../over-lines.ts';
import { knowsColour } from '../../colours/known-colours.ts';
import { isName } from '../../names/listed-names.ts';
import { distance } from '../../spelling/edit-distance.ts';
import { deaccented } from '../../unaccented.ts';
import { BASIC_COLOURS, isEverydayWord } from '../everyday-words.ts';
import { shareAt } from '../shares/share-at.ts';
import { isStopWord } from '../stop-words.ts';

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
const PARTING = new RegExp(
  unbroken`
    ^(?:layers?|stripes?|bands?|colou?rs?|shades?|tones?|parts?|drizzle|swirl|base|background|line|batter|
    soap|loaf|then|second|third|fourth|fifth|next|after(?:wards?)?|again|up|down|upwards?|downwards?|mostly|
    mainly|ways|apiece|each|them|equal|even|same|split|capas?|franjas?|bandas?|rayas?|tonos?|color(?:es)?|
    partes?|remolino|fondo|linea|masa|jabon|luego|despues|segund[oa]|tercer[oa]?|cuart[oa]|quint[oa]|
    otr[oa]|vez|seguid[oa]|siguiente|sigue|sigo|sigu[eo]|cae|tope|encima de|iguales)$
  `,
  'u',
);
/** "Al medio crema": half of nothing. */
const MIDDLE = /^(?:al |en (?:el )?|por el )(?:medio|centro)(?!\p{L})/iu;
const BOTTOM =
  /^(?:bottom(?:most)?|under(?:neath)?|below|beneath|foot|floor|base|abajo|debajo|fondo|pie|suelo|piso)$/u;
/** "Brown over that", "encima de eso": the next one up. */
const ON_IT =
  /^(?:(?:on top of|on|over|above|upon|after|sobre|encima de|arriba de|despu[eé]s de) (?:that|it|this|them|eso|esa|ese|esto|ella|[eé]l))(?!\p{L})/iu;
/** "The one that goes on last" is on top. */
const LAST = new RegExp(
  unbroken`
    ^(?:last(?:ly)?|finally|finish(?:ing|es|ed)?|end(?:ing|s)?|ultim[oa]|final(?:mente)?|termin(?:ar|o|ando|
    a)|acab(?:ar|o|ando|a)|remat(?:ar|o|ando|a)|cierr[oa]|cerrar)$
  `,
  'u',
);
const IN_MIDDLE = /^(?:middle|cent(?:er|re)|between|medio|centro|entre)$/u;
const FIRST = new RegExp(
  unbroken`
    ^(?:first|start(?:s|ing|ed)?|begin(?:s|ning)?|primer[oa]?|empez(?:ar|ando|amos)|empiez[oa]|comenz(?:ar|
    ando)|comienz[oa]|arranc(?:o|ar|ando|a)|part(?:o|iendo))$
  `,
  'u',
);
const TOP = /^(?:top(?:most|per|ped)?|over|above|head|crown|cap|arriba|encima|cima|copete|corona)$/u;
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
const LEFT = new RegExp(
  unbroken`
    ^(?:and |y )?(?:for )?(?:(?:the|el|la|lo) )?(?:what(?:ever)?(?:['’]?s| is) left(?: over)?|what remains|
    (?:the )?remaining (?:stuff|bit|batter|part|soap)|left ?overs?|que (?:quede|queda|sobre|sobra|falte|
    falta)|lo que (?:quede|queda|sobre|sobra|falte|falta))(?!\p{L})
  `,
  'iu',
);

const LONGEST_NAME = 4;
/** A word without accents, in small letters. */

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
  // Where a word stands that follows right on a colour.
  let end = -1;
  for (let at = 0; at < text.length; ) {
    const rest = text.slice(at);
    const gap = /^[^\p{L}\p{N}]+/u.exec(rest)?.[0];
    if (gap !== undefined) {
      if (/[^\s,.;:()!?¡¿/&+–—-]/u.test(gap)) return undefined;
      at += gap.length;
      continue;
    }
    const taken = baseAt(rest, tokens.at(-1), at === end) ?? tokenAt(rest);
    if (!taken) return undefined;
    // "Azul con verde" is one colour; "empiezo con azul", "and a cream head" join nothing to one.
    const isJoint = taken.token?.is !== 'bound' || at === end;
    if (taken.token && isJoint) tokens.push(taken.token);
    at += taken.length;
    if (taken.token?.is === 'colour') end = at + (/^\s+/u.exec(text.slice(at))?.[0].length ?? 0);
  }
  const isBound = tokens.some(
    ({ is }, at) => is === 'bound' && tokens[at - 1]?.is === 'colour' && tokens[at + 1]?.is === 'colour',
  );
  return isBound ? undefined : tokens.filter(({ is }) => is !== 'bound');
}

/** "La base azul" is the bottom; "charcoal base" was told before; "half base" is a part without a colour. */
function baseAt(rest: string, before: Token | undefined, isBehindColour: boolean) {
  const base = /^base(?![\p{L}\p{M}])/iu.exec(rest)?.[0];
  if (base === undefined || before?.is === 'share') return undefined;
  return isBehindColour ? { length: base.length } : { token: { is: 'bottom' } as const, length: base.length };
}

function tokenAt(rest: string): { readonly token?: Token; readonly length: number } | undefined {
  const left = LEFT.exec(rest)?.[0];
  if (left !== undefined) return { token: { is: 'share', canonical: 'rest' }, length: left.length };
  const onIt = ON_IT.exec(rest)?.[0];
  if (onIt !== undefined) return { length: onIt.length };
  const middle = MIDDLE.exec(rest)?.[0];
  if (middle !== undefined) return { token: { is: 'middle' }, length: middle.length };
  const [word = ''] = /^[\p{L}\p{M}'’]+|^\d+(?:[.,]\d+)?/u.exec(rest) ?? [];
  const even = EVEN.get(deaccented(word));
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
  const said = deaccented(word);
  if (BOTTOM.test(said)) return { token: { is: 'bottom' }, length: word.length };
  if (TOP.test(said) || LAST.test(said)) return { token: { is: 'top' }, length: word.length };
  if (IN_MIDDLE.test(said)) return { token: { is: 'middle' }, length: word.length };
  if (FIRST.test(said)) return { token: { is: 'first' }, length: word.length };
  if (BOUND.test(said)) return { token: { is: 'bound' }, length: word.length };
  if (PARTING.test(said) || isEverydayWord(word)) return { length: word.length };
  const slip = colourBeside(said);
  return slip === undefined ? undefined : { token: { is: 'colour', name: slip }, length: word.length };
}

const SLIPPED_COLOURS: readonly string[] = [
  ...BASIC_COLOURS,
  ...'turquoise violet lilac cream silver golden peach coral celeste violeta crema dorado turquesa plateado fucsia'.split(
    ' ',
  ),
];
/** Shorter words are a slip away from too many others. */
const SHORTEST_SLIP = 5;
/** The one basic colour that a word is a slip away from: "grene", "blanko"; undefined where there is none, or two. */
function colourBeside(word: string): string | undefined {
  if (word.length < SHORTEST_SLIP) return undefined;
  const near = SLIPPED_COLOURS.filter(colour => colour.length > 3 && distance(colour, word) <= 1);
  return near.length === 1 ? near[0] : undefined;
}
