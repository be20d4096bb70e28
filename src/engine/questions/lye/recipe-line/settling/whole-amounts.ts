import type { Amount, Item } from '../items/item.ts';
import type { State } from '../state.ts';
import { isName, isOil } from './parts.ts';

/** Weights of all oils out of a part: "40 ounces total", "lote de 600 g". */
export function wholes(state: State, items: readonly Item[]): readonly Item[] {
  const taken = new Set<Item>();
  for (const [at, item] of items.entries()) {
    if (item.is !== 'whole' && item.is !== 'rescales') continue;
    const next = items[at + 1]?.is === 'link' ? at + 2 : at + 1;
    const amount = [next, at - 1].find(
      one =>
        isWeight(items[one]) && !taken.has(items[one]!) && !(one === next && isOil(afterLink(items, one))),
    );
    if (amount === undefined) continue;
    taken.add(items[amount]!);
    state.whole = items[amount] as Amount;
  }
  return items.filter(item => !taken.has(item));
}

/** "Olive 400 coconut 300 up to 2 kilos of oil": a weight of all of them among those of each. */
export function wholeAmong(state: State, items: readonly Item[]): readonly Item[] {
  if (!items.some(isOil)) return items;
  const at = items.findIndex(
    (item, one) => isWeight(item) && (item as Amount).unit !== undefined && isAnyOil(afterOf(items, one)),
  );
  if (at === -1 || state.whole) return items;
  state.whole = items[at] as Amount;
  const name = items.indexOf(afterOf(items, at)!);
  return items.filter((_, one) => one !== at && one !== name);
}
const isAnyOil = (item: Item | undefined): boolean => isName(item) && item.known === 'any-oil';
const afterOf = (items: readonly Item[], at: number): Item | undefined =>
  items.slice(at + 1).find(({ is }) => is !== 'link');

const isWeight = (item: Item | undefined): boolean => item?.is === 'amount' && item.unit !== '%';
const afterLink = (items: readonly Item[], at: number): Item | undefined =>
  items[at + 1]?.is === 'link' ? items[at + 2] : items[at + 1];
