import { amountOf } from './amount-at.ts';
import type { Count, Figure, Item, Product, Quantity } from './item.ts';

/** Readings that are left where it is not plain what puts what right: each the items as they would then be. */
export type PutRight = { readonly items: readonly Item[]; readonly others: readonly (readonly Item[])[] };

/** How far behind the words that put something right the right amount may stand. */
const REACH = 10;
/** A figure that puts another right is hardly more than so many times it; up to the larger one it may be. */
const [LIKE, PERHAPS] = [4, 20] as const;

const isQuantity = (item: Item): item is Quantity => item.is === 'amount';
const isAmountOrCount = (item: Item): item is Quantity | Figure | Count =>
  item.is === 'amount' || item.is === 'figure' || item.is === 'count';

/** Whether one amount may stand in another's place: a spoon for a spoon, a portion for a portion. */
const isLike = (a: Quantity, b: Quantity): boolean => {
  if (a.isSpoons || b.isSpoons) return a.isSpoons === b.isSpoons;
  if (a.isOther || b.isOther || a.told.perPound !== b.told.perPound) return false;
  const of = new Set([a.told.of, b.told.of]);
  return !of.has('powder') || of.size === 1 || (of.has('unsaid') && alike(a.value, b.value));
};
const alike = (a: number, b: number, most: number = LIKE): boolean =>
  a > 0 && b > 0 && Math.max(a / b, b / a) <= most;

const leadingFigure = /^(?:\d+ \d\/\d|\d\/\d|\d+(?:[.,]\d+)?)/u;

/** The amount that was told with the right one's figure: what it is of, and where it stands, it keeps. */
function replaced(old: Quantity, right: Quantity): Quantity {
  const of = right.told.of === 'unsaid' ? old.told.of : right.told.of;
  return { ...right, from: old.from, to: old.to, told: { ...right.told, of, from: old.from, to: old.to } };
}

/** The amounts that an old one may have become by a figure alone: by its own, by its count, or by what each of them takes. */
function withFigure(old: Quantity, figure: Figure, most: number = LIKE): readonly Quantity[] {
  const { product } = old;
  if (!product) {
    const text = figured(old.told.text, figure, most);
    return text === undefined ? [] : [valued(old, text)];
  }
  const each = figured(product.each, figure, most);
  const isCount = Number.isInteger(figure.value) && alike(product.count, figure.value, most);
  return [
    ...(isCount ? [multipliedBy(old, { ...product, count: figure.value })] : []),
    ...(each === undefined ? [] : [multipliedBy(old, { ...product, each })]),
  ];
}

/** An amount with another figure: "1 kg" and 750 are 750 g. */
function figured(text: string, { value }: Figure, most: number): string | undefined {
  const own = leadingFigure.exec(text)?.[0];
  if (own === undefined || /[/ ]/u.test(own)) return undefined;
  const figure = Number(own.replace(',', '.'));
  const unit = text.slice(own.length);
  if (alike(figure, value, most)) return `${value}${unit}`;
  const small = / (?:kg|kgs|kilos?)$/u.test(unit)
    ? ' g'
    : / (?:l|lt|lit(?:er|re)s?|litros?)$/u.test(unit)
      ? ' ml'
      : undefined;
  return small !== undefined && alike(1000 * figure, value, most) ? `${value}${small}` : undefined;
}

const valued = (old: Quantity, text: string): Quantity => {
  const amount = amountOf(text)!;
  const value = amount.measure === 'mass' ? amount.grams : amount.millilitres;
  return { ...old, text, told: { ...old.told, text }, value };
};
const multipliedBy = (old: Quantity, product: Product): Quantity => ({
  ...valued(old, `${product.count} x ${product.each}`),
  product,
});

const exchange = (items: readonly Item[], old: Item, by: Item, drop: Item): readonly Item[] =>
  items.flatMap(item => (item === old ? [by] : item === drop ? [] : [item]));
const without = (items: readonly Item[], drop: Item): readonly Item[] => items.filter(item => item !== drop);

/** Words that begin something else: a figure before them is of nothing that they tell. */
const ELSE =
  /^(?:and|n|y|e|with|con|for|para|in|en|so|but|pero|please|pls|porfa|thanks|gracias|then|que|if|si|i|how|cuanto|cuanta|instead)$/u;

/** What stands right behind a bare figure: nothing that it counts or is of. */
const isBare = (items: readonly Item[], at: number): boolean => {
  const next = items[at + 1];
  return (
    next === undefined ||
    next.is === 'mark' ||
    next.is === 'corrects' ||
    next.is === 'each' ||
    (next.is === 'word' && ELSE.test(next.text))
  );
};

/**
 * A question with only the amounts in it that are meant: what was put right is, the last that is meant in the first one's place,
 * what is denied is gone, and what tells of another time goes where another amount of its kind is told of this one. Pure.
 */
