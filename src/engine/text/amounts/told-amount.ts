import { knownOil } from '../../batch/oils/find-oil.ts';
import { unbroken } from '../../over-lines.ts';
import { amountText } from '../../quantities/for-readers.ts';
import { plainText } from '../../quantities/number.ts';
import { hedged } from '../../quantities/spoken/amount-remarks.ts';
import { spokenAmounts } from '../../quantities/spoken/spoken-amounts.ts';
import { unitOfWord, unitSize } from '../../quantities/unit-words.ts';
import { MEASURES } from '../../quantities/units.ts';
import { LONE_UNIT } from './amount-among-words.ts';
import { withoutAsides } from './amount-asides.ts';
import { TOKEN } from './amount-tokens.ts';
import { CORRECTS } from './corrects.ts';
import { isHarmlessWord, mayChangeAmount } from './everyday-words.ts';
import { shareAt } from './shares/share-at.ts';
import { isAnyOil } from './stop-words.ts';
import { type FigureTold, isOfVessel, restatedIn, type Sized } from './told-again.ts';

const LONGEST_TEXT = 200;
const RANGE =
  /(?<![\d.,/])(?:between |entre |from |de )?(?:\d[\d.,]*|\d\/\d)(?:\s?\p{L}+)?\s?(?:-|–|to|and|y|a|or|o|hasta)\s?(?:\d[\d.,]*|\d\/\d)\s?\p{L}+/iu;
/** What stands before what figures come to. */
const COMES_TO = new RegExp(
  unbroken`
    (?<!\p{L})(?:so|leaves?|leaving|left|remains?|makes?|is|are|total|altogether|that['’]?s|which is|
    quedan?|quedaron|son|sobran?|o sea|osea|en total|total|suman?|da|dan|dej[ao]|me dejan?)(?!\p{L})|=
  `,
  'iu',
);
/** A part of what was told is meant where it is kept, taken or asked for. */
const KEPT =
  /(?<!\p{L})(?:kept|keep|took|take|taken|pulled|drew|set aside|using|use|saqu[eé]|saco|tom[oé]|apart[eé]|separ[eé]|guard[eé]|uso)(?!\p{L})/iu;

/** What stands before what is gone. */
const LOST =
  /(?<!\p{L})(?:spil(?:t|led)|lost|wasted|dropped|se me (?:cayeron|cay[oó]|derramaron|derram[oó])|derram[eé]|perd[ií])(?!\p{L})/iu;

/** Parts in words, one by one, with where they stand. */
function partsIn(text: string): readonly FigureTold[] {
  const parts: FigureTold[] = [];
  for (const { index } of text.matchAll(/(?<![\p{L}\p{N}.,/])(?:\p{L}|\d\/\d)/gu)) {
    if (index < (parts.at(-1)?.end ?? 0)) continue;
    const share = shareAt(text.slice(index));
    const percent = /^([\d.]+)%$/u.exec(share?.canonical ?? '')?.[1];
    if (share === undefined || percent === undefined || unitBehind(text, index + share.length)) continue;
    parts.push({ value: Number(percent) / 100, unit: undefined, at: index, end: index + share.length });
  }
  return parts;
}

const unitBehind = (text: string, at: number): boolean => {
  const word = /^\s*(\p{L}+)/u.exec(text.slice(at))?.[1];
  return word !== undefined && unitOfWord(word) !== undefined;
};

const figureOf = (written: string): number => {
  const [, whole = '0', over, under] = /^(?:(\d+) )?(\d)\/(\d)$/u.exec(written) ?? [];
  return over === undefined
    ? Number(written.replace(',', '.'))
    : Number(whole) + Number(over) / Number(under);
};

/** "1.050 g" of batter or oils is a kilo: nobody pours a gram of it. */
const THOUSANDS = /^[1-9]\d{0,2}[.,]\d{3}$/u;
const IN_ONES = /^(?:g|gr|grs|gm|gms|grams?|gramos?|ml|millilit(?:er|re)s?|mililitros?|cc)$/iu;
const counted = (figure: string, unit: string): number =>
  THOUSANDS.test(figure) && IN_ONES.test(unit) ? Number(figure.replace(/[.,]/u, '')) : figureOf(figure);

