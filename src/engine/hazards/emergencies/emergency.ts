/**
 * The emergencies that words can tell of, in the order in which they are shown: what can kill or blind within minutes
 * first. The ids are part of the interface of `ask --json`.
 */
export const EMERGENCY_IDS = [
  'lye-swallowed',
  'lye-eye',
  'fire',
  'toxic-gas',
  'fumes-inhaled',
  'hydrogen-sulfide',
  'hydrogen-from-metal',
  'lye-eruption',
  'lye-skin',
  'animal-exposed',
  'skin-reaction',
] as const;

export type EmergencyId = (typeof EMERGENCY_IDS)[number];

/** Told by patterns alone: no evidence is weighed for them. */
export type UnweighedId = 'fire' | 'toxic-gas';
export type WeighedId = Exclude<EmergencyId, UnweighedId>;
export const WEIGHED_IDS: readonly WeighedId[] = EMERGENCY_IDS.filter(
  (id): id is WeighedId => id !== 'fire' && id !== 'toxic-gas',
);

/**
 * An emergency read from words, and the words it was read from. `inDoubt`: no sentence tells of it outright, only the
 * sum of the evidence does.
 */
export type Emergency = {
  readonly id: EmergencyId;
  readonly from: string;
  readonly inDoubt: boolean;
  /** A reaction that swells throat, tongue or face or takes the breath: nothing comes before the call. */
  readonly airway?: true;
};

/** An eye that is told of has minutes: a jug that is likelier does not come before it. */
export const isEyeBeforeJug = (told: Emergency, likelier: { readonly id: EmergencyId }): boolean =>
  told.id === 'lye-eye' && !told.inDoubt && likelier.id === 'lye-eruption';
