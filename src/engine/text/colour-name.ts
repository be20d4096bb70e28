import { colornames } from 'color-name-list';
import { converter, formatHex } from 'culori';
import { colourDifference, labOfHex } from '../colour/spectra/cielab.ts';
import { parseColour } from '../quantities/colour.ts';
import { excerpt } from '../quantities/excerpt.ts';
import { Refusal, refuse } from '../refusal.ts';
import { unfolded } from './bounded.ts';
import { COLOUR_WORDS } from './colour-words.ts';
import { speller } from './speller.ts';

/** A colour as it was named: what was understood, and whether a slip of the finger was put right for it. */
export type NamedColour = {
  readonly hex: string;
  /** The name that was understood, in the member's language; the hex where one was written. */
  readonly name: string;
  readonly corrected: boolean;
};

/** Longer wishes are stories; cut, so that work stays bounded. */
const LONGEST = 200;
const MOST_WORDS = 14;

/** A name as colours are compared: lower case, no accents, British grey, single spaces. */
const fold = (text: string): string =>
  unfolded(text, 'NFKD', LONGEST)
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/['’]/gu, '')
    .replace(/[^\p{L}\p{N}#]+/gu, ' ')
    .replace(/\bgray/gu, 'grey')
    .trim();

/** The open list: some 30,000 names; folded once, when the first name is asked that the trade's words lack. */
let open: ReadonlyMap<string, string> | undefined;
const openNames = (): ReadonlyMap<string, string> => {
  open ??= new Map(colornames.map(({ name, hex }) => [fold(name), hex]));
  return open;
};

const FOLDED_WORDS: ReadonlyMap<string, string> = new Map(
  [...COLOUR_WORDS].map(([word, hex]) => [fold(word), hex]),
);

/** A name as the words of the trade are kept. */
export const foldedColour = (text: string): string => fold(text);
/** Whether a folded name is one of the trade's own colour words. */
export const isColourWord = (folded: string): boolean => FOLDED_WORDS.has(folded);

const hexOf = (name: string): string | undefined => FOLDED_WORDS.get(name) ?? openNames().get(name);

/** Words that say nothing about which colour is meant. */
const FILLERS = new Set(
  fold(
    'a an the my mi de del el la los las un una color colour colored coloured shade tone tono tipo like como as of in en and y kinda kind sort bit idk just plain solo soap jabon bar bars please pls por favor want quiero i it its that this something algo one real really super mas muy que sea con with w for para look looks looking ugly feo not no choc chip side inside the mostly medio tirando',
  ).split(' '),
);

type Shift = { readonly l?: number; readonly c?: number };

/** What a word beside a colour does to it, in CIE lightness (added) and chroma (a factor). From memory. */
const SHIFTS: readonly (readonly [RegExp, Shift])[] = [
  [
    /\b(?:very|real|really|super|muy|bien) (?:light|pale|clarito|claro|clara|palido|palida)\b/u,
    { l: 16, c: 0.6 },
  ],
  [/\b(?:real|really) light\b/u, { l: 16, c: 0.6 }],
  [/\b(?:very|real|really|super|muy) (?:dark|deep|oscuro|oscura)\b/u, { l: -22, c: 0.9 }],
  [
    /\b(?:light|lighter|clear|clearer|pale|paler|clarito|clarita|claro|clara|claritos|palido|palida|soft|suave|pastel|baby|bebe|faded|deslavado|washed|whiter)\b/u,
    { l: 13, c: 0.7 },
  ],
  [/\b(?:dark|darker|deep|deeper|oscuro|oscura|profundo|profunda|subido|quemado)\b/u, { l: -14, c: 0.95 }],
  [
    /\b(?:bright|brighter|vivid|vivo|viva|brillante|neon|electric|electrico|electrica|strong|stronger|fuerte|intenso|intensa|bold|saturated|chillon|hot|pop)\b/u,
    { l: -1, c: 1.4 },
  ],
  [
    /\b(?:dusty|muted|dull|dirty|apagado|apagada|empolvado|empolvada|viejo|vieja|sucio|sucia|grayish|greyish|grisaceo|grisacea|old|vintage|antique|smoky|cenizo|ceniza)\b/u,
    { l: 0, c: 0.5 },
  ],
];
const A_LITTLE =
  /\b(?:a ?(?:lil|little|bit|tad|touch|hair)|slightly|un poco|un poquito|poquito|algo|apenas|ligeramente|tantito|un pelin)\b/u;
/** Hue turns towards the other colour: "purple but more on the blue side", "white with a tiny bit of pink". */
const TOWARDS =
  /^(.+?)\s+(?:but |pero )?(?:w|with|con|and|y)?\s*(?:more on the|leaning(?: to| toward)?s?|tirando a|mas hacia el|hacia el|toward|towards|que tira a|un toque de|tiny bit of|a tiny bit of|hint of|a hint of|touch of|a touch of|a drop of|una pizca de|con un toque|a little|a bit of|mas)\s+(.+?)(?: side| tone)?$/u;
const ALMOST = /\b(?:almost|casi|nearly)\s+(\p{L}+)/u;

const lch = converter('lch65');
const shifted = (hex: string, shift: Shift, share: number): string => {
  const colour = lch(hex)!;
  const l = Math.min(98, Math.max(4, colour.l + (shift.l ?? 0) * share));
  const c = colour.c * (1 + ((shift.c ?? 1) - 1) * share);
  return formatHex({ mode: 'lch65', l, c, h: colour.h ?? 0 });
};

const lab = converter('lab65');
/** A mix of two colours in CIELAB, `share` of the second. */
const between = (one: string, other: string, share: number): string => {
  const [a, b] = [lab(one)!, lab(other)!];
  const at = (x: number, y: number) => x + (y - x) * share;
  return formatHex({ mode: 'lab65', l: at(a.l, b.l), a: at(a.a, b.a), b: at(a.b, b.b) });
};

type Found = {
  readonly hex: string;
  readonly name: string;
  readonly length: number;
  readonly trade: boolean;
};

/** The longest run of words that is a colour's name; among equals the trade's own words, then the last. */
function longestName(words: readonly string[]): Found | undefined {
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

/** Single words of the trade that a slip may be meant for. */
const spelt = speller(
  [...FOLDED_WORDS.keys()].flatMap(name => name.split(' ')).filter(word => word.length > 4),
  new Set(FILLERS),
);
const KNOWN = new Set([...FOLDED_WORDS.keys()].flatMap(name => name.split(' ')));

/** The words with their slips put right where a word is no colour's as it stands. */
function corrected(words: readonly string[]): readonly string[] {
  return words.map(word => (KNOWN.has(word) || FILLERS.has(word) ? word : (spelt(word) ?? word)));
}

function written(text: string): string | undefined {
  try {
    return parseColour(text);
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

function shiftOf(said: string, name: string): { readonly shift: Shift; readonly share: number } | undefined {
  const rest = said.replace(name, ' ').replace(/\s+/gu, ' ').trim();
  const found = SHIFTS.find(([pattern]) => pattern.test(rest));
  return found && { shift: found[1], share: A_LITTLE.test(rest) ? 0.5 : 1 };
}

/** What is left when fillers and words that only shift a colour are taken out. */
const telling = (words: readonly string[]) => words.filter(word => !FILLERS.has(word));

function named(said: string): NamedColour | undefined {
  const whole = hexOf(said);
  if (whole !== undefined) return { hex: whole, name: said, corrected: false };
  const words = said.split(' ').slice(0, MOST_WORDS);
  const bare = telling(words).join(' ');
  const bareHex = hexOf(bare);
  if (bareHex !== undefined) return { hex: bareHex, name: bare, corrected: false };
  const almost = ALMOST.exec(said)?.[1];
  if (almost !== undefined && FOLDED_WORDS.has(almost)) {
    const other = longestName(telling(words.filter(word => word !== almost)));
    const hex = FOLDED_WORDS.get(almost)!;
    return { hex: other ? between(other.hex, hex, 0.75) : hex, name: said, corrected: false };
  }
  const towards = TOWARDS.exec(said);
  const [first, second] = [towards?.[1], towards?.[2]].map(part => part && longestName(part.split(' ')));
  if (first && second && first.name !== second.name) {
    const little = /\b(?:tiny|hint|touch|drop|pizca|toque|little|bit)\b/u.test(said);
    return { hex: between(first.hex, second.hex, little ? 0.15 : 0.4), name: said, corrected: false };
  }
  const found = longestName(words) ?? longestName(telling(words));
  if (!found) return undefined;
  const shift = shiftOf(said, found.name);
  const hex = shift ? shifted(found.hex, shift.shift, shift.share) : found.hex;
  return { hex, name: shift ? said : found.name, corrected: false };
}

/**
 * The colour somebody names: as hex, `rgb()` or a CSS name, as a word of the trade in either language, by a name of the
 * open list, or as one of these with "light", "dusty", "darker than" and the like. Slips of the finger are put right and
 * said so. Undefined where no word of it names a colour.
 */
export function colourNamed(text: string): NamedColour | undefined {
  const hex = /#|\(|^[\da-f]{6}$/iu.test(text) ? written(text) : undefined;
  if (hex !== undefined) return { hex, name: hex, corrected: false };
  const said = fold(text.slice(0, LONGEST));
  if (said === '') return undefined;
  const exact = named(said);
  if (exact && FOLDED_WORDS.has(exact.name)) return exact;
  const words = said.split(' ');
  const right = corrected(words);
  const changed = right.some((word, at) => word !== words[at]);
  const second = changed ? named(right.join(' ')) : undefined;
  if (second && (!exact || !openNames().has(exact.name))) return { ...second, corrected: true };
  const css = exact ? undefined : written(text);
  return exact ?? (css === undefined ? undefined : { hex: css, name: said, corrected: false });
}

/** {@link colourNamed}. Throws a Refusal `colour-unreadable`. */
export function readColour(text: string): NamedColour {
  return colourNamed(text) ?? refuse('colour-unreadable', { text: excerpt(text) });
}

/** How far apart two colours look, CIEDE2000. */
export const apart = (one: string, other: string): number => colourDifference(labOfHex(one), labOfHex(other));
