import { readDecimal } from '../../quantities/number.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';
import { isEverydayWord, isHarmlessWord } from '../../text/amounts/everyday-words.ts';
import { shareAt } from '../../text/amounts/share-at.ts';
import { spokenAmounts } from '../../text/amounts/spoken-amounts.ts';
import { respelt } from '../../text/spelling/respelt.ts';
import { unaccented } from '../../text/unaccented.ts';
import { knownOil } from './find-oil.ts';

type Piece =
  | { readonly is: 'oil'; readonly name: string }
  | { readonly is: 'amount'; readonly figure: number; readonly unit: string | undefined }
  /** `word`: one of everyday speech that tells nothing of a list. */
  | { readonly is: 'rest' | 'even' | 'break' | 'word' }
  | { readonly is: 'unit'; readonly unit: string };
type Amount = Extract<Piece, { readonly is: 'amount' }>;

/** Words of a list of oils that tell neither an oil nor how much of it. */
const IDLE = new Set(
  "an the el la los las un una of de del and y e n plus mas con with por for para in en at al it its it's is es son va van lleva llevan todo toda all only just solo pure puro puros pura just nada else thats that's that so then oils aceite aceites total ok please pls plz thanks thank you gracias favor i'm im i am using use uso tengo have got my mi mis recipe receta list lista each cada uno soap soaps bar bars jabon castile castilla bastilla base makes make up lo que rest'o dem nomas nothing more ya esta straight po mon dear love luv mate hun lang mi mami by weight peso mass agrego agregue puse eche anado sobraba sobro fraction fractions eso as like vida toda usual life old school viejo tradicional".split(
    ' ',
  ),
);
/** Two names of one oil: "higuerilla o sea ricino". */
const THAT_IS = /^(?:o sea|osea|aka|i mean|that is|es decir|alias)$/u;
const REST = /^(?:rest|remainder|resto|demas|balance)$/u;
const EVEN = /^(?:equal|equally|even|evenly|iguales|igual|parejo|same)$/u;
const JOINS = /^(?:and|y|n|e|plus|mas|wi)$/u;
const PARTS = /^(?:parts?|partes?|share|shares)$/u;
const ONE = /^(?:an?|one|una?)$/u;
const PERCENT = /^(?:%|percent|pct|porciento|porcentaje)$/u;
/** Percents may miss a hundred by their rounding. */
const ROUNDING = 1;
const PART_ROUNDING = 0.011;
const LONGEST_NAME = 5;
const LONGEST_LIST = 400;
/** Grams below which a bare figure is no kitchen scale's. */
const LEAST_GRAMS = 10;
const MASSES: ReadonlyMap<string, string> = new Map([
  ['gram', 'g'],
  ['kilogram', 'kg'],
  ['ounce', 'oz'],
  ['pound', 'lb'],
]);

