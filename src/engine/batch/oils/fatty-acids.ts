import type { Origin } from '../../origin.ts';
import type { FattyAcid, Profile } from './oil.ts';

/** g/mol. CIAAW abridged atomic weights: Na 22.98976928, K 39.0983, O 15.999, H 1.008. */
export const NAOH_MOLAR_MASS = 39.9968;
export const KOH_MOLAR_MASS = 56.1053;
export const WATER_MOLAR_MASS = 18.015;
export const GLYCEROL_MOLAR_MASS = 92.094;

/** What three fatty acids gain when glycerol binds them: glycerol less three waters, g/mol. */
const GLYCERYL_MASS = GLYCEROL_MOLAR_MASS - 3 * WATER_MOLAR_MASS;

/** Molar mass of each fatty acid, g/mol; from CIAAW atomic weights (C 12.011). */
export const FATTY_ACID_MOLAR_MASS: Readonly<Record<FattyAcid, number>> = {
  'C4:0': 88.106,
  'C6:0': 116.16,
  'C8:0': 144.214,
  'C10:0': 172.268,
  'C12:0': 200.322,
  'C14:0': 228.376,
  'C16:0': 256.43,
  'C16:1': 254.414,
  'C18:0': 284.484,
  'C18:1': 282.468,
  'C18:1-OH': 298.467,
  'C18:2': 280.452,
  'C18:3': 278.436,
  'C20:0': 312.538,
  'C20:1': 310.522,
  'C22:0': 340.592,
  'C22:1': 338.576,
  'C24:0': 368.646,
};

export const COMPOSITION_ORIGIN: Origin = {
  trust: 'computed',
  source:
    'stoichiometry of a triglyceride from its typical fatty acids (the calculation of AOCS Cd 3a-94), less typical unsaponifiable matter',
};

/** Mean molar mass of a mixture of fatty acids given in percent by mass, g/mol. */
export function meanMolarMass(profile: Profile): number {
  const entries = Object.entries(profile) as [FattyAcid, number][];
  const grams = entries.reduce((sum, [, percent]) => sum + percent, 0);
  const moles = entries.reduce((sum, [acid, percent]) => sum + percent / FATTY_ACID_MOLAR_MASS[acid], 0);
  return grams / moles;
}

/**
 * Saponification value of a fat made of these fatty acids, mg KOH per g.
 * `unsaponifiable` is the mass fraction that takes no lye, 0 to 1.
 */
export function saponificationFromProfile(profile: Profile, unsaponifiable = 0): number {
  const triglyceride = 3 * meanMolarMass(profile) + GLYCERYL_MASS;
  return ((3 * KOH_MOLAR_MASS * 1000) / triglyceride) * (1 - unsaponifiable);
}

/** Saponification (here: acid) value of free fatty acids, mg KOH per g. */
export function acidValueFromProfile(profile: Profile): number {
  return (KOH_MOLAR_MASS * 1000) / meanMolarMass(profile);
}
