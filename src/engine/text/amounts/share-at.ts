/** Named parts of a whole, in both languages, longest first. */
const FRACTIONS: readonly (readonly [RegExp, number])[] = [
  [/^(?:three quarters|three fourths|tres cuartos|tres cuartas partes|3 quarters)\b/iu, 3 / 4],
  [/^(?:two thirds|dos tercios|dos terceras partes)\b/iu, 2 / 3],
  [/^(?:two fifths|dos quintos)\b/iu, 2 / 5],
  [
    /^(?:(?:(?:an?|one|1|the|un|una|la|el) )?(?:other |another |otra |otro )?(?:half|mitad|medio|media))\b/iu,
    1 / 2,
  ],
  [
    /^(?:(?:(?:an?|one|1|the|un|una|el|la) )?(?:other |another |otra |otro )?(?:third|tercio|tercera parte))\b/iu,
    1 / 3,
  ],
  [
    /^(?:(?:(?:an?|one|1|the|un|una|el|la) )?(?:other |another |otra |otro )?(?:quarter|fourth|cuarto|cuarta parte))\b/iu,
    1 / 4,
  ],
  [/^(?:(?:an?|one|1|un|una)? ?(?:fifth|quinto|quinta parte))\b/iu, 1 / 5],
  [/^(?:(?:an?|one|1|un|una)? ?(?:sixth|sexto))\b/iu, 1 / 6],
  [/^(?:(?:an?|one|1|un|una)? ?(?:eighth|octavo))\b/iu, 1 / 8],
];
const WRITTEN_FRACTION =
  /^(\d{1,2}) ?\/ ?(\d{1,2})(?!\d|\s*(?:cups?|tazas?|tsp|tbsp|cdas?|cdtas?|c\b|l\b|lb|oz|kg|pints?|quarts?|litr|teasp|tablesp|cuchar))/iu;
const REST =
  /^(?:and )?(?:the |el |la |lo )?(?:rest|remainder|remaining|everything else|whatever'?s? (?:is )?left(?: over)?|what'?s left|leftover|balance|resto|demas|demás|lo que (?:quede|sobra|sobre|queda))\b/iu;
const PERCENT = /^(\d+(?:[.,]\d+)?) ?(?:%|percent|pct|por ?ciento)/iu;
const PARTS = /^(\d+(?:[.,]\d+)?|an?|one|una?) (?:parts?|partes?)\b/iu;
export const AMOUNT =
  /^(?:\d[\d.,/ ]*|half (?:an? )?|an? |one |una? |media |dos |two )\s*(?:cups?|c|tazas?|ml|l|litros?|liters?|litres?|g|gr|grams?|gramos?|kg|oz|onzas?|ounces?|lbs?|pounds?|libras?|pints?|quarts?|tbsp|cdas?|tsp|cdtas?)\b/iu;
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
  for (const [pattern, share] of FRACTIONS) {
    const match = pattern.exec(text);
    if (match && !/^ (?:layers?|capas?)\b/iu.test(text.slice(match[0].length)))
      return { canonical: percent(share), length: match[0].length };
  }
  return undefined;
}

/** Six decimals: thirds then add up to the whole as nearly as the split can tell. */
export const percent = (share: number) => `${String(Number((share * 100).toFixed(6)))}%`;
