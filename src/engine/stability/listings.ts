import type { Origin } from '../origin.ts';
import eu from './listings/eu.json' with { type: 'json' };
import us from './listings/us.json' with { type: 'json' };

/** Where a US listing lets a colour be used; `limited-products` and `listed-products-only` are spelt out in `terms`. */
export type UsArea =
  | 'yes'
  | 'no'
  | 'limited-products'
  | 'listed-products-only'
  | 'up-to-3-percent'
  | 'up-to-5-percent'
  | 'dye-and-aluminium-lake';

/** One section of 21 CFR part 73 or 74 that lists a colour for cosmetics. */
export type UsListing = {
  /** `73.2250`. */
  readonly section: string;
  readonly name: string;
  readonly ci: readonly string[];
  readonly external: UsArea;
  readonly lips: UsArea;
  readonly eye: UsArea;
  /** Further terms as the listing puts them, shortened; empty when none. */
  readonly terms: string;
  /** True where the FDA certifies each batch. */
  readonly certified: boolean;
  /** Date of the text that was read, as far as known (`2026-04-05`, `2019`); empty when undated. */
  readonly asOf: string;
  readonly origin: Origin;
};

/** What Annex IV of Regulation (EC) No 1223/2009 restricts a colour to. */
export type EuRestriction = 'none' | 'rinse-off-only' | 'not-on-mucous-membranes' | 'not-in-eye-products';

/** One entry of Annex IV. */
export type EuListing = {
  readonly entry: string;
  readonly ci: readonly string[];
  readonly names: readonly string[];
  /** E numbers, without the E. */
  readonly e: readonly string[];
  readonly chemical: string;
  readonly colour: string;
  readonly restriction: EuRestriction;
  /** Maximum concentration in the product as printed; empty when none. */
  readonly most: string;
  readonly conditions: string;
  readonly asOf: string;
  readonly origin: Origin;
};

/** The US listings we hold, by section. */
export const usListings: readonly UsListing[] = us.rows.map(({ seen, source, ...row }) => ({
  ...row,
  external: row.external as UsArea,
  lips: row.lips as UsArea,
  eye: row.eye as UsArea,
  origin: { trust: seen ? 'published' : 'from memory', source },
}));

/** All of Annex IV as exported in May 2024. */
export const euListings: readonly EuListing[] = eu.rows.map(row => ({
  ...row,
  restriction: row.restriction as EuRestriction,
  asOf: eu.asOf,
  origin: { trust: 'published', source: `${eu.source}, entry ${row.entry}` },
}));
