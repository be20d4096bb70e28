import { mouldMillilitres } from './mould-sides.ts';
import { type Filled, fillPortions } from './portions/portions.ts';
import { makeRecipe } from './recipe.ts';
import type { PlanRequest } from './request.ts';

/** Small enough that weighing does not stand between an oil mass and its batter. */
const EXACT_SCALE = 1e-6;
const MOST_ROUNDS = 30;
/** Oil to start from, grams: batter is nearly proportional to it, so any would do. */
const FIRST_GUESS = 1000;
const AMPLE = 1.1;

/**
 * Grams of oil for the size asked: given outright, or found so that the batter in the pot, once oil and water for the
 * colours have left it, has the volume or mass asked, or that all that is poured (batter less its reserve, carriers,
 * fragrance) fills the mould level.
 */
export function oilGramsFor(request: PlanRequest): number {
  const { size } = request;
  switch (size.by) {
    case 'oils':
      return size.grams;
    case 'batter-volume':
      return oilGramsWhere(request, size.millilitres, ({ pot }) => pot.millilitres);
    case 'batter-mass':
      return oilGramsWhere(request, size.grams, ({ pot }) => pot.grams);
    case 'mould':
      return oilGramsWhere(request, mouldMillilitres(size.mould), pouredMillilitres);
  }
}

function oilGramsWhere(request: PlanRequest, target: number, measure: (filled: Filled) => number): number {
  const exact = { ...request, scaleStepGrams: EXACT_SCALE };
  const undivided = { ...exact, portions: [] };
  const filled = (asked: PlanRequest) => (oils: number) =>
    measure(fillPortions(makeRecipe(asked, oils), asked));
  // Starting from a pot that is a little too large, no portion is refused that the batch has room for.
  const start = fitted(target * AMPLE, FIRST_GUESS, filled(undivided));
  return fitted(target, start, filled(exact));
}

function pouredMillilitres({ portions }: Filled): number {
  return portions.reduce((sum, { pouredMillilitres: poured }) => sum + poured, 0);
}

/** The `x` at which a measure that nearly follows `x` in proportion reaches `target`. */
function fitted(target: number, start: number, measure: (x: number) => number): number {
  let x = start;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const step = target / measure(x);
    x *= step;
    if (Math.abs(step - 1) < 1e-10) break;
  }
  return x;
}
