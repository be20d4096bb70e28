import { opticsOf, usualTeaspoon } from '../../../src/engine/colour/jars/colourant-optics.ts';
import type { MatchCandidate } from '../../../src/engine/colour/matching/match-request.ts';
import { colourantById, colourants } from '../../../src/engine/colourants/catalogue.ts';
import type { Colourant } from '../../../src/engine/colourants/colourant.ts';

/** A cup of batter at 1 g/ml. */
export const ONE_CUP = { cups: 1, grams: 236.6 } as const;

export function candidateOf(colourant: Colourant): MatchCandidate {
  return {
    id: colourant.id,
    optics: opticsOf(colourant),
    gramsPerTeaspoon: usualTeaspoon(colourant),
    ceilingTspPerCup: colourant.dose.ceilingTspPerCup,
    white: colourant.kind === 'white',
    risk: 0,
  };
}

export function candidates(...ids: readonly string[]): MatchCandidate[] {
  return ids.map(id => {
    const colourant = colourantById(id);
    if (colourant === undefined) throw new Error(`no ${id} in the catalogue`);
    return candidateOf(colourant);
  });
}

/** A shelf of 39 colourants and titanium dioxide. */
export function fullShelf(): MatchCandidate[] {
  const colours = colourants.filter(({ kind }) => kind !== 'white' && kind !== 'dye').slice(0, 39);
  return [...colours.map(candidateOf), ...candidates('titanium-dioxide')];
}
