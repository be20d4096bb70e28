import type { Carrier } from '../colourants/colourant.ts';

/** What a pinch in a dish of water showed: swirls in, floats and wants oil, or neither. */
export type DishTest = 'water' | 'oil' | 'neither';

/** Why this carrier; `src/words` speaks each. */
export type CarrierReason =
  | 'asked'
  | 'dish-test-water'
  | 'dish-test-oil'
  | 'dish-test-neither'
  | 'usual-for-kind'
  | 'untested-lot'
  | 'never-in-water'
  | 'already-wetted';

/** How to wet a colourant in the cup, then blend it into the batter: two steps, two tools. */
export type CarrierAdvice = {
  readonly choice: Carrier;
  readonly millilitres: number;
  readonly wet: 'stir' | 'soak' | 'froth';
  readonly blend: 'whisk' | 'stick-blend';
  readonly why: CarrierReason;
};
