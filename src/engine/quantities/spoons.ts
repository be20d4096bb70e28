/** The spoons a maker owns, largest first. */
export type Spoon = '1 Tbsp' | '1 tsp' | '1/2 tsp' | '1/4 tsp' | '1/8 tsp' | '1/16 tsp' | '1/32 tsp';

export type SpoonCount = { readonly spoon: Spoon; readonly count: number };

/** A paste made on purpose, because the dose itself is too small to spoon: wet `powder`, use one part in `parts`. */
export type DilutionPaste = {
  readonly powder: SpoonCount;
  /** Teaspoons of carrier to wet the powder in. */
  readonly carrierTeaspoons: number;
  /** Use one of this many equal parts (by weight, or by spoon). */
  readonly parts: number;
};

/** A dose as real spoons. */
export type PracticalSpoons = {
  /** Empty when the dose is below the smallest spoon. */
  readonly spoons: readonly SpoonCount[];
  /** What those spoons (or that part of the paste) hold, teaspoons. */
  readonly teaspoons: number;
  /** `(teaspoons - asked) / asked`. */
  readonly off: number;
  /** The same in neutral writing: `1 Tbsp + 1/4 tsp`, or `1/8 of 1/8 tsp`. */
  readonly text: string;
  /** Present when spoons alone cannot come within a tenth of the dose. */
  readonly paste?: DilutionPaste;
};
