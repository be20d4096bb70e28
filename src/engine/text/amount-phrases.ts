import { plainText } from '../quantities/number.ts';

/** An amount in a member's words, told once (`low`) or as a range, in words that the amounts' own grammar reads. */
export type AmountPhrase = {
  readonly low: string;
  readonly high?: string;
  /** True where the member said "about", "3 cups ish" and the like. */
  readonly about: boolean;
};

const HEDGES =
  /(?:^|(?<=[\s(]))(?:about|around|abt|approx(?:imately)?\.?|roughly|circa|ca\.|prob(?:ably|s)?|maybe|like|just|only|exactly|almost|nearly|some|say|i think|more or less|give or take|aprox(?:imadamente)?\.?|como|unos|unas|casi|cerca de|alrededor de|mas o menos|más o menos|sobre|tirando a|un poco (?:mas|menos) de)(?=\s|\d)|~|\bor so\b|\bmore or less\b|(?<=\p{L}|\d|\s)[- ]?ish\b|\bo as[ií]\b|\bpoco m[aá]s o menos\b|\bm[aá]s o menos\b/giu;

const COUNTS: readonly (readonly [RegExp, string])[] = [
  [/\b(?:half a dozen|media docena(?: de)?)\b/giu, '6'],
  [/\b(?:a|one|una)\s+(?:dozen|docena)(?: de| of)?\b/giu, '12'],
  [/\b(?:dozen|docena)\b(?: de| of)?/giu, '12'],
  [/\b(?:a )?couple(?: of)?\b|\b(?:un )?par de\b/giu, '2'],
];

/** "2 kilos 300": the grams go without saying. */
const KILOS = /\b(\d{1,3}) (?:kilos?|kgs?) (?:y |and )?(\d{3})(?!\s*(?:g|ml|\d))/giu;
const AND = /(?<=\s)(?:n|'n'|'n|&)(?=\s)/giu;
const NUMBER = String.raw`(?:\d+ \d+\/\d+|\d+-\d+\/\d+|\d+\/\d+|\d*[.,]?\d+)`;
const WORDED =
  'one|two|three|four|five|six|seven|eight|nine|ten|half|una|un|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|media';
const RANGE = new RegExp(
  String.raw`^(?:between |entre |from |de )?(${NUMBER}|${WORDED})\s*((?!(?:and|y|e|to|or|a|o|n|hasta)\b)\p{L}[\p{L}.]*)?\s*(-|\bto\b|\bor\b|\band\b|\by\b|\ba\b|\bo\b|\bhasta\b)\s*(${NUMBER}|${WORDED})(?![\d/])\s*(.*)$`,
  'iu',
);

/** A fraction of a stated whole: "1/3 of 3 lb oils", "half of 900 g". */
const FRACTION_OF =
  /^(\d+\/\d+|half|a half|a third|one third|two thirds|a quarter|one quarter|three quarters|la mitad|mitad|un tercio|dos tercios|un cuarto|tres cuartos)\s+(?:of|de)\s+(?:a |an |the |my |un |una |mi )?(?=\d)([\d.,/ ]*\d)\s*(.+)$/iu;
const FRACTION: ReadonlyMap<string, number> = new Map([
  ['half', 1 / 2],
  ['a half', 1 / 2],
  ['la mitad', 1 / 2],
  ['mitad', 1 / 2],
  ['a third', 1 / 3],
  ['one third', 1 / 3],
  ['un tercio', 1 / 3],
  ['two thirds', 2 / 3],
  ['dos tercios', 2 / 3],
  ['a quarter', 1 / 4],
  ['one quarter', 1 / 4],
  ['un cuarto', 1 / 4],
  ['three quarters', 3 / 4],
  ['tres cuartos', 3 / 4],
]);

/** So many bars or cavities of so much each. */
const PIECES =
  'bars?|barras?|barritas?|pastillas?|jabones|soaps?|cavit\\w*|cavidad\\w*|huecos?|holes?|moulds?|molds?|moldes?|pieces?|piezas?|cubes?|rounds?|hearts?|unidades|cupcakes?';
const COUNT_OF_EACH = new RegExp(
  String.raw`^(\d{1,3}|a|one|two|three|four|five|six|eight|ten|una?|dos|tres|cuatro|seis|ocho|diez)[ -]*(?:silicone |silicona )?(?:${PIECES})\b[^\d]*?(?:(?:x|at|of|de|,|:)\s*)*(\d.*)$`,
  'iu',
);
const COUNT_EACH_OF = new RegExp(
  String.raw`^(\d{1,3})\s*(?:x\s*)?(\d[\d.,/ ]*\s*\p{L}+)\.?\s*(?:each\s*)?(?:de\s+)?(?:${PIECES})\b.*$`,
  'iu',
);
const EACH = /[\s,]*\b(?:each|apiece|per \w+|cada (?:una|uno|hueco|molde|barra|pastilla)|c\/u)\b.*$/iu;
const COUNTED: ReadonlyMap<string, number> = new Map(
  'one two three four five six seven eight nine ten'
    .split(' ')
    .map((word, at) => [word, at + 1] as const)
    .concat(
      'uno dos tres cuatro cinco seis siete ocho nueve diez'
        .split(' ')
        .map((word, at) => [word, at + 1] as const),
      [
        ['a', 1],
        ['un', 1],
        ['una', 1],
      ],
    ),
);

/** "10 bars of 4 oz" as how many and how much each; undefined where the text counts no pieces. */
export function piecesOf(text: string): { readonly count: number; readonly each: string } | undefined {
  const plain = tidied(text).text;
  const match = COUNT_OF_EACH.exec(plain) ?? COUNT_EACH_OF.exec(plain);
  if (!match) return undefined;
  const count = COUNTED.get(match[1]!.toLowerCase()) ?? Number(match[1]);
  const each = match[2]!.replace(EACH, '').trim();
  return Number.isInteger(count) && count > 0 && /\p{L}/u.test(each) ? { count, each } : undefined;
}

/** A figure and a fraction of it as one number, such as `1/3` of `3`; undefined where either is unreadable. */
function figureOf(written: string): number | undefined {
  const named = FRACTION.get(written.toLowerCase().trim());
  if (named !== undefined) return named;
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/u.exec(written.trim());
  if (mixed) return Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]);
  const value = Number(written.trim().replace(',', '.'));
  return Number.isFinite(value) ? value : undefined;
}

