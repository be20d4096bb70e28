import { spaced } from '../../../over-lines.ts';
import { readDecimal } from '../../../quantities/number.ts';
import { unitOfWord } from '../../../quantities/unit-words.ts';
import { shareAt } from '../../../text/amounts/shares/share-at.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { knownOil } from '../find-oil.ts';

/** What a word of a list of oils tells. */
export type Piece =
  | { readonly is: 'oil'; readonly name: string }
  | { readonly is: 'amount'; readonly figure: number; readonly unit: string | undefined }
  | { readonly is: 'rest' | 'even' | 'break' }
  | { readonly is: 'unit'; readonly unit: string };
export type Amount = Extract<Piece, { readonly is: 'amount' }>;

/** Words of a list of oils that tell neither an oil nor how much of it. */
const IDLE = new Set(
  spaced`
    an the el la los las un una of de del and y e n plus mas con with por for para in en at al it its it's
    is es son va van lleva llevan todo toda all only just solo pure puro puros pura just nada else thats
    that's that so then oils aceite aceites total ok please pls plz thanks thank you gracias favor i'm im i
    am using use uso tengo have got my mi mis recipe receta list lista each cada uno soap soaps bar bars
    jabon castile castilla bastilla base makes make up lo que rest'o dem nomas nothing more ya esta
    straight po mon dear love luv mate hun lang mi mami by weight peso mass agrego agregue puse eche anado
    sobraba sobro fraction fractions eso as like vida toda usual life old school viejo tradicional last
    ultima ultimo lot too altogether
  `.split(' '),
);
/** Two names of one oil: "higuerilla o sea ricino". */
const THAT_IS = /^(?:o sea|osea|aka|i mean|that is|es decir|alias)$/u;
/** What is left of a whole. */
export const REST = /^(?:rest|remainder|resto|demas|balance)$/u;
const EVEN = /^(?:equal|equally|even|evenly|iguales|igual|parejo|same)$/u;
const JOINS = /^(?:and|y|n|e|plus|mas|wi)$/u;
const PARTS = /^(?:parts?|partes?|share|shares)$/u;
const ONE = /^(?:an?|one|una?)$/u;
const PERCENT = /^(?:%|percent|pct|porciento|porcentaje)$/u;
const LONGEST_NAME = 5;
const MASSES: ReadonlyMap<string, string> = new Map([
  ['gram', 'g'],
  ['kilogram', 'kg'],
  ['ounce', 'oz'],
  ['pound', 'lb'],
]);

