import { unbroken } from '../../over-lines.ts';
import { isPiece } from './counted.ts';
import type { Count, Item, Quantity } from './item.ts';

/** A question with its counts multiplied out, and how many of them an amount was for where that stands to question. */
export type Multiplied = {
  readonly items: readonly Item[];
  /** Products that may be meant as well as the amount that stands there. */
  readonly doubts: readonly Quantity[];
};

const REACH = 16;
/** Between a count and what each takes: "of 90 ml", "at 110 g", "nominal volume 100 ml". */
const OF_EACH = new RegExp(
  unbroken`
    ^(?:of|de|d|at|@|x|×|a|holding|hold|holds|weighing|weigh|measuring|nominal|volume|volumen|each|capacity|
    que|that|which|they|they're|theyre|are|n|and|y|son|hacen|llevan|caben|le|les)$
  `,
  'u',
);
const STRONG = /^(?:of|de|d|at|@|x|×|a|holding|hold|holds|weighing|weigh|nominal|caben|hacen)$/u;
const ABOUT = /^(?:about|abt|around|approx|aprox|roughly|some|like|unos|unas|como|casi|maybe|,|:|\()$/u;
/** A bar of soap is hardly more; common practice (no source). */
const MOST_OF_A_PIECE = 300;
const LEAST_OF_A_PIECE = 20;

const isPortion = (item: Item): item is Quantity =>
  item.is === 'amount' &&
  !item.isSpoons &&
  !item.isOther &&
  item.told.of !== 'powder' &&
  !item.told.perPound &&
  item.product === undefined;

/** Whether a word of its own says that the amount is one's of those counted. */
function isEach(items: readonly Item[], count: number, amount: number): boolean {
  const between = items.slice(count + 1, amount);
  // "350 g of batter in each".
  const reach = /^(?:of|de)$/u.test(items[amount + 1]?.text ?? '') ? 5 : 4;
  const behind = items.slice(amount + 1, amount + reach);
  const last = behind.findIndex(({ is }) => is === 'each');
  const isPlain = ({ is, text }: Item) => is === 'word' || (is === 'mark' && /^[,(]$/u.test(text));
  return between.some(({ is }) => is === 'each') || (last >= 0 && behind.slice(0, last).every(isPlain));
}

/** Everything that an amount could be of each of. */
function pairIn(items: readonly Item[], from: number): number | undefined {
  for (let at = from + 1; at < Math.min(items.length, from + REACH); at += 1) {
    const item = items[at]!;
    if (isPortion(item)) return at;
    // Another amount or count first, or another sentence that does not go on about them.
    if (['amount', 'count', 'share', 'corrects', 'split'].includes(item.is)) return undefined;
    // "Each hole takes 75 ml" takes nothing out of a pot.
    if (item.is === 'takes' && !items.slice(from, at).some(({ is }) => is === 'each')) return undefined;
    if (item.is === 'mark' && /^[;?!]$/u.test(item.text)) return undefined;
  }
  return undefined;
}

const productOf = (count: Count, each: Quantity): Quantity => ({
  ...each,
  from: Math.min(count.from, each.from),
  text: `${count.count} x ${each.text}`,
  told: {
    ...each.told,
    text: `${count.count} x ${each.told.text}`,
    from: Math.min(count.from, each.from),
    of: each.told.of === 'unsaid' ? 'batter' : each.told.of,
  },
  value: count.count * each.value,
  product: { count: count.count, noun: count.noun, of: count.of, each: each.told.text },
});

type Pairing = 'each' | 'whole' | 'either';

function pairingOf(items: readonly Item[], from: number, at: number): Pairing {
  const count = items[from] as Count;
  const amount = items[at] as Quantity;
  if (isEach(items, from, at)) return 'each';
  const between = items.slice(from + 1, at);
  const words = between.map(({ text }) => text);
  const isLinked = between.every(
    ({ is, text }) => is !== 'thing' && (OF_EACH.test(text) || ABOUT.test(text)),
  );
  if (!isLinked || count.of === 'things') return 'whole';
  if (words.some(word => STRONG.test(word))) return 'each';
  const isWhole =
    amount.told.of === 'batter' && amount.told.measure === 'mass' && amount.value > MOST_OF_A_PIECE;
  if (count.of !== 'pieces' || isWhole || items.slice(at + 1, at + 4).some(({ is }) => is === 'whole'))
    return 'whole';
  // "20 bars 110 g" are no bars of 6 g; "4 bars 200 g" may be either.
  if (amount.value > MOST_OF_A_PIECE) return 'whole';
  return amount.value / count.count < LEAST_OF_A_PIECE ? 'each' : 'either';
}

/** "6 wells in the mould n theyre 90 ml each": so many of so much are one amount. Pure. */
export function multiplied(all: readonly Item[]): Multiplied {
  let items = withThings(all);
  const doubts: Quantity[] = [];
  for (const count of items.filter((item): item is Count => item.is === 'count')) {
    const from = items.indexOf(count);
    const at = pairIn(items, from);
    if (at === undefined) continue;
    const pairing = pairingOf(items, from, at);
    const amount = items[at] as Quantity;
    if (pairing === 'either') doubts.push(productOf(count, amount));
    if (pairing === 'each') {
      const product = productOf(count, amount);
      items = items.map(item => (item === amount ? product : item));
    }
  }
  return { items: items.map(item => afterwards(items, item) ?? item), doubts };
}

/** "100 g bars, 12 of them": the count behind its amount. */
function afterwards(items: readonly Item[], item: Item): Item | undefined {
  if (!isPortion(item) || items.some(({ is }) => is === 'count')) return undefined;
  const at = items.indexOf(item);
  const noun = items[at + 1];
  const some = items.slice(at + 2, at + 6).find(one => one.is === 'some');
  if (
    noun?.is !== 'word' ||
    !/^(?:bars|soaps|wells|cavities|slots|barras|jabones|jaboncitos|pastillas|huecos)$/u.test(noun.text)
  )
    return undefined;
  if (some?.is !== 'some' || typeof some.count !== 'number' || some.count < 2) return undefined;
  return productOf({ ...some, is: 'count', count: some.count, noun: noun.text, of: 'pieces' }, item);
}

const MOST = 300;
/** "20 x 85 g bars": what is counted stands behind its amount. */
function timesAt(items: readonly Item[], at: number): Count | undefined {
  const figure = items[at]!;
  const amount = items[at + 2];
  if (figure.is !== 'figure' || !/^[x×*]$/u.test(items[at + 1]?.text ?? '') || !amount || !isPortion(amount))
    return undefined;
  const noun = items[at + 3];
  return {
    ...figure,
    is: 'count',
    count: figure.value,
    noun: noun && isPiece(noun.text) ? noun.text : '',
    of: 'pieces',
    to: items[at + 1]!.to,
  };
}

/** "8 duckies of 80 ml each": where each has its amount, whatever was counted before is multiplied. */
function withThings(items: readonly Item[]): readonly Item[] {
  return items.map((item, at) => {
    const noun = items[at + 1];
    if (item.is !== 'figure' || !Number.isInteger(item.value) || item.value < 2 || item.value > MOST)
      return item;
    const times = timesAt(items, at);
    if (times) return times;
    if (noun?.is !== 'word' && noun?.is !== 'thing') return item;
    const pair = pairIn(items, at);
    if (pair === undefined || pair - at > 6 || !isEach(items, at, pair)) return item;
    const isBehind = items.slice(at + 1, pair).some(({ is }) => is === 'figure');
    return isBehind
      ? item
      : ({
          ...item,
          is: 'count',
          count: item.value,
          noun: noun.text,
          of: noun.is === 'thing' ? 'parts' : 'things',
          to: noun.to,
        } satisfies Count);
  });
}