function tidied(text: string): { readonly text: string; readonly about: boolean } {
  const plain = plainText(text);
  const firm = plain.replace(HEDGES, ' ');
  // "750 g of oils, without the water": what an amount leaves out is no part of it.
  let said = firm
    .replace(/\s*[,(]\s*(?:without|sin|not|no|aparte|that|que|i |y eso)\b[^\d]*$/iu, '')
    .replace(AND, 'and');
  for (const [pattern, count] of COUNTS) said = said.replace(pattern, count);
  said = said.replace(
    KILOS,
    (_, kilos: string, grams: string) => `${Number(kilos) * 1000 + Number(grams)} g`,
  );
  return { text: said.replace(/\s+/gu, ' ').trim(), about: firm !== plain };
}

/** The range a text tells, such as `2-3 cups`, as its two ends. `1-1/2 cups` is one and a half. */
function rangeIn(said: string): { readonly low: string; readonly high: string } | undefined {
  const match = RANGE.exec(said);
  if (!match) return undefined;
  const [, first = '', firstUnit, joint = '', second = '', rest = ''] = match;
  const [low, high] = [figureOf(first), figureOf(second)];
  const isMixed = joint === '-' && /^\d+$/u.test(first) && second.includes('/') && firstUnit === undefined;
  if (isMixed || rest.trim() === '') return undefined;
  // "1 cup and 2 Tbsp" is a sum; only "between 1 and 2 cups" is a range by "and".
  const isSum = /^(?:and|y)$/iu.test(joint) && !/^(?:between|entre)\b/iu.test(said);
  if (isSum || (firstUnit !== undefined && joint === '-')) return undefined;
  if (low !== undefined && high !== undefined && low >= high) return undefined;
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
  const pieces = piecesOf(text);
  const each = pieces && /^([\d.,/ ]*\d)\s*(\p{L}.*)$/u.exec(pieces.each);
  const size = each && figureOf(each[1]!);
  if (pieces && each && size !== undefined && size !== null)
    return { low: `${figure(pieces.count * size)} ${each[2]!}`, about };
  const range = rangeIn(said);
  if (range) return { ...range, about };
  return { low: said, about };
}

/** A figure that no reader takes for thousands. */
const figure = (value: number) =>
  value
    .toFixed(4)
    .replace(/\.?0+$/u, '')
    .replace(/(\.\d{3})$/u, '$10');
