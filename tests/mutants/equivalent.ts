/** A changed program that does the same, so that no test can notice: not counted. */
export type Equivalent = {
  readonly file: string;
  /** What stands in the source, and what the mutant writes there. */
  readonly from: string;
  readonly to: string;
  readonly why: string;
};

export const EQUIVALENT: readonly Equivalent[] = [];
