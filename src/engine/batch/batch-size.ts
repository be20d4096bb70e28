import { unbroken } from '../over-lines.ts';
import { type Amount, parseAmount } from '../quantities/amount.ts';
import { plainText } from '../quantities/number.ts';
import { amountPhrase } from '../quantities/spoken/amount-phrases.ts';
import { unframed } from '../quantities/spoken/amount-remarks.ts';
import { piecesOf } from '../quantities/spoken/pieces.ts';
import { spokenAmounts } from '../quantities/spoken/spoken-amounts.ts';
import { Refusal, refuse } from '../refusal.ts';
import { leadingAmount } from '../text/amounts/leading-amount.ts';
import { thousandsPlain } from '../text/amounts/thousands.ts';
import { excerpt } from '../text/excerpt.ts';
import { mouldMillilitres, readMould, SIDE, SIDES } from './mould-sides.ts';
import type { BatchSize, Mould } from './request.ts';
import { sizeAmongWords, twoMoulds } from './size-among-words.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'size-unreadable': { text: string };
    'size-oils-by-volume': Record<never, never>;
    'size-out-of-range': { text: string };
    'mould-without-unit': { text: string };
    'mould-sides': { text: string; shape: 'loaf' | 'cylinder' };
    'cavity-by-mass': { text: string };
    /** More oil than a hobby pot holds, and not said in kilograms. */
    'size-very-large': { kilograms: number };
  }
}

/** Grams or millilitres: below, nothing can be weighed well; above is no hobby pot. */
const SMALLEST = 20;
const LARGEST = 200_000;

/** Grams of oils above which a slip of the pen is likelier than a pot of that size (common practice). */
const LARGEST_UNASKED = 60_000;

/**
 * Throws a Refusal `size-very-large` for more than 60 kg of oils unless the size itself says it in kilograms: so much is
 * mostly a slip of the pen, and its lye can kill.
 */
export function checkPlainSize(size: BatchSize, written: string | undefined): void {
  if (size.by !== 'oils' || size.grams <= LARGEST_UNASKED) return;
  if (/\d ?k(?:g|ilos?|ilogram\w*)\b/iu.test(plainText(written ?? ''))) return;
  refuse('size-very-large', { kilograms: size.grams / 1000 });
}

/** "30 cm square": two sides alike. */
const SQUARE =
  /(\d+(?:[.,]\d+)?)\s?(cms?|mm|in|inch(?:es)?|pulgadas)\s(?:square|sq|cuadrad[oa]s?)(?!\p{L})/giu;
/** Of a side: "two and a half", "8 y medio". */
const AND_PART = new RegExp(
  unbroken`
    (?<![\d.,/])(\d{1,3}) (?:and|y) (?:an? |1 )?(half|medi[oa]|quarter|cuarto)(?=\s*(?:$|[,;)"x]|by\b|por\b|
    in\b|inch|cm|pulg|cent|wide|long|tall|deep|high|de\b|(?:lit(?:er|re)|litro|kilo|pound|libra|ounce|onza|
    cup|taza|pint)s?\b|(?:kg|lb|oz|ml|l)s?\b))
  `,
  'giu',
);

/**
 * Reads a batch size: `1000 g oils`, `1.2 l batter`, `1500 g batter`, `mould 25x9x7 cm` (length, width, height),
 * `cylinder 8 x 25 cm` (diameter, length), `12 cavities x 100 ml`; English or Spanish, centimetres or inches.
 * A mass alone is of oils, a volume alone of batter. Throws a Refusal: `size-unreadable`, `size-oils-by-volume`,
 * `size-out-of-range`, `mould-without-unit`, `mould-sides`, `cavity-by-mass`, or one of the amounts' own.
 */
export function parseSize(text: string): BatchSize {
  try {
    return sizeOf(text);
  } catch (refusal) {
    const worded = refusal instanceof Refusal && UNREAD.has(refusal.id) ? sizeAmongWords(text) : undefined;
    if (worded === undefined) throw refusal;
    return sizeOf(
      isMass(worded) && (OF_BATTER.test(text) || OF_MOULD.test(text)) && !OF_OILS.test(text)
        ? `${worded} batter`
        : worded,
    );
  }
}

/** A weight by itself. */
const isMass = (text: string): boolean =>
  /^[\d.,/ ]+(?:k?g|grs?|grams?|gramos?|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)$/iu.test(text);
/** "Entran 600 g de jabón": what fills a mould is batter. */
const OF_BATTER =
  /(?<!\p{L})(?:of|de) (?:(?:the|my|raw|la|el|mi) )*(?:batter|soap|masa|mezcla|jab[oó]n|pasta)(?!\p{L})/iu;

