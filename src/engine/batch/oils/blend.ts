import type { Oil } from './oil.ts';

/** Oils as parts that sum to 1, and what they weigh in all when the member gave masses. */
export type OilBlend = {
  readonly shares: readonly { readonly oil: Oil; readonly share: number }[];
  readonly totalGrams: number | undefined;
};
