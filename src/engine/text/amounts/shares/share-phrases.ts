import { unbroken } from '../../../over-lines.ts';
import { plainText } from '../../../quantities/number.ts';
import { spokenAmounts } from '../../../quantities/spoken/spoken-amounts.ts';
import { knowsColour } from '../../colours/known-colours.ts';
import { namesIn, percentsMarked, ratioIn } from '../../names/listed-names.ts';
import { layersIn } from '../layers/layer-phrases.ts';
import { layersSaid } from '../layers/layers-said.ts';
import { layersInOrder, ratioOfNames } from '../layers/told-in-order.ts';
import { isPlainDivision, portionsAmongWords } from '../portions/portions-among-words.ts';
import { AMOUNT, bare, percent, shareAt } from './share-at.ts';
import { listedShares } from './share-lists.ts';
import { tidiedShares, wordedShares } from './share-wordings.ts';
import { sharesSaid } from './shares-said.ts';

type Piece = { readonly share: string | undefined; readonly name: string };

/** What an amount after these words tells is a carrier or a dose, not a share. */
const IS_DOSE = /(?:^|\s)(?:in|en|at|@|per|por|with|con|each|cada)\s+(?:an? |una? |el |la |the )?$/iu;

const SPOON_WORDS = 'tsps?|tbsps?|tblsp|teaspoons?|tablespoons?|cdt?as?|cdita|cucharad(?:it)?as?';
/** A spoonful is what goes into a portion, and no portion. */
const SPOONFUL = new RegExp(String.raw`^[\d.,/ ]+(?:${SPOON_WORDS})\b`, 'iu');
const EVERY_CUP = new RegExp(
  String.raw`(?<=\d ?(?:${SPOON_WORDS})) ?(?:\/|\b(?:per|por|for|para|to)? ?(?:an?|each|every|one|1|the|la|cada|una?)?) ?(?:us )?(?:cups?|tazas?)\b`,
  'giu',
);
/** "1/2 tsp a cup", "1/2 tsp/cup", "media cdta por cada taza": the cup in it is no share. */
const perCup = (text: string): string => text.replace(EVERY_CUP, ' per cup');

const DOSE_LAST = new RegExp(String.raw`\s[\d.,/ ]+(?:${SPOON_WORDS})(?: per cup)?$`, 'iu');

