import { unbroken } from '../../../over-lines.ts';
import { percentText } from '../../../quantities/for-readers.ts';

const COUNTS =
  '(?:an?|the|un|una|la|el|one|two|three|four|five|six|seven|nine|dos|tres|cuatro|cinco|seis|siete|nueve|[1-9])';
const UNDER: readonly (readonly [RegExp, number])[] = [
  [/^(?:hal|mit|medi)/iu, 2],
  [/^(?:third|terc)/iu, 3],
  [/^(?:quarter|fourth|cuart)/iu, 4],
  [/^(?:fifth|quint)/iu, 5],
  [/^(?:sixth|sext)/iu, 6],
  [/^(?:eighth|octav)/iu, 8],
  [/^(?:tenth|d[eé]cim)/iu, 10],
];
/** Named parts of a whole, in both languages: "a third", "four fifths", "tres cuartas partes", "a tenth of it". */
const FRACTION = new RegExp(
  unbroken`
    ^(?:(${COUNTS}) )?(?:other |another |otra |otro )?(half|halves|thirds?|quarters?|fourths?|fifths?|
    sixths?|eighths?|tenths?|mitad(?:es)?|mit[aá]|medi[oa]|tercios?|cuartos?|quintos?|sextos?|octavos?|
    d[eé]cimos?|(?:tercera|cuarta|quinta|sexta|octava|d[eé]cima)s? partes?)(?!\p{L})(?: of (?:it|them|that|
    the (?:batter|batch|pot|lot|whole))(?:['’]s|(?: (?:is|goes|in))?)(?!\p{L}))?
  `,
  'iu',
);
const OVER: ReadonlyMap<string, number> = new Map(
  'two three four five six seven nine dos tres cuatro cinco seis siete nueve'
    .split(' ')
    .map((word, at) => [word, [2, 3, 4, 5, 6, 7, 9][at % 7]!] as const),
);

/** The part at the head of a text, and how many letters tell it; undefined where it is none, or the whole and more. */
function fractionAt(text: string): { readonly share: number; readonly length: number } | undefined {
  const match = FRACTION.exec(text);
  if (!match || /^ (?:layers?|capas?)\b/iu.test(text.slice(match[0].length))) return undefined;
  const [whole, count = '1', part = ''] = match;
  const over = OVER.get(count.toLowerCase()) ?? (/^\d$/u.test(count) ? Number(count) : 1);
  const under = UNDER.find(([pattern]) => pattern.test(part))![1];
  // "A tercios" tells how all are parted, not one part.
  const isOneOfMany = /(?:s|s partes)$/iu.test(part) && over === 1 && !/^halves$/iu.test(part);
  return over < under && !isOneOfMany ? { share: over / under, length: whole.length } : undefined;
}

const WRITTEN_FRACTION =
  /^(\d{1,2}) ?\/ ?(\d{1,2})(?!\d|\s*(?:cups?|tazas?|tsp|tbsp|cdas?|cdtas?|c\b|l\b|lb|oz|kg|pints?|quarts?|litr|teasp|tablesp|cuchar))/iu;
const REST = new RegExp(
  unbroken`
    ^(?:and )?(?:the |el |la |lo )?(?:rest|remainder|remaining|everything else|
    what(?:ever)?['’]?s? (?:is )?(?:left(?: over)?|over|remaining)|leftover|balance|lo otro|all the others?|
    resto|demas|demás|lo que (?:quede|sobra|sobre|queda))\b
  `,
  'iu',
);
const PERCENT = /^(\d+(?:[.,]\d+)?) ?(?:%|percent|pct|por ?ciento)/iu;
const PARTS = /^(\d+(?:[.,]\d+)?|an?|one|una?) (?:parts?|partes?)\b/iu;
export const AMOUNT = new RegExp(
  unbroken`
    ^(?:\d[\d.,/ ]*|half (?:an? )?|an? |one |una? |media |dos |two )\s*(?:cups?|c|tazas?|ml|l|litros?|
    liters?|litres?|g|gr|grams?|gramos?|kg|oz|onzas?|ounces?|lbs?|pounds?|libras?|pints?|quarts?|tbsp|cdas?|
    tsp|cdtas?)\b
  `,
  'iu',
);
const COUNTED: ReadonlyMap<string, string> = new Map([
  ['a', '1'],
  ['an', '1'],
  ['one', '1'],
  ['un', '1'],
  ['una', '1'],
]);

export type Share = { readonly canonical: string; readonly length: number };

/** The share at the head of a text, as `33.333333%`, `2 parts`, `rest` or the amount itself; undefined where none is. */
export function shareAt(text: string, bareIsPercent = false): Share | undefined {
  const article = /^(?:el|the|un|a)\s+(?=\d)/iu.exec(text)?.[0].length ?? 0;
  const share = bareShareAt(text.slice(article), bareIsPercent);
  return share && { ...share, length: share.length + article };
}

function bareShareAt(text: string, bareIsPercent: boolean): Share | undefined {
  const rest = REST.exec(text);
  if (rest) return { canonical: 'rest', length: rest[0].length };
  const written = WRITTEN_FRACTION.exec(text);
  if (written && Number(written[2]) > 0 && Number(written[1]) < Number(written[2]))
    return { canonical: percent(Number(written[1]) / Number(written[2])), length: written[0].length };
  const exact = PERCENT.exec(text);
  if (exact) return { canonical: `${exact[1]!.replace(',', '.')}%`, length: exact[0].length };
  const parts = PARTS.exec(text);
  if (parts)
    return {
      canonical: `${COUNTED.get(parts[1]!.toLowerCase()) ?? parts[1]} parts`,
      length: parts[0].length,
    };
  const amount = AMOUNT.exec(text);
  if (amount) return { canonical: amount[0], length: amount[0].length };
  const bareFigure = bareIsPercent ? /^\d{1,2}(?=\s+\p{L}|$)/u.exec(text) : undefined;
  if (bareFigure) return { canonical: `${bareFigure[0]}%`, length: bareFigure[0].length };
  const part = fractionAt(text);
  return part && { canonical: percent(part.share), length: part.length };
}

/** Six decimals: thirds then add up to the whole as nearly as the split can tell. */
export const percent = (share: number) => percentText(share, 6);

/** A colour's words without what joins them to their share or to the next one. */
export const bare = (text: string): string =>
  text
    .replace(/^[\s,:;=.-]+|[\s,:;=.-]+$/gu, '')
    .replace(/^(?:of|de|en|in|is|for|para|is left|con|with)\s+/iu, '')
    .replace(/(?:^|\s+)(?:and|y|n|&|con|then|luego|después|despues|,)$/iu, '')
    .replace(
      /(?<=\p{L})(?:\s+(?:and|y|n|&))?\s+(?:the|la|el) (?:other|otr[oa]|last|[uú]ltim[oa]|remaining)$/iu,
      '',
    )
    .replace(/^(?:and|y|n|&)\s+/iu, '')
    .replace(/^(?:all|just|only|tod[oa]|solo|puro)\s+/iu, '')
    .trim();
