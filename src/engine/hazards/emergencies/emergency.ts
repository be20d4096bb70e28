/**
 * The emergencies that words can tell of, in the order in which they are shown: what can kill or blind within minutes
 * first. The ids are part of the interface of `ask --json`.
 */
export const EMERGENCY_IDS = [
  'lye-swallowed',
  'lye-eye',
  'fumes-inhaled',
  'hydrogen-sulfide',
  'hydrogen-from-metal',
  'lye-eruption',
  'lye-skin',
  'animal-exposed',
  'skin-reaction',
] as const;

export type EmergencyId = (typeof EMERGENCY_IDS)[number];

/** An emergency read from words, and the words it was read from. */
export type Emergency = { readonly id: EmergencyId; readonly from: string };
