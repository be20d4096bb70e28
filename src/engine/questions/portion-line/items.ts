import { unbroken } from '../../over-lines.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';
import type { ToldAmount } from '../found/amounts.ts';
import type { NamedThing } from '../found/names/named-thing.ts';
import type { Words } from '../found/words-of.ts';
import { amountOf, SPOONS } from './amount-at.ts';
import { countAt, someAt } from './counted.ts';
import { FRACTIONS, PERCENT, TURNS } from './grammar-words.ts';
import type { Count, Item, Quantity } from './item.ts';

/** What else goes into a pot by weight: an amount beside one of these is no portion. */
const OTHER = new RegExp(
  unbroken`
    ^(?:water|lye|naoh|koh|soda|caustic|milk|fragrance|scent|perfume|eo|fo|agua|sosa|lejia|leche|fragancia|
    esencia|perfume|hidroxido|beeswax|cera|salt|sal|sugar|azucar|honey|miel|glycerin|glycerine|glicerina)$
  `,
  'u',
);
/** Whether a word names what else goes into a pot. Lower case without accents. */
export const isOther = (word: string): boolean => OTHER.test(word);
/** What a jug weighs besides nobody here knows. */
const WITH_VESSEL = new RegExp(
  unbroken`
    ^(?:with|including|con|contando|incluyendo) (?:(?:the|my|its|la|el|mi|su) )*(?:jug|jar|pot|bowl|bucket|
    pail|tub|container|beaker|pitcher|jarra|olla|bol|cuenco|balde|cubeta|recipiente|bote|
    envase)(?!\p{L})(?! (?:already |ya )?(?:took|taken|tared|off|removed|zeroed|tarad[oa]|descontad[oa]|
    aparte))
  `,
  'u',
);
const MARK = /^[?!;,.:()+&/=]$|^[-–—]+$/u;
/** Evenly parted: "split in 3", "dividida en cuatro recipientes". */
const SPLIT = new RegExp(
  unbroken`
    ^(?:split|splitting|divid(?:e|ed|ing)|part(?:ed|ing)?|dividid[oa]s?|divid(?:o|ir|imos)|repartid[oa]s?|
    repart(?:o|ir)|partid[oa]s?) (?:(?:it|them|that|the|this|batter|batch|everything|all|all of it|lo|la|
    todo|la masa|by (?:mass|weight|volume)|up|evenly|equally) )*(?:(?:in|into|en|by|between|among|across|
    entre) )?(\d)(?! ?(?:k?g|gr|ml|oz|lbs?|l|%)(?!\p{L}))(?![\p{L}\d.,/])
  `,
  'u',
);
/** "Split 900 ml 3 ways", "en 2 vasos iguales". */
const WAYS =
  /^(?:(\d) ways|(?:(?:in|into|en) )?(\d) (?:(?:equal|even|identical) \p{L}+|\p{L}+ (?:iguales|alike)))(?!\p{L})/u;
const FIGURE = /^\d+(?:[.,]\d+)?$/u;

const withoutThousands = (word: string): number =>
  Number(/^\d{1,3}[.,]\d{3}$/u.test(word) ? word.replace(/[.,]/u, '') : word.replace(',', '.'));

/** Figures, names and what the words between them do, in their order. Takes what `amountsIn` and `thingsIn` found. Pure. */
export function itemsOf(
  { words }: Words,
  things: readonly NamedThing[],
  amounts: readonly ToldAmount[],
): readonly Item[] {
  const starts = words.map((_, at) => words.slice(0, at).reduce((all, word) => all + word.length + 1, 0));
  const text = words.join(' ');
  const items: Item[] = [];
  for (let at = 0; at < words.length; ) {
    const amount = amounts.find(({ from }) => from === at);
    const next = Math.min(...amounts.map(({ from }) => from).filter(from => from > at), words.length);
    const item: Item = amount
      ? quantityOf(amount, words)
      : (within(next, someAt(words, at) ?? countAt(words, at)) ??
        within(next, turnAt(text, starts, at)) ??
        within(next, thingAt(things, at)) ??
        plainAt(words[at]!, at));
    items.push(item);
    at = item.to;
  }
  return items;
}

/** What runs into an amount is none. */
const within = <One extends Item>(next: number, item: One | undefined): One | undefined =>
  item && item.to <= next ? item : undefined;