const TOKENS = /(?<![\d.,])\d\/\d(?!\d)|\d+(?:[.,]\d+)?(?: \d\/\d)?|(?<!\S)\.\d+|[\p{L}'’]+|[%,;:+/()-]/gu;
/** Between words these tell nothing; any other sign may. */
const SIGNS = /^[\s.!?"“”&=~@*]*$/u;
/** A figure with a sign or a mark glued before it: less than nothing, or a slip. */
const GLUED = /(?<!\S)-\d|(?<![\d\s(]),\d|\d[.,](?=\d+[.,]\d)|(?<=\S)\.\d+(?<!\d\.\d+)/u;

/** The pieces of a list, every word of it; undefined where a word is none of a list's. Pure. */
export function piecesIn(text: string): readonly Piece[] | undefined {
  const said = unaccented(text).replace(/’/gu, "'");
  if (GLUED.test(said) || !SIGNS.test(said.replace(TOKENS, ''))) return undefined;
  const words = said.match(TOKENS) ?? [];
  const pieces: Piece[] = [];
  for (let at = 0; at < words.length; ) {
    const taken =
      oilAt(words, at) ?? amountAt(words, at) ?? partAt(words, at) ?? wordAt(words, at) ?? undefined;
    if (!taken) return undefined;
    if (taken.piece) pieces.push(taken.piece);
    at += taken.length;
  }
  return withoutTwins(pieces, words);
}

type Taken = { readonly piece?: Piece; readonly length: number };

function oilAt(words: readonly string[], at: number): Taken | undefined {
  for (let length = Math.min(LONGEST_NAME, words.length - at); length > 0; length -= 1) {
    const span = words.slice(at, at + length);
    const name = span.join(' ');
    if (span.every(word => /^\p{L}/u.test(word)) && !IDLE.has(span[0]!) && knownOil(name) !== undefined)
      return { piece: { is: 'oil', name }, length };
  }
  return undefined;
}

function amountAt(words: readonly string[], at: number): Taken | undefined {
  const [written = '', next = '', after = ''] = words.slice(at, at + 3);
  // "three parts olive to one of coconut"
  if (ONE.test(written) && /^(?:de|of|parts?|partes?)$/u.test(next) && words.some(word => PARTS.test(word)))
    return { piece: { is: 'amount', figure: 1, unit: 'part' }, length: PARTS.test(next) ? 2 : 1 };
  // Half of what follows is a share, half a pound an amount.
  const isPart = /^\d\/\d$/u.test(written);
  if (!/^\.?\d/u.test(written) || (isPart && !isMass(unitOf(next)))) return undefined;
  const [whole = '', part] = isPart ? ['0', written] : written.split(' ');
  const [over = 0, under = 1] = (part ?? '0/1').split('/').map(Number);
  const [figure, other] = readDecimal(whole);
  if (figure === undefined || other !== undefined) return undefined;
  const unit = PERCENT.test(next) || (next === 'por' && after === 'ciento') ? '%' : unitOf(next);
  const length = unit === undefined ? 1 : next === 'por' ? 3 : 2;
  return { piece: { is: 'amount', figure: figure + over / under, unit }, length };
}

/** Whether a unit is one that is weighed. */
export const isMass = (unit: string | undefined): boolean =>
  unit !== undefined && unit !== '%' && unit !== 'part';
const unitOf = (word: string): string | undefined => {
  if (PARTS.test(word)) return 'part';
  return MASSES.get(unitOfWord(word) ?? '');
};

/** "half", "un tercio", "two fifths": a share of the whole. Pure. */
export function partAt(words: readonly string[], at: number): Taken | undefined {
  const said = words.slice(at, at + 4).join(' ');
  const share = shareAt(said);
  const percent = /^([\d.]+)%$/u.exec(share?.canonical ?? '')?.[1];
  if (share === undefined || percent === undefined) return undefined;
  const length = said.slice(0, share.length).trim().split(' ').length;
  return { piece: { is: 'amount', figure: Number(percent), unit: '%' }, length };
}

function wordAt(words: readonly string[], at: number): Taken | undefined {
  const word = words[at]!;
  if (/^[,;:+/()-]$/u.test(word) || JOINS.test(word)) return { piece: { is: 'break' }, length: 1 };
  if (REST.test(word)) return { piece: { is: 'rest' }, length: 1 };
  if (EVEN.test(word)) return { piece: { is: 'even' }, length: 1 };
  if (PERCENT.test(word)) return { piece: { is: 'unit', unit: '%' }, length: 1 };
  if (word === 'por' && words[at + 1] === 'ciento') return { piece: { is: 'unit', unit: '%' }, length: 2 };
  if (word.length > 1 && unitOf(word) !== undefined && unitOf(word) !== 'part')
    return { piece: { is: 'unit', unit: unitOf(word)! }, length: 1 };
  // "Three parts olive to one of coconut"; elsewhere these may join an amount to what it is not of.
  const isRatio = /^(?:a|to)$/u.test(word) && words.some(one => PARTS.test(one));
  if (PARTS.test(word) || IDLE.has(word) || isRatio) return { length: 1 };
  const twins = [words.slice(at, at + 2).join(' '), word].find(said => THAT_IS.test(said));
  return twins === undefined ? undefined : { length: twins.split(' ').length };
}

/** One oil by two names, joined by words that say so, is one; two oils so joined are no list. */
function withoutTwins(pieces: readonly Piece[], words: readonly string[]): readonly Piece[] | undefined {
  const isTwin = words.some(
    (word, at) => THAT_IS.test(word) || THAT_IS.test(words.slice(at, at + 2).join(' ')),
  );
  if (!isTwin) return pieces;
  const kept = pieces.filter((piece, at) => {
    const before = pieces[at - 1];
    return !(piece.is === 'oil' && before?.is === 'oil' && knownOil(piece.name) === knownOil(before.name));
  });
  return kept.length < pieces.length ? kept : undefined;
}
