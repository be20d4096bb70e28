import type { GelOdds, RiskLevel } from '../heat/setting.ts';
import type { Band } from '../origin.ts';

/** One thing to do; `step` is an id that `src/words` speaks with `values`. */
export type TimelineStep = {
  readonly minutesBeforePour: number;
  readonly step: string;
  readonly values: Readonly<Record<string, string | number>>;
};
export type PlanWarning = { readonly id: string; readonly values: Readonly<Record<string, string | number>> };

/** What one of the alkalis weighs: exactly, and as weighed on the member's scale. */
export type LyePart = {
  readonly alkali: 'NaOH' | 'KOH';
  readonly grams: number;
  readonly exactGrams: number;
  readonly purity: number;
};

/** The plan as the reply's `data`; every mass in grams, every volume in millilitres, percents 0..100. */
export type PlanAnswer<Dose = unknown> = {
  readonly oils: readonly { readonly id: string; readonly grams: number }[];
  readonly lye: {
    readonly kind: 'NaOH' | 'KOH' | 'both';
    readonly grams: number;
    readonly purity: number;
    readonly parts: readonly LyePart[];
    /** Superfat points that one step of the scale is worth in this batch. */
    readonly stepPoints: number;
  };
  readonly water: {
    readonly grams: number;
    readonly holdBackGrams: number;
    /** Percent lye in the lye water as mixed first, after the hold-back. */
    readonly lyeConcentration: number;
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
  /** Percent; `pot` is the uncoloured batter once oil has been dipped from it; `band` over the oils' ranges. */
  readonly superfat: {
    readonly asked: number;
    readonly effective: number;
    readonly pot: number;
    readonly band: Band;
  };
  readonly additives: readonly { readonly id: string; readonly grams: number }[];
  readonly fragrance: { readonly grams: number; readonly percentOfOils: number } | undefined;
  readonly portions: readonly {
    readonly name: string;
    readonly millilitres: number;
    readonly grams: number;
    readonly superfat: number;
    readonly lyeConcentration: number;
    readonly fragranceGrams: number;
    readonly doses: readonly Dose[];
  }[];
  readonly heat: {
    readonly peakCoreC: number;
    readonly peakEdgeC: number;
    readonly gel: GelOdds;
    readonly crackleRisk: RiskLevel;
  };
  readonly timeline: readonly TimelineStep[];
  readonly warnings: readonly PlanWarning[];
};
