import type { Batter } from '../../../src/engine/dispersion/batter.ts';

/** The batter of a recipe from its masses (grams), its superfat (0 to 1) and its volume (ml). */
export function batterOf(recipe: {
  readonly oilsGrams: number;
  readonly lyeGrams: number;
  readonly waterGrams: number;
  readonly millilitres: number;
  readonly superfat: number;
}): Batter {
  const { oilsGrams, lyeGrams, waterGrams, millilitres, superfat } = recipe;
  const grams = oilsGrams + lyeGrams + waterGrams;
  return {
    gramsPerMillilitre: grams / millilitres,
    oilsShare: oilsGrams / grams,
    lyeConcentration: lyeGrams / (lyeGrams + waterGrams),
    superfat,
  };
}
