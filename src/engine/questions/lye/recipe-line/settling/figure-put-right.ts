import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { FAT, LYE, UNIT } from '../../amounts/words.ts';
import { absenceIn } from '../doubts/beside-oils.ts';
import { itemsOf } from '../items/items.ts';
import { isLostWord } from '../items/words-beside.ts';
import { MOST_SUPERFAT } from './fixed-figures.ts';
import { isName } from './parts.ts';
import { isReason, PUT_RIGHT, PUT_RIGHT_WHY, YES_SO } from './superfat-put-right.ts';

/*
 * A superfat, a share of water, a strength or a purity that is put right later, whatever stands between: "0% superfat… sorry no, that's my
 * laundry soap. It's salt bars so 20". General knowledge of both languages, no source.
 */

const PERCENT = String.raw`(?:%|percent|per cent|pct|por ?ciento)`;
const FIGURE = String.raw`(?<![\d.,:/\p{L}-])\d{1,2}(?:[.,]\d)?(?![\d:/]|[.,]\d)`;
/** The superfat that is told first. */
const SUPERFAT = new RegExp(
  unbroken`
    (?<one>${FIGURE}) ?${PERCENT}? ?(?:de |of )?${FAT}(?!\p{L})|
    (?<!\p{L})${FAT}(?: (?:of|at|de|del|al|a|is|es|en|el|=|:))* ?(?<two>${FIGURE})(?: ?${PERCENT})?|
    (?:(?<=^|[;,] *)|(?<!\p{L})(?:at|al|a|with|con|to) )(?<three>${FIGURE}) ?${PERCENT}(?= *(?:[;,.]|$|${LYE}))|
    (?<!\p{L})(?:at|al) (?<four>${FIGURE})(?= *(?:[;,.]|$))
  `,
  'u',
);
/** How much water, how strong, how pure, with its figure. */
const OTHER = new RegExp(
  unbroken`
    \d(?:[.,]\d+)? ?: ?\d|\d ?${PERCENT}? ?(?:de |of )?(?:pur[eao]|purity|pureza|strength|conc\p{L}*|solu\p{L}*|disolu\p{L}*|water|agua)(?!\p{L})|
    \d ?${UNIT} (?:of |de )?(?:the |distilled )?(?:water|agua)(?!\p{L})|
    (?<!\p{L})(?:purity|pureza|strength|conc\p{L}*|solucion|solution|water|agua|${LYE})(?: (?:of|at|de|del|al|a|is|es|en|ratio|=|:))* ?\d
  `,
  'u',
);
/** What takes back what was told: a word of correction, or "that is" of what was told for another soap. */
const TAKES_BACK = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:ay |oh |ah )?no(?=[ ,;]+(?:no|wait|sorry|hang|hold|perdon\p{L}*|espera|digo|that|thats|it|its|es[eoa]|era|es)(?!\p{L})| ?[,;])|
    nope|nah|oops|whoops|ups|uy|sorry(?! (?:for|about|to|if)(?!\p{L}))|perdon(?! (?:por|si)(?!\p{L}))|wait|hang on|hold on|
    espera|correction|correccion|corrijo|rectifico|actually|(?:my )?mistake|equivoc\p{L}+|scrap|scratch|edit(?:ed)?|wrong|digo|
    mejor dicho|i meant?|quise decir|not(?= (?:the )?\d)|(?:that|thats|that['’]?s|
    those)(?: is| was|['’]?s| were| are)?(?= (?:the|my|his|her|our|for|what|is|was)(?!\p{L}))|
    (?:es[eoa]s?) (?:es|era|eran|son|fue)(?= ))(?!\p{L})
  `,
  'gu',
);
/** A bare figure at the end of its clause. */
const BARE = new RegExp(
  unbroken`
    (?<lead>(?<!\p{L})(?:so(?: it['’]?s)?|make (?:it|that)|o sea|asi que|entonces|pues|conque|ponle|pongamos|superfat)(?:,| el| un| al| a| at| it is| to)* ?)?
    (?<figure>${FIGURE}|(?<!\p{L})(?:zero|cero|nil|none)(?!\p{L}))(?<percent> ?${PERCENT})?(?<fat> (?:de |of )?${FAT})?
    (?= *(?:[;,.)](?!\d)|$|(?:please|pls|plz|thanks|ta|gracias|porfa\p{L}*|por favor|instead|then|
    entonces|now|tonight|hoy|today|and|y|how much|what|que|cuant\p{L}+|
    ${LYE})(?!\p{L})))
  `,
  'gu',
);
/** What takes another part of the recipe is no reason for another superfat; nor is a multiple. */
const OF_MORE = new RegExp(
  String.raw`\d|(?<!\p{L})(?:${LYE}|twice|times|veces|less|more|menos|mas|${UNIT.slice(0, -2)}|pots?|pans?|bowls?|jugs?|ollas?|jarras?|cazos?)(?!\p{L})`,
  'u',
);
/** An alkali by its metal alone, told behind a word that takes back. */
const SODIUM_OR_POTASSIUM = new RegExp(
  unbroken`
    (?<!\p{L})(?:so|asi que|o sea|entonces|it['’]?s|is|es|con|with|needs?|lleva) (?:the |la |el )?(?:potassium|potasio|sodium|sodio)(?= *(?:[;,.]|$))
  `,
  'u',
);

/** Two figures, of which the second is to stand for the first. */
export type FigurePutRight = {
  readonly one: string;
  readonly other: string;
  /** Whether it is the superfat, and no other of the figures. */
  readonly isSuperfat: boolean;
  /** The line with the second superfat in the place of the first, where it is plainly that; undefined where it is to be asked. */
  readonly line: string | undefined;
};

const figureOf = (match: RegExpExecArray): string | undefined =>
  match.groups?.one ?? match.groups?.two ?? match.groups?.three ?? match.groups?.four;

/** Whether a figure stands behind an oil, whose weight it is. */
function isOfOil(before: string): boolean {
  const words = before.replace(/(?: (?:is|are|es|son|de|of|a|to|=|:))*[ =:,]*$/u, '').split(/[^\p{L}]+/u);
  const last = words.at(-1) ?? '';
  return (
    last.length > 2 && (knownOil(last) !== undefined || knownOil(words.slice(-2).join(' ')) !== undefined)
  );
}

/** Whether words say of a figure that it follows for the soap that was named, or its percent stands beside no other ingredient. */
const isOfSuperfat = ({ groups }: RegExpExecArray, between: string): boolean =>
  (groups!.lead ?? groups!.fat) !== undefined ||
  (groups!.percent !== undefined && !itemsOf(between).some(isName));

/** "Sorry no, it's salt bars so 20", and no superfat told before: no weight of salt, and nobody knows of what it is. */
function nothingTold(plain: string): FigurePutRight | undefined {
  const [back] = plain.matchAll(TAKES_BACK);
  if (!back || !WEIGHED.test(plain.slice(0, back.index))) return undefined;
  const follows = [...plain.matchAll(BARE)].find(
    ({ index, groups }) =>
      index > back.index && groups!.lead !== undefined && ADDED.test(plain.slice(back.index, index)),
  );
  return follows && { one: '', other: follows[0], isSuperfat: false, line: undefined };
}
const WEIGHED = new RegExp(`\\d ?${UNIT}`, 'u');
/** What goes into a soap and gives it its name: "salt bars". */
const ADDED =
  /(?<!\p{L})(?:salt|sea salt|sal|sugar|azucar|milk|leche|honey|miel|oats?|oatmeal|avena|clay|arcilla|coffee|cafe|charcoal|carbon)(?!\p{L})/u;

/**
 * A superfat, a share of water, a strength or a purity that a bare figure puts right later in a message, behind a word that takes back what was
 * told; undefined where none does, or where the second stands right behind the first and is read there. Takes what `plainWords` gives with
 * its clauses. Pure.
 * @example figurePutRight('1 kg tallow 0% superfat ; sorry no, thats my laundry soap ; its salt bars so 20')?.other // '20'
 */
export function figurePutRight(plain: string): FigurePutRight | undefined {
  const first = SUPERFAT.exec(plain);
  const other = OTHER.exec(plain);
  const told = first ?? other;
  if (!told) return nothingTold(plain);
  const one = first ? (figureOf(first) ?? '') : told[0];
  const from = told.index + told[0].length;
  const behind = plain.slice(from);
  const why = PUT_RIGHT_WHY.exec(behind);
  if (first && (YES_SO.test(behind) || PUT_RIGHT.test(behind) || (why && isReason(why.groups!.why!))))
    return undefined;
  const [back] = behind.matchAll(TAKES_BACK);
  if (!back) return undefined;
  const bare = [...behind.matchAll(BARE)].filter(
    ({ index, groups }) => index >= back.index && groups!.figure !== one && !isOfOil(behind.slice(0, index)),
  );
  const [second] = bare;
  if (!second) {
    const alkali = SODIUM_OR_POTASSIUM.exec(behind.slice(back.index));
    return alkali ? { one, other: alkali[0], isSuperfat: false, line: undefined } : undefined;
  }
  const figure = /^\d/u.test(second.groups!.figure!) ? second.groups!.figure! : '0';
  const between = behind
    .slice(0, second.index)
    .replaceAll(new RegExp(`(?<![\\d.,])${one}(?![\\d.,])`, 'gu'), '');
  const isPlain =
    bare.length === 1 &&
    first !== null &&
    isOfSuperfat(second, between) &&
    (!other || second.groups!.fat !== undefined) &&
    Number(figure.replace(',', '.')) <= MOST_SUPERFAT &&
    isReason(between) &&
    !OF_MORE.test(between) &&
    absenceIn(between) === undefined &&
    !between.split(/[^\p{L}]+/u).some(isLostWord);
  return {
    one,
    other: figure,
    isSuperfat: first !== null && !other,
    line: isPlain
      ? `${plain.slice(0, told.index)} superfat ${figure}% ; ${behind.slice(second.index + second[0].length)}`
      : undefined,
  };
}

/** A line in which a superfat that is plainly put right later is told once, as it is to be. Pure. */
export const withFigurePutRight = (line: string): string => figurePutRight(line)?.line ?? line;
