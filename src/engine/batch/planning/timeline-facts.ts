import type { AdditiveId } from '../additives/additive.ts';
import type { Jug } from '../liquids/jug.ts';
import type { LyePart } from '../lye/lye.ts';

/** What the timeline needs to know of the batch besides its portions. */
export type TimelineFacts = {
  readonly lye: readonly LyePart[];
  readonly jug: Jug;
  readonly oilGrams: number;
  /** How far the lye water warms by itself, K. */
  readonly lyeRise: number;
  readonly additives: readonly { readonly id: AdditiveId; readonly grams: number }[];
  readonly ovenC: number;
  readonly peakHours: number;
  readonly peakCoreC: number;
  /** True when white pigment is in a loaf that runs hot. */
  readonly keepCool: boolean;
  /** Potassium hydroxide's share of the saponification, 0 to 1. */
  readonly kohShare: number;
  readonly saltPercent: number;
};