/** Splits at every share, whatever stands between: `half blue half white`, `teal 50% gray 30%`. */
function piecesIn(text: string): readonly Piece[] {
  const marks: { at: number; end: number; canonical: string }[] = [];
  for (const { index } of text.matchAll(/(?<![\p{L}\p{N}.,/])[\p{L}\p{N}]/gu)) {
    if (index < (marks.at(-1)?.end ?? 0) || IS_DOSE.test(text.slice(0, index))) continue;
    // "teal 50% grey 30": a figure beside percents is one too.
    if (SPOONFUL.test(text.slice(index))) continue;
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

/** What of a share's words tells that it is parted again: "split between blue and green", "azul y verde por igual". */
const AGAIN = new RegExp(
  unbroken`
    \b(?:split|divided?|shared|equally|evenly|between|among|entre|partes? iguales|equal parts|por igual|
    iguales|repartid[oa]s?|dividid[oa]s?|se (?:parte|reparte|divide)n?|half and half|mitad y mitad|each|
    cada un[oa]|in two|en dos|(?:the )?same|igualit[oa]s?|parej[oa]s?|lo mismo|a medias)\b
  `,
  'giu',
);

/** A share whose colours divide it evenly among them, as a share for each; any other comes back alone. */
function parted({ share, name }: Piece, told: number): readonly Piece[] {
  if (name.search(AGAIN) < 0) return [{ share, name }];
  const names = namesIn(bare(name.replace(AGAIN, ' ').replace(/\s+/gu, ' ').trim()), knowsColour);
  // "Split between blue and green, the same each" parts the share; "blue and green each" gives it to both.
  const isEach =
    /\beach\b|\bcada\b/iu.test(name) &&
    !/\b(?:split|divid\w*|shared?|between|among|same|entre|repart\w*|lo mismo|igual\w*)\b/iu.test(name);
  const whole = share === 'rest' ? 100 - told : Number(/^([\d.]+)%$/u.exec(share ?? '')?.[1]);
  if (names.length > 1 && isEach && !(whole > 0)) return names.map(one => ({ share, name: one }));
  if (names.length < 2 || !(whole > 0)) return [{ share, name: names.join(' ') }];
  return names.map(one => ({ share: percent(whole / 100 / (isEach ? 1 : names.length)), name: one }));
}

const percentsOf = (pieces: readonly Piece[]) =>
  pieces.reduce((sum, { share }) => sum + Number(/^([\d.]+)%$/u.exec(share ?? '')?.[1] ?? 0), 0);

/** "mostly white with 20% blue", "white base, 20% blue": what is no part is the rest. */
const MOSTLY = new RegExp(
  unbroken`
    ^(?:(?:mostly|mainly|all|casi tod[oa]|mayormente|sobre todo|principalmente)\s+(.+?)|(?:base (?:de |
    of )?)(.+?)|(?:main(?:ly)? )?(.+?) (?:base|background|de fondo|de base)|main (.+?)(?=,)|
    (.+?)(?= (?:with|con|except|excepto|salvo|menos|but) ))(?:\s*,\s*|\s+)(?:with |con |and |y |except |
    excepto |salvo |menos |but )?(?=an? |1\/|un |\d)(.+)$
  `,
  'iu',
);

/** "two parts white to one part blue", "2 partes de blanco por una de azul": the later parts go without the word. */
const PARTS_TO =
  /\s+(?:to (?:each|every)|to|(?:por|para|a) cada|por|a|y|and|con|with)\s+(\d+|one|una?)\s+(?:(?:parts?|partes?)\s+)?(?:(?:of|de)\s+)?(?=\p{L})/giu;

/** "una taza de rojo y dos de blanco": the unit of the first goes for the next. */
const SAME_UNIT =
  /((?:\d[\d.,/ ]*)\s*(cups?|tazas?|pints?|partes|parts|ml|g|oz|kg)\b (?:of |de )\p{L}[\p{L} ]*?)(\s*(?:,|and|y|&)\s*)(\d[\d/.,]*) (?=(?:of|de) \p{L})/giu;
const unitsSaid = (text: string): string => text.replace(SAME_UNIT, '$1$3$4 $2 ');

/** "Layer 1 turquoise; layer 2 white". */
const NUMBERED =
  /^\s*(?:(?:layer|capa|stripe|franja) \d{1,2}|\d{1,2}(?:st|nd|rd|th|[.ªº)]))\s*[:=-]?\s*(\p{L}[^\d]*)$/iu;

/** "Pink 20 percent and the other 80 is white", "rosa el 20 % y el otro 80 blanco". */
const THE_OTHER = new RegExp(
  unbroken`
    ^\s*(\p{L}+(?: \p{L}+)?) (?:is |es |al? |el )?(\d{1,2}) ?(?:%|percent|per cent|por ?ciento),? (?:and |
    y |with |con )?(?:the other|the remaining|el otro|los otros|las otras) (\d{1,2})(?: ?(?:%|percent|
    per cent|por ?ciento))? (?:(?:is|are|goes|in|es|son|van?|de|en|of) )*(\p{L}+(?: \p{L}+)?)[\s.!]*$
  `,
  'iu',
);
const EACH_ALIKE =
  /^(.+?),? (?:(?:a|one|un) )?(half|third|quarter|fifth|mitad|tercio|cuarto|quinto) (?:each|apiece|cada (?:un[oa]|color))[\s.!]*$/iu;
const ALIKE: ReadonlyMap<string, number> = new Map(
  'half third quarter fifth mitad tercio cuarto quinto'
    .split(' ')
    .map((word, at) => [word, 2 + (at % 4)] as const),
);

/** "Pink purple and teal, a third each": as many colours as it takes, each with its share. */
function allAlike(text: string): string {
  const [, list = '', share = ''] = EACH_ALIKE.exec(text) ?? [];
  const parts = ALIKE.get(share.toLowerCase());
  const names = parts === undefined ? [] : namesIn(list, knowsColour);
  return parts !== undefined && names.length === parts && names.every(name => knowsColour(name))
    ? names.map(name => `1/${parts} ${name}`).join('; ')
    : text;
}

/**
 * How a batter is divided, as people say it, in the portions' own grammar: `1/3 red; 1/3 white; rest blue`,
 * `half blue half white`, `60/40 pink and purple`, `4 layers: red, orange, yellow, green`, with commas for semicolons. What
 * already stands apart by `;` is only read share by share. A text that tells no shares comes back as it was.
 */
export function sharesPhrase(typed: string): string {
  const inOrder = ratioOfNames(typed) ?? layersInOrder(typed);
  if (inOrder !== undefined) return inOrder;
  const text = sharesSaid(layersSaid(allAlike(typed).replace(THE_OTHER, '$2% $1, $3% $4')));
  const said = saidPhrase(text);
  return isPlainDivision(said) ? said : (portionsAmongWords(text) ?? said);
}

function saidPhrase(text: string): string {
  const said = percentsMarked(
    unitsSaid(spokenAmounts(tidiedShares(perCup(plainText(text.replaceAll('\n', ';'))))))
      .replace(/\b50 50\b/gu, '50/50')
      .replace(/[.\s]+$/u, ''),
  ).replace(/\(\s*(\d[\d.,]*%)\s*\)/gu, '$1');
  const numbered = said.split(';').map(piece => NUMBERED.exec(piece)?.[1]);
  if (numbered.length > 1 && numbered.every(name => name !== undefined))
    return numbered.map(name => `1 parts ${name}`).join('; ');
  if (said.includes(';')) return joinedShares(said.split(';').flatMap(piece => piecesOrWhole(piece)));
  const worded = listedShares(said) ?? wordedShares(said);
  if (worded !== undefined) return worded;
  const ratio = ratioIn(said, knowsColour);
  if (ratio) return ratio.map(one => `${percent(one.percent / 100)} ${one.name}`).join('; ');
  const mostly = MOSTLY.exec(said);
  const main = mostly?.slice(1, 6).find(name => name !== undefined);
  if (mostly && main !== undefined && knowsColour(main)) return saidPhrase(`${mostly[6]}, rest ${main}`);
  const inParts = /^(?:\d+|an?|one|una?) (?:parts?|partes?)\b/iu.test(said)
    ? said.replace(PARTS_TO, ', $1 parts ')
    : said;
  const pieces = piecesIn(inParts);
  const told = inParts.split(',').map(piece => piece.trim());
  if (told.length > 1 && told.length >= pieces.length && told.every(piece => shareAt(piece) !== undefined))
    return joinedShares(told.flatMap(piece => piecesOrWhole(piece)));
  if (
    pieces.length > 1 &&
    pieces.every(({ name }) => name !== '' && !/\d/u.test(name.replace(DOSE_LAST, '')))
  )
    return joinedShares(pieces);
  if (pieces.length > 0) return pieces.length === 1 ? settled(inParts) : said;
  const layers = layersIn(said);
  return layers === undefined ? said : layers.map(name => `1 parts ${name}`).join('; ');
}

/** A text of one share as a piece; what tells none, or carries more than a name, stays as it is written. */
function piecesOrWhole(text: string): readonly Piece[] {
  const [piece, ...more] = piecesIn(text);
  return piece && more.length === 0 && piece.name.search(AGAIN) >= 0
    ? [piece]
    : [{ share: undefined, name: settled(text) }];
}

function joinedShares(pieces: readonly Piece[]): string {
  const told =
    percentsOf(pieces) +
    pieces.reduce((sum, { share, name }) => (share === undefined ? sum + headPercent(name) : sum), 0);
  return pieces
    .flatMap(piece => parted(piece, told))
    .map(({ share, name }) => (share === undefined ? name : `${share} ${name}`))
    .join('; ');
}

const headPercent = (text: string): number => Number(/^([\d.]+)%/u.exec(text)?.[1] ?? 0);

/** Amounts that are poured for a portion; spoons and a few grams behind a name are its dose. */
const POURED =
  /^[\d.,/ ]+(?:cups?|c|tazas?|ml|l|litros?|lit(?:er|re)s?|kg|kilos?|lbs?|pounds?|libras?|pints?|quarts?)$|^\d{3,4} ?(?:g|gr|grams?|gramos?)$/iu;

/** "White 50%", "crema (1/3)", "azul la mitad": the share behind its name. */
function nameFirst(text: string): Piece | undefined {
  const said = text.replace(/[\s).,]+$/u, '');
  if (shareAt(said)) return undefined;
  for (const { index } of said.matchAll(/(?<![\p{L}\p{N}.,/])[\p{L}\p{N}]/gu)) {
    const [head, tail] = [said.slice(0, index), said.slice(index)];
    const share = index === 0 || IS_DOSE.test(head) ? undefined : shareAt(tail);
    if (share?.length !== tail.length) continue;
    const name = bare(head.replace(/[\s(=]+$/u, ''));
    const isShare = /%$|parts$|^rest$/u.test(share.canonical) || POURED.test(tail);
    // "top: 50%" names a plain portion.
    const isColour = !/:\s*$/u.test(head) || knowsColour(name);
    return isShare && isColour && name !== '' && !/\d/u.test(name)
      ? { share: share.canonical, name }
      : undefined;
  }
  return undefined;
}

function settled(piece: string): string {
  const trimmed = piece.trim();
  const behind = nameFirst(trimmed);
  if (behind) return `${behind.share} ${behind.name}`;
  const label = /^(\p{L}[\p{L}\p{N} '-]{0,30}:)\s*(.+)$/u.exec(trimmed);
  const body = label?.[2] ?? trimmed;
  const share = shareAt(body);
  if (!share || AMOUNT.test(body)) return trimmed;
  return `${label ? `${label[1]} ` : ''}${share.canonical} ${body.slice(share.length).trim()}`.trim();
}
