const countries = new Intl.DisplayNames('en', { type: 'region' });
const nameOfCountry = (code: string) => countries.of(code) ?? code;

const MERCOSUR = 'Mercosur has one list of permitted colours, made much like the EU’s';
const ANDEAN =
  'The Andean countries go by the lists of the US and the EU (Decision 833): what is listed there counts.';
const ASEAN = 'The ASEAN countries share one list of permitted colours, which follows the EU’s Annex IV.';

/** What the countries go by whose lists are not held, by ISO 3166-1 code (from memory). */
const COUNTRY_LAWS: Readonly<Record<string, string>> = {
  GB: 'The UK keeps a list of its own that began as the EU’s and may have changed since.',
  CA: 'Canada keeps no list of permitted colours but one of what is barred or limited in cosmetics (the Hotlist of Health Canada), and cosmetics are notified.',
  MX: 'Mexico has lists of its own of what is barred, limited and permitted as a colour (COFEPRIS).',
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

/** Where a colour stands by the law that was asked for. */
export const lawElsewhere = {
  /** `country` is its ISO 3166-1 code. What each country goes by is from memory: their authorities' own pages say what holds today. */
  lawElsewhere: ({ country }: { country: string }) => {
    const goesBy = COUNTRY_LAWS[country];
    return goesBy === undefined
      ? `I hold the lists of the US and the EU, none of ${nameOfCountry(country)}’s: ask the authority there before you sell.`
      : `${goesBy} I hold only the lists of the US and the EU: look it up there before you sell.`;
  },
  lawOfIt: (v: { name: string; law: string }) => `${v.name}. ${v.law}`,
};
