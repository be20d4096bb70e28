import { limitsShare, otherUseOf } from './legal-share.ts';
import type { EuListing, UsListing } from './listings.ts';
import { nameIn, permittedUses } from './permitted.ts';
import type { Component } from './report.ts';

/**
 * Where a whole powder stands with one law. `listed`: every colour in it, without a limit that touches soap on skin.
 * `limited`: every colour, some with limits. `other-use`: one of them only for
 * something else than soap (nails, teeth, hair, eyes). `check`: our copy has no row for one of them, which proves nothing.
 * `not-listed`: one of them is known to be left out. `no-colour`: nothing in it counts as a colour.
 */
export type Standing = 'listed' | 'limited' | 'check' | 'other-use' | 'not-listed' | 'no-colour';

/** The standing in both laws, and the names of the ingredients that decide it. */
export type PermittedSummary = {
  readonly us: { readonly standing: Standing; readonly because: readonly string[] };
  readonly eu: { readonly standing: Standing; readonly because: readonly string[] };
};

type Found = { readonly standing: Standing; readonly name: string };

const worstFirst: readonly Standing[] = [
  'other-use',
  'not-listed',
  'check',
  'limited',
  'listed',
  'no-colour',
];

function decide(found: readonly Found[]): PermittedSummary['us'] {
  const standing = worstFirst.find(one => found.some(each => each.standing === one)) ?? 'no-colour';
  return {
    standing,
    because: [...new Set(found.filter(one => one.standing === standing).map(({ name }) => name))],
  };
}

const missing = (status: 'not-listed' | 'no-row' | 'no-colour'): Standing =>
  status === 'no-row' ? 'check' : status;

/** Sums up {@link permittedUses} over the components of a list, those it only may contain included. */
export function permittedSummary(components: readonly Component[]): PermittedSummary {
  const us: Found[] = [];
  const eu: Found[] = [];
  for (const component of components) {
    const name = nameIn(component);
    const elsewhere = otherUseOf(component) !== undefined;
    const uses = permittedUses(component);
    for (const use of uses.us) {
      us.push({
        name,
        standing: use.status === 'listed' ? usListed(use.listing, elsewhere) : missing(use.status),
      });
    }
    for (const use of uses.eu)
      eu.push({ name, standing: use.status === 'listed' ? euListed(use.listing) : missing(use.status) });
  }
  return { us: decide(us), eu: decide(eu) };
}

const usListed = ({ external, terms }: UsListing, elsewhere: boolean): Standing =>
  elsewhere ? 'other-use' : external !== 'yes' || limitsShare(terms) ? 'limited' : 'listed';

/** Soap is rinsed off and no eye product: only mucous membranes and a maximum limit it. */
const euListed = ({ restriction, most }: EuListing): Standing =>
  restriction === 'not-on-mucous-membranes' || most !== '' ? 'limited' : 'listed';
