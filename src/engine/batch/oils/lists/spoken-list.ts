import { unbroken } from '../../../over-lines.ts';
import { figureText } from '../../../quantities/for-readers.ts';
import { spokenAmounts } from '../../../quantities/spoken/spoken-amounts.ts';
import { CORRECTS } from '../../../text/amounts/corrects.ts';
import { isEverydayWord } from '../../../text/amounts/everyday-words.ts';
import { isStopWord } from '../../../text/amounts/stop-words.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { knownOil } from '../find-oil.ts';
import { type Amount, isMass, type Piece, partAt, piecesIn, REST } from './list-pieces.ts';

/** Percents may miss a hundred by their rounding. */
const ROUNDING = 1;
const PART_ROUNDING = 0.011;
const LONGEST_LIST = 400;
/** Grams below which a bare figure is no kitchen scale's. */
const LEAST_GRAMS = 10;
const LEFT =
  /(?:for |to )?what(?:ever)?(?:['’]?s| is) left(?: over)?|what remains|(?:lo|para lo) que (?:quede|queda|sobre|sobra|falte|falta)/giu;
/** "Avocado and olive 300 g apiece". */
const APIECE = new RegExp(
  unbroken`
    (\p{L}+(?: (?:oil|butter))?) (?:and|n|y|&) (\p{L}+(?: (?:oil|butter))?) (\d+(?:[.,]\d+)? ?(?:g|gr|
    grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)) (?:apiece|each|cada un[oa]|
    de cada un[oa])(?!\p{L})
  `,
  'giu',
);

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
  return sidesAgree(pieces, told) ? entries : undefined;
}

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

const neat = (figure: number) => figureText(figure, 4);

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
  return spokenList(text) ?? spokenList(withoutAsides(text));
}

/** How a clause begins that tells why or how, and of no oil; anything else behind a comma may be one. */
const ASIDE = new RegExp(
  unbroken`
    ^\s*(?:which is|that['’]?s how|it['’]?s how|that['’]?s (?:the lot|thi lot|all|it)|as (?:always|usual|
    ever)|because|since|the way|que es como|como siempre|porque|(?:the )?(?:water|agua)(?= ))(?!\p{L})
  `,
  'iu',
);
/** Other fats are told not to be in it: "never mind your fancy butters", "nada de manteca". */
const NONE_ELSE = new RegExp(
  unbroken`
    ^\s*(?:never mind|forget(?: about)?|nothing fancy|no fancy|nothing else|nada de|nada m[aá]s|sin|without|
    no (?:other|more|m[aá]s|otr[oa]s?)|no(?= (?:\p{L}+ )?(?:oils?|fats?|butters?|wax|aceites?|grasas?|
    mantecas?|mantequillas?|ceras?)(?!\p{L})))(?!\p{L})
  `,
  'iu',
);
/** What a fat, or a part of a plant, may be called. */
const MAY_BE_FAT =
  /(?<!\p{L})(?:oils?|fats?|butters?|wax|cream|seeds?|nuts?|one|aceites?|grasas?|ceras?|crema|semillas?)(?!\p{L})/iu;
/** "The 20 that is left", "the last 10": the figure is told, and what it leaves of a hundred. */
const LEFT_FIGURE = new RegExp(
  unbroken`
    (?:(?:el|los|the) )?(\d+(?:[.,]\d+)?)( ?%| percent| por ?ciento)? (?:que (?:faltan?|quedan?|restan?|
    sobran?)|restantes?|remaining|(?:that (?:is|are) )?left(?: over)?)(?!\p{L})|(?:(?:the|el|los|
    las) )?(?:remaining|last|other|restantes?|[uú]ltim[oa]s?|otr[oa]s?) (\d+(?:[.,]\d+)?)
  `,
  'giu',
);
/** "60/30/10, olive coconut castor", and clauses such as "which is how I have always made it". */
const withoutAsides = (text: string): string =>
  text
    .replace(/\(?\bwt\.? ?%\)?/giu, '%')
    .replace(LEFT_FIGURE, (_, figure?: string, unit = '', other = '') => `${figure ?? other}${unit}`)
    .replace(/\s+from (?:the|my|our) \p{L}+(?=\s*(?:$|[,;.]))/giu, '')
    .replace(/^(\d+(?:\s?\/\s?\d+)+)\s*[,:]\s*/u, '$1 ')
    .replace(/\s*\(([^()]*)\)/gu, (all, inside: string) => (isAside(inside, true) ? '' : all))
    .split(/(?<=[,;.](?!\d))/u)
    .filter(clause => !isAside(clause))
    .join('')
    .replace(/[\s,;.]+$/u, '');

const LEAST_WORDS = 2;
const wordsOf = (text: string): readonly string[] => text.match(/[\p{L}\p{M}'’]+/gu) ?? [];
const isShareWord = (word: string, at: number, words: readonly string[]): boolean =>
  REST.test(unaccented(word)) || partAt(words.slice(at), 0) !== undefined;

/** Whether a clause tells of no oil: no figure, no share and no name, and words of everyday speech alone. */
function isAside(clause: string, isBracketed = false): boolean {
  // "No, sorry, half a pound of it" puts right what was told before.
  if (/\d/u.test(spokenAmounts(clause)) || CORRECTS.test(clause)) return false;
  const none = NONE_ELSE.exec(clause)?.[0];
  const opening = none ?? ASIDE.exec(clause)?.[0];
  const words = wordsOf(clause.slice((opening ?? '').length));
  if (words.some(isShareWord)) return false;
  if (none !== undefined) return words.every(word => isEverydayWord(word) || MAY_BE_FAT.test(word));
  if (MAY_BE_FAT.test(clause) || words.some(isOilName)) return false;
  if (opening !== undefined) return words.every(word => isEverydayWord(word));
  // What is no word of any sentence may be a fat that is on no list: "what I had of the emu".
  const isRemark = isBracketed ? (word: string) => isEverydayWord(word) || /['’]s$/u.test(word) : isStopWord;
  return words.length >= LEAST_WORDS && words.every(word => isRemark(word));
}

const isOilName = (word: string): boolean => word.length > 2 && knownOil(word) !== undefined;

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