const thingAt = (things: readonly NamedThing[], at: number): Item | undefined => {
  const thing = things.find(({ from }) => from === at);
  return thing && { is: 'thing', from: thing.from, to: thing.to, text: thing.text };
};

const plainAt = (word: string, at: number): Item => {
  const span = { from: at, to: at + 1, text: word };
  if (FIGURE.test(word)) return { ...span, is: 'figure', value: withoutThousands(word) };
  return { ...span, is: MARK.test(word) ? 'mark' : 'word' };
};

/** What the grammar says of the words from there on. */
/** "Half of them don't say", "half the charts", "la mitad de las recetas": a part of something that is no batter. */
const OF_NO_BATTER = new RegExp(
  unbroken`
    ^ (?:(?:of|de) )?(?:(?:them|these|those|ell[oa]s|es[oa]s|est[oa]s) (?:do|dont|don't|does|did|didnt|
    didn't|say|tell|told|think|claim|never|no|ni|dicen|cuentan)|(?:(?:the|these|those|my|all|las?|
    los?) )?(?:charts?|recipes?|posts?|time|people|group|internet|websites?|sites?|books?|calculators?|
    tiempo|gente|grupo|veces|libros?|paginas?|recetas?|tablas?))(?!\p{L})
  `,
  'u',
);

function turnAt(text: string, starts: readonly number[], at: number): Item | undefined {
  const from = starts[at]!;
  const spanOf = (length: number) => {
    const end = from + length;
    const to = starts.findIndex(start => start >= end);
    return { from: at, to: Math.max(at + 1, to < 0 ? starts.length : to), text: text.slice(from, end) };
  };
  const split = SPLIT.exec(text.slice(from, from + 120)) ?? WAYS.exec(text.slice(from, from + 40));
  const parts = Number(split?.[1] ?? split?.[2]);
  if (split && parts > 1) return { ...spanOf(split[0].length), is: 'split', parts };
  for (const { is, pattern } of TURNS) {
    pattern.lastIndex = from;
    const match = pattern.exec(text);
    if (match) return { ...spanOf(match[0].trimEnd().length), is };
  }
  PERCENT.lastIndex = from;
  const percent = PERCENT.exec(text);
  if (percent)
    return {
      ...spanOf(percent[0].trimEnd().length),
      is: 'share',
      share: `${percent[1]!.replace(',', '.')}%`,
      value: Number(percent[1]!.replace(',', '.')) / 100,
    };
  for (const { share, value, pattern } of FRACTIONS) {
    pattern.lastIndex = from;
    const match = pattern.exec(text);
    if (match && !OF_NO_BATTER.test(text.slice(from + match[0].length)))
      return { ...spanOf(match[0].length), is: 'share', share, value };
  }
  return undefined;
}

/** Links between an amount and what it is of. */
const LINK = /^(?:of|de|del|the|el|la|is|es)$/u;

function quantityOf(told: ToldAmount, words: readonly string[]): Quantity {
  const amount = amountOf(told.text)!;
  const behind = words.slice(told.to, told.to + 3).find(word => !LINK.test(word)) ?? '';
  const before = words.slice(Math.max(0, told.from - 2), told.from).findLast(word => !LINK.test(word)) ?? '';
  const [, count, each] = /^(\d{1,3}) x (.+)$/u.exec(told.text) ?? [];
  return {
    is: 'amount',
    from: told.from,
    to: told.to,
    text: told.text,
    told,
    value: amount.measure === 'mass' ? amount.grams : amount.millilitres,
    isSpoons: words.slice(told.from, told.to).some(word => SPOONS.has(unitOfWord(word) ?? '')),
    isOther:
      (amount.measure === 'mass' && WITH_VESSEL.test(words.slice(told.to, told.to + 5).join(' '))) ||
      told.of === 'oil' ||
      OTHER.test(behind) ||
      (OTHER.test(before) && told.of === 'unsaid'),
    ...(count !== undefined &&
      each !== undefined && { product: { count: Number(count), ...countedIn(words, told), each } }),
  };
}

/** What is counted in "12 jabones de 100 g", as it was said. */
const countedIn = (words: readonly string[], { from, to }: ToldAmount): Pick<Count, 'noun' | 'of'> => {
  const count = countAt(words.slice(0, to), from);
  return { noun: count?.noun ?? '', of: count?.of ?? 'pieces' };
};