export function putRight(all: readonly Item[]): PutRight {
  let items = all;
  const others: (readonly Item[])[] = [];
  for (const turn of all.filter(({ is }) => is === 'corrects')) {
    const at = items.indexOf(turn);
    const next = items
      .slice(at + 1, at + 1 + REACH)
      .findIndex(item => isAmountOrCount(item) || item.is === 'corrects');
    const right = items[at + 1 + next];
    if (at < 0 || next < 0 || right === undefined || right.is === 'corrects') continue;
    const read = corrected(items, { at, right, isBare: isBare(items, at + 1 + next) });
    items = read.items;
    others.push(...read.others);
  }
  const denied = withoutDenied(items);
  return {
    items: ofThisTime(denied.items),
    others: [...others, ...denied.others].map(one => ofThisTime(one)),
  };
}

type Correction = { readonly at: number; readonly right: Item; readonly isBare: boolean };

function corrected(items: readonly Item[], { at, right, isBare }: Correction): PutRight {
  const before = items.slice(0, at).toReversed();
  if (right.is === 'amount') {
    const old = before.filter(isQuantity).find(one => isLike(one, right));
    return { items: old ? exchange(items, old, replaced(old, right), right) : items, others: [] };
  }
  if (right.is === 'count') {
    const old = before.find(({ is }) => is === 'count');
    return { items: old ? exchange(items, old, right, right) : items, others: [] };
  }
  if (right.is !== 'figure') return { items, others: [] };
  const readings = (most: number) =>
    before.flatMap(old => {
      if (old.is === 'count' && alike(old.count, right.value, most) && Number.isInteger(right.value))
        return [exchange(items, old, { ...old, count: right.value }, right)];
      return old.is === 'amount'
        ? withFigure(old, right, most).map(by => exchange(items, old, by, right))
        : [];
    });
  // What a figure may count itself puts nothing right for sure.
  if (!isBare) return { items, others: items[at + 1] === right ? readings(LIKE) : [] };
  const [first, ...more] = readings(LIKE);
  // What it puts right nobody can tell: as it stood, or as each of those.
  return first === undefined ? { items, others: readings(PERHAPS) } : { items: first, others: more };
}

/** "380 g, not 400": what is denied is not meant; a bare "no" between two may mean either. */
function withoutDenied(all: readonly Item[]): PutRight {
  let items = all;
  const others: (readonly Item[])[] = [];
  for (const [at, item] of all.entries()) {
    const next = all[at + 1];
    if (item.is === 'denies' && next?.is === 'amount' && hasOther(items, next)) items = without(items, next);
    if (item.is === 'denies' && next?.is === 'figure') items = without(items, next);
    if (item.is === 'word' && item.text === 'no' && next?.is === 'amount') {
      const before = all.slice(0, at).findLast(isQuantity);
      if (before && isLike(before, next) && before.value !== next.value) {
        others.push(exchange(items, before, replaced(before, next), next));
        items = without(items, next);
      }
    }
  }
  return { items, others };
}

const hasOther = (items: readonly Item[], one: Quantity): boolean =>
  items.some(item => item !== one && item.is === 'amount' && isLike(item, one));

/** Each item with whether its clause tells of another time. */
function timed(items: readonly Item[]): readonly { readonly item: Item; readonly isPast: boolean }[] {
  const clauses: Item[][] = [[]];
  for (const item of items) {
    const ends = item.is === 'now' || (item.is === 'mark' && /^[.;!?()]$/u.test(item.text));
    if (ends) clauses.push([item]);
    else clauses.at(-1)!.push(item);
  }
  return clauses.flatMap(clause => {
    const isPast = clause.some(({ is }) => is === 'past');
    return clause.map(item => ({ item, isPast }));
  });
}

/** Without what was so another time, where the same is told of this time. */
function ofThisTime(items: readonly Item[]): readonly Item[] {
  const all = timed(items);
  const meant = all.flatMap(({ item, isPast }) => (!isPast && item.is === 'amount' ? [item] : []));
  const past = all.flatMap(({ item, isPast }) => (isPast && item.is === 'amount' ? [item] : []));
  const gone = new Set<Item>(past.filter(one => meant.some(other => isLike(other, one))));
  // "Normally 2 lb of oils, this time 3 lb": what it is of goes without saying.
  const ofPast = [...gone].find(one => one.is === 'amount' && !one.isSpoons) as Quantity | undefined;
  const kept = items
    .filter(item => !gone.has(item))
    .map(item =>
      ofPast && item.is === 'amount' && item.told.of === 'unsaid' && isLike(item, ofPast)
        ? { ...item, told: { ...item.told, of: ofPast.told.of } }
        : item,
    );
  return kept.length === items.length ? withThisTimesFigure(kept, all) : kept;
}

/** "Last time it was 500 g, now it is 750": the figure of this time takes the unit of the other. */
function withThisTimesFigure(
  items: readonly Item[],
  all: readonly { readonly item: Item; readonly isPast: boolean }[],
): readonly Item[] {
  const past = all.flatMap(({ item, isPast }) =>
    isPast && item.is === 'amount' && !item.isSpoons ? [item] : [],
  );
  const at = items.findIndex(({ is }) => is === 'now');
  const figure = items.slice(at + 1).find((item): item is Figure => item.is === 'figure');
  const [old, ...more] = past;
  if (at < 0 || !figure || !old || more.length > 0 || !isBare(items, items.indexOf(figure))) return items;
  const [by, ...others] = withFigure(old, figure);
  return by && others.length === 0 ? exchange(items, old, by, figure) : items;
}
