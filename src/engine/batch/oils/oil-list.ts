import { type Amount, parseAmount } from '../../quantities/amount.ts';
import { plainText, readDecimal } from '../../quantities/number.ts';
import { Refusal, refuse } from '../../refusal.ts';
import { spokenAmounts } from '../../text/amounts/spoken-amounts.ts';
import { percentsMarked, ratioIn } from '../../text/names/listed-names.ts';
import { leadingAmount } from '../leading-amount.ts';
import type { OilBlend } from '../request.ts';
import { shown } from '../shown.ts';
import { findOil, knownOil } from './find-oil.ts';
import type { Oil } from './oil.ts';
import { withRest } from './rest-of-oils.ts';
import { spokenOilList } from './spoken-list.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'oils-empty': Record<never, never>;
    'oil-without-amount': { text: string };
    'oil-by-volume': { text: string };
    'oils-mixed-units': Record<never, never>;
    /** Bare numbers that are no percents. */
    'oils-without-unit': { sum: number };
    'oils-percent-sum': { sum: number };
    /** A number parted by a space behind a name: part of the name or part of the amount? `joined` is it as one number. */
    'oil-number-spaced': { text: string; joined: string; last: string };
  }
}

/** Each percent may be rounded by half a unit, but the sum of many never by more than this. */
const MOST_ROUNDING = 1;

/** Bare numbers that add up to more are weights without a unit rather than percents that miss 100. */
const LIKE_GRAMS = 110;

type Share = { readonly percent: number } | { readonly grams: number };
type Entry = { readonly oil: Oil; readonly share: Share };

/**
 * Reads `coconut 30%, olive 50%, palm 20%`, or masses (`olive 500 g, 300 g coconut`), names in English or Spanish.
 * Bare numbers count as percent when they add up to 100. Throws a Refusal: `oils-empty`, `oil-unknown`,
 * `oil-without-amount`, `oil-by-volume`, `oils-mixed-units`, `oils-percent-sum`,
 * `oil-number-spaced`, or one of the amounts' own.
 */
export function parseOils(text: string): OilBlend {
  return readOils(text).blend;
}

/** {@link parseOils}, and the list as it was read: as it stands, or as it is meant where it is told in other words. */
export function readOils(text: string): { readonly list: string; readonly blend: OilBlend } {
  try {
    return { list: text, blend: listedOils(text) };
  } catch (refusal) {
    const spoken = refusal instanceof Refusal && UNREAD.has(refusal.id) ? spokenOilList(text) : undefined;
    if (spoken === undefined) throw refusal;
    return { list: spoken.replaceAll(';', ','), blend: listedOils(spoken) };
  }
}

/** Refusals of a list that may only be told in other words. */
const UNREAD: ReadonlySet<string> = new Set([
  'oil-unknown',
  'oil-without-amount',
  'oils-mixed-units',
  'amount-unit-unknown',
  'amount-unreadable',
]);

/** ",5 kg" behind a space: half a kilo, or five behind a comma that stands on the wrong side. */
const COMMA_AHEAD = /\s,(\d{1,2}) ?(kgs?|kilos?|lbs?|pounds?|libras?)\b/iu;

function listedOils(text: string): OilBlend {
  const [, figure, unit] = COMMA_AHEAD.exec(text) ?? [];
  if (figure !== undefined)
    refuse('amount-ambiguous', { text: `,${figure} ${unit}`, small: `0.${figure}`, large: figure });
  const entries = withRest(
    withBreaks(asSpoken(text))
      .split(/[;|]|,(?!\d)|\s\+\s/u)
      .map(piece => piece.trim())
      .filter(piece => piece !== ''),
  ).map(readEntry);
  if (entries.length === 0) refuse('oils-empty', {});
  const percents = entries.flatMap(({ share }) => ('percent' in share ? [share.percent] : []));
  if (percents.length > 0 && percents.length < entries.length) refuse('oils-mixed-units', {});
  const sum = percents.reduce((total, percent) => total + percent, 0);
  if (sum > LIKE_GRAMS && !/%|percent|por ciento/iu.test(text)) refuse('oils-without-unit', { sum });
  return percents.length > 0 ? blendOfPercents(entries, percents) : blendOfMasses(entries);
}

