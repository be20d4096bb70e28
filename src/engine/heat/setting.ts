/** How the poured loaf spends its first day. */
export type HeatProcess = 'ambient' | 'insulated' | 'oven' | 'fridge';
export type MouldMaterial = 'silicone' | 'wood' | 'plastic' | 'cardboard';

/** The surroundings of the loaf, temperatures in degrees Celsius. */
export type HeatSetting = {
  readonly process: HeatProcess;
  readonly material: MouldMaterial;
  readonly roomC: number;
  /** Of the batter when it is poured. */
  readonly startC: number;
  /** Where the oven stood before it was switched off; only for `oven`. */
  readonly ovenC?: number;
};

/** What is taken when nothing is said: a wooden mould on the bench, a mild room, batter at about 100 F (common practice). */
export const USUAL_HEAT: HeatSetting = { process: 'ambient', material: 'wood', roomC: 21, startC: 38 };

export type GelOdds = { readonly none: number; readonly partial: number; readonly full: number };
export type RiskLevel = 'none' | 'low' | 'some' | 'high';
