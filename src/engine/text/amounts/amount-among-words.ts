import { unbroken } from '../../over-lines.ts';
import { plainText } from '../../quantities/number.ts';
import { hedged } from '../../quantities/spoken/amount-remarks.ts';
import { spokenAmounts } from '../../quantities/spoken/spoken-amounts.ts';
import { unitOfWord, unitSize } from '../../quantities/unit-words.ts';
import { MEASURES } from '../../quantities/units.ts';
import { TOKEN } from './amount-tokens.ts';
import { isEverydayWord } from './everyday-words.ts';
import { isAnyOil, isEachWord, isPieceWord, isVesselWord } from './stop-words.ts';

/** The one amount of a text, in words that the amounts' grammar reads. */
export type AmountAmongWords = {
  readonly amount: string;
  readonly measure: 'mass' | 'volume';
  /** How many pieces of so much each; undefined where none are counted. */
  readonly count: number | undefined;
  readonly ofOils: boolean;
  /** Whether a vessel, a piece or the batter itself is named beside it. */
  readonly ofBatter: boolean;
};

const LONGEST_TEXT = 120;
const MOST_PIECES = 200;
/** "Molde de litro": a unit that nobody counts is one. */
export const LONE_UNIT =
  /(?<=(?<!\p{L})(?:de|d|a)\s)(?=(?:litro|kilo|libra)(?!\p{L}))|^(?=(?:gallon|quart|pint|lit(?:er|re)) (?:bucket|jug|pail|pot|carton|mou?ld|tub)(?!\p{L}))/giu;
const NO_MORE = /[\s,]*(?:nada m[aá]s|nothing (?:more|else)|no m[aá]s)(?!\p{L})/giu;
/** What a carton held is not what it holds now. */
const CARTON = new RegExp(
  unbroken`
    \b(?:(?:milk|juice) cartons?|ice[- ]cream (?:tubs?|pails?)|(?:caj(?:it)?as?|cart[oó]n(?:es|citos)?|
    envases?|tarrinas?|bri[ck]s?|tetra ?bri[ck]s?) de (?:leche|jugo|zumo|helado))\b
  `,
  'giu',
);

type AmountTold = { readonly text: string; readonly measure: 'mass' | 'volume'; readonly from?: number };

/** Figure and unit as an amount; undefined where the word behind the figure is no unit. */
function toldBy(figure: string, word: string): AmountTold | undefined {
  const unit = unitOfWord(word);
  return unit && { text: `${figure} ${word}`, measure: unitSize(unit, MEASURES.us).measure };
}

/**
 * The one amount of a text of which every other word changes nothing: "wee jug, up to the 250ml line", "silicón de 6 huecos, a 90 ml cada
 * hueco", "20 pcs 85 grams po". Undefined where another word or figure stands in it. Pure.
 */
export function amountAmongWords(text: string): AmountAmongWords | undefined {
  if (text.length > LONGEST_TEXT) return undefined;
  const said = spokenAmounts(hedged(plainText(text)).text)
    .replace(NO_MORE, '')
    .replace(CARTON, 'carton');
  const amounts: AmountTold[] = [];
  const counts: number[] = [];
  const words: string[] = [];
  // "2 cups - 2 Tbsp" may take away.
  if (/\s[-–—]\s*\d/u.test(said)) return undefined;
  const counted = said.replace(LONE_UNIT, '1 ');
  for (const { index, groups = {} } of counted.matchAll(TOKEN)) {
    const { figure, unit: behind, word, sign } = groups;
    if (sign !== undefined) return undefined;
    const told = figure !== undefined && behind !== undefined ? toldBy(figure, behind) : undefined;
    if (told) amounts.push({ ...told, from: index });
    else if (figure !== undefined) counts.push(Number(figure));
    if (!told && (behind ?? word) !== undefined) words.push((behind ?? word)!);
  }
  const [first, second, ...more] = amounts;
  // "3 lbs 4 oz" is one amount.
  if (!first || more.length > 0 || (second && (second.measure !== first.measure || counts.length > 0)))
    return undefined;
  const [count] = counts;
  if (
    counts.length > 1 ||
    (count !== undefined && !(Number.isInteger(count) && count > 1 && count <= MOST_PIECES))
  )
    return undefined;
  const isKnown = (word: string) =>
    isEverydayWord(word) ||
    isVesselWord(word) ||
    isAnyOil(word) ||
    (count !== undefined && (isPieceWord(word) || isEachWord(word)));
  if (!words.every(isKnown)) return undefined;
  // "A kilo, 950 g": whether they are a sum hangs on what parts them; "a litre jug with 600 ml in it" is none.
  const between = second === undefined ? '' : counted.slice(first.from! + first.text.length, second.from);
  if (!/^[\s,(=;]*(?:(?:and|n|&|plus|y|e|con|m[aá]s|\+)\s+)?$/iu.test(between)) return undefined;
  const isApart = /[,(=;]/u.test(between);
  return {
    amount: amounts.map(({ text: one }) => one).join(isApart ? ', ' : ' '),
    measure: first.measure,
    count,
    ofOils: words.some(isAnyOil),
    ofBatter: words.some(word => isVesselWord(word) || isPieceWord(word)),
  };
}
