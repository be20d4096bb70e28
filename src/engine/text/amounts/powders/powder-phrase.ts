import { colourantsNamed } from '../../../colourants/find.ts';
import { unbroken } from '../../../over-lines.ts';
import type { Amount } from '../../../quantities/amount.ts';
import { plainText } from '../../../quantities/number.ts';
import { amountPhrase } from '../../../quantities/spoken/amount-phrases.ts';
import { spokenAmounts } from '../../../quantities/spoken/spoken-amounts.ts';
import { POUND_G } from '../../../quantities/units.ts';
import { Refusal, refuse } from '../../../refusal.ts';
import { cut } from '../../excerpt.ts';
import { amountOf, perMassIn } from './per-mass.ts';
import { colourantAmongWords, isChangedBeside, NO_MORE, powderFromFigure } from './powder-among-words.ts';
import { powderSaid } from './powder-said.ts';

declare module '../../../refusal.ts' {
  interface Reasons {
    'powder-without-amount': { text: string };
  }
}

/** An amount of a colourant as it was written, with the name beside it, empty where none stands there. */
export type WrittenPowder = {
  /** Undefined where it is told in percent of the oils. */
  readonly low: Amount | undefined;
  readonly percentOfOils?: number;
  readonly high?: Amount;
  /** True where it is to the pound of oils ("ppo"). */
  readonly perPound: boolean;
  readonly name: string;
};

const PPO = /\b(?:ppo|tpo)\b/iu;

/** "Kaolin, 2% of oil weight". */
const SHARE_LAST = new RegExp(
  unbroken`
    ^(\p{L}(?:[^\d%]|(?<=\p{L})\d(?=\s))*?)[\s,:=-]+(?:at |al |el )?(\d+(?:[.,]\d+)?) ?(?:%|percent|
    por ?ciento)\s*(?:(?:of|from|de|del|sobre|on) )?(?:(?:the|los|el|my|mis) )?(?:(?:total|weight|
    peso)(?: of| de)? )?(?:(?:the|los) )?(?:oils?|fats?|aceites?|grasas?)(?: weight)?\.?$
  `,
  'iu',
);

const HOLDER =
  /\b(?:bags?|jars?|packets?|pouch(?:es)?|tubs?|pots?|sachets?|bolsas?|bolsitas?|botes?|frascos?|tarros?|paquetes?|sobres?)\b/giu;
/** "dos bolsitas de 25 g", "3 tubs of 10g": so many holders of so much each. */
const HOLDERS = new RegExp(String.raw`(?<![\d.,/])(\d{1,2}) ${HOLDER.source} (?:of |de )?(?=\d)`, 'giu');
/** "a teaspoon a pound", "1 tsp to the pound". */
const A_POUND = new RegExp(
  unbroken`
    \b(tsps?|tbsps?|teaspoons?|tablespoons?|g|grams?|oz|ounces?|cdtas?|cdas?|cucharad(?:it)?as?|
    gramos?) (?:an?|la|el|(?:to|a) (?:the|la|el)) (?=(?:pound|lb|kilo|kg|libra)\b)
  `,
  'giu',
);
/** A spoon that nobody counts is one. */
const LONE_SPOON =
  /^(?:level |flat |rounded )?(?=(?:tsp|tbsp|teaspoon|tablespoon|cdta|cda|cucharadita|cucharada)\b(?! [\d½¼¾]))/iu;
const LONGEST_WORDS = 8;

/** Who speaks of an amount may begin so; and what is said of it behind the name is no part of the name. */
const USED =
  /^(?:(?:it['’]?s|it|is|that['’]?s|es|son|ser[ií]an?|i|we|use|used|put|add|uso|us[eé]|pongo|echo|le|just|only|solo|nom[aá]s|the|el|la|los|las)\s+)+(?=\d)/iu;
