/** The raw batter as far as colour needs it. Shares are mass fractions, 0 to 1. */
export type Batter = {
  readonly gramsPerMillilitre: number;
  /** Oils in the batter; the rest is lye solution. */
  readonly oilsShare: number;
  /** NaOH in the lye solution. */
  readonly lyeConcentration: number;
  /** Oils left unsaponified, of all oils. */
  readonly superfat: number;
};
