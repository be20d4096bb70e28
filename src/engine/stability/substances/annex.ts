import { remembered } from '../../colourants/catalogue/origins.ts';
import { euListings } from '../listings.ts';
import { bleeds, unknown } from './alkali.ts';
import type { Substance } from './substance.ts';

/** Sulphonates of sodium and the like dissolve in water; the salts of barium and calcium do not. */
function dissolves(chemical: string): boolean {
  const itself = chemical.replace(/ and its (?:un|in)soluble .*/i, '');
  return /sulph?on(?:at|ic acid)/i.test(itself) && !/^(?:barium|calcium)/i.test(itself);
}

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
