import type { LikelyLaw } from '../../../engine/questions/places/likely-law.ts';

const countries = new Intl.DisplayNames('en', { type: 'region' });
const nameOfCountry = (code: string) => countries.of(code) ?? code;

const MERCOSUR = 'Mercosur has one list of permitted colours by CI number, made much like the EU’s';
const ANDEAN =
  'The Andean countries go by the lists of the US and the EU (Decision 833): what is listed there counts.';
const ASEAN = 'The ASEAN countries share one list of permitted colours, which follows the EU’s Annex IV.';

/** What the countries go by whose lists are not held, by ISO 3166-1 code (from memory). */
const COUNTRY_LAWS: Readonly<Record<string, string>> = {
  GB: 'The UK’s own list is the EU’s as it was carried over, and may have changed since.',
  CA: 'Canada keeps no list of permitted colours but one of what is barred or limited in cosmetics (the Hotlist of Health Canada), and cosmetics are notified.',
  MX: 'Mexico has lists of its own of what is barred, limited and permitted as a colour (COFEPRIS), much like the EU’s.',
  AR: `${MERCOSUR}; in Argentina ANMAT applies it, and maker and product are registered.`,
  BR: `${MERCOSUR}; in Brazil ANVISA applies it.`,
  UY: `${MERCOSUR}.`,
  PY: `${MERCOSUR}.`,
  CO: ANDEAN,
  PE: ANDEAN,
  EC: ANDEAN,
  BO: ANDEAN,
  SG: ASEAN,
  MY: ASEAN,
  PH: ASEAN,
  CH: 'Swiss law takes its colours from the EU’s Annex IV.',
  NZ: 'New Zealand’s standard for cosmetics lists colours much as the EU’s Annex IV does.',
  AU: 'Australia has no list of colours for cosmetics: each ingredient stands in its national inventory or is introduced by its rules (AICIS).',
};

/** Whose lists say so. */
const LISTS = { eu: 'the EU’s Annex IV', us: 'the US lists', both: 'the US and the EU' } as const;

const names = (because: readonly string[]) => because.join(', ');

/** What is most likely, before why. */
const VERDICTS: Readonly<Record<LikelyLaw['verdict'], (v: LikelyLaw) => string>> = {
  yes: v => `${v.basis === 'unknown' ? 'Likely' : 'Very likely'} yes: allowed by ${LISTS[v.by]}.`,
  limits: v => `Likely yes, with limits (${names(v.because)}), as by ${LISTS[v.by]}.`,
  no: v => `Very likely no: not listed for soap by ${LISTS[v.by]} (${names(v.because)}).`,
  unsure: v =>
    `Not sure, so not before the authority says yes: I find no clear listing of ${names(v.because)}.`,
  'no-colour': () => 'Very likely yes: nothing in it counts as a colour.',
};

/** What decides, and under which number. */
const decides = (ci: readonly string[]) =>
  ci.length === 0
    ? 'The law there decides: look before you sell.'
    : `The law there decides: look up CI ${ci.slice(0, 3).join(', ')} before you sell.`;

/** Where a colour stands by the law that was asked for. */
export const lawElsewhere = {
  /** `country` is its ISO 3166-1 code. What each country goes by is from memory: their authorities' own pages say what holds today. */
  lawElsewhere: ({ country }: { country: string }) => {
    const goesBy = COUNTRY_LAWS[country];
    return goesBy === undefined
      ? `I hold the lists of the US and the EU, none of ${nameOfCountry(country)}’s: ask the authority there before you sell.`
      : `${goesBy} I hold only the lists of the US and the EU: look it up there before you sell.`;
  },
  /** What that country’s law most likely says of a colour, first of all whether it may be used. */
  likelyLaw: (v: { country: string; law: LikelyLaw }) =>
    [
      VERDICTS[v.law.verdict](v.law),
      COUNTRY_LAWS[v.country] ?? `I don’t hold ${nameOfCountry(v.country)}’s own list.`,
      decides(v.law.ci),
    ].join(' '),
  lawOfIt: (v: { name: string; law: string }) => `${v.name}. ${v.law}`,
};
