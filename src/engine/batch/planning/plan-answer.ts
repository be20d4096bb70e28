import type { Caution } from '../../dosing/cautions.ts';
import type { Dose } from '../../dosing/request.ts';
import type { AdditiveId } from '../additives/additive.ts';
import type { BatchHeat } from '../batch-heat.ts';
import type { Jug } from '../liquids/jug.ts';
import type { LyePart, PlanSuperfat } from '../lye/lye.ts';
import type { LYE_CAUTIONS } from '../lye/lye-cautions.ts';
import type { PlanWarning } from './plan-warning.ts';
import type { TimelineStep } from './prep-step.ts';

/** The plan as the reply's `data`; every mass in grams, every volume in millilitres, percents 0..100. */
export type PlanAnswer = {
  readonly oils: readonly { readonly id: string; readonly grams: number }[];
  readonly lye: {
    readonly kind: 'NaOH' | 'KOH' | 'both';
    readonly grams: number;
    readonly purity: number;
    readonly parts: readonly LyePart[];
    /** How far the lye water may warm by itself while it is mixed, K. */
    readonly mixingRise: number;
    /** Superfat points that one step of the scale is worth in this batch. */
    readonly stepPoints: number;
  };
  /** What is in the lye jug, and how the lye is dissolved. */
  readonly jug: Jug;
  readonly water: {
    /** Plain water, held-back water included. */
    readonly grams: number;
    readonly holdBackGrams: number;
    /** Percent of weighed alkali over the whole batch, once the colours' water is in. */
    readonly lyeConcentration: number;
    /** The same in the jug alone: what is held back for colours or goes into the oils is not in it. */
    readonly jugConcentration: number;
    /** The same water, written in all three ways, before any hold-back. */
    readonly ways: {
      readonly lyeStrength: number;
      readonly waterPerLye: number;
      readonly percentOfOils: number;
    };
  };
  readonly batter: { readonly grams: number; readonly millilitres: number; readonly density: number };
  /** Everything that reaches the mould: batter, carriers, held-back water, fragrance. */
  readonly poured: { readonly grams: number; readonly millilitres: number };
  readonly reserve: { readonly grams: number; readonly millilitres: number };
  readonly superfat: PlanSuperfat;
  readonly additives: readonly { readonly id: AdditiveId; readonly grams: number }[];
  readonly fragrance: { readonly grams: number; readonly percentOfOils: number } | undefined;
  readonly portions: readonly {
    readonly name: string;
    readonly millilitres: number;
    readonly grams: number;
    readonly superfat: number;
    readonly lyeConcentration: number;
    readonly fragranceGrams: number;
    readonly doses: readonly Dose[];
    readonly cautions: readonly Caution[];
  }[];
  readonly heat: BatchHeat;
  readonly timeline: readonly TimelineStep[];
  readonly warnings: readonly PlanWarning[];
  readonly cautions: typeof LYE_CAUTIONS;
};
