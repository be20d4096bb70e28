import { parseStock } from '../../../engine/quantities/told/stock.ts';
import type { Measures } from '../../../engine/quantities/units.ts';
import { findItem } from '../queries.ts';
import type { Shelf } from '../shelf.ts';
import { gramsOf } from './jar.ts';

/** An amount of an item in grams: spoons count by the member's own weighing, else by what such a powder weighs. */
export async function itemGrams(
  shelf: Shelf,
  asked: { readonly item: string; readonly amount: string },
  measures: Measures,
): Promise<number> {
  const stock = parseStock(asked.amount, measures);
  return stock.measure === 'mass' ? stock.grams : gramsOf(stock, await findItem(shelf, asked.item));
}