const LEFT =
  /(?:for |to )?what(?:ever)?(?:['’]?s| is) left(?: over)?|what remains|(?:lo|para lo) que (?:quede|queda|sobre|sobra|falte|falta)/giu;
/** "Avocado and olive 300 g apiece". */
const APIECE =
  /(\p{L}+(?: (?:oil|butter))?) (?:and|n|y|&) (\p{L}+(?: (?:oil|butter))?) (\d+(?:[.,]\d+)? ?(?:g|gr|grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)) (?:apiece|each|cada un[oa]|de cada un[oa])(?!\p{L})/giu;

const TOKENS = /(?<![\d.,])\d\/\d(?!\d)|\d+(?:[.,]\d+)?(?: \d\/\d)?|(?<!\S)\.\d+|[\p{L}'’]+|[%,;:+/()-]/gu;
/** Between words these tell nothing; any other sign may. */
const SIGNS = /^[\s.!?"“”&=~@*]*$/u;
/** A figure with a sign or a mark glued before it: less than nothing, or a slip. */
const GLUED = /(?<!\S)-\d|(?<![\d\s(]),\d|\d[.,](?=\d+[.,]\d)|(?<=\S)\.\d+(?<!\d\.\d+)/u;

/** The pieces of a list, every word of it; undefined where a word is none of a list's. */
function piecesIn(text: string): readonly Piece[] | undefined {
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

const isMass = (unit: string | undefined): boolean => unit !== undefined && unit !== '%' && unit !== 'part';
const unitOf = (word: string): string | undefined => {
  if (PARTS.test(word)) return 'part';
  return MASSES.get(unitOfWord(word) ?? '');
};

/** "half", "un tercio", "two fifths": a share of the whole. */
function partAt(words: readonly string[], at: number): Taken | undefined {
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
  if (twins !== undefined) return { length: twins.split(' ').length };
  return /^\p{L}/u.test(word) && isEverydayWord(word) ? { piece: { is: 'word' }, length: 1 } : undefined;
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

type Entry = { readonly name: string; readonly amount: Amount | undefined };

/** Each oil with its amount, or with the rest (undefined): all amounts before their oils, or all behind. */
function entriesOf(pieces: readonly Piece[]): readonly Entry[] | undefined {
  const told = pieces.filter(({ is }) => is === 'oil' || is === 'amount' || is === 'rest');
  if (told.length < 2 || told.length % 2 === 1) return undefined;
  const entries: Entry[] = [];
  for (let at = 0; at < told.length; at += 2) {
    const [one, other] = [told[at]!, told[at + 1]!];
    const [oil, amount] = one.is === 'oil' ? [one, other] : [other, one];
    if (oil.is !== 'oil' || amount.is === 'oil') return undefined;
    entries.push({ name: oil.name, amount: amount.is === 'amount' ? amount : undefined });
  }
  const said = pieces.some(({ is }) => is === 'word');
  if (said && (isMixed(told) || isParted(pieces, told) || isQualified(pieces))) return undefined;
  return sidesAgree(pieces, told) ? entries : undefined;
}

const isMixed = (told: readonly Piece[]): boolean =>
  new Set(told.filter((_, at) => at % 2 === 0).map(({ is }) => is === 'oil')).size > 1;
/** Whether a word of everyday speech stands between an oil and its amount: what it is of may be another thing. */
const isParted = (pieces: readonly Piece[], told: readonly Piece[]): boolean =>
  told.some((piece, at) => {
    if (at % 2 === 1) return false;
    const between = pieces.slice(pieces.indexOf(piece) + 1, pieces.indexOf(told[at + 1]!));
    return between.some(({ is }) => is === 'word');
  });

/** Whether a word stands right beside an oil: used, mixed or infused oil is another. */
const isQualified = (pieces: readonly Piece[]): boolean =>
  pieces.some(
    ({ is }, at) => is === 'oil' && (pieces[at - 1]?.is === 'word' || pieces[at + 1]?.is === 'word'),
  );

/** Where some oils stand before their amount and others behind, marks between the pairs must tell which is whose. */
function sidesAgree(pieces: readonly Piece[], told: readonly Piece[]): boolean {
  const oilFirst = told.filter((_, at) => at % 2 === 0).map(({ is }) => is === 'oil');
  if (new Set(oilFirst).size === 1) return true;
  const groups: Piece[][] = [[]];
  for (const piece of pieces)
    if (piece.is === 'break') groups.push([]);
    else if (told.includes(piece)) groups.at(-1)!.push(piece);
  return groups.filter(({ length }) => length > 0).every(({ length }) => length === 2);
}

const neat = (figure: number) => String(Number(figure.toFixed(4)));

/** The list of one kind of amount in the list's own grammar; undefined where its units do not tell one reading. */
function written(entries: readonly Entry[], marked: string | undefined): string | undefined {
  const amounts = entries.flatMap(({ amount }) => amount ?? []);
  const rests = entries.length - amounts.length;
  const units = amounts.map(({ unit }) => unit ?? marked);
  const list = (unit: string, figure = (amount: Amount) => amount.figure) =>
    entries
      .map(({ name, amount }) => (amount ? `${neat(figure(amount))}${unit} ${name}` : `rest ${name}`))
      .join('; ');
  const sum = amounts.reduce((total, { figure }) => total + figure, 0);
  const told = new Set(units.filter(unit => unit !== undefined));
  const [only] = told;
  if (told.size > 1) return massesOf(entries, units);
  if (only === 'part') {
    if (rests > 0 || amounts.some(({ unit }) => unit !== undefined && unit !== 'part')) return undefined;
    return list('%', ({ figure }) => (100 * figure) / sum);
  }
  // Parts of one: "olive 0.42, palm 0.33, coconut 0.25".
  if (only === undefined && rests === 0 && Math.abs(sum - 1) < PART_ROUNDING)
    return list('%', ({ figure }) => 100 * figure);
  const isWhole = rests === 1 ? sum < 100 : Math.abs(sum - 100) <= ROUNDING;
  if (only === '%' || only === undefined) {
    if (isWhole && rests < 2) return list('%');
    // Figures without a unit that are no percents: the list's own reader asks.
    return only === undefined && rests === 0 ? list('') : undefined;
  }
  if (rests > 0) return undefined;
  if (units.every(unit => unit === only)) return list(` ${only}`);
  // The unit is told once, with the first figure or with the last.
  const isOnce =
    units.filter(unit => unit === only).length === 1 && (units[0] === only || units.at(-1) === only);
  const isScale = only === 'g' && amounts.every(({ figure }) => figure >= LEAST_GRAMS);
  return isOnce && (isScale || only === 'oz') ? list(` ${only}`) : undefined;
}

function massesOf(entries: readonly Entry[], units: readonly (string | undefined)[]): string | undefined {
  if (!units.every(isMass)) return undefined;
  return entries.map(({ name, amount }, at) => `${neat(amount!.figure)} ${units[at]} ${name}`).join('; ');
}

/**
 * A list of oils as it is spoken, in the list's own grammar: "olive 50 coconut 30 palm 20 (%)", "2 partes de soja por 1 de coco",
 * "75% tallow rest coconut", "500 g olive 200 coconut and a 100 of shea". Every word of it must be an oil, an amount or a word of
 * lists: anything else gives undefined, and so does what may be read in two ways. Pure.
 */
export function spokenOilList(text: string): string | undefined {
  if (text.length > LONGEST_LIST) return undefined;
  return spokenList(text) ?? spokenList(withoutAsides(text)) ?? spokenList(withoutAsides(respelt(text).text));
}

/** Liquids that are told of without an amount leave the oils as they are. */
const LIQUIDS = /^(?:water|agua|lye|naoh|sosa|soda|milk|leche)$/iu;
/** Clauses that hold no amount and no oil: "which is how I have made it since the old days". */
const withoutAsides = (text: string): string =>
  text
    .replace(/^(\d+(?:\s?\/\s?\d+)+)\s*[,:]\s*/u, '$1 ')
    .split(/(?<=[,;.](?!\d))/u)
    .filter((clause, at) => at === 0 || !isAside(clause))
    .join('')
    .replace(/[\s,;.]+$/u, '');

function isAside(clause: string): boolean {
  const said = spokenAmounts(clause);
  const words = said.match(/[\p{L}\p{M}'’]+/gu) ?? [];
  const tells =
    /\d/u.test(said) ||
    words.some((word, at) => REST.test(unaccented(word)) || partAt(words.slice(at), 0) !== undefined);
  return !tells && words.every(word => LIQUIDS.test(word) || isHarmlessWord(word));
}

function spokenList(text: string): string | undefined {
  const pieces = piecesIn(spokenAmounts(text).replace(LEFT, 'rest').replace(APIECE, '$1 $3, $2 $3'));
  if (!pieces) return undefined;
  const names = pieces.flatMap(piece => (piece.is === 'oil' ? [piece.name] : []));
  const amounts = pieces.flatMap(piece => (piece.is === 'amount' ? [piece] : []));
  const marks = new Set(pieces.flatMap(piece => (piece.is === 'unit' ? [piece.unit] : [])));
  const [marked] = marks;
  if (names.length === 0 || marks.size > 1) return undefined;
  if (pieces.some(({ is }) => is === 'even') && amounts.length === 0 && names.length > 1)
    return names.map(name => `${neat(100 / names.length)}% ${name}`).join('; ');
  if (names.length === 1 && isQualified(pieces)) return undefined;
  if (names.length === 1) return ofOne(names[0]!, amounts, marked);
  const entries = entriesOf(pieces);
  return entries && written(entries, marked);
}

/** One oil alone: "all olive, 1 kg", "100% coconut", "100 de oliva". */
function ofOne(name: string, amounts: readonly Amount[], marked: string | undefined): string | undefined {
  const masses = amounts.filter(({ unit }) => isMass(unit));
  const [mass] = masses;
  const others = amounts.filter(amount => amount !== mass);
  const areWhole = others.every(({ figure, unit }) => figure === 100 && (unit === '%' || unit === undefined));
  if (masses.length > 1 || !areWhole || others.length > 1) return undefined;
  if (mass) return `${neat(mass.figure)} ${mass.unit} ${name}`;
  if (others.length === 0) return undefined;
  return marked !== undefined && marked !== '%' ? `100 ${marked} ${name}` : `100% ${name}`;
}