/** "El molde es de un kilo": what a mould weighs full is batter, as `weighedPieces` reads it. */
const OF_MOULD = /(?<!\p{L})(?:mou?lds?|moldes?|loaf)(?!\p{L})/iu;

/** Refusals of a size that may only be told in other words. */
const UNREAD: ReadonlySet<string> = new Set([
  'size-unreadable',
  'mould-sides',
  'amount-unit-unknown',
  'amount-unreadable',
]);

function sizeOf(text: string): BatchSize {
  const squared = plainText(text).replace(/[×✕*]/gu, 'x').replace(SQUARE, '$1 x $1 $2');
  const plain = thousandsPlain(spokenAmounts(squared)).replace(
    AND_PART,
    (_, whole: string, part: string) => `${whole} ${/^(?:half|medi)/iu.test(part) ? '1/2' : '1/4'}`,
  );
  const held = besideSides(plain);
  if (held !== undefined) return held;
  const both = twoMoulds(plain);
  if (both !== undefined) return readAmount(both);
  const weighed = weighedPieces(plain);
  if (weighed) return within(weighed.grams, plain, weighed);
  const pieces = SIDES.test(plain) ? undefined : piecesOf(plain);
  const cavity = pieces && leadingAmount(pieces.each);
  if (pieces && cavity?.amount.measure === 'volume')
    return readCavitiesOf(pieces.count, cavity.amount.millilitres, plain);
  const cavities =
    /^(\d+)\s*(?:cavit\w*|cavidad\w*|bars?|huecos?|moulds?|molds?|moldes?)?\s*(?:x|de|of)\s*(.+)$/iu;
  const each = cavities.exec(plain);
  const mould =
    each !== null && leadingAmount(each[2]!) !== undefined
      ? readCavities(Number(each[1]), each[2]!)
      : (mouldOfVolume(plain) ?? readMould(plain));
  if (mould === undefined) return readAmount(plain);
  return within(mouldMillilitres(mould), plain, { by: 'mould', mould });
}

const VOLUME =
  /(?<![\d.,/x])(\d+(?:[.,]\d+)?(?: \d\/\d)?\s*(?:mls?|cc|cl|dl|l|lt|lit(?:er|re)s?|litros?|millilit(?:er|re)s?|mililitros?))(?!\p{L})/giu;
/** What a mould is said to hold is at most so many times what its sides come to, or as much less: it is not filled to the brim. */
const LIKE_SIDES = 1.35;

/** "25 x 8 x 6 cm, so 1200 ml": where the sides come to about what is told, the mould holds what is told. */
function besideSides(text: string): BatchSize | undefined {
  const [told, ...more] = [...text.matchAll(VOLUME)];
  if (told === undefined || more.length > 0) return undefined;
  const rest = `${text.slice(0, told.index)} ${text.slice(told.index + told[0].length)}`;
  const amount = leadingAmount(told[1]!)?.amount;
  const mould = SIDES.test(rest) && rest.match(SIDE)?.length === 3 ? readMould(rest) : undefined;
  if (mould === undefined || amount?.measure !== 'volume') return undefined;
  const ratio = amount.millilitres / mouldMillilitres(mould);
  return Math.max(ratio, 1 / ratio) <= LIKE_SIDES ? readCavitiesOf(1, amount.millilitres, text) : undefined;
}

function within(size: number, text: string, answer: BatchSize): BatchSize {
  return size >= SMALLEST && size <= LARGEST ? answer : refuse('size-out-of-range', { text: excerpt(text) });
}

/** A loaf by what it holds: "a 2 lb loaf", "molde de 1,2 kg". */
const LOAF = new RegExp(
  unbroken`
    ^(?:an? |one |una? |mi |my )?(?:(?:loaf|log|barra|mould|mold|molde)\b.*?(?:of |de |for |
    para )?)?([\d.,/ ]*\d[\s-]*\p{L}+)\.?(?: (?:of|de))?(?: \p{L}+)?[\s-]*(?:loaf|log|brick|mou?lds?|
    moldes?|barra|bread pan|pan)?\b.*$
  `,
  'iu',
);

