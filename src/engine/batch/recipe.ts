import type { Band } from '../origin.ts';
import { refuse } from '../refusal.ts';
import { type AdditiveMass, type AdditiveTotals, additiveTotals, weighAdditives } from './additives.ts';
import { checkSuperfat, hydroxideDemand, hydroxideIn, weighLye } from './lye/lye.ts';
import { type WaterWays, waterGrams, waterWays } from './lye/water.ts';
import type { OilMass } from './oils/oil.ts';
import type { LyePart } from './planning/plan-answer.ts';
import type { PlanRequest } from './request.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'lye-too-strong': { percent: number; most: number };
    'lye-too-weak': { percent: number; least: number };
    'milk-more-than-water': { additiveGrams: number; waterGrams: number };
  }
}

/** Percent. Above, lye no longer dissolves safely; below, a bar never sets (common practice). */
const STRONGEST_LYE = 50;
const WEAKEST_LYE = 10;

/** What goes into the pot before anything is dipped, held back or coloured. Grams and moles. */
export type Recipe = {
  readonly oils: readonly OilMass[];
  readonly oilGrams: number;
  readonly additives: readonly AdditiveMass[];
  readonly totals: AdditiveTotals;
  /** Hydroxide that oils and milk fat could take, moles. */
  readonly demand: Band;
  readonly lye: readonly LyePart[];
  readonly lyeGrams: number;
  /** Hydroxide left for the oils once acids have had theirs, moles. */
  readonly hydroxide: number;
  /** Plain water; what milk or honey brings is already taken off. */
  readonly waterGrams: number;
  /** All water over the alkali as weighed. */
  readonly ways: WaterWays;
};

/**
 * The recipe for that much oil. The lye is worked out on the oils (milk fat raises the superfat, citric acid gets lye
 * of its own) and rounded down to the scale; water follows the exact lye. Throws a Refusal: `superfat-negative`,
 * `superfat-absurd`, `lye-too-strong`, `lye-too-weak`, `milk-more-than-water`, or one of the lye's own.
 */
export function makeRecipe(request: PlanRequest, oilGrams: number): Recipe {
  checkSuperfat(request.superfatPercent);
  const oils = request.oils.shares.map(({ oil, share }) => ({ oil, grams: share * oilGrams }));
  const additives = weighAdditives(request.additives, oilGrams);
  const totals = additiveTotals(additives);
  const ofOils = hydroxideDemand(oils).typical;
  const wanted = ofOils * (1 - request.superfatPercent / 100) + totals.acidMoles;
  const lye = weighLye(request.lye, wanted, request.scaleStepGrams);
  const exactLye = lye.reduce((sum, part) => sum + part.exactGrams, 0);
  const allWater = waterGrams(request.water, exactLye, oilGrams);
  checkStrength((100 * exactLye) / (exactLye + allWater));
  if (totals.waterGrams > allWater) {
    refuse('milk-more-than-water', { additiveGrams: totals.waterGrams, waterGrams: allWater });
  }
  return {
    oils,
    oilGrams,
    additives,
    totals,
    demand: hydroxideDemand([...oils, ...totals.fats]),
    lye,
    lyeGrams: lye.reduce((sum, part) => sum + part.grams, 0),
    hydroxide: hydroxideIn(lye) - totals.acidMoles,
    waterGrams: allWater - totals.waterGrams,
    ways: waterWays(allWater, exactLye, oilGrams),
  };
}

function checkStrength(percent: number): void {
  if (!(percent <= STRONGEST_LYE + 1e-9)) refuse('lye-too-strong', { percent, most: STRONGEST_LYE });
  if (percent < WEAKEST_LYE) refuse('lye-too-weak', { percent, least: WEAKEST_LYE });
}
