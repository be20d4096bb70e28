import type { Price } from '../../src/engine/cost/money.ts';
import { parseMoney } from '../../src/engine/cost/money.ts';
import { parseStock } from '../../src/engine/quantities/told/stock.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { gramsOf, type Spooned } from '../../src/records/shelf/jars/jar.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'price-without-size': Record<never, never>;
    'size-without-price': Record<never, never>;
  }
}

/**
 * What a jar cost, as it was said; undefined where nothing was. Without a size the price is for the amount put on the
 * shelf, grams.
 */
export function priceAsked(
  { price, size }: { readonly price?: string | undefined; readonly size?: string | undefined },
  {
    grams,
    spooned,
    measures,
  }: { readonly grams?: number | undefined; readonly spooned: Spooned; readonly measures: Measures },
): Price | undefined {
  if (price === undefined) return size === undefined ? undefined : refuse('size-without-price', {});
  const money = parseMoney(price);
  const bought = size === undefined ? grams : gramsOf(parseStock(size, measures), spooned);
  return bought !== undefined && bought > 0 ? { ...money, grams: bought } : refuse('price-without-size', {});
}
