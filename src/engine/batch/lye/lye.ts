import type { Band } from '../../origin.ts';
import { refuse } from '../../refusal.ts';
import { KOH_MOLAR_MASS, NAOH_MOLAR_MASS } from '../oils/fatty-acids.ts';
import type { Oil, OilMass } from '../oils/oil.ts';
import type { LyeChoice } from '../request.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'superfat-negative': { percent: number };
    'superfat-absurd': { percent: number; most: number };
    'purity-out-of-range': { percent: number; alkali: 'NaOH' | 'KOH'; least: number };
    'koh-share-out-of-range': { percent: number };
    /** One step of the scale moves superfat by `points`; `leastOilGrams` of oils would be enough for that scale. */
    'scale-too-coarse': { stepGrams: number; points: number; leastOilGrams: number };
  }
}

/** What one of the alkalis weighs: exactly, and as weighed on the member's scale. */
export type LyePart = {
  readonly alkali: 'NaOH' | 'KOH';
  readonly grams: number;
  readonly exactGrams: number;
  readonly purity: number;
};

/** Superfat of a plan, percent; `pot` is the uncoloured batter once oil has been dipped from it. */
export type PlanSuperfat = {
  readonly asked: number;
  readonly effective: number;
  readonly pot: number;
  /** Where it may lie if every oil sits at the low, or the high, end of its saponification range. */
  readonly band: Band;
};

/** Superfat points that one step of the scale may be worth. */
const COARSEST_STEP_POINTS = 1;
const HIGHEST_SUPERFAT = 60;

/**
 * What fresh alkali holds when the jar does not say. Sodium hydroxide is taken as pure, which errs towards less lye;
 * potassium hydroxide is sold with about a tenth of water (common practice).
 */
export const DEFAULT_PURITY: Readonly<Record<'NaOH' | 'KOH', number>> = { NaOH: 1, KOH: 0.9 };
/** Potassium hydroxide's share of a mixed lye when the member names none: a bar stays a bar (common practice). */
export const DEFAULT_KOH_SHARE = 0.05;

const MOLAR_MASS = { NaOH: NAOH_MOLAR_MASS, KOH: KOH_MOLAR_MASS } as const;

/** Moles of hydroxide that these oils take up whole: over their saponification ranges, all low to all high. */
export function hydroxideDemand(oils: readonly OilMass[]): Band {
  const total = (value: (oil: Oil) => number) =>
    oils.reduce((sum, { oil, grams }) => sum + (grams * value(oil)) / (1000 * KOH_MOLAR_MASS), 0);
  return {
    low: total(oil => oil.saponification.low),
    typical: total(oil => oil.saponification.typical),
    high: total(oil => oil.saponification.high),
  };
}

/** Moles of hydroxide in weighed alkali. */
export function hydroxideIn(parts: readonly LyePart[]): number {
  return parts.reduce((sum, part) => sum + (part.grams * part.purity) / MOLAR_MASS[part.alkali], 0);
}

/** Superfat in percent: the share of what the oils could take that the lye leaves over. All in moles. */
export function superfatPercent(hydroxide: number, demand: number): number {
  return 100 * (1 - hydroxide / demand);
}

/** How the work is divided between the alkalis, shares of the moles. */
function divided(choice: LyeChoice): readonly (readonly [alkali: 'NaOH' | 'KOH', share: number])[] {
  if (choice.kind === 'NaOH') return [['NaOH', 1]];
  if (choice.kind === 'KOH') return [['KOH', 1]];
  const potassium = choice.kohShare ?? DEFAULT_KOH_SHARE;
  if (!(potassium > 0 && potassium < 1)) refuse('koh-share-out-of-range', { percent: potassium * 100 });
  return [
    ['NaOH', 1 - potassium],
    ['KOH', potassium],
  ];
}

/** Less than this is no dry alkali as sold but a solution, which has a way of writing of its own (common practice). */
const LEAST_PURITY = { NaOH: 0.9, KOH: 0.8 } as const;

/** The purity the member states for an alkali, or the usual one. Throws a Refusal `purity-out-of-range`. */
function purityOf(choice: LyeChoice, alkali: 'NaOH' | 'KOH'): number {
  const stated = alkali === 'NaOH' ? choice.naohPurity : choice.kohPurity;
  // A solution is sold and titrated by the alkali in it (assay), not by the flakes it was made from.
  const assumed = choice.solutionPercent === undefined ? DEFAULT_PURITY[alkali] : 1;
  const purity = stated ?? assumed;
  const least = LEAST_PURITY[alkali];
  if (!(purity >= least && purity <= 1)) {
    refuse('purity-out-of-range', { percent: purity * 100, alkali, least: least * 100 });
  }
  return purity;
}

/** Throws a Refusal when a superfat is below zero or beyond any soap. */
export function checkSuperfat(percent: number): void {
  if (!(percent >= 0)) refuse('superfat-negative', { percent });
  if (percent > HIGHEST_SUPERFAT) refuse('superfat-absurd', { percent, most: HIGHEST_SUPERFAT });
}

/**
 * The alkali that gives `moles` of hydroxide, each kind rounded **down** to a step of the member's scale, so that
 * rounding never makes a bar harsher.
 */
export function weighLye(choice: LyeChoice, moles: number, scaleStepGrams: number): readonly LyePart[] {
  return divided(choice).map(([alkali, share]) => {
    const purity = purityOf(choice, alkali);
    const exactGrams = (moles * share * MOLAR_MASS[alkali]) / purity;
    // Dissolved lye is weighed with its water.
    const dissolved = (choice.solutionPercent ?? 100) / 100;
    const grams = roundDown(exactGrams / dissolved, scaleStepGrams) * dissolved;
    return { alkali, grams, exactGrams, purity };
  });
}

function roundDown(grams: number, step: number): number {
  const steps = Math.floor(grams / step + 1e-9);
  return Number((steps * step).toPrecision(12));
}

/**
 * Superfat points that one step of the scale is worth in this batch, over all alkalis weighed.
 * Throws a Refusal `scale-too-coarse` above one point: such a batch needs a finer scale or more oil.
 */
export function scaleStepPoints(
  parts: readonly LyePart[],
  demand: number,
  scale: { readonly stepGrams: number; readonly oilGrams: number },
): number {
  const moles = parts.reduce(
    (sum, part) => sum + (scale.stepGrams * part.purity) / MOLAR_MASS[part.alkali],
    0,
  );
  const points = (100 * moles) / demand;
  if (points > COARSEST_STEP_POINTS) {
    const leastOilGrams = Math.ceil((scale.oilGrams * points) / COARSEST_STEP_POINTS);
    refuse('scale-too-coarse', { stepGrams: scale.stepGrams, points, leastOilGrams });
  }
  return points;
}
