import { remembered } from '../../colourants/catalogue/origins.ts';
import { euListings } from '../listings.ts';
import { bleeds, unknown } from './alkali.ts';
import type { Substance } from './substance.ts';

/** Sulphonates dissolve in water unless they are precipitated as a lake, salt or pigment. */
const dissolves = (chemical: string): boolean =>
  /sulph?onat/i.test(chemical) && !/barium|calcium bis/i.test(chemical);

/**
 * The colours of Annex IV that `known` does not hold: we know their number and listing, not how they fare in lye,
 * except that sulphonated dyes wander.
 */
export function annexColours(known: ReadonlySet<string>): readonly Substance[] {
  return euListings
    .filter(row => row.ci.length > 0 && !row.ci.some(number => known.has(number)))
    .map(row => ({
      id: `ci-${row.ci[0] ?? ''}`,
      role: 'dye',
      kind: 'dye',
      names: [`CI ${row.ci[0] ?? ''}`, ...row.names],
      ci: row.ci,
      ...(row.e.length > 0 ? { e: row.e } : {}),
      alkali: dissolves(row.chemical) ? bleeds : unknown,
      light: 'fades-slowly',
      confidence: 'low',
      source: remembered('told from the chemical name alone'),
    }));
}
