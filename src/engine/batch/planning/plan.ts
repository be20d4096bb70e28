import { OVEN_C } from '../../heat/surroundings.ts';
import type { Band } from '../../origin.ts';
import { batchHeat } from '../batch-heat.ts';
import { oilGramsFor } from '../fit.ts';
import { hydroxideDemand, scaleStepPoints, superfatPercent } from '../lye/lye.ts';
import { LYE_CAUTIONS } from '../lye/lye-cautions.ts';
import { lyeMixingRise } from '../lye/lye-solution.ts';
import { type Filled, fillPortions } from '../portions/portions.ts';
import { potSuperfat } from '../portions/pot.ts';
import { makeRecipe, type Recipe } from '../recipe.ts';
import type { PlanRequest } from '../request.ts';
import type { PlanAnswer } from './plan-answer.ts';
import { timelineOf } from './timeline.ts';
import { planWarnings } from './warnings.ts';

/**
 * Plans a whole batch: oils, lye, water, batter, portions with their doses, heat and timeline. Masses in grams, volumes
 * in millilitres, percents 0 to 100, degrees Celsius. Pure and deterministic. Throws a Refusal of any of its parts: see
 * `makeRecipe`, `scaleStepPoints`, `fillPortions`, `splitBatter`.
 */
export function planBatch(request: PlanRequest): PlanAnswer {
  const oilGrams = oilGramsFor(request);
  const recipe = makeRecipe(request, oilGrams);
  const scale = { stepGrams: request.scaleStepGrams, oilGrams };
  const stepPoints = scaleStepPoints(recipe.lye, recipe.demand.typical, scale);
  const filled = fillPortions(recipe, request);
  const superfat = superfatOf(request, recipe, filled);
  const heat = batchHeat(request, recipe, filled.pot, filled.portions);
  const jugWater = recipe.waterGrams - filled.taken.holdBackGrams;
  const lye = { ...lyeOf(request, recipe, jugWater), stepPoints };
  const timeline = timelineOf(request, filled, {
    lye: recipe.lye,
    waterGrams: jugWater,
    oilGrams,
    lyeRise: lye.mixingRise,
    additives: recipe.additives.map(({ additive, grams }) => ({ id: additive.id, grams })),
    ovenC: request.heat.ovenC ?? OVEN_C,
    peakHours: heat.peakHours,
    peakCoreC: heat.peakCoreC,
    keepCool: heat.crackleRisk === 'some' || heat.crackleRisk === 'high',
  });
  return {
    oils: recipe.oils.map(({ oil, grams }) => ({ id: oil.id, grams })),
    lye,
    water: waterOf(recipe, filled),
    ...massesOf(request, filled),
    superfat,
    additives: recipe.additives.map(({ additive, grams }) => ({ id: additive.id, grams })),
    portions: filled.portions,
    heat,
    timeline,
    warnings: planWarnings(request, recipe, filled, superfat),
    cautions: LYE_CAUTIONS,
  };
}

/**
 * Throws the Refusal that `planBatch` would, without the seconds that heat takes: the arithmetic alone is done in
 * milliseconds, so a member hears "no" at once.
 */
export function checkPlan(request: PlanRequest): void {
  const oilGrams = oilGramsFor(request);
  const recipe = makeRecipe(request, oilGrams);
  scaleStepPoints(recipe.lye, recipe.demand.typical, { stepGrams: request.scaleStepGrams, oilGrams });
  fillPortions(recipe, request);
}

function lyeOf(request: PlanRequest, recipe: Recipe, jugWater: number) {
  const gramsOf = (kind: 'NaOH' | 'KOH') => recipe.lye.find(({ alkali }) => alkali === kind)?.grams ?? 0;
  const pure = recipe.lye.reduce((sum, part) => sum + part.grams * part.purity, 0);
  const milk = recipe.totals.waterGrams;
  return {
    kind: request.lye.kind,
    grams: recipe.lyeGrams,
    purity: pure / recipe.lyeGrams,
    parts: recipe.lye,
    mixingRise: lyeMixingRise(gramsOf('NaOH'), gramsOf('KOH'), jugWater + milk),
  };
}

function waterOf(recipe: Recipe, { taken, pot, carrierWaterGrams }: Filled): PlanAnswer['water'] {
  const strength = (water: number) => (100 * pot.lyeGrams) / (pot.lyeGrams + water);
  return {
    grams: recipe.waterGrams,
    holdBackGrams: taken.holdBackGrams,
    lyeConcentration: strength(pot.waterGrams + carrierWaterGrams),
    jugConcentration: strength(pot.waterGrams),
    ways: recipe.ways,
  };
}

function massesOf(request: PlanRequest, filled: Filled) {
  const { pot, portions, reserveMillilitres } = filled;
  const density = pot.grams / pot.millilitres;
  const poured = (of: 'pouredGrams' | 'pouredMillilitres') => portions.reduce((sum, one) => sum + one[of], 0);
  const fragrance = portions.reduce((sum, one) => sum + one.fragranceGrams, 0);
  return {
    batter: { grams: pot.grams, millilitres: pot.millilitres, density },
    poured: { grams: poured('pouredGrams'), millilitres: poured('pouredMillilitres') },
    reserve: { grams: reserveMillilitres * density, millilitres: reserveMillilitres },
    fragrance: request.fragrance && { grams: fragrance, percentOfOils: request.fragrance.percentOfOils },
  };
}

/** Over the whole batch: oil dipped from it comes back, oil added for colours counts too. */
function superfatOf(request: PlanRequest, recipe: Recipe, filled: Filled): PlanAnswer['superfat'] {
  const added = hydroxideDemand(filled.addedOils);
  const over = (end: keyof Band) => superfatPercent(recipe.hydroxide, recipe.demand[end] + added[end]);
  return {
    asked: request.superfatPercent,
    effective: over('typical'),
    pot: potSuperfat(filled.pot),
    band: { low: over('low'), typical: over('typical'), high: over('high') },
  };
}
