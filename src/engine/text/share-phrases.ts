import { plainText } from '../quantities/number.ts';

/** Named parts of a whole, in both languages, longest first. */
const FRACTIONS: readonly (readonly [RegExp, number])[] = [
  [/^(?:three quarters|three fourths|tres cuartos|tres cuartas partes)\b/iu, 3 / 4],
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
const PARTS = /^(\d+(?:[.,]\d+)?|an?|one|una?|two|dos|three|tres) (?:parts?|partes?)\b/iu;
const AMOUNT =
  /^(?:\d[\d.,/ ]*|half (?:an? )?|an? |one |una? |media |dos |two )\s*(?:cups?|c|tazas?|ml|l|litros?|liters?|litres?|g|gr|grams?|gramos?|kg|oz|onzas?|ounces?|lbs?|pounds?|libras?|pints?|quarts?|tbsp|cdas?|tsp|cdtas?)\b/iu;
const COUNTED: ReadonlyMap<string, string> = new Map([
  ['a', '1'],
  ['an', '1'],
  ['one', '1'],
  ['un', '1'],
  ['una', '1'],
  ['two', '2'],
  ['dos', '2'],
  ['three', '3'],
  ['tres', '3'],
]);

type Share = { readonly canonical: string; readonly length: number };

/** The share at the head of a text, as `33.333333%`, `2 parts`, `rest` or the amount itself; undefined where none is. */
function shareAt(text: string, bareIsPercent = false): Share | undefined {
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
    if (match) return { canonical: percent(share), length: match[0].length };
  }
  return undefined;
}

/** Six decimals: thirds then add up to the whole as nearly as the split can tell. */
const percent = (share: number) => `${String(Number((share * 100).toFixed(6)))}%`;

type Piece = { readonly share: string | undefined; readonly name: string };

/** What an amount after these words tells is a carrier or a dose, not a share. */
const IS_DOSE = /(?:^|\s)(?:in|en|at|@|per|por|with|con|each|cada)\s+(?:an? |una? )?$/iu;

/** Splits at every share, whatever stands between: `half blue half white`, `teal 50% gray 30%`. */
function piecesIn(text: string): readonly Piece[] {
  const marks: { at: number; end: number; canonical: string }[] = [];
  for (const { index } of text.matchAll(/(?<![\p{L}\p{N}.,/])[\p{L}\p{N}]/gu)) {
    if (index < (marks.at(-1)?.end ?? 0) || IS_DOSE.test(text.slice(0, index))) continue;
    // "teal 50% grey 30": a figure beside percents is one too.
    const share = shareAt(text.slice(index), text.includes('%'));
    if (share) marks.push({ at: index, end: index + share.length, canonical: share.canonical });
  }
  const nameFirst = marks.length > 0 && /\p{L}/u.test(bare(text.slice(0, marks[0]!.at)));
  return marks.map(({ at, end, canonical }, index) => {
    if (!nameFirst || canonical === 'rest' || /^rest/u.test(canonical))
      return { share: canonical, name: bare(text.slice(end, marks[index + 1]?.at)) };
    return { share: canonical, name: bare(text.slice(index === 0 ? 0 : marks[index - 1]!.end, at)) };
  });
}

/** A colour's words without what joins them to their share or to the next one. */
const bare = (text: string): string =>
  text
    .replace(/^[\s,:;=-]+|[\s,:;=-]+$/gu, '')
    .replace(/^(?:of|de|en|in|is|for|para|each|is left|con|with)\s+/iu, '')
    .replace(/(?:^|\s+)(?:and|y|n|&|con|then|luego|después|despues|,)$/iu, '')
    .replace(/^(?:and|y|n|&)\s+/iu, '')
    .trim();

/** `60/40 pink and purple`: figures first, then as many names. */
function ratioFirst(text: string): string | undefined {
  const match = /^(\d{1,2}(?:\s*\/\s*\d{1,2})+)\s+(?:of |de )?(.+)$/iu.exec(text);
  if (!match) return undefined;
  const figures = match[1]!.split('/').map(Number);
  const joined = match[2]!.split(/\s*(?:,|\band\b|\by\b|&|\/|\bn\b)\s*/iu).filter(name => name !== '');
  const words = match[2]!.split(/\s+/u);
  // "50/25/25 black gold copper": a word to each figure.
  const names = joined.length === 1 && words.length === figures.length ? words : joined;
  const sum = figures.reduce((total, figure) => total + figure, 0);
  if (sum !== 100 || names.length !== figures.length) return undefined;
  return figures.map((figure, at) => `${figure}% ${names[at]}`).join('; ');
}

