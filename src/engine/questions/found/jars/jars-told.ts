import { amountsIn } from '../amounts.ts';
import { thingsIn } from '../names/entities.ts';
import { wordsOf } from '../words-of.ts';

/** What parts one jar from the next. */
const BETWEEN = /^(?:[,;.+&]|and|y|e|n|plus|mas|con|with)$/u;

/** A jar that is told, and the amount that stands by it. */
export type JarTold = { readonly item: string; readonly amount?: string };

/** The jars that a question names, each with the amount that stands by it, where that is no guess. Pure. */
export function jarsTold(question: string, named: readonly string[]): readonly JarTold[] {
  const read = wordsOf(question);
  const things = thingsIn(read);
  const amounts = amountsIn(read, things);
  const parts = partsOf(read.words, [...things, ...amounts]);
  const within = <Part extends Placed>([from, to]: readonly [number, number], all: readonly Part[]) =>
    all.filter(one => one.from >= from && one.from < to);
  const told = new Map(
    parts
      .flatMap(part => paired(within(part, things), within(part, amounts)))
      .map(one => [one.item, one.amount]),
  );
  return named.map(item => {
    const amount = told.get(item);
    return amount === undefined ? { item } : { item, amount };
  });
}

type Placed = { readonly from: number; readonly to: number; readonly text: string };

/** The stretches of words between commas and "and", none of which cuts a name or an amount. */
function partsOf(words: readonly string[], whole: readonly Placed[]): readonly (readonly [number, number])[] {
  const cuts = words.flatMap((word, at) =>
    BETWEEN.test(word) && !whole.some(({ from, to }) => at >= from && at < to) ? [at] : [],
  );
  return [-1, ...cuts].map((cut, at) => [cut + 1, cuts[at] ?? words.length]);
}

/**
 * Which amount is of which thing in one part: all stand before their things, or all behind. Where one is left over it is
 * anybody's guess, and none is taken.
 */
function paired(things: readonly Placed[], amounts: readonly Placed[]) {
  const inTurn = [...things, ...amounts].toSorted((a, b) => a.from - b.from);
  const isThing = (one: Placed | undefined) => one !== undefined && things.includes(one);
  const alternate = inTurn.every((one, at) => at === 0 || isThing(one) !== isThing(inTurn[at - 1]));
  if (!alternate || things.length !== amounts.length) return [];
  return things.map(({ text }, at) => ({ item: text, amount: amounts[at]!.text }));
}
