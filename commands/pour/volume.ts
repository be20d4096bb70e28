import type { Measures } from '../../src/engine/quantities/units.ts';
import { spoonedOut } from '../../src/presenting/spoons.ts';
import type { Words } from '../../src/words/index.ts';

/** Cups below which batter is measured by the spoon. */
const LEAST_CUPS = 0.25;
const LEAST_TEASPOONS = 1 / 32;

/** Batter as it is measured out: cups, or spoons where there is little of it. */
export function volumeView(millilitres: number, measures: Measures, say: Words): string {
  const cups = millilitres / measures.cup;
  const teaspoons = millilitres / measures.teaspoon;
  if (cups >= LEAST_CUPS || teaspoons < LEAST_TEASPOONS) return say.plan.volume({ millilitres, cups });
  return say.pouring.spooned({
    millilitres: millilitres < 10 ? Number(millilitres.toFixed(1)) : Math.round(millilitres),
    spoons: spoonedOut(teaspoons, measures, say),
  });
}
