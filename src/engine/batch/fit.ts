import { mouldMillilitres } from './batch-size.ts';
import { fillPortions } from './portions.ts';
import { NOTHING_TAKEN, potOf } from './pot.ts';
import { makeRecipe } from './recipe.ts';
import type { PlanRequest } from './request.ts';

/** Small enough that weighing does not stand between an oil mass and its batter. */
const EXACT_SCALE = 1e-6;
const MOST_ROUNDS = 30;
/** Oil to start from, grams: batter is nearly proportional to it, so any would do. */
const FIRST_GUESS = 1000;

/**
 * Grams of oil for the size asked: given outright, or found so that the batter in the pot has the volume or mass asked,
 * or that all that is poured (batter less its reserve, carriers, fragrance) fills the mould level.
 */
export function oilGramsFor(request: PlanRequest): number {
  const { size } = request;
  const exact = { ...request, scaleStepGrams: EXACT_SCALE };
  const pot = (oilGrams: number) => potOf(makeRecipe(exact, oilGrams), NOTHING_TAKEN, request.heat.startC);
  switch (size.by) {
    case 'oils':
      return size.grams;
    case 'batter-volume':
      return fitted(size.millilitres, FIRST_GUESS, oils => pot(oils).millilitres);
    case 'batter-mass':
      return fitted(size.grams, FIRST_GUESS, oils => pot(oils).grams);
    case 'mould': {
      const target = mouldMillilitres(size.mould);
      // Starting from a pot that is a little too large, no portion is refused that the mould has room for.
      const start = fitted(target * 1.1, FIRST_GUESS, oils => pot(oils).millilitres);
      return fitted(target, start, oils => pouredMillilitres(exact, oils));
    }
  }
}

function pouredMillilitres(request: PlanRequest, oilGrams: number): number {
  const { portions } = fillPortions(makeRecipe(request, oilGrams), request);
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
