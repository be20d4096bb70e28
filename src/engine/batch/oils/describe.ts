import type { Band, Origin } from '../../origin.ts';
import { acidValueFromProfile, COMPOSITION_ORIGIN, saponificationFromProfile } from './fatty-acids.ts';
import type { Oil, OilClass, Profile, Yellowness } from './oil.ts';

/** Density of water at 20 C, g/ml (IAPWS): Codex prints oil densities relative to it. */
const WATER_AT_20_C = 0.99821;

export const CODEX_210: Origin = {
  trust: 'from memory',
  source: 'Codex Alimentarius CXS 210-1999 (named vegetable oils), Tables 1 and 2',
};
export const CODEX_211: Origin = {
  trust: 'from memory',
  source: 'Codex Alimentarius CXS 211-1999 (named animal fats)',
};
export const HANDBOOK: Origin = {
  trust: 'from memory',
  source: 'fat and oil handbooks, ranges differ between them',
};

/** One oil as the tables write it: ranges from the standard, the rest typical. */
type Row = {
  readonly id: string;
  readonly en: string;
  readonly es: string;
  readonly inci: string;
  readonly oilClass: OilClass;
  /** Synonyms between bars. */
  readonly words: string;
  /** Range, mg KOH per g. */
  readonly saponification: readonly [number, number];
  /** Only where no profile can give it. */
  readonly typicalSaponification?: number;
  readonly iodine?: readonly [number, number];
  /** Range relative to water at 20 C. */
  readonly relativeDensity: readonly [number, number];
  readonly densityAt: number;
  /** Typical, g per kg. */
  readonly unsaponifiablePerKg?: number;
  readonly profile?: Profile;
  readonly yellowness: Yellowness;
  readonly standard: Origin;
};

/** Typical is the middle: right for a density or an iodine value, never for a saponification value. */
function midBand([low, high]: readonly [number, number], factor = 1): Band {
  return { low: low * factor, typical: ((low + high) / 2) * factor, high: high * factor };
}

/** The typical saponification value: from the fatty acids where they are known, else the printed one. */
function typicalSaponification(row: Row): number {
  if (row.typicalSaponification !== undefined) return row.typicalSaponification;
  if (row.profile === undefined) throw new Error(`${row.id} has neither a profile nor a typical value`);
  if (row.oilClass === 'fatty-acid') return acidValueFromProfile(row.profile);
  return saponificationFromProfile(row.profile, (row.unsaponifiablePerKg ?? 0) / 1000);
}

/** Makes a catalogue oil of a table row. Throws when a wax row has no typical value. */
export function describe(row: Row): Oil {
  const [low, high] = row.saponification;
  return {
    id: row.id,
    names: { en: row.en, es: row.es },
    inci: row.inci,
    oilClass: row.oilClass,
    synonyms: row.words.split('|'),
    saponification: { low, typical: typicalSaponification(row), high },
    density: { ...midBand(row.relativeDensity, WATER_AT_20_C), atCelsius: row.densityAt },
    iodine: row.iodine && midBand(row.iodine),
    profile: row.profile,
    yellowness: row.yellowness,
    origins: {
      saponification: row.standard,
      typical: row.typicalSaponification === undefined ? COMPOSITION_ORIGIN : HANDBOOK,
      density: row.standard,
      profile: HANDBOOK,
      yellowness: { trust: 'common practice', source: 'cast of an uncoloured bar of the refined oil' },
    },
  };
}