const BEHIND = new RegExp(
  unbroken`
    \s*[,;(]\s*(?:poquit[oa]|muy poc[oa]|un poco|level|flat|rasas?|rasos?|al ras|please|por favor|
    exact(?:ly|o)?|and not one more|maybe|nom[aá]s|no m[aá]s|as (?:always|usual)|como siempre|
    that['’]?s (?:all|it)|thats (?:all|it)|i think|creo(?: yo)?|y ya)\)?[\s.!]*$
  `,
  'iu',
);

/** A known name before a remark that holds no figure and changes nothing: "caolín, me los pesó mi nuera". */
function withoutRemark(name: string): string {
  const [, own, remark = ''] = /^(\p{L}[^,;(]*?)\s*[,;(]\s*([^\d]+)$/u.exec(name) ?? [];
  const isSplit =
    /(?<!\p{L})(?:half|mitad|doubl\p{L}*|doble|or|o|and|y|plus|mas|más|without|sin|minus|menos|in|en)(?!\p{L})/iu.test(
      remark,
    );
  return own === undefined ||
    isSplit ||
    colourantsNamed(own).length === 0 ||
    colourantsNamed(remark).length > 0
    ? name
    : own;
}

/**
 * Reads an amount of powder and what it is of: `2 tsp rose clay`, `1/4-1/2 tsp`, `2 oz bag of zinc oxide`, `1/2 tsp ppo`, `gold
 * mica 5 g`. Throws a Refusal `powder-without-amount`, `strength-unreadable` where it is to so much batter by weight, or one of
 * the amounts' own.
 */
export function readPowder(text: string): WrittenPowder {
  const read = powderOrFromFigure(text);
  if (isChangedBeside(read.name)) refuse('powder-without-amount', { text: cut(read.name, 80) });
  return { ...read, name: colourantAmongWords(read.name) };
}

function powderOrFromFigure(text: string): WrittenPowder {
  try {
    return powderOf(text);
  } catch (refusal) {
    const from =
      refusal instanceof Refusal && refusal.id === 'powder-without-amount'
        ? powderFromFigure(text)
        : undefined;
    if (from === undefined) throw refusal;
    return powderOf(from);
  }
}

/** "At 2% of the oils kaolin", "half a percent of oil weight": the share stands first. */
const PERCENT_FIRST = new RegExp(
  unbroken`
    ^(?:at |al |el |a |@ ?)?((?:(?:\d+|one|uno?) (?:and |y )?(?:an? )?)?(?:1\/2|half|medio)|
    \d+(?:[.,]\d+)?) ?(?:%|percent|por ?ciento)\s*(?:(?:of|on|de|del|sobre|en)\s+)?(?:the |los |
    el )?(?:(?:total|weight|peso)\s+(?:of\s+|de\s+)?(?:the |los |el )?)?(?:oils?|fats?|aceites?|
    grasas?)?(?: weight| total)?\s*(.*)$
  `,
  'iu',
);

function powderOf(text: string): WrittenPowder {
  const plain = spokenAmounts(
    plainText(powderSaid(text.slice(0, 200)).replace(NO_MORE, ' '))
      .replace(/\bp\. ?p\. ?o\b\.?|\/ ?ppo\b/giu, ' ppo')
      .replace(A_POUND, '$1 per ')
      .replace(/(?<=tsp|tbsp)['’]s\b/giu, '')
      .replace(/[()]/gu, ' ')
      .replace(LONE_SPOON, '1 '),
  ).replace(/\s+/gu, ' ');
  const per = perMassIn(plain);
  const said = (per?.rest ?? plain.replace(PPO, ' '))
    .replace(HOLDERS, '$1 x ')
    .replace(HOLDER, ' ')
    .replace(/^\s*(?:(?:an?|one|un|una|el|la|the)\s+)?(?:de|of|del)?\s+(?=\d)/iu, '')
    .replace(USED, '')
    .replace(BEHIND, '')
    .replace(/\s+/gu, ' ')
    .trim();
  const perPound = per !== undefined || PPO.test(plain);
  const perGrams = per?.grams ?? POUND_G;
  const percent = PERCENT_FIRST.exec(said);
  if (percent)
    return {
      low: undefined,
      percentOfOils: /(?:1\/2|half|medio)$/iu.test(percent[1]!)
        ? halves(percent[1]!)
        : Number(percent[1]!.replace(',', '.')),
      perPound,
      name: (percent[2] ?? '').replace(/^[\s,:;]+/u, '').replace(/^(?:of|de)\s+/iu, ''),
    };
  const shared = SHARE_LAST.exec(said);
  if (shared)
    return {
      low: undefined,
      percentOfOils: Number(shared[2]!.replace(',', '.')),
      perPound,
      name: shared[1]!.replace(/[\s,:=-]+$/u, ''),
    };
  const { low, high } = amountPhrase(counted(said));
  const head = headOf(low);
  if (!head) {
    const last = tailOf(said);
    return last
      ? { ...scaled(last, perGrams), perPound }
      : refuse('powder-without-amount', { text: cut(said, 80) });
  }
  const upper = high === undefined ? undefined : headOf(high);
  const name = (upper ?? head).rest
    .replace(/^(?:of|de|del|level|heaping|rasas?|raso|colmadas?|in|en)\s+/iu, '')
    .replace(/^(?:of|de)\s+/iu, '')
    .replace(/^(?:that|this|those|the|my|mi|ese|esa|este|esta)\s+(?=\p{L})/iu, '');
  return {
    ...scaled({ low: head.amount, ...(upper && { high: upper.amount }) }, perGrams),
    perPound,
    name: withoutRemark(name),
  };
}

/** "1/2", "1 and a half", "uno y medio". */
const halves = (written: string): number =>
  (/^(?:one|uno?|1)\b(?!\/)/iu.test(written) ? 1 : Number(/^\d+(?= )/u.exec(written)?.[0] ?? 0)) + 0.5;

type Ends<T extends Amount | undefined> = { readonly low: T; readonly high?: Amount };

/** An amount to so many grams of oils, as it is to a pound. */
const scaled = <T extends Amount | undefined, E extends Ends<T>>(ends: E, grams: number): E => ({
  ...ends,
  low: ends.low && times(ends.low, POUND_G / grams),
  ...(ends.high && { high: times(ends.high, POUND_G / grams) }),
});

const times = (amount: Amount, factor: number): Amount =>
  amount.measure === 'mass'
    ? { measure: 'mass', grams: amount.grams * factor }
    : { measure: 'volume', millilitres: amount.millilitres * factor };

/** Spelt numbers that the amounts' grammar does not count: "diez" it does. */
const counted = (text: string) => text.replace(/^(?:un |una )?(?:buena |good )?(?=\p{L}+adita)/iu, '1 ');

function headOf(text: string): { readonly amount: Amount; readonly rest: string } | undefined {
  const words = text.split(' ');
  for (let count = Math.min(LONGEST_WORDS, words.length); count > 0; count -= 1) {
    const amount = amountOf(words.slice(0, count).join(' '));
    if (amount) return { amount, rest: words.slice(count).join(' ') };
  }
  return undefined;
}

/** `gold mica 5 g`: the name first. */
function tailOf(text: string): Pick<WrittenPowder, 'low' | 'high' | 'name'> | undefined {
  for (const { index } of text.matchAll(/(?<=\s)(?:\d|half|media|an? |una? )/giu)) {
    const { low, high } = amountPhrase(text.slice(index));
    const amount = amountOf(low);
    const upper = high === undefined ? undefined : amountOf(high);
    if (amount)
      return {
        low: amount,
        ...(upper && { high: upper }),
        name: text.slice(0, index).replace(/[\s,:=-]+$/u, ''),
      };
  }
  return undefined;
}