/** `10 bars of 4 oz` and `a 2 lb loaf`: by what it weighs a mould holds that much batter (common practice). */
function weighedPieces(text: string): { readonly by: 'batter-mass'; readonly grams: number } | undefined {
  if (SIDES.test(text)) return undefined;
  const told = piecesOf(text);
  const pieces = told?.named ? told : undefined;
  const loaf = LOAF;
  const isLoaf = /\b(?:loaf|log|mou?ld|molde|brick|bread pan)\b/iu.test(text) && !OF_OILS.test(text);
  const weight = pieces?.each ?? (isLoaf ? loaf.exec(text)?.[1]?.replace('-', ' ') : undefined);
  const first = weight === undefined ? undefined : leadingAmount(weight);
  const head = first?.amount.measure === 'mass' || !isLoaf ? first : (heldBy(text) ?? first);
  if (head?.amount.measure !== 'mass') return undefined;
  return { by: 'batter-mass', grams: head.amount.grams * (pieces?.count ?? 1) };
}

/** What a mould is said to hold, where only one weight is told: "10 inch loaf mold holds 3 lb", "molde de kilo y medio". */
function heldBy(text: string): ReturnType<typeof leadingAmount> {
  const starts = [...text.matchAll(/(?<![\p{L}\d.,/])(?:(?<!\d (?=\d\/))\d|kilo\b|libra\b)/giu)].map(
    ({ index }) => index,
  );
  const weights = starts.flatMap(at => {
    const head = leadingAmount(text.slice(at).replace(/^(kilo|libra)\b/iu, '1 $1'));
    return head?.amount.measure === 'mass' ? [head] : [];
  });
  return weights.length === 1 ? weights[0] : undefined;
}

/** What batter is poured into. */
const VESSEL = new RegExp(
  unbroken`
    \b(?:mou?ld|molde|loaf|tray|bandeja|carton|cart[oó]n|box|caja|tub|container|envase|recipiente|
    tarrina|bote|pot|jug|jarra|bottle|botella|bucket|cubeta|balde)\b
  `,
  'iu',
);

/** A mould that is told by what it holds: "a 2 litre mould", "molde de 2 litros". */
function mouldOfVolume(text: string): Mould | undefined {
  if (SIDES.test(text) || !VESSEL.test(text)) return undefined;
  const starts = [...text.matchAll(/(?<![\p{L}\d.,/])(?<!\d (?=\d\/))\d/gu)].map(({ index }) => index);
  const volumes = starts.flatMap(at => {
    const head = leadingAmount(text.slice(at).replace(/^([\d.,/ ]*\d)-(?=\p{L})/u, '$1 '));
    return head?.amount.measure === 'volume' ? [head.amount.millilitres] : [];
  });
  const [eachMillilitres] = volumes;
  if (eachMillilitres === undefined || starts.length > 1) return undefined;
  return { shape: 'cavities', count: 1, eachMillilitres };
}

const OF_OILS = /\b(?:oils?|fats?|aceites?|grasas?)\b/iu;

function readCavitiesOf(count: number, eachMillilitres: number, text: string): BatchSize {
  return within(count * eachMillilitres, text, {
    by: 'mould',
    mould: { shape: 'cavities', count, eachMillilitres },
  });
}

function readCavities(count: number, each: string): Mould {
  const amount = parseAmount(each.replace(/\s*(?:each|cada una|cada uno)$/iu, ''));
  if (amount.measure === 'mass') refuse('cavity-by-mass', { text: excerpt(each) });
  return { shape: 'cavities', count, eachMillilitres: amount.millilitres };
}

function readAmount(text: string): BatchSize {
  const { low, high } = amountPhrase(text);
  if (high !== undefined)
    refuse('amount-range', { text: excerpt(text), low: excerpt(low), high: excerpt(high) });
  const head = leadingAmount(low) ?? whole(text);
  const { amount } = head;
  const rest = unframed(head.rest);
  const ofOils = /^(?:of |de |worth of )?(?:oils?|fats?|aceites?|grasas?)$/iu.test(rest);
  const ofBatter = /^(?:of |de )?(?:batter|soap|masa|mezcla|jab[oó]n)$/iu.test(rest);
  if (rest !== '' && !ofOils && !ofBatter) refuse('size-unreadable', { text: excerpt(text) });
  if (amount.measure === 'volume') {
    if (ofOils) refuse('size-oils-by-volume', {});
    return within(amount.millilitres, text, { by: 'batter-volume', millilitres: amount.millilitres });
  }
  return within(amount.grams, text, { by: ofBatter ? 'batter-mass' : 'oils', grams: amount.grams });
}

/** The text as one amount, so that what is wrong with it is said in the amounts' own words. */
function whole(text: string): { amount: Amount; rest: string } {
  if (!/\d/u.test(text)) refuse('size-unreadable', { text: excerpt(text) });
  return { amount: parseAmount(text), rest: '' };
}
