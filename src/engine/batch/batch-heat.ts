import { type Crackle, crackleRisk, type White } from '../heat/crackle.ts';
import { estimateHeat, type HeatEstimate, type HotBatter } from '../heat/estimate.ts';
import type { HeatShape } from '../heat/mould.ts';
import { SUGAR_HEAT, sugarSpeed } from '../heat/sugar.ts';
import { GLYCEROL_MOLAR_MASS } from './oils/fatty-acids.ts';
import type { FilledPortion } from './portions/portions.ts';
import type { Pot } from './portions/pot.ts';
import type { Recipe } from './recipe.ts';
import type { BatchSize, PlanRequest } from './request.ts';

/** J/(g K). Oils: mean of measured vegetable oils at 35 C; lye solution 25 to 35 % (Perry, from memory). */
const OIL_HEAT_CAPACITY = 1.95;
const SOLUTION_HEAT_CAPACITY = 3.5;

/** Where no mould is named, a loaf of this section is assumed, centimetres. */
const USUAL_LOAF: HeatShape = { shape: 'loaf', widthCm: 9, heightCm: 7 };

/** The section whose heat is followed: that of the mould, or of a usual loaf. A cavity counts as round, as wide as high. */
export function heatShapeOf(size: BatchSize): HeatShape {
  if (size.by !== 'mould') return USUAL_LOAF;
  const { mould } = size;
  switch (mould.shape) {
    case 'loaf':
      return { shape: 'loaf', widthCm: mould.widthCm, heightCm: mould.heightCm };
    case 'cylinder':
      return { shape: 'round', diameterCm: mould.diameterCm, heightCm: mould.lengthCm };
    case 'cavities': {
      const side = Math.cbrt((4 * mould.eachMillilitres) / Math.PI);
      return { shape: 'round', diameterCm: side, heightCm: side };
    }
  }
}

/** The batter as its heat sees it, with `waterGrams` in all. */
function hotBatter(pot: Pot, recipe: Recipe, waterGrams: number): HotBatter {
  const dry = pot.grams - pot.waterGrams;
  const grams = dry + waterGrams;
  const solution = pot.lyeGrams + waterGrams;
  // Soap is what oil and alkali weigh, less the glycerol they set free (one for three hydroxides).
  const oilUsed = (pot.oilGrams * pot.hydroxide) / pot.demand;
  const alkali = recipe.lye.reduce((sum, part) => sum + part.grams * part.purity, 0);
  const alkaliUsed = (alkali * recipe.hydroxide) / (recipe.hydroxide + recipe.totals.acidMoles);
  const soap = oilUsed + alkaliUsed - (pot.hydroxide * GLYCEROL_MOLAR_MASS) / 3;
  const sugarPercent = (100 * recipe.totals.sugarGrams) / recipe.oilGrams;
  return {
    density: grams / (pot.millilitres + waterGrams - pot.waterGrams),
    heatCapacity: (solution * SOLUTION_HEAT_CAPACITY + (grams - solution) * OIL_HEAT_CAPACITY) / grams,
    hydroxidePerGram: pot.hydroxide / grams,
    waterPercent: (100 * waterGrams) / (waterGrams + soap),
    speed: sugarSpeed(sugarPercent),
    sugarHeatPerGram: (SUGAR_HEAT.typical * recipe.totals.sugarGrams) / grams,
  };
}

export type BatchHeat = HeatEstimate & {
  readonly crackleRisk: Crackle['risk'];
  readonly crackle: Crackle;
  /** The section that was assumed or given. */
  readonly shape: HeatShape;
};

/** The heat of a planned batch, and the crackle risk of its whitest portion. All estimate. */
export function batchHeat(
  request: PlanRequest,
  recipe: Recipe,
  pot: Pot,
  portions: readonly FilledPortion[],
): BatchHeat {
  const shape = heatShapeOf(request.size);
  const batter = hotBatter(pot, recipe, pot.waterGrams);
  const estimate = estimateHeat(shape, batter, request.heat);
  const drier = (strength: number) => {
    const water = (pot.lyeGrams * (100 - strength)) / strength;
    return hotBatter(pot, recipe, Math.min(water, pot.waterGrams));
  };
  const crackle = crackleRisk(whitest(portions), estimate.gel, {
    shape,
    batter,
    setting: request.heat,
    drier,
  });
  return { ...estimate, crackleRisk: crackle.risk, crackle, shape };
}

/** The portion with most white pigment for its size. */
function whitest(portions: readonly FilledPortion[]): White {
  const whites = portions.map(({ doses, lyeConcentration }) => ({
    ceilingShare: doses.reduce(
      (sum, dose) => sum + (dose.colourant.kind === 'white' ? dose.ceilingShare : 0),
      0,
    ),
    lyeStrength: lyeConcentration,
  }));
  return whites.reduce((most, one) => (one.ceilingShare > most.ceilingShare ? one : most), {
    ceilingShare: 0,
    lyeStrength: 100,
  });
}