const LAYERS =
  /^(?:(\d{1,2}|two|three|four|five|six|dos|tres|cuatro|cinco|seis)\s+)?(?:equal\s+|even\s+)?(?:layers?|colou?rs?|capas?|colores|stripes?|franjas?|partes iguales|equal parts?)(?:\s+(?:iguales|of|de))?\s*[:,-]?\s*(.+)$/iu;
const STACKED = /\s*(?:,|;|\band then\b|\bthen\b|\bluego\b|\bdespu[eé]s\b|\bsobre eso\b|\s-\s|>|→|\/)\s*/iu;
const PLACE =
  /\b(?:(?:on |at |in )?(?:the )?(?:bottom|top|middle|base)(?: layer)?|layer|(?:abajo|arriba|al fondo|en medio|encima|en el medio)(?: del todo)?|capa de|capa|first|finally|start with|primero|al final)\b/giu;

/** Layers from the bottom up, in equal parts; undefined where the text is no such list. */
export function layersIn(text: string): readonly string[] | undefined {
  const said = plainText(text);
  const listed = LAYERS.exec(said);
  const body = listed?.[2] ?? said;
  const split = body
    .split(STACKED)
    .flatMap(piece => (listed ? piece.split(/\s+(?:and|y|n|&)\s+/iu) : [piece]))
    .map(piece => bare(piece.replace(PLACE, ' ').replace(/\s+/gu, ' ')))
    .map(piece => piece.replace(/^(?:and|y|a|an|una?|the|el|la)\s+/iu, ''))
    .filter(piece => piece !== '');
  if (!listed) return split.length > 1 ? split : undefined;
  // "3 layers pink white pink": as many words as layers.
  const words = body.split(/\s+/u);
  const count = COUNT_OF.get(listed[1]?.toLowerCase() ?? '') ?? Number(listed[1]);
  if (split.length === 1 && words.length === count) return words;
  return split.length > 1 || listed[1] === '1' ? split : undefined;
}

const COUNT_OF: ReadonlyMap<string, number> = new Map(
  ['two dos', 'three tres', 'four cuatro', 'five cinco', 'six seis'].flatMap((words, at) =>
    words.split(' ').map(word => [word, at + 2] as const),
  ),
);

/**
 * How a batter is divided, as people say it, in the portions' own grammar: `1/3 red; 1/3 white; rest blue`,
 * `half blue half white`, `60/40 pink and purple`, `4 layers: red, orange, yellow, green`, with commas for semicolons. What
 * already stands apart by `;` is only read share by share. A text that tells no shares comes back as it was.
 */
export function sharesPhrase(text: string): string {
  const said = plainText(text.replaceAll('\n', ';'));
  if (said.includes(';')) return said.split(';').map(settled).join(';');
  const ratio = ratioFirst(said);
  if (ratio !== undefined) return ratio;
  const even = EVEN.exec(said);
  const evenly = even && layersIn(`colours: ${said.replace(even[0], ' ')}`);
  if (evenly) return evenly.map(name => `1 parts ${name}`).join('; ');
  const pieces = piecesIn(said);
  const told = said.split(',').map(piece => piece.trim());
  if (told.length > 1 && told.length >= pieces.length && told.every(piece => shareAt(piece) !== undefined))
    return told.map(settled).join('; ');
  if (pieces.length > 1 && pieces.every(({ name }) => name !== '' && !/\d/u.test(name)))
    return pieces.map(({ share, name }) => `${share} ${name}`).join('; ');
  if (pieces.length > 0) return pieces.length === 1 ? settled(said) : said;
  const layers = layersIn(said);
  return layers === undefined ? said : layers.map(name => `1 parts ${name}`).join('; ');
}

/** "a partes iguales", "in equal parts", after the colours. */
const EVEN =
  /[\s,]*\b(?:(?:a|en|in|por)\s+)?(?:partes iguales|equal parts|igual(?:es)? cantidad(?:es)?|same amounts?|split evenly|evenly)\b/iu;

function settled(piece: string): string {
  const trimmed = piece.trim();
  const label = /^(\p{L}[\p{L}\p{N} '-]{0,30}:)\s*(.+)$/u.exec(trimmed);
  const body = label?.[2] ?? trimmed;
  const share = shareAt(body);
  if (!share || AMOUNT.test(body)) return trimmed;
  return `${label ? `${label[1]} ` : ''}${share.canonical} ${body.slice(share.length).trim()}`.trim();
}
