import { unbroken } from '../../over-lines.ts';
import { amountText } from '../../quantities/for-readers.ts';
import type { ToldAmount } from '../found/amounts.ts';
import type { NamedThing } from '../found/names/named-thing.ts';
import type { Words } from '../found/words-of.ts';
import { bareAmounts, elidedAmounts } from './bare-amounts.ts';
import type { Item, Quantity } from './item.ts';
import { itemsOf } from './items.ts';
import { looseIn, type Telling, withLooseOil } from './loose.ts';
import { isTaken } from './parts.ts';
import { putRight } from './put-right.ts';
import { type Reckoned, type Settled, settled } from './settled.ts';
import { withCupSizes } from './sized-cups.ts';
import { sumOfOilsIn } from './sums.ts';
import { withoutTwins } from './told-twice.ts';

/** The amounts of a question by what they are for, each in words that the options' grammars read. */
export type PortionLine = {
  /** What is to be coloured. */
  readonly part: string | undefined;
  /** The whole batch that it is of. */
  readonly whole: string | undefined;
  readonly reckoned: Reckoned | undefined;
  /** Two portions and more, where nobody can tell which is meant: then `part` is the first of them. */
  readonly unclear: readonly string[];
  /** Figures that the portion does not take and that are of nothing else that is told, as they stand. */
  readonly loose: readonly Telling[];
  /** Every amount that is meant, with what was put right. */
  readonly amounts: readonly ToldAmount[];
  /** The amount that `part` and `whole` come from. */
  readonly portionAt: ToldAmount | undefined;
  /** The first amount of which nothing tells what it is of, but what a rate is told to. */
  readonly unsaid: ToldAmount | undefined;
  /** The amount that a rate is told to, where another one is the portion. */
  readonly isRate: boolean;
};

/** To how much a rate is told: "per 500 g of batter", "por cada medio kilo". */
const isBaseIn =
  (words: readonly string[]) =>
  ({ told: { perPound, from } }: Quantity): boolean =>
    !perPound && /^(?:per|every|cada|x)$|^por$/u.test(words[from - 1] ?? '');

/**
 * What the amounts of a question are of: which is the portion, which the powder, which the whole batch; counts and shares are
 * multiplied out, and of what was put right the last that is meant counts. Pure.
 * @example readPortions(...'6 wells, 90 ml each, pink in 3 of them').part // '3 x 90 ml'
 */
export function readPortions(
  words: Words,
  things: readonly NamedThing[],
  amounts: readonly ToldAmount[],
): PortionLine {
  const bare = bareAmounts(words, things, amounts);
  const all = [...amounts, ...bare.told, ...elidedAmounts(words, things, amounts)].toSorted(
    (a, b) => a.from - b.from,
  );
  const isBase = isBaseIn(words.words);
  const { items, others } = putRight(withoutTwins(withCupSizes(itemsOf(words, things, all))));
  const sum = sumOfOilsIn(words);
  const told = sum === undefined ? settled(items, isBase) : ofSum(sum);
  const loose = sum === undefined ? looseIn(items, told) : [];
  const rate = told.part === undefined && !all.some(({ perPound }) => perPound) ? rateIn(words) : undefined;
  const read = rate === undefined ? told : { ...told, part: rate, whole: rate };
  const meant = quantitiesIn(items);
  const unsaid = meant.filter(one => one.told.of === 'unsaid' && !one.product && !isBase(one));
  return {
    ...withUnitAsked(read, bare.unclear),
    loose,
    unclear: unclearIn(
      { ...read, others: [...read.others, ...withLooseOil(loose, words.words, read)] },
      sum === undefined ? others.map(one => settled(one, isBase)) : [],
      bare.unclear,
    ),
    amounts: meant.map(({ told }) => told),
    portionAt: read.from?.told,
    unsaid: unsaidAmong(unsaid, items, read.from)?.told,
    isRate: meant.some(isBase) && read.from !== undefined && !isBase(read.from),
  };
}

const ofSum = (grams: number): Settled => {
  const text = amountText(grams, { ofOils: true, decimals: 1 });
  return { whole: text, part: text, reckoned: undefined, others: [], from: undefined };
};

/** "Per kilo of oils", "por cada libra de aceites", "ppo": what a rate is asked to. */
const RATE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:per|por|a|to|for|x)(?: (?:each|every|the|cada|una?|a|el|la|1))?|each|every|cada) (kilo|
    kg|pound|lb|libra|litre|litro)s? (?:of |de )?(?:(?:my|the|los|mis|total|la|mi) )?(?:oils?|fats?|
    aceites?|grasas?|(batter|masa|mezcla|pasta))(?!\p{L})|(?<!\p{L})(ppo)(?!\p{L})
  `,
  'u',
);

function rateIn({ text }: Words): string | undefined {
  const [, unit, batter, perPound] = RATE.exec(text) ?? [];
  if (perPound !== undefined) return '1 lb oils';
  if (unit === undefined || /^lit/u.test(unit)) return undefined;
  return `1 ${unit} ${batter === undefined ? 'oils' : 'batter'}`;
}

/** What may be of powder: what was taken, or what is not the portion. */
const unsaidAmong = (
  unsaid: readonly Quantity[],
  items: readonly Item[],
  portion: Quantity | undefined,
): Quantity | undefined =>
  unsaid.length < 2
    ? unsaid[0]
    : (unsaid.find(one => isTaken(items, one)) ??
      unsaid.find(({ from }) => from !== portion?.from) ??
      unsaid[0]);

const quantitiesIn = (items: readonly Item[]): readonly Quantity[] =>
  items.filter((item): item is Quantity => item.is === 'amount');

/** Grams or ounces of oils or batter: "32 oils". */
const unitsOf = ([one]: readonly ToldAmount[]): readonly string[] =>
  one === undefined
    ? []
    : ['g', 'oz'].map(unit => one.text.replace(/ g$/u, ` ${unit} ${one.of === 'oils' ? 'oils' : 'batter'}`));

const withUnitAsked = ({ part, whole, reckoned }: Settled, bare: readonly ToldAmount[]) => ({
  part: part ?? unitsOf(bare)[0],
  whole: whole ?? unitsOf(bare)[0],
  reckoned,
});

function unclearIn(
  read: Settled,
  others: readonly Settled[],
  bare: readonly ToldAmount[],
): readonly string[] {
  if (read.part === undefined) return unitsOf(bare);
  const all = [
    read.part,
    ...read.others,
    ...others.flatMap(({ part }) => (part === undefined ? [] : [part])),
  ];
  const different = [...new Set(all)];
  return different.length > 1 ? different : [];
}
