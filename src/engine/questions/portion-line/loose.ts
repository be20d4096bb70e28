import { amountText } from '../../quantities/for-readers.ts';
import { isOil } from '../found/amounts.ts';
import type { Count, Figure, Item, Quantity, Share, Some } from './item.ts';
import { isOther } from './items.ts';
import { multiplied } from './products.ts';
import { asPortion, type Settled } from './settled.ts';

/** A figure that tells how much or how many of something. */
export type Telling = Quantity | Count | Some | Share | Figure | (Item & { readonly is: 'split' });

const isTelling = (item: Item): item is Telling =>
  ['amount', 'count', 'some', 'share', 'figure', 'split'].includes(item.is);

/** Two amounts within this are one that was told twice. */
const SAME = 0.015;

function isUsed(items: readonly Item[], one: Telling, read: Settled): boolean {
  const { from, reckoned } = read;
  switch (one.is) {
    case 'amount':
      return (
        one === from ||
        one.isOther ||
        one.from === from?.from ||
        asPortion(one) === read.whole ||
        asPortion(one) === read.part ||
        (from !== undefined &&
          one.told.measure === from.told.measure &&
          Math.abs(one.value - from.value) <= SAME * from.value) ||
        isLost(items, one, read)
      );
    case 'count':
      return from?.product?.count === one.count && from.product.noun === one.noun;
    case 'some':
      return reckoned?.by === 'count' || reckoned?.by === 'share' || one.count === from?.product?.count;
    case 'share':
    case 'split':
      return reckoned?.by === 'share';
    case 'figure': {
      // "430 of water": of what no portion is.
      const behind = items.slice(items.indexOf(one) + 1).find(({ text }) => !/^(?:of|de|del)$/u.test(text));
      return isLost(items, one, read) || (behind !== undefined && isOther(behind.text));
    }
  }
}

const isLost = (items: readonly Item[], one: Item, { reckoned }: Settled): boolean =>
  reckoned?.by === 'lost' && items[items.indexOf(one) - 1]?.is === 'lost';

/** Every figure of a question that the portion does not take, and that is of nothing else that is told. Pure. */
export function looseIn(all: readonly Item[], read: Settled): readonly Telling[] {
  const { items } = multiplied(all);
  return items.filter(isTelling).filter(one => !isUsed(items, one, read));
}

/** Less of an oil is told in grams with its unit. */
const LEAST_G = 20;
const JOINT = /^(?:and|y|e|n|plus|mas|with|con|\+|&|,)$/u;
const SHARES = /%|percent|por ?ciento|porcentaje/u;

/** "800 g of oil and 200 of lard": whether the fat that is named behind a weight of oils is one of them nobody can tell. */
export function withLooseOil(
  loose: readonly Telling[],
  words: readonly string[],
  { from }: Settled,
): readonly string[] {
  if (from?.told.of !== 'oils' || from.told.measure !== 'mass' || SHARES.test(words.join(' '))) return [];
  const behind = (at: number) => (/^(?:of|de)$/u.test(words[at] ?? '') ? at + 1 : at);
  let end = from.to;
  let sum = from.value;
  for (const one of loose) {
    const between = words.slice(end, one.from).filter(word => !OF_OILS.test(word));
    const isNext = one.from >= end && between.length > 0 && between.every(word => JOINT.test(word));
    if (one.is !== 'figure' || one.value < LEAST_G || !isNext || !isOil(words, behind(one.to))) continue;
    sum += one.value;
    end = behind(one.to) + 1;
  }
  return sum === from.value ? [] : [amountText(sum, { ofOils: true, decimals: 1 })];
}
const OF_OILS = /^(?:of|de|los|the|oils?|fats?|aceites?|grasas?)$/u;
