import { unbroken } from '../../over-lines.ts';
import { unitOfWord, unitSize } from '../unit-words.ts';
import { MEASURES } from '../units.ts';
import { piecesIn } from './pieces.ts';
import { tidied } from './tidied.ts';

/** An amount in a member's words, told once (`low`) or as a range, in words that the amounts' own grammar reads. */
export type AmountPhrase = {
  readonly low: string;
  readonly high?: string;
  /** True where the member said "about", "3 cups ish" and the like. */
  readonly about: boolean;
};

const NUMBER = String.raw`(?:\d+ \d+\/\d+|\d+-\d+\/\d+|\d+\/\d+|\d*[.,]?\d+)`;
const WORDED =
  'one|two|three|four|five|six|seven|eight|nine|ten|half|una|uno|un|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|media|medio';
const RANGE = new RegExp(
  unbroken`
    ^(?:between |entre |from |de )?(${NUMBER}|${WORDED})\s*((?!(?:and|y|e|to|or|a|o|ó|n|up|
    hasta)(?!\p{L}))\p{L}[\p{L}.]*)?\s*(-|\bto\b|\bor\b|\band\b|\by\b|\ba\b|\bo\b|(?<=\s)ó(?=\s)|\bhasta\b|
    \bup to\b)\s*(${NUMBER}|${WORDED})(?![\d/])\s*(.*)$
  `,
  'iu',
);

/** A fraction of a stated whole: "1/3 of 3 lb oils", "half of 900 g". */
const FRACTION_OF = new RegExp(
  unbroken`
    ^(?:el |the )?(\d+\/\d+|\d+(?:[.,]\d+)? ?(?:%|percent|por ?ciento)|half|a half|(?:a|one|two|1|
    2) (?:third|fifth|sixth|eighth)s?|(?:a|one|three|1|3) (?:quarter|fourth)s?|la mitad|mitad|(?:un|una|la|
    dos|1|2) (?:tercio|quinto|sexto|octavo|tercera parte|quinta parte|terceras partes)s?|(?:un|una|la|tres|
    1|3) (?:cuarto|cuarta parte|cuartas partes)s?)\s+(?:(?:of|de|del)\s+(?:(?:an?|the|my|our|una?|mi|la|los|
    el|batch|loaf|recipe|mould|mold|lote|receta|molde|tanda|of|de) )*|(?:an?|un|una|my|
    mi) )(?=\d)([\d.,/ ]*\d)\s*(.+)$
  `,
  'iu',
);
/** A part in words or percent, such as "two thirds", "una quinta parte", "25 %". */
function partNamed(written: string): number | undefined {
  const said = written.toLowerCase().trim();
  const percent = /^(\d+(?:[.,]\d+)?) ?(?:%|percent|por ?ciento)$/u.exec(said)?.[1];
  if (percent !== undefined) return Number(percent.replace(',', '.')) / 100;
  const under = UNDER.find(([pattern]) => pattern.test(said))?.[1];
  if (under === undefined) return undefined;
  return (/^(?:two|dos|2)\b/u.test(said) ? 2 : /^(?:three|tres|3)\b/u.test(said) ? 3 : 1) / under;
}
const UNDER: readonly (readonly [RegExp, number])[] = [
  [/half|mitad|medi[ao]/u, 2],
  [/third|terci|tercer/u, 3],
  [/quarter|fourth|cuart/u, 4],
  [/fifth|quint/u, 5],
  [/sixth|sext/u, 6],
  [/eighth|octav/u, 8],
];
/** A whole that is parted evenly: "2000 g / 4", "un kilo entre cuatro", "1200 grams split in 3". */
const DIVIDED = new RegExp(
  unbroken`
    ^([\d.,/ ]*\d)\s*(\p{L}[\p{L} ]*?)\s*(?:\/|÷|(?:split|divided?|shared|dividid[oa]s?|repartid[oa]s?|
    partid[oa]s?)?\s*(?:in|into|by|between|among|over|across|en|entre)|\s(?:split|divided?|
    shared))\s*(\d{1,2})(?:\s+(?:equal |even |same )?(?:parts?|portions?|ways|colou?rs|cups|pots|jugs|bowls|
    loaves|moulds|molds|partes?|porciones|colores|vasos|jarras|ollas|moldes)(?: iguales)?)?$
  `,
  'iu',
);

/** A figure and a fraction of it as one number, such as `1/3` of `3`; undefined where either is unreadable. */
function figureOf(written: string): number | undefined {
  const named = partNamed(written);
  if (named !== undefined) return named;
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/u.exec(written.trim());
  if (mixed) return Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]);
  // "1,500" may be one and a half: which one is asked where the amount is read whole.
  if (/^\d{1,3}[.,]\d{3}$/u.test(written.trim())) return undefined;
  const value = Number(written.trim().replace(',', '.'));
  return Number.isFinite(value) ? value : undefined;
}

/** "entre taza y 1 1/2 taza": a unit alone at the head of a range is one. */
const withOneSaid = (said: string): string =>
  said.replace(
    /^(between |entre |from |de )?(?=(\p{L}{3,}) (?:and|y|or|o|ó|to|a) \d)/iu,
    (all, _lead, unit: string) => (unitOfWord(unit) === undefined ? all : `${all}1 `),
  );

