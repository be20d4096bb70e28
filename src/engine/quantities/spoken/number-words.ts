import { spaced, unbroken } from '../../over-lines.ts';
import { deaccented } from '../../text/unaccented.ts';

/** Numbers as they are spelt, in both languages, lower case without accents. */
const SMALL: ReadonlyMap<string, number> = new Map([
  ...'two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'
    .split(' ')
    .map((word, at) => [word, at + 2] as const),
  ...'dos tres cuatro cinco seis siete ocho nueve diez'.split(' ').map((word, at) => [word, at + 2] as const),
  ...spaced`
    doce trece catorce quince dieciseis diecisiete dieciocho diecinueve veinte veintiuno veintidos
    veintitres veinticuatro veinticinco veintiseis veintisiete veintiocho veintinueve
  `
    .split(' ')
    .map((word, at) => [word, at + 12] as const),
]);
const TENS: ReadonlyMap<string, number> = new Map(
  ['twenty', 'thirty treinta', 'forty fourty cuarenta', 'fifty cincuenta', 'sixty sesenta', 'seventy setenta']
    .concat(['eighty ochenta', 'ninety noventa'])
    .flatMap((words, at) => words.split(' ').map(word => [word, (at + 2) * 10] as const)),
);
const HUNDREDS: ReadonlyMap<string, number> = new Map(
  [
    'cien ciento',
    'doscientos doscientas dosientos dosientas',
    'trescientos trescientas tresientos tresientas',
    'cuatrocientos cuatrocientas cuatrosientos cuatrosientas',
    'quinientos quinientas kinientos kinientas',
    'seiscientos seiscientas seisientos seisientas',
    'setecientos setecientas setesientos setesientas',
    'ochocientos ochocientas ochosientos ochosientas',
    'novecientos novecientas novesientos nobecientos',
  ].flatMap((words, at) => words.split(' ').map(word => [word, (at + 1) * 100] as const)),
);
const ONE = /^(?:an?|one|una?|uno)$/u;
/** What these follow is a part and no count: "two thirds", "tres cuartas partes". */
const PART_AFTER = new RegExp(
  unbroken`
    ^[\s-]+(?:halves|thirds?|quarters?|fourths?|fifths?|sixths?|eighths?|sixteenths?|mitades|tercios?|
    terceras?|cuartos?|cuartas?|quint[oa]s?|sexto?s|octav[oa]s?)\b
  `,
  'iu',
);
/** English "once" is no eleven; before what is counted in Spanish it is. */
const ELEVEN =
  /\bonce(?=\s+(?:g|gr|gramos?|ml|mililitros?|onzas?|tazas?|barras?|jabones|pastillas?|kilos?|libras?|cucharad\w+|moldes?|huecos?)\b)/giu;

/**
 * "Six fifty g", "seis cincuenta gramos": the hundred goes without saying. Of pieces and jars it would be so many of so much: "two fifty
 * g bars".
 */
const HUNDRED_UNSAID = new RegExp(
  unbroken`
    (?<![\p{L}\d.,/-])(one|three|four|five|six|seven|eight|nine|eleven|twelve|thirteen|fourteen|fifteen|
    sixteen|seventeen|eighteen|nineteen|tres|cuatro|cinco|seis|siete|ocho|nueve)[ -](?=(?:twenty|thirty|
    fou?rty|fifty|sixty|seventy|eighty|ninety|veinte|treinta|cuarenta|cincuenta|sesenta|setenta|ochenta|
    noventa)(?:[ -](?:one|two|three|four|five|six|seven|eight|nine)| y (?:uno?|dos|tres|cuatro|cinco|seis|
    siete|ocho|nueve))? ?(?:g|gr|gms?|grams?|grammes?|gramos?|mls?|millilit(?:er|re)s?|
    mililitros?)(?!\p{L})(?! (?:bars?|cakes?|soaps?|loa(?:f|ves)|mou?lds?|cups?|jars?|tubs?|pots?|jugs?|
    bottles?|bags?|packs?|packets?|each|apiece|barras?|pastillas?|jabones|moldes?|tazas?|botes?|frascos?|
    tarros?|botellas?|bolsas?|cada)(?!\p{L})))
  `,
  'giu',
);

