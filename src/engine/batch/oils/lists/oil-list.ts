import { type Amount, parseAmount } from '../../../quantities/amount.ts';
import { readDecimal } from '../../../quantities/number.ts';
import { Refusal, refuse } from '../../../refusal.ts';
import { leadingAmount } from '../../../text/amounts/leading-amount.ts';
import { excerpt } from '../../../text/excerpt.ts';
import type { OilBlend } from '../blend.ts';
import { findOil, knownOil } from '../find-oil.ts';
import type { Oil } from '../oil.ts';
import { plainList } from './plain-list.ts';
import { withRest } from './rest-of-oils.ts';
import { spokenOilList } from './spoken-list.ts';

declare module '../../../refusal.ts' {
  interface Reasons {
    'oils-empty': Record<never, never>;
    'oil-without-amount': { text: string };
    'oil-by-volume': { text: string };
    /** A percent beside a weight, as they were written; `isBare` where the figure has no unit at all, and is a percent for want of one. */
    'oils-mixed-units': { share: string; weight: string; isBare: boolean };
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
  const pieces = withRest(
    plainList(text)
      .split(/[;|]|,(?!\d)|\s\+\s/u)
      .map(piece => piece.trim())
      .filter(piece => piece !== ''),
  );
  const entries = pieces.map(readEntry);
  if (entries.length === 0) refuse('oils-empty', {});
  const percents = entries.flatMap(({ share }) => ('percent' in share ? [share.percent] : []));
  if (percents.length > 0 && percents.length < entries.length) refuseMixed(pieces, entries);
  const sum = percents.reduce((total, percent) => total + percent, 0);
  if (sum > LIKE_GRAMS && !/%|percent|por ciento/iu.test(text)) refuse('oils-without-unit', { sum });
  return percents.length > 0 ? blendOfPercents(entries, percents) : blendOfMasses(entries);
}

/** Throws a Refusal `oils-mixed-units` of the first figure of either kind. */
function refuseMixed(pieces: readonly string[], entries: readonly Entry[]): never {
  const shares = pieces.filter((_, at) => 'percent' in entries[at]!.share);
  const bare = shares.find(piece => !PERCENT.test(piece));
  const weight = pieces.find((_, at) => 'grams' in entries[at]!.share)!;
  return refuse('oils-mixed-units', {
    share: excerpt(bare ?? shares[0]!),
    weight: excerpt(weight),
    isBare: bare !== undefined,
  });
}
const PERCENT = /%|percent|por ciento/iu;

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
  refuse('oil-number-spaced', { text: excerpt(piece), joined, last });
}

/** `olive 50%`, `50% olive`, `olive: 500 g`, `500 g of olive`, `olive 50`. */
function readEntry(typed: string): Entry {
  const piece = typed.replace(COCONUT_GRADE, '$1');
  refuseSpaced(piece);
  if (/(?:^|\s)-\d/u.test(piece)) refuse('oil-without-amount', { text: excerpt(piece) });
  const percentLast = /^(.*\p{L})[\s:=-]*([\d.,]+)\s*(?:%|percent|por ciento)?$/iu.exec(piece);
  if (percentLast) return { oil: findOil(percentLast[1]!), share: positivePercent(percentLast[2]!, piece) };
  const percentFirst =
    /^([\d.,]+)\s*(?:(?:%|percent|por ciento)\s*(?:of\s|de\s)?|\s(?=\p{L}))(\p{L}.*)$/iu.exec(piece);
  const first = leadingAmount(piece);
  if (percentFirst && first?.amount.measure !== 'mass')
    return { oil: findOil(percentFirst[2]!), share: positivePercent(percentFirst[1]!, piece) };
  if (first !== undefined && first.rest !== '') {
    return { oil: findOil(first.rest), share: massOf(first.amount, piece) };
  }
  const last = /^(.*?\p{L})[\s:=-]+(\d.*)$/u.exec(piece);
  if (last) return { oil: findOil(last[1]!), share: massOf(parseAmount(last[2]!), piece) };
  if (knownOil(piece) !== undefined) refuse('oil-without-amount', { text: excerpt(piece) });
  findOil(piece);
  return refuse('oil-without-amount', { text: excerpt(piece) });
}

function positivePercent(written: string, piece: string): Share {
  const percent = readDecimal(written)[0];
  if (percent === undefined || !(percent > 0)) refuse('oil-without-amount', { text: excerpt(piece) });
  return { percent };
}

function massOf(amount: Amount, piece: string): Share {
  if (amount.measure === 'volume') refuse('oil-by-volume', { text: excerpt(piece) });
  return { grams: amount.grams };
}
