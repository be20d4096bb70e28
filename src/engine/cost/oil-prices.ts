import { findOil } from '../batch/oils/find-oil.ts';
import { parseAmount } from '../quantities/amount.ts';
import { refuse } from '../refusal.ts';
import { excerpt } from '../text/excerpt.ts';
import { costOf, type Money, type Price, parseMoney, sumsOf } from './money.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'oil-price-unreadable': { readonly text: string };
  }
}

const PER = /\s*(?:\/|\b(?:per|for|a|an|the|por|el|la|cada)\b)\s*/iu;
const MOST = 30;

/**
 * Reads what oils cost: `olive 8 €/kg, coconut oil 6 EUR per 500 g`. By the oil's id. Throws a Refusal
 * `oil-price-unreadable`, or those of oils, amounts and prices.
 */
export function parseOilPrices(text: string): ReadonlyMap<string, Price> {
  const pieces = text
    .split(/[;\n]|,(?!\d)/u)
    .map(piece => piece.trim())
    .filter(piece => piece !== '');
  if (pieces.length === 0 || pieces.length > MOST) refuse('oil-price-unreadable', { text: excerpt(text) });
  return new Map(pieces.map(readOne));
}

function readOne(piece: string): readonly [string, Price] {
  const unread = () => refuse('oil-price-unreadable', { text: excerpt(piece) });
  const at = piece.search(/[\d\p{Sc}]/u);
  if (at <= 0) return unread();
  const name = piece.slice(0, at).replace(/[\s:=]+$/u, '');
  const [money, size] = splitOnce(piece.slice(at));
  if (name === '' || /[-−–]$/u.test(name) || size === undefined) return unread();
  const amount = parseAmount(/^\d/u.test(size) ? size : `1 ${size}`);
  if (amount.measure !== 'mass') return unread();
  return [findOil(name).id, { ...parseMoney(money), grams: amount.grams }];
}

function splitOnce(text: string): readonly [string, string | undefined] {
  const found = PER.exec(text);
  return found ? [text.slice(0, found.index), text.slice(found.index + found[0].length)] : [text, undefined];
}

/** What the oils of a batch cost, one sum a currency, and the ids of those without a price. */
export function oilsCost(
  oils: readonly { readonly id: string; readonly grams: number }[],
  prices: ReadonlyMap<string, Price>,
): { readonly sums: readonly Money[]; readonly unpriced: readonly string[] } {
  const priced = oils.flatMap(({ id, grams }) => {
    const price = prices.get(id);
    return price ? [costOf(price, grams)] : [];
  });
  return { sums: sumsOf(priced), unpriced: oils.filter(({ id }) => !prices.has(id)).map(({ id }) => id) };
}