/** Two ends of one unit among words that change nothing. */
function rangeIn(text: string): string | undefined {
  const match = RANGE.exec(text);
  if (!match) return undefined;
  const unit = unitOfWord(/\p{L}+$/u.exec(match[0])![0]);
  const rest = `${text.slice(0, match.index)} ${text.slice(match.index + match[0].length)}`;
  const words = rest.match(/\p{L}[\p{L}\p{M}'’]*/gu) ?? [];
  if (unit === undefined || /\d/u.test(rest) || !words.every(word => isAnyOil(word) || isHarmlessWord(word)))
    return undefined;
  return `${match[0]}${words.some(isAnyOil) ? ' oils' : ''}`;
}

type Read = {
  readonly amounts: readonly FigureTold[];
  readonly bare: readonly FigureTold[];
  readonly ofOils: boolean;
};

/** Who left an oil out may have weighed the others without it. */
const LEFT_OUT = /(?<!\p{L})(?:forgot|forgotten|left out|missed|olvid\p{L}*|falt\p{L}*)(?!\p{L})/iu;

const QUALIFIED = /^(?:imperial|uk|british|metric|m[eé]tric[ao]s?)$/iu;

/** Every figure of a text with its unit; undefined where a word beside them may change what they are of. */
function read(text: string, parts: readonly FigureTold[]): Read | undefined {
  const amounts: FigureTold[] = [];
  const bare: FigureTold[] = [];
  const units: string[] = [];
  const oils: string[] = [];
  let ofOils = false;
  for (const { 0: all, index, groups = {} } of text.matchAll(TOKEN)) {
    if (groups.sign !== undefined) return undefined;
    if (parts.some(({ at, end }) => index >= at && index < end)) continue;
    const { figure, unit = '', word } = groups;
    const isUnit = figure !== undefined && unit !== '' && unitOfWord(unit) !== undefined;
    const value = figure === undefined ? 0 : isUnit ? counted(figure, unit) : figureOf(figure);
    if (figure !== undefined)
      (isUnit ? amounts : bare).push({
        value,
        unit: isUnit ? unit : undefined,
        at: index,
        end: index + (isUnit || unit === '' ? all.length : figure.length),
      });
    const said = word ?? (isUnit ? undefined : unit);
    if (said === undefined || said === '') continue;
    // Another country's pint, at another place than its grammar has it.
    if (QUALIFIED.test(said)) return undefined;
    if (isAnyOil(said)) ofOils = true;
    // "2 cups, US cups"
    else if (amounts.length > 0 && isSameUnit(said, amounts.at(-1)!.unit!)) continue;
    else if (isUnitAlone(said)) units.push(said);
    else if (isOilByName(said)) oils.push(said);
    else if (LEFT_OUT.test(said) && CORRECTS.test(text)) continue;
    else if (!isHarmlessWord(said)) return undefined;
  }
  // "1.2 kg of oils, I had left out the coconut": beside all oils, one by name is none of its own.
  if (oils.length > 0 && (!ofOils || (LEFT_OUT.test(text) && !CORRECTS.test(text)))) return undefined;
  if (units.length === 0) return { amounts, bare, ofOils };
  const [unit, ...others] = units;
  const [figure, ...more] = bare;
  // "At the 450 mark, ml that is": one figure, and one unit that stands elsewhere.
  if (others.length > 0 || more.length > 0 || figure === undefined || amounts.length > 0) return undefined;
  return { amounts: [{ ...figure, unit }], bare: [], ofOils };
}

const isUnitAlone = (word: string): boolean => word.length > 1 && unitOfWord(word) !== undefined;
const isOilByName = (word: string): boolean =>
  word.length > 3 && !mayChangeAmount(word) && (knownOil(word) ?? knownOil(`${word} oil`)) !== undefined;

const isSameUnit = (word: string, unit: string): boolean =>
  word.length > 2 && unitOfWord(word) !== undefined && unitOfWord(word) === unitOfWord(unit);
const same = (a: number, b: number): boolean => Math.abs(a - b) <= 0.011 * Math.max(a, b);

/** Whether the last of some figures is what the others come to: their sum, what is left of the first, or a part of it. */
function comesOut(values: readonly number[], parts: readonly number[]): boolean {
  const [first = 0, ...others] = values.slice(0, -1);
  const last = values.at(-1)!;
  const sum = others.reduce((all, one) => all + one, 0);
  const results = [
    ...(others.length > 0 ? [first + sum, Math.abs(first - sum)] : []),
    ...(others.length === 0 ? parts.flatMap(part => [first * part, first * (1 - part)]) : []),
  ];
  return results.some(result => result > 0 && same(result, last));
}

const FULL = /^ (?:full|filled|llen[oa]s?)(?!\p{L})/iu;
const FILLED_TO =
  /(?<!\p{L})(?:(?:fill(?:ed)?|full|llen[oa]|va)? ?(?:up to|to|hasta)|by|a)(?: (?:the|la|los|las|el))?\s*$/iu;
/** The part of an amount that is asked for: "half of the 900 gram batter", "it was 1.2 kg and I kept a fourth". */
function partOf(
  text: string,
  [part, ...more]: readonly FigureTold[],
  amount: FigureTold,
): number | undefined {
  if (part === undefined || more.length > 0) return undefined;
  const between = text.slice(part.end, amount.at);
  const isOf = part.end <= amount.at && /^\s*(?:(?:of|de|del|out of)\s+)?(?:\p{L}+\s+){0,3}$/u.test(between);
  // "A litre jug, filled to the half", "600 ml, two thirds full".
  const isFilled =
    part.at > amount.end &&
    (FULL.test(text.slice(part.end)) || FILLED_TO.test(text.slice(amount.end, part.at)));
  if (isFilled) return part.value * amount.value;
  const isKept = part.at > amount.end && KEPT.test(text.slice(amount.end, part.at));
  return isOf || isKept ? part.value * amount.value : undefined;
}

/** Kitchen scales tell grams, and nobody makes soap of less; so many ounces would be 3 kg. */
const LEAST_GRAMS = 100;

/** "The oils weigh 32": on whose scale? */
const WEIGH = /(?<!\p{L})(?:weigh(?:s|ed|ing)?|pesan?|pesaron)(?!\p{L})/iu;

/**
 * The amount that is meant where a text tells several: the one that puts another right ("4 cups, no wait, 3"), what figures come to
 * where they do ("had 600 g, gave 200 away, so 400"), one told twice, what a jug of so much holds, or a part of one. No word around them
 * may change an amount. Undefined where the figures do not tell which is meant. In millilitres or grams, in the amounts' own grammar.
 * Pure.
 * @example toldAmount('I had 600 grams and gave 200 of it to the white, so it is 400') // '400 g'
 */
export function toldAmount(text: string): string | undefined {
  if (text.length > LONGEST_TEXT) return undefined;
  const said = withoutAsides(spokenAmounts(hedged(plainText(text)).text).replace(LONE_UNIT, '1 '));
  const range = rangeIn(said);
  if (range !== undefined) return range;
  const parts = partsIn(said);
  const { amounts, bare, ofOils } = read(said, parts) ?? { amounts: [], bare: [], ofOils: false };
  const [alone] = bare;
  if (amounts.length === 0 && parts.length === 0)
    return ofOils && bare.length === 1 && alone!.value >= LEAST_GRAMS && !WEIGH.test(said)
      ? amountText(alone!.value, { ofOils: true })
      : undefined;
  const sized = amounts.map((amount): Sized => {
    const { measure, size } = unitSize(unitOfWord(amount.unit!)!, MEASURES.us);
    return { ...amount, unit: amount.unit!, measure, value: amount.value * size };
  });
  const held = sized.length > 1 ? sized.filter(amount => !isOfVessel(said, amount)) : sized;
  const told = held.length > 0 ? held : sized;
  const units = new Set(told.map(({ unit }) => unitOfWord(unit)));
  const [unit] = units;
  if (unit === undefined || (units.size > 1 && bare.length > 0)) return undefined;
  const { measure, size } = unitSize(unit, MEASURES.us);
  if (told.some(one => one.measure !== measure)) return undefined;
  const all: FigureTold[] = [
    ...told,
    ...bare.map(figure => ({ ...figure, value: figure.value * size })),
  ].toSorted((a, b) => a.at - b.at);
  const value = meant(said, all, parts) ?? (bare.length === 0 ? restatedIn(text, told) : undefined);
  if (value === undefined || !(value > 0)) return undefined;
  return amountText(value, { unit: measure === 'mass' ? 'g' : 'ml', ofOils });
}

function meant(text: string, all: readonly FigureTold[], parts: readonly FigureTold[]): number | undefined {
  const last = all.at(-1)!;
  const values = all.map(({ value }) => value);
  if (parts.length > 0) {
    if (all.length === 1) return partOf(text, parts, last);
    return comesOut(
      values,
      parts.map(({ value }) => value),
    ) && all.length === 2
      ? last.value
      : undefined;
  }
  // "1/0 cups": a figure that is none is the same as nothing, not even as itself.
  if (!values.every(Number.isFinite)) return undefined;
  if (values.every(value => same(value, last.value))) return last.value;
  const before = text.slice(all.at(-2)!.end, last.at);
  if (all.length === 2 && LOST.test(before))
    return values[0]! > last.value ? values[0]! - last.value : undefined;
  if (all.length === 2 && CORRECTS.test(before)) return last.value;
  if (COMES_TO.test(before) && comesOut(values, [])) return last.value;
  // "4 cups, no wait, I poured one out, 3"
  const first = text.slice(all[0]!.end, last.at);
  return CORRECTS.test(first) && comesOut(values, []) ? last.value : undefined;
}
