import { colourantById } from '../engine/colourants/catalogue.ts';
import type { ShelfItem } from '../records/shelf/index.ts';
import type { Words } from '../words/index.ts';

/** An item in one line: what is left of it first, then what is known of it. */
export function itemRow({ name, colourant, pigmentFraction, lot, stock }: ShelfItem, say: Words): string {
  const known = colourant === undefined ? undefined : colourantById(colourant)?.names[say.language];
  const facts = [
    known && known.toLowerCase() !== name.toLowerCase() ? known : undefined,
    pigmentFraction === undefined ? undefined : say.shelf.pigment({ percent: pigmentFraction * 100 }),
    lot.number > 1 || lot.label !== undefined ? say.shelf.lot(lot) : undefined,
    lot.dishTest && say.shelf.dishTests[lot.dishTest],
    lot.spoonWeight && say.shelf.spoon(lot.spoonWeight),
    stock.low && stock.grams !== undefined ? say.shelf.low({ name, left: stock.grams }) : undefined,
  ].filter(Boolean);
  const left = stock.grams === undefined ? say.shelf.amountUnknown : say.shelf.grams(stock.grams);
  return `${name}: ${[left, ...facts].join('; ')}`;
}