type Piece = { readonly word: string; readonly from: number; readonly to: number };
type Run = { readonly value: number; readonly next: number };

const hundred = (word = '') => /^hundreds?$/u.test(word);
const thousand = (word = '') => /^(?:thousands?|mil)$/u.test(word);

/** Below a thousand: "two hundred and fifty", "doscientos cincuenta", "treinta y cinco", "twenty five". */
function belowThousand(words: readonly string[], from: number): Run | undefined {
  let at = from;
  let value = 0;
  const small = SMALL.get(words[at] ?? '');
  const one = ONE.test(words[at] ?? '') && hundred(words[at + 1]);
  if (one || (small !== undefined && small < 20 && hundred(words[at + 1]))) {
    value = (small ?? 1) * 100;
    at += 2;
  } else if (HUNDREDS.has(words[at] ?? '')) {
    value = HUNDREDS.get(words[at]!)!;
    at += 1;
  }
  const joined = value > 0 && words[at] === 'and' ? at + 1 : at;
  const tail = belowHundred(words, joined);
  if (tail) return { value: value + tail.value, next: tail.next };
  return at > from ? { value, next: at } : undefined;
}

function belowHundred(words: readonly string[], at: number): Run | undefined {
  const tens = TENS.get(words[at] ?? '');
  if (tens === undefined) {
    const small = SMALL.get(words[at] ?? '');
    return small === undefined ? undefined : { value: small, next: at + 1 };
  }
  const next = words[at + 1] === 'y' ? at + 2 : at + 1;
  const unit = ONE.test(words[next] ?? '') && next > at + 1 ? 1 : SMALL.get(words[next] ?? '');
  if (words[next] === 'one') return { value: tens + 1, next: next + 1 };
  return unit !== undefined && unit < 10
    ? { value: tens + unit, next: next + 1 }
    : { value: tens, next: at + 1 };
}

function numberAt(words: readonly string[], from: number): Run | undefined {
  const head = belowThousand(words, from);
  const isOne = head === undefined && ONE.test(words[from] ?? '');
  const at = head?.next ?? (isOne ? from + 1 : from);
  if (!thousand(words[at])) return head;
  const tail = belowThousand(words, at + 1);
  return { value: (head?.value ?? 1) * 1000 + (tail?.value ?? 0), next: tail?.next ?? at + 1 };
}

/**
 * Spelt numbers of two and more as figures: "two hundred and fifty g", "kilo y medio y treinta y cinco gramos", "doce jabones de cien
 * gramos". "One", "un" and parts ("two thirds") stay as they are, since they are articles or fractions to other readers.
 */
export function figuresOf(text: string): string {
  const said = text.replace(ELEVEN, '11').replace(HUNDRED_UNSAID, '$1 hundred ');
  const pieces: Piece[] = [...said.matchAll(/[\p{L}\p{M}]+/gu)].map(({ 0: word, index }) => ({
    word: deaccented(word),
    from: index,
    to: index + word.length,
  }));
  const words = pieces.map(({ word }) => word);
  let out = '';
  let end = 0;
  for (let at = 0; at < pieces.length; at += 1) {
    // "por ciento" is a percent.
    if (words[at] === 'ciento' && words[at - 1] === 'por') continue;
    const run = numberAt(words, at);
    if (!run || !isWhole(said, pieces.slice(at, run.next))) continue;
    const { from } = pieces[at]!;
    const { to } = pieces[run.next - 1]!;
    if (
      PART_AFTER.test(said.slice(to, to + 20)) ||
      (/\d\s*$/u.test(said.slice(Math.max(0, from - 3), from)) && words[at] === 'mil')
    )
      continue;
    out += `${said.slice(end, from)}${run.value}`;
    end = to;
    at = run.next - 1;
  }
  return out + said.slice(end);
}

/** Whether only spaces and hyphens part the words of a number. */
const isWhole = (text: string, pieces: readonly Piece[]): boolean =>
  pieces.every(({ from }, at) => at === 0 || /^[\s-]+$/u.test(text.slice(pieces[at - 1]!.to, from)));
