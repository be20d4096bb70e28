import { isMeasure, isName, isOil } from '../settling/parts.ts';
import type { Item, Name } from './item.ts';

/** An oil that stands beside its weight or share, and where the two begin in the line. */
export type WeighedOil = { readonly from: number; readonly name: Name };

/** The oils of a line that stand beside an amount, in their order; what stands behind an amount goes first. Takes the items of a line. Pure. */
export function weighedOils(items: readonly Item[]): readonly WeighedOil[] {
  return items.flatMap((item, at) => {
    if (!isMeasure(item) || (item.is === 'amount' && item.unit === 'other')) return [];
    const behind = items.slice(at + 1).find(({ is }) => is !== 'link');
    const before = items.slice(0, at).findLast(({ is }) => is !== 'link');
    const name = isName(behind) ? behind : before;
    return isOil(name) ? [{ from: Math.min(item.from, name.from), name }] : [];
  });
}
