import { OVEN_C } from '../../heat/surroundings.ts';
import type { Band } from '../../origin.ts';
import { additiveById } from '../additives/additives.ts';
import { batchHeat } from '../batch-heat.ts';
import { oilGramsFor } from '../fit.ts';
import type { Jug } from '../liquids/jug.ts';
import { hydroxideDemand, scaleStepPoints, superfatPercent } from '../lye/lye.ts';
import { LYE_CAUTIONS } from '../lye/lye-cautions.ts';
import { dilutionRise, iceCooling, lyeMixingRise, neutralisingRise } from '../lye/lye-solution.ts';
import { type Filled, fillPortions } from '../portions/portions.ts';
import { potSuperfat } from '../portions/pot.ts';
import { kohShareOf, makeRecipe, type Recipe, saltPercentOf } from '../recipe.ts';
import type { PlanRequest } from '../request.ts';
import type { PlanAnswer } from './plan-answer.ts';
import { timelineOf } from './timeline.ts';
import { planWarnings } from './warnings.ts';

/** Everything of a plan that is arithmetic: what is weighed, and what it makes of each portion. */
export type PlanNumbers = Omit<PlanAnswer, 'heat' | 'timeline' | 'warnings' | 'cautions'>;

/**
 * Plans a whole batch: oils, lye, water, batter, portions with their doses, heat and timeline. Masses in grams, volumes
 * in millilitres, percents 0 to 100, degrees Celsius. Pure and deterministic. Throws a Refusal of any of its parts: see
 * `makeRecipe`, `scaleStepPoints`, `fillPortions`, `splitBatter`.
 * @example planBatch(withColours(readPlan({ oils: 'olive 100%', size: '1000 g oils' }), name => ({ colourant: findColourant(name) }))).lye.kind // 'NaOH'
 */
export function planBatch(request: PlanRequest): PlanAnswer {
  const { recipe, filled, numbers } = worked(request);
  const { lye, jug, superfat } = numbers;
  const heat = batchHeat(request, recipe, filled.pot, filled.portions);
  const timeline = timelineOf(request, filled, {
    lye: recipe.lye,
    jug,
    oilGrams: recipe.oilGrams,
    kohShare: kohShareOf(recipe),
    saltPercent: saltPercentOf(recipe),
    lyeRise: lye.mixingRise,
    additives: numbers.additives,
    ovenC: request.heat.ovenC ?? OVEN_C,
    peakHours: heat.peakHours,
    peakCoreC: heat.peakCoreC,
    keepCool: heat.crackleRisk === 'some' || heat.crackleRisk === 'high',
  });
  const warnings = planWarnings(request, recipe, filled, { superfat, peakCoreC: heat.peakCoreC });
  return { ...numbers, heat, timeline, warnings, cautions: LYE_CAUTIONS };
}

/**
 * The arithmetic of `planBatch`, in milliseconds, without the seconds that heat takes: a member hears "no" at once. Throws the same
 * Refusals.
 */
export function planNumbers(request: PlanRequest): PlanNumbers {
  return worked(request).numbers;
}

function worked(request: PlanRequest) {
  const oilGrams = oilGramsFor(request);
  const recipe = makeRecipe(request, oilGrams);
  const scale = { stepGrams: request.scaleStepGrams, oilGrams };
  const stepPoints = scaleStepPoints(recipe.lye, recipe.demand.typical, scale);
  const filled = fillPortions(recipe, request);
  const { jug } = filled;
  const numbers: PlanNumbers = {
    oils: recipe.oils.map(({ oil, grams }) => ({ id: oil.id, grams })),
    lye: { ...lyeOf(request, recipe, jug), stepPoints },
    jug,
    water: waterOf(recipe, filled),
    ...massesOf(request, filled),
    superfat: superfatOf(request, recipe, filled),
    additives: recipe.additives.map(({ additive, grams }) => ({ id: additive.id, grams })),
    portions: filled.portions,
  };
  return { recipe, filled, numbers };
}

function lyeOf(request: PlanRequest, recipe: Recipe, jug: Jug) {
  const gramsOf = (kind: 'NaOH' | 'KOH') => recipe.lye.find(({ alkali }) => alkali === kind)?.grams ?? 0;
  const pure = recipe.lye.reduce((sum, part) => sum + part.grams * part.purity, 0);
  return {
    kind: request.lye.kind,
    grams: recipe.lyeGrams,
    purity: pure / recipe.lyeGrams,
    parts: recipe.lye,
    mixingRise: jugRise(gramsOf('NaOH'), gramsOf('KOH'), jug),
  };
}

/** How far the jug may warm, K: more for an acid in it, less for what is frozen, and for lye that is dissolved already. */
function jugRise(sodium: number, potassium: number, { liquids, waterInJugGrams, solution }: Jug): number {
  if (solution) {
    return dilutionRise(sodium, { waterBefore: solution.waterGrams, waterAfter: waterInJugGrams });
  }
  const frozen = liquids.reduce((sum, one) => sum + (one.frozen ? one.waterGrams : 0), 0);
  const inJug = liquids.filter(({ into }) => into === 'jug');
  const acid = inJug.reduce((sum, { id, grams }) => sum + additiveById(id).acid * grams, 0);
  const jugGrams = sodium + potassium + waterInJugGrams;
  const rise = lyeMixingRise(sodium, potassium, waterInJugGrams) + neutralisingRise(acid, jugGrams);
  return Math.max(0, rise - iceCooling(frozen, jugGrams));
}

function waterOf(recipe: Recipe, { taken, pot, carrierWaterGrams, jug }: Filled): PlanAnswer['water'] {
  const strength = (water: number) => (100 * pot.lyeGrams) / (pot.lyeGrams + water);
  return {
    grams: recipe.waterGrams,
    holdBackGrams: taken.holdBackGrams,
    lyeConcentration: strength(pot.waterGrams + carrierWaterGrams),
    jugConcentration: jug.strength,
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
