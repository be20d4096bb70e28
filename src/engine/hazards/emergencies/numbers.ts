import type { Origin } from '../../origin.ts';

/** Whom to call in a country. */
export type HelpNumbers = {
  /** The number for an ambulance or the fire service. */
  readonly emergency: string;
  /** A poison centre that answers the public. */
  readonly poison?: string;
  readonly source: Origin;
};

const seen = (source: string): Origin => ({ trust: 'published', source });
const remembered = (source: string): Origin => ({ trust: 'from memory', source });

/** By ISO 3166-1 country code. A country that is not here gets no number rather than a wrong one. */
const NUMBERS: Readonly<Record<string, HelpNumbers>> = {
  US: {
    emergency: '911',
    poison: '1-800-222-1222',
    source: seen('poison.org: 911 for collapse or trouble breathing, else 1-800-222-1222'),
  },
  ES: {
    emergency: '112',
    poison: '91 562 04 20',
    source: seen('Instituto Nacional de Toxicología 91 562 04 20; emergencies 112'),
  },
  AU: { emergency: '000', poison: '13 11 26', source: seen('poisonsinfo.health.qld.gov.au: 13 11 26') },
  NZ: {
    emergency: '111',
    poison: '0800 764 766',
    source: seen('poisons.co.nz: 111 where unconscious or short of breath, else 0800 764 766'),
  },
  GB: { emergency: '999', poison: '111', source: remembered('999; NHS 111 for advice') },
  IE: {
    emergency: '112',
    poison: '01 809 2166',
    source: remembered('112; National Poisons Information Centre'),
  },
  CA: { emergency: '911', poison: '1-844-764-7669', source: remembered('911; toll-free poison line') },
  MX: { emergency: '911', source: remembered('911 since 2017') },
  AR: { emergency: '107', source: remembered('107, medical emergencies') },
  CL: { emergency: '131', source: remembered('131, ambulance') },
  CO: { emergency: '123', source: remembered('123') },
  UY: { emergency: '911', source: remembered('911') },
};

/** A country whose numbers we know. */
export type HelpPlace = { readonly country: string } & HelpNumbers;

/**
 * Whom to call where a locale tag such as `en-US` is at home; undefined for a tag without a country, for a region
 * (`es-419`) and for a country we know nothing of.
 */
export function helpFor(locale: string | undefined): HelpPlace | undefined {
  const country = /^[a-z]{2,3}[-_](?:[a-z]{4}[-_])?([a-z]{2})$/i
    .exec(locale?.trim() ?? '')?.[1]
    ?.toUpperCase();
  const numbers = country !== undefined && Object.hasOwn(NUMBERS, country) ? NUMBERS[country] : undefined;
  return country !== undefined && numbers ? { country, ...numbers } : undefined;
}
