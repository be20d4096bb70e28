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

export type GelOdds = { readonly none: number; readonly partial: number; readonly full: number };
export type RiskLevel = 'none' | 'low' | 'some' | 'high';