const knowsOil = (name: string): boolean => knownOil(name) !== undefined;
/** "todo en gramos": the unit of every bare figure is told once, at the end. */
const ALL_GRAMS =
  /[\s,;(]*\b(?:(?:all|everything|todo|todos|todas|cada uno|weights?|pesos?)\s+)?(?:in|en)\s+(?:grams?|gramos|g)\b(?:\s+(?:all|each|todo|todos))?\)?[\s.]*$/iu;
/** "olive 400 coconut 200 castor 40 grams": the unit stands behind the last figure alone. */
const GRAMS_LAST = /^(?:[^\d]*\p{L}[\s:=-]*\d+){2,}\s*(?:grams|gramos)$/iu;
/** One oil alone: "all olive oil", "solo aceite de oliva, 800 g". */
const ONLY =
  /^(?:(?:it['’]?s|it is|es|son) )?(?:all|only|just|pure|straight|solo|s[oó]lo|solamente|puro|pura|todo|nada mas que|nada más que)\s+(?:de\s+)?/iu;
const ONLY_LAST = /[\s,]*\b(?:only|nothing else|nada m[aá]s|[uú]nicamente|solamente|y ya)$/iu;
/** "un kilo de oliva y medio de coco": the unit goes without saying. */
const HALF_OF_IT = /\b(kilo|kg|libra|lb|pound)s?\b(.*?)\b(?:y|and)\s+(?:medio|media|half)\s+(?:de|of)\s+/iu;

/** A courtesy at the end of a list is no oil. */
const COURTESY =
  /[\s,.]+(?:please|pls|plz|thanks?(?: you)?|thx|ty|cheers|por favor|porfa|gracias|xfa)[\s.!]*$/iu;

/** A list of oils as it is spoken, in the list's own grammar: amounts in figures, ratios as percents, what is left out put in. */
function asSpoken(text: string): string {
  const plain = spokenAmounts(plainText(text.replaceAll('\n', ';')))
    .replace(/\((\s*\d[^()]*)\)/gu, ' $1')
    .replace(/(?<=\p{L}|\d|%)\s+\/\s+(?=\p{L}|\d)/gu, '; ')
    .replace(HALF_OF_IT, '$1$2; 1/2 $1 de ')
    .replace(/(?:(?<=^|[\s,;])(?:un|una|one|an?)\s+|^)(?=(?:kilo|kg|libra|lb|pound)\b)/giu, '1 ')
    .trim()
    .replace(COURTESY, '');
  const listed = inGrams(plain);
  const shared = sharedInWords(listed);
  if (shared !== undefined) return shared;
  const alone = listed.replace(ONLY, '').replace(ONLY_LAST, '');
  if (knowsOil(alone) && alone !== listed) return `100% ${alone}`;
  const ratio = ratioIn(listed, knowsOil);
  if (ratio) return ratio.map(({ percent, name }) => `${percent}% ${name}`).join('; ');
  return percentsMarked(alone).replace(/^(\p{L}[\p{L} ]*?),\s*(\d[^,;]*)$/u, '$1 $2');
}

const PARTS_OF_WHOLE: readonly (readonly [RegExp, number])[] = [
  [/^(?:two|2|dos)/iu, 200 / 3],
  [/^(?:three|3|tres)/iu, 75],
  [/half$|mitad$/iu, 50],
  [/(?:third|tercio)$/iu, 100 / 3],
  [/./u, 25],
];
const PART_OF_WHOLE =
  /[\s,;]*(?:\b(?:and|y|the other|la otra)\s+)?\b((?:(?:two|2|dos)[ -](?:thirds|tercios))|(?:three|3|tres)[ -](?:quarters|cuartos)|(?:(?:an?|one|un|una|la|1)\s+)?(?:half|mitad|third|tercio|quarter|cuarto))\b(?:\s+(?:of|de))?\s+/giu;

/** "half olive quarter coconut quarter shea": parts in words that make a whole; undefined where they make none. */
function sharedInWords(text: string): string | undefined {
  const parts = [...text.matchAll(PART_OF_WHOLE)].map(
    ({ 1: part = '' }) => PARTS_OF_WHOLE.find(([pattern]) => pattern.test(part))![1],
  );
  const sum = parts.reduce((total, part) => total + part, 0);
  if (parts.length < 2 || Math.abs(sum - 100) > 0.1 || /\d/u.test(text.replace(PART_OF_WHOLE, '')))
    return undefined;
  let at = 0;
  return text.replace(PART_OF_WHOLE, () => `; ${Number(parts[at++]!.toFixed(2))}% `);
}

/** Every bare figure in grams, where the unit is told once at the end. */
function inGrams(text: string): string {
  if (!ALL_GRAMS.test(text) && !GRAMS_LAST.test(text)) return text;
  const bare = text.replace(ALL_GRAMS, '').replace(/\s*(?:grams|gramos)$/iu, '');
  return bare.replace(/\d+(?:[.,]\d+)?(?!\s*(?:%|g\b|kg|oz|lb))(?![\d.,])/gu, '$& g');
}

const COUNT = String.raw`\d[\d.,/]*(?: \d+\/\d+)?`;
const WEIGHT = String.raw`(?:%|percent|por ciento|(?:g|gr|grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?|cups?|tazas?|ml|l|litros?|lit(?:er|re)s?|tsps?|tbsps?|cdas?|cdtas?)\b)`;
const COCONUT_GRADE_BEHIND = new RegExp(
  String.raw`(${COUNT}\s*${WEIGHT}\s*(?:of |de )?(?:coconut|coco)(?: oil)?) (?:76|92)\b`,
  'giu',
);
const NAME_FIRST = new RegExp(
  String.raw`(\p{L}[\s:=]*${COUNT}(?:\s*${WEIGHT}|(?!\s*${WEIGHT})(?=\s)))\s*(?=\p{L})`,
  'giu',
);
const COUNT_FIRST = new RegExp(
  String.raw`(?<=\p{L})\s+(?=${COUNT}\s*${WEIGHT}|\d[\d.,]*\s+(?:de|of)\s+\p{L})`,
  'giu',
);
const AND = /\s+(?:and|y|n|&|e|con|with)\s+/iu;

/** `coconut 30% olive 70%`, `olive 50 coconut 30 palm 20`, `16 oz olive and 8 oz coconut`: no commas, yet only one meaning. */
function withBreaks(text: string): string {
  const percents = text
    .replace(/\b(?:la |the )?(?:other |otra )?(?:mitad|half)\b/giu, '50%')
    .replace(/\b(?:un cuarto|a quarter|quarter|cuarto)\b/giu, '25%');
  // The melting point in the trade's name is no amount, where one follows or stands before.
  const isShared = /%|\brest|\bresto|\b(?:half|mitad)\b.*\b(?:half|mitad)\b/iu.test(text);
  const named = (isShared ? percents : text)
    .replace(/\b(coconut|coco)((?: oil)?) (?:76|92)(?: ?(?:deg(?:rees)?|f|°f?))?(?=[\s:=-]+\d)/giu, '$1$2')
    .replace(COCONUT_GRADE_BEHIND, '$1');
  const joined = named
    .split(AND)
    .reduce(
      (all, piece) =>
        all === '' ? piece : /\d|\brest|\bresto/u.test(piece) ? `${all}; ${piece}` : `${all} ${piece}`,
      '',
    );
  return /^\p{L}/u.test(joined) ? joined.replace(NAME_FIRST, '$1;') : joined.replace(COUNT_FIRST, ';');
}

function blendOfPercents(entries: readonly Entry[], percents: readonly number[]): OilBlend {
  const sum = percents.reduce((total, percent) => total + percent, 0);
  const rounding = Math.min(MOST_ROUNDING, 0.5 * entries.length) + 1e-9;
  if (Math.abs(sum - 100) > rounding) refuse('oils-percent-sum', { sum });
  return { shares: merged(entries, sum), totalGrams: undefined };
}

function blendOfMasses(entries: readonly Entry[]): OilBlend {
  const total = entries.reduce((sum, { share }) => sum + sizeOf(share), 0);
  return { shares: merged(entries, total), totalGrams: total };
}

function sizeOf(share: Share): number {
  return 'percent' in share ? share.percent : share.grams;
}

/** Shares of `total`; an oil named twice is one oil. */
function merged(entries: readonly Entry[], total: number): OilBlend['shares'] {
  const byOil = new Map<Oil, number>();
  for (const { oil, share } of entries) byOil.set(oil, (byOil.get(oil) ?? 0) + sizeOf(share) / total);
  return [...byOil].map(([oil, share]) => ({ oil, share }));
}

/** Coconut oil is sold by its melting point, 76 or 92 F: a grade and no amount where an amount follows (trade terms). */
const COCONUT_GRADE =
  /^((?:[\p{L}() -]*\s)?(?:coconut|coco)(?: oil)?)[\s,-]+(?:76|92)(?:\s?(?:°|º|deg(?:rees)?|grados)?\s?f?)(?=[\s:=-]+\d)/iu;
/** `castor 5 100 g`: 5,100 g, or 100 g of a fifth? */
const SPACED = /\p{L}[\s:=-]+(\d{1,3}(?: \d{3})* (\d{3}(?:[.,]\d+)?)\s*\p{L}+\.?)$/u;

/** Throws a Refusal `oil-number-spaced`. */
function refuseSpaced(piece: string): void {
  const spaced = SPACED.exec(piece);
  if (spaced === null) return;
  const joined = spaced[1]!.replace(/(?<=\d) (?=\d)/gu, '');
  const last = spaced[1]!.slice(spaced[1]!.lastIndexOf(` ${spaced[2]!}`) + 1);
  refuse('oil-number-spaced', { text: shown(piece), joined, last });
}

/** `olive 50%`, `50% olive`, `olive: 500 g`, `500 g of olive`, `olive 50`. */
function readEntry(typed: string): Entry {
  const piece = typed.replace(COCONUT_GRADE, '$1');
  refuseSpaced(piece);
  if (/(?:^|\s)-\d/u.test(piece)) refuse('oil-without-amount', { text: shown(piece) });
  const percentLast = /^(.*\p{L})[\s:=-]*([\d.,]+)\s*(?:%|percent|por ciento)?$/iu.exec(piece);
  if (percentLast) return { oil: findOil(percentLast[1]!), share: positivePercent(percentLast[2]!, piece) };
  const percentFirst =
    /^([\d.,]+)\s*(?:(?:%|percent|por ciento)\s*(?:of\s|de\s)?|\s(?=\p{L}))(\p{L}.*)$/iu.exec(piece);
  const isMass = leadingAmount(piece)?.amount.measure === 'mass';
  if (percentFirst && !isMass)
    return { oil: findOil(percentFirst[2]!), share: positivePercent(percentFirst[1]!, piece) };
  const first = leadingAmount(piece);
  if (first !== undefined && first.rest !== '') {
    return { oil: findOil(first.rest), share: massOf(first.amount, piece) };
  }
  const last = /^(.*?\p{L})[\s:=-]+(\d.*)$/u.exec(piece);
  if (last) return { oil: findOil(last[1]!), share: massOf(parseAmount(last[2]!), piece) };
  if (knownOil(piece) !== undefined) refuse('oil-without-amount', { text: shown(piece) });
  findOil(piece);
  return refuse('oil-without-amount', { text: shown(piece) });
}

function positivePercent(written: string, piece: string): Share {
  const percent = readDecimal(written)[0];
  if (percent === undefined || !(percent > 0)) refuse('oil-without-amount', { text: shown(piece) });
  return { percent };
}

function massOf(amount: Amount, piece: string): Share {
  if (amount.measure === 'volume') refuse('oil-by-volume', { text: shown(piece) });
  return { grams: amount.grams };
}
