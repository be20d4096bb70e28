import { type Batter, CARRIER_DENSITY, oilsIn } from './batter.ts';

/**
 * Superfat (0 to 1) of a portion, or of a whole batch, after `oilMillilitres` of carrier oil went into it. The oil
 * is taken to need as much lye, gram for gram, as the recipe's own. Oil dipped from the batch shifts its portion in
 * the same way and leaves the batch as it was.
 */
export function superfatAfterOil(batter: Batter, portionMillilitres: number, oilMillilitres: number): number {
  const oils = oilsIn(portionMillilitres, batter);
  const saponified = (1 - batter.superfat) * oils;
  return 1 - saponified / (oils + oilMillilitres * CARRIER_DENSITY.oil);
}

/** NaOH in the lye solution (0 to 1) of a portion after `waterMillilitres` of carrier water went into it. */
export function lyeAfterWater(batter: Batter, portionMillilitres: number, waterMillilitres: number): number {
  const solution = portionMillilitres * batter.gramsPerMillilitre * (1 - batter.oilsShare);
  return (solution * batter.lyeConcentration) / (solution + waterMillilitres * CARRIER_DENSITY.water);
}

/**
 * Grams of water to leave out of the lye water when `carrierWaterGrams` will come in with the colours: all of it,
 * but never so much that less water than lye (by weight) is left to dissolve the lye in (common practice).
 */
export function heldBackWater(lyeGrams: number, waterGrams: number, carrierWaterGrams: number): number {
  return Math.max(0, Math.min(carrierWaterGrams, waterGrams - lyeGrams));
}
