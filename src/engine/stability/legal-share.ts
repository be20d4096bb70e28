import type { Colourant, LegalCap } from '../colourants/colourant.ts';
import { TYPICAL_BATTER } from '../dispersion/batter.ts';
import { US_CUP_ML, US_TEASPOON_ML } from '../quantities/units.ts';
import type { UsListing } from './listings.ts';
import { permittedUses } from './permitted.ts';
import type { Component } from './report.ts';

/** What a colour is listed for, where that is not soap. */
export type OtherUse = 'teeth' | 'hair' | 'nails' | 'novelty-make-up' | 'make-up' | 'eyes';

/** 21 CFR: what each section lists its colour for, where soap is not among it. */
const OTHER_USES: Readonly<Record<string, OtherUse>> = {
  '73.2125': 'teeth',
  '73.2190': 'hair',
  '73.2500': 'nails',
  '73.2995': 'novelty-make-up',
  '74.2052': 'make-up',
  '74.2053': 'eyes',
};

/** True where a US listing covers soap on the whole body. */
const coversSoap = ({ external }: Pick<UsListing, 'external'>): boolean => external === 'yes';

/** What the US lists a colour for when soap is not among it; undefined where soap is, or where nothing lists it. */
export function otherUseOf({ id, as }: Pick<Component, 'id' | 'as'>): OtherUse | undefined {
  const listed = permittedUses({ id, as }).us.flatMap(use => (use.status === 'listed' ? [use.listing] : []));
  if (listed.length === 0 || listed.some(coversSoap)) return undefined;
  return OTHER_USES[listed[0]!.section] ?? 'make-up';
}

/** A share as the lists print it: "<=0.01% of finished product", "3%", "5 ppm". A limit for lips alone is none for soap. */
function printedShare(text: string): number | undefined {
  if (/\blip/i.test(text)) return undefined;
  const found = /([\d.]+)\s*(%|ppm)/.exec(text);
  if (!found) return undefined;
  return Number(found[1]) * (found[2] === 'ppm' ? 1e-6 : 1e-2);
}

/** The terms of a US listing that limit the share of the finished product. */
const US_LIMIT = /(?:<=|at most)\s*[\d.]+\s*%\s*of (?:the )?(?:finished|final) product/i;

/** True where a US listing's terms limit the share of the finished product. */
export const limitsShare = (terms: string): boolean => US_LIMIT.test(terms);

/**
 * The tightest share of the finished product that the US or the EU allows of any colour in a powder, as a share of that
 * powder: what the list says in percent of it dilutes the limit. Undefined where no law limits it.
 * Sources: 21 CFR 74 (D&C Green No. 8: 0.01 %), Annex IV of Regulation (EC) No 1223/2009, column g.
 */
export function legalShareOf(components: readonly Component[]): LegalCap | undefined {
  const all = components.flatMap((component): LegalCap[] => {
    const { us, eu } = permittedUses(component);
    const part = (component.percent ?? 100) / 100;
    const limit = (law: 'us' | 'eu', text: string | undefined): LegalCap[] => {
      const share = text === undefined ? undefined : printedShare(text);
      return share === undefined || part === 0 ? [] : [{ share: share / part, law, name: component.as }];
    };
    return [
      ...us.flatMap(use =>
        use.status === 'listed' ? limit('us', US_LIMIT.exec(use.listing.terms)?.[0]) : [],
      ),
      ...eu.flatMap(use =>
        use.status === 'listed' && use.listing.most !== '' ? limit('eu', use.listing.most) : [],
      ),
    ];
  });
  return all.toSorted((a, b) => a.share - b.share)[0];
}

/** A bar keeps at least this share of its batter's mass through the cure: it loses 10 to 15 % (common practice). */
const KEPT_THROUGH_CURE = 0.85;

type Dosed = Pick<Colourant, 'dose' | 'bulkDensity'>;

/** US teaspoons a US cup of batter that hold a share, by the heaviest the powder may weigh, g per ml. */
function legalTspPerCup({ share }: LegalCap, gramsPerMillilitre: number): number {
  const finished = US_CUP_ML * TYPICAL_BATTER.gramsPerMillilitre * KEPT_THROUGH_CURE;
  return (share * finished) / (gramsPerMillilitre * US_TEASPOON_ML);
}

/**
 * A colourant whose dose is held under the law: full colour and ceiling are what the law allows where that is less. Every
 * dose, plan, match, preview and label goes by the colourant it gets here.
 * `gramsPerMillilitre` is the owner's own weighing of a level spoon, where it is heavier than the kind's usual.
 */
export function underLaw<C extends Dosed>(
  colourant: C,
  components: readonly Component[],
  gramsPerMillilitre = 0,
): C & { readonly legal?: LegalCap } {
  const legal = legalShareOf(components);
  if (!legal) return colourant;
  const most = legalTspPerCup(legal, Math.max(gramsPerMillilitre, colourant.bulkDensity.high));
  const { fullTspPerCup, ceilingTspPerCup } = colourant.dose;
  if (most >= ceilingTspPerCup) return colourant;
  const dose = { ...colourant.dose, fullTspPerCup: Math.min(fullTspPerCup, most), ceilingTspPerCup: most };
  return { ...colourant, dose, legal };
}
