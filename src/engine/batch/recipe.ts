import type { Band } from '../origin.ts';
import { refuse } from '../refusal.ts';
import {
  type Additive,
  type AdditiveMass,
  type AdditiveTotals,
  additiveTotals,
  checkCeilings,
  weighAdditives,
} from './additives/additives.ts';
import { checkBlend } from './blend-limits.ts';
import { type Jug, lyeJug } from './liquids/jug.ts';
import { checkSuperfat, hydroxideDemand, hydroxideIn, type LyePart, weighLye } from './lye/lye.ts';
import { type WaterWays, waterGrams, waterWays } from './lye/water.ts';
import type { OilMass } from './oils/oil.ts';
import type { PlanRequest } from './request.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'lye-too-weak': { percent: number; least: number };
  }
}

/** Percent; below, a bar never sets (common practice). */
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
  /** All the water asked for, from whatever source. */
  readonly askedWaterGrams: number;
  /** Plain water; what milk, honey or dissolved lye brings is already taken off. */
  readonly waterGrams: number;
  /** The jug before water is held back for colours. */
  readonly jug: Jug;
  /** All water over the alkali as weighed. */
  readonly ways: WaterWays;
};

/** Enough for water, liquids in its place and the lye that their acids want to agree. */
const MOST_ROUNDS = 60;

/**
 * The recipe for that much oil. The lye is worked out on the oils (milk fat raises the superfat, acids get lye of their
 * own) and rounded down to the scale; water follows the exact lye. Throws a Refusal: `superfat-negative`,
 * `superfat-absurd`, `lye-too-weak`, one of `lyeJug` or `checkBlend`, or one of the lye's own.
 */
export function makeRecipe(request: PlanRequest, oilGrams: number): Recipe {
  checkSuperfat(request.superfatPercent);
  const oils = request.oils.shares.map(({ oil, share }) => ({ oil, grams: share * oilGrams }));
  checkBlend(oils, request.heat.startC);
  const { additives, totals, lye, exactLye, allWater } = settled(request, oils, oilGrams);
  const percent = (100 * exactLye) / (exactLye + allWater);
  if (percent < WEAKEST_LYE) refuse('lye-too-weak', { percent, least: WEAKEST_LYE });
  const recipe = {
    oils,
    oilGrams,
    additives,
    totals,
    demand: hydroxideDemand([...oils, ...totals.fats]),
    lye,
    lyeGrams: lye.reduce((sum, part) => sum + part.grams, 0),
    hydroxide: hydroxideIn(lye) - totals.acidMoles,
    askedWaterGrams: allWater,
    ways: waterWays(allWater, exactLye, oilGrams),
  };
  const jug = jugOf({ ...recipe, solutionPercent: request.lye.solutionPercent }, 0);
  return { ...recipe, waterGrams: jug.waterGrams, jug };
}

/** Additives, lye and water that agree: liquids follow the water, their acids want lye, and water follows the lye. */
function settled(request: PlanRequest, oils: readonly OilMass[], oilGrams: number) {
  const asks = [...request.additives, ...request.liquids];
  const ofOils = hydroxideDemand(oils).typical * (1 - request.superfatPercent / 100);
  const round = (water: number) => {
    const additives = weighAdditives(asks, { oilGrams, waterGrams: water });
    checkCeilings(additives, oilGrams);
    const totals = additiveTotals(additives);
    const lye = weighLye(request.lye, ofOils + totals.acidMoles, request.scaleStepGrams);
    const exactLye = lye.reduce((sum, part) => sum + part.exactGrams, 0);
    return { additives, totals, lye, exactLye, allWater: waterGrams(request.water, exactLye, oilGrams) };
  };
  let now = round(0);
  for (let at = 0; at < MOST_ROUNDS; at += 1) {
    const next = round(now.allWater);
    const moved = Math.abs(next.allWater - now.allWater);
    now = next;
    if (!(moved > 1e-9)) break;
  }
  return now;
}

/** The lye jug of a recipe whose colours bring so much water, grams. Throws the Refusals of `lyeJug`. */
export function jugOf(
  {
    lyeGrams,
    askedWaterGrams,
    additives,
    totals,
    solutionPercent,
  }: Pick<Recipe, 'lyeGrams' | 'askedWaterGrams' | 'additives' | 'totals'> & {
    readonly solutionPercent: number | undefined;
  },
  colourWaterGrams: number,
): Jug {
  const liquids = additives.filter(({ additive }) => additive.liquid !== undefined);
  const inLiquids = liquids.reduce((sum, { additive, grams }) => sum + grams * additive.water, 0);
  return lyeJug({
    lyeGrams,
    waterGrams: askedWaterGrams,
    liquids,
    otherWaterGrams: totals.waterGrams - inLiquids,
    colourWaterGrams,
    solutionPercent,
  });
}

/** All water of the batter before any is held back for colours, grams. */
export function batchWaterGrams({ jug, waterGrams: plain, totals }: Recipe): number {
  return plain + totals.waterGrams + (jug.solution?.waterGrams ?? 0);
}

/** Potassium hydroxide's share of the saponification, 0 to 1. */
export function kohShareOf({ lye }: Pick<Recipe, 'lye'>): number {
  return hydroxideIn(lye.filter(({ alkali }) => alkali === 'KOH')) / hydroxideIn(lye);
}

/** Grams of salt in a salty water: all of it that is no water. */
export const saltGrams = ({ water }: Additive, grams: number): number => grams * (1 - water);

/** Salt in percent of the oils, dry or in brine. */
export function saltPercentOf({ additives, oilGrams }: Pick<Recipe, 'additives' | 'oilGrams'>): number {
  const salt = additives.reduce((sum, { additive, grams }) => {
    if (additive.id === 'salt') return sum + grams;
    return additive.effects.includes('salts') ? sum + saltGrams(additive, grams) : sum;
  }, 0);
  return (100 * salt) / oilGrams;
}
