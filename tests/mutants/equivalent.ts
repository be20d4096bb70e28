/** A changed program that does the same, so that no test can notice: not counted. */
export type Equivalent = {
  readonly file: string;
  /** What stands in the source, and what the mutant writes there. */
  readonly from: string;
  readonly to: string;
  readonly why: string;
};

const carrier = 'src/engine/dispersion/carrier.ts';
const SAME_SPOONS = 'exactly so many teaspoons are as many by the finer step as by the coarser';

export const EQUIVALENT: readonly Equivalent[] = [
  { file: carrier, from: 'dishTest === undefined', to: 'false', why: 'no carrier is called undefined' },
  { file: carrier, from: 'teaspoons < 3', to: 'teaspoons <= 3', why: SAME_SPOONS },
  { file: carrier, from: 'teaspoons < 12', to: 'teaspoons <= 12', why: SAME_SPOONS },
  { file: carrier, from: 'teaspoons < 48', to: 'teaspoons <= 48', why: SAME_SPOONS },
  {
    file: carrier,
    from: 'millilitres >= LEAST_TO_FROTH_ML - 1e-9',
    to: 'millilitres > LEAST_TO_FROTH_ML - 1e-9',
    why: 'the bound lies a billionth below any amount in quarter spoons',
  },
  {
    file: 'src/engine/stability/legal-share.ts',
    from: 'US_CUP_ML * TYPICAL_BATTER.gramsPerMillilitre',
    to: 'US_CUP_ML / TYPICAL_BATTER.gramsPerMillilitre',
    why: 'the usual batter weighs 1 g/ml',
  },
];
