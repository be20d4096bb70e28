import type { MatchCandidate, MatchRequest } from '../../../src/engine/colour/matching/match-request.ts';
import { spoonDoses } from '../../../src/engine/colour/matching/spoon-grid.ts';
import { barLab } from '../../../src/engine/colour/mixing/bar.ts';
import { colourDifference, type Lab } from '../../../src/engine/colour/spectra/cielab.ts';

/** Every spoon recipe of every subset within the ceilings, each predicted in full: the truth, slowly. */
export function bestByTryingAll({ candidates, portion, base, most, target }: MatchRequest): number {
  const ceiling = ({ ceilingTspPerCup }: MatchCandidate) => ceilingTspPerCup * portion.cups;
  let best = Number.POSITIVE_INFINITY;
  const go = (at: number, colours: number, whites: number, used: number, doses: readonly number[]) => {
    const candidate = candidates[at];
    if (candidate === undefined) {
      if (used > 0) best = Math.min(best, off(doses, candidates, portion.grams, base, target));
      return;
    }
    for (const dose of spoonDoses(ceiling(candidate))) {
      const share = dose / ceiling(candidate);
      if (used + share > 1 + 1e-9) break;
      const colour = dose > 0 && !candidate.white ? 1 : 0;
      const white = dose > 0 && candidate.white ? 1 : 0;
      if (colours + colour > most || whites + white > 1) continue;
      go(at + 1, colours + colour, whites + white, used + share, [...doses, dose]);
    }
  };
  go(0, 0, 0, 0, []);
  return best;
}

function off(
  doses: readonly number[],
  candidates: readonly MatchCandidate[],
  portionGrams: number,
  base: MatchRequest['base'],
  target: Lab,
): number {
  const mix = doses.flatMap((teaspoons, at) => {
    const { optics, gramsPerTeaspoon } = candidates[at]!;
    return teaspoons > 0 ? [{ optics, grams: (100 * teaspoons * gramsPerTeaspoon) / portionGrams }] : [];
  });
  return colourDifference(barLab(mix, base), target);
}
