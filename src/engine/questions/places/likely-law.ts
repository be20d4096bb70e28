import { permittedUses } from '../../stability/permitted.ts';
import { permittedSummary, type Standing } from '../../stability/permitted-summary.ts';
import type { Component } from '../../stability/report.ts';
import type { OtherCountry } from './countries.ts';

/**
 * What a country goes by whose own list is not held. `annex`: a list of permitted colours that is, or was made after, Annex IV of the EU.
 * `either`: what the US or the EU lists counts. `barred-only`: no list of permitted colours, only what is barred or limited.
 */
export type LawBasis = 'annex' | 'either' | 'barred-only';

/**
 * All from memory; each law itself decides. `annex`: the UK’s Cosmetics Regulation as kept by SI 2019/696, schedule 34; Mercosur’s GMC/RES 16/12
 * (in Brazil RDC 44/2012); the ASEAN Cosmetic Directive, annex IV; the Swiss ordinance on cosmetics; New Zealand’s group standard,
 * schedule 6; Mexico’s agreement on permitted and barred substances. `either`: Andean Decision 833. `barred-only`: Canada’s
 * Hotlist; Australia’s inventory and poisons standard.
 */
const BASES: Partial<Readonly<Record<OtherCountry, LawBasis>>> = {
  GB: 'annex',
  CH: 'annex',
  NZ: 'annex',
  AR: 'annex',
  BR: 'annex',
  PY: 'annex',
  UY: 'annex',
  SG: 'annex',
  MY: 'annex',
  PH: 'annex',
  MX: 'annex',
  CO: 'either',
  PE: 'either',
  EC: 'either',
  BO: 'either',
  CA: 'barred-only',
  AU: 'barred-only',
};

/** What a country’s law most likely says of a powder, by the lists that are held. */
export type LikelyLaw = {
  readonly basis: LawBasis | 'unknown';
  /** `unsure`: no list that is held has a row for one of its colours, or nobody told what the country goes by. */
  readonly verdict: 'yes' | 'limits' | 'no' | 'unsure' | 'no-colour';
  /** Whose lists say so. */
  readonly by: 'eu' | 'us' | 'both';
  /** Names of the ingredients that decide it where it is no plain yes. */
  readonly because: readonly string[];
  /** Colour Index numbers to look up there. */
  readonly ci: readonly string[];
};

const VERDICT: Readonly<Record<Standing, LikelyLaw['verdict']>> = {
  listed: 'yes',
  limited: 'limits',
  check: 'unsure',
  'other-use': 'no',
  'not-listed': 'no',
  'no-colour': 'no-colour',
};
const KINDEST_FIRST = ['yes', 'limits', 'no-colour', 'unsure', 'no'] as const;

/**
 * What the law of a country whose list is not held most likely says of a powder. Where nobody told what it goes by, only what both the US and
 * the EU list is taken for a likely yes. Pure.
 */
export function likelyLaw(country: string, components: readonly Component[]): LikelyLaw {
  const { us, eu } = permittedSummary(components);
  const basis = BASES[country as OtherCountry] ?? 'unknown';
  const ci = [
    ...new Set(
      components.flatMap(({ id, as }) =>
        permittedUses({ id, as }).eu.flatMap(use =>
          use.status === 'listed' ? use.listing.ci.slice(0, 1) : [],
        ),
      ),
    ),
  ];
  const ofEu = { verdict: VERDICT[eu.standing], because: eu.because, by: 'eu' as const };
  if (basis === 'annex') return { basis, ci, ...ofEu };
  const ofUs = { verdict: VERDICT[us.standing], because: us.because, by: 'us' as const };
  const order = basis === 'unknown' ? KINDEST_FIRST.toReversed() : KINDEST_FIRST;
  const one = order.find(verdict => verdict === ofEu.verdict || verdict === ofUs.verdict);
  const deciding = one === ofEu.verdict ? ofEu : ofUs;
  const isOfBoth = ofEu.verdict === ofUs.verdict;
  return {
    basis,
    ci,
    ...deciding,
    by: isOfBoth ? 'both' : deciding.by,
    // That the one list leaves it out says nothing of a country that goes by neither.
    verdict: deciding.verdict === 'no' && (basis !== 'either' || !isOfBoth) ? 'unsure' : deciding.verdict,
  };
}