/** "500/600 g", "1.5/2 cups": two figures that are no fraction. */
const SLASHED = /^(\d+[.,]\d+|[2-9]\d|\d{3,})\/(?=\d+(?:[.,]\d+)? \p{L})/u;

/** "a cup or two", "from 1 cup up to 2", "medio litro o tres cuartos": the unit goes without saying. */
const ELIDED = new RegExp(
  unbroken`
    ^(?:from |de |between |
    entre )?(${NUMBER}) (\p{L}+)(?:,| or| o| ó| to| up to| a| hasta| maybe| quizas?)+ (${NUMBER}|half|media|
    (?:three|3|tres) (?:quarters|fourths|cuartos))$
  `,
  'iu',
);
/** "Between 1 litre and 1.2": only there is "and" no sum. */
const BETWEEN_ELIDED = new RegExp(
  String.raw`^(?:between|entre) (${NUMBER}) (\p{L}+)(?: (?:and|y|n))+ (${NUMBER})$`,
  'iu',
);
function withUnitTwice(said: string): string {
  const [, first, unit, second] = ELIDED.exec(said) ?? BETWEEN_ELIDED.exec(said) ?? [];
  if (first === undefined || unit === undefined || second === undefined || unitOfWord(unit) === undefined)
    return said;
  const named = /^\p{L}|^3 /u.test(second) ? partNamed(second) : undefined;
  return `${first}-${named === undefined ? second : figure(named)} ${unit}`;
}

/** What an end of a range comes to in its unit; its bare figure where no unit is known. */
const sized = (count: number, unit: string): { readonly of: string; readonly value: number } => {
  const known = unitOfWord(unit);
  const size = known && unitSize(known, MEASURES.us);
  return size ? { of: size.measure, value: count * size.size } : { of: '', value: count };
};

/** The range a text tells, such as `2-3 cups`, as its two ends. `1-1/2 cups` is one and a half. */
function rangeIn(said: string): { readonly low: string; readonly high: string } | undefined {
  const match = RANGE.exec(said);
  if (!match) return undefined;
  const [, first = '', firstUnit, joint = '', second = '', rest = ''] = match;
  const [low, high] = [figureOf(first), figureOf(second)];
  const isMixed =
    joint === '-' && /^\d+$/u.test(first) && /^\d+\/\d+$/u.test(second) && firstUnit === undefined;
  if (isMixed || rest.trim() === '') return undefined;
  // "1 cup and 2 Tbsp" is a sum; only "between 1 and 2 cups" is a range by "and".
  const isSum = /^(?:and|y)$/iu.test(joint) && !/^(?:between|entre)\b/iu.test(said);
  const unit = rest.split(' ')[0]!;
  // "1 cup - 2 Tbsp" may take away; "400 g - 450 g" does not.
  const isLess = firstUnit !== undefined && joint === '-' && unitOfWord(firstUnit) !== unitOfWord(unit);
  if (isSum || isLess) return undefined;
  if (low !== undefined && high !== undefined) {
    const [from, to] = [sized(low, firstUnit ?? unit), sized(high, unit)];
    if (from.of === to.of && from.value >= to.value) return undefined;
  }
  return { low: `${first} ${firstUnit ?? rest}`.trim(), high: `${second} ${rest}`.trim() };
}

/**
 * An amount as people write it, in words that the amounts' grammar reads: hedges are noted and left out ("about",
 * "ish", "unos"), a fraction of a whole is reckoned ("1/3 of 3 lb oils"), pieces are multiplied ("10 bars of 4 oz") and a
 * range comes as its two ends ("2-3 cups").
 */
export function amountPhrase(text: string): AmountPhrase {
  const { text: said, about } = tidied(text);
  const part = FRACTION_OF.exec(said);
  const share = part && figureOf(part[1]!);
  const whole = part && figureOf(part[2]!);
  if (part && share !== undefined && share !== null && whole !== undefined && whole !== null)
    return { low: `${figure(share * whole)} ${part[3]!}`, about };
  const pieces = piecesIn(said, text);
  const each = pieces && /^([\d.,/ ]*\d)\s*(\p{L}.*)$/u.exec(pieces.each);
  const size = each && figureOf(each[1]!);
  if (pieces && each && size !== undefined && size !== null)
    return { low: `${figure(pieces.count * size)} ${each[2]!}`, about };
  const divided = DIVIDED.exec(said);
  const all = divided && figureOf(divided[1]!);
  if (divided && all !== undefined && all !== null && Number(divided[3]) > 1)
    return { low: `${figure(all / Number(divided[3]))} ${divided[2]!}`, about };
  const range = rangeIn(withUnitTwice(withOneSaid(said.replace(SLASHED, '$1-'))));
  if (range) return { ...range, about };
  return { low: said, about };
}

/** A figure that no reader takes for thousands. */
const figure = (value: number) =>
  value
    .toFixed(4)
    .replace(/\.?0+$/u, '')
    .replace(/(\.\d{3})$/u, '$10');
