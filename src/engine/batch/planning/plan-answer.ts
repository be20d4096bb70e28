import type { Caution } from '../../dosing/cautions.ts';
import type { Dose } from '../../dosing/request.ts';
import type { Band } from '../../origin.ts';
import type { BatchHeat } from '../batch-heat.ts';
import type { LYE_CAUTIONS } from '../lye/lye-cautions.ts';
import type { TimelineStep } from './prep-step.ts';
import type { PlanWarning } from './warnings.ts';

/** What one of the alkalis weighs: exactly, and as weighed on the member's scale. */
export type LyePart = {
  readonly alkali: 'NaOH' | 'KOH';
  readonly grams: number;
  readonly exactGrams: number;
  readonly purity: number;
};

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
  readonly water: {
    readonly grams: number;
    readonly holdBackGrams: number;
    /** Percent of weighed alkali over the whole batch, once the colours' water is in. */
    readonly lyeConcentration: number;
    /** The same in the jug, where water for the colours is still held back. */
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
  /** Percent; `pot` is the uncoloured batter once oil has been dipped from it. */
  readonly superfat: {
    readonly asked: number;
    readonly effective: number;
    readonly pot: number;
    /** Where it may lie if every oil sits at the low, or the high, end of its saponification range. */
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
    readonly cautions: readonly Caution[];
  }[];
  readonly heat: BatchHeat;
  readonly timeline: readonly TimelineStep[];
  readonly warnings: readonly PlanWarning[];
  readonly cautions: typeof LYE_CAUTIONS;
};
