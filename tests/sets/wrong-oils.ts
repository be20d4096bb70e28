import { parseSize } from '../../src/engine/batch/batch-size.ts';
import type { OilBlend } from '../../src/engine/batch/oils/blend.ts';
import { knownOil } from '../../src/engine/batch/oils/find-oil.ts';
import { parseOils } from '../../src/engine/batch/oils/lists/oil-list.ts';
import { near } from './same-thing.ts';

/** What is wrong with how oils, in grams or shares by their names, are read; `sized`: to which size they are brought. */
export function wrongOils(
  text: string,
  wanted: Readonly<Record<string, number>>,
  sized?: string,
): string | undefined {
  return wrongBlend(parseOils(text), wanted, sized);
}

/** Of oils that were read already. */
export function wrongBlend(
  { shares, ...told }: OilBlend,
  wanted: Readonly<Record<string, number>>,
  sized?: string,
): string | undefined {
  const size = sized === undefined ? undefined : parseSize(sized);
  // Weights that are brought to another size are what that size makes of them.
  const totalGrams = size?.by === 'oils' ? size.grams : told.totalGrams;
  const entries = Object.entries(wanted);
  const asShares = entries.every(([, amount]) => amount <= 1);
  const sum = entries.reduce((all, [, amount]) => all + amount, 0);
  if (shares.length !== entries.length) return `got ${shares.map(({ oil }) => oil.id).join(', ')}`;
  for (const [name, amount] of entries) {
    const own = shares.find(({ oil }) => oil === knownOil(name));
    if (!own || !near(own.share, amount / sum)) return `${name}: got ${own?.share}`;
  }
  return asShares || near(totalGrams ?? Number.NaN, sum) ? undefined : `in all ${totalGrams}`;
}
