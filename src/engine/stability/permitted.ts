import { type EuListing, euListings, type UsListing, usListings } from './listings.ts';
import type { Component } from './report.ts';
import { substanceById } from './substances/index.ts';
import type { Substance } from './substances/substance.ts';

/**
 * `listed`: with the listing. `not-listed`: known to be absent from the list. `no-row`: our copy has no row for it,
 * which proves nothing. `no-colour`: it is no colour additive (a substrate, filler or carrier).
 */
export type UsUse =
  | { readonly status: 'listed'; readonly listing: UsListing; readonly lake: boolean }
  | { readonly status: 'not-listed' | 'no-row' | 'no-colour'; readonly name: string };

/** As {@link UsUse}, for Annex IV. */
export type EuUse =
  | { readonly status: 'listed'; readonly listing: EuListing }
  | { readonly status: 'no-row' | 'no-colour'; readonly name: string };

/** What the law of the US and of the EU says of one component, as far as our dated copies go. */
export type PermittedUses = { readonly us: readonly UsUse[]; readonly eu: readonly EuUse[] };

/**
 * The name the law is told by: the substance's own; of a family whose members lists name apart, what the list wrote
 * ("boron nitride" is not spoken of as the first filler of our table).
 */
export function nameIn({ id, as }: Pick<Component, 'id' | 'as'>): string {
  const substance = substanceById(id);
  return substance === undefined || substance.family === true ? as : substance.names[0];
}

const bySection: ReadonlyMap<string, UsListing> = new Map(
  usListings.map(listing => [listing.section, listing]),
);
const uncoloured = new Set(['additive', 'carrier', 'glitter']);

function usUses(substance: Substance, name: string): readonly UsUse[] {
  const sections = substance.us ?? [];
  if (sections === 'none') return [{ status: 'not-listed', name }];
  const listings = sections.map(section => bySection.get(section)).filter(listing => listing !== undefined);
  if (listings.length > 0) {
    return listings.map(listing => ({
      status: 'listed',
      listing,
      lake: substance.role === 'lake' && listing.certified,
    }));
  }
  return [
    {
      status: uncoloured.has(substance.role) || substance.role === 'substrate' ? 'no-colour' : 'no-row',
      name,
    },
  ];
}

/** The number of a dye without the suffix of its lake or salt; `77268:1` is a number of its own. */
const base = (number: string): string => (number === '77268:1' ? number : (number.split(':')[0] ?? ''));

const listedInEu = new WeakMap<Substance, readonly EuListing[]>();

/** The entries of Annex IV for a substance, looked up once. */
function euListingsOf(substance: Substance): readonly EuListing[] {
  const known = listedInEu.get(substance) ?? foundInEu(substance);
  listedInEu.set(substance, known);
  return known;
}

function foundInEu(substance: Substance): readonly EuListing[] {
  const numbers = new Set(substance.ci.map(base));
  const names = new Set(substance.names.map(known => known.toLowerCase()));
  return euListings.filter(
    listing =>
      listing.ci.some(number => numbers.has(base(number))) ||
      (listing.ci.length === 0 && listing.names.some(known => names.has(known.toLowerCase()))),
  );
}

function euUses(substance: Substance, name: string): readonly EuUse[] {
  const listings = euListingsOf(substance);
  if (listings.length > 0) return listings.map(listing => ({ status: 'listed', listing }));
  const colourless = uncoloured.has(substance.role) || substance.role === 'substrate';
  return [{ status: colourless ? 'no-colour' : 'no-row', name }];
}

/**
 * Where 21 CFR (parts 73, 74; lakes under 82) and Annex IV of Regulation (EC) No 1223/2009 let a component be used.
 * Every listing is dated and carries its section or entry; rules change and local codes decide. A listing says
 * nothing of lye: aluminium and copper are listed colours and must never meet it.
 */
export function permittedUses({ id, as }: Pick<Component, 'id' | 'as'>): PermittedUses {
  const substance = substanceById(id);
  if (substance === undefined) return { us: [], eu: [] };
  const name = nameIn({ id, as });
  return { us: usUses(substance, name), eu: euUses(substance, name) };
}
