import { opticsOf, usualTeaspoon } from '../../../src/engine/colour/jars/colourant-optics.ts';
import type { MatchCandidate } from '../../../src/engine/colour/matching/match-request.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { US_TEASPOON_ML } from '../../../src/engine/quantities/units.ts';
import { LYE_RISK } from '../../../src/presenting/colour/candidates.ts';
import { jarOf } from '../../../src/records/shelf/jars/jar.ts';
import type { ShelfItem } from '../../../src/records/shelf/shelf.ts';

/**
 * What of somebody's shelf may colour a bar, for a palette that many can make: known powders that hold in lye, at the
 * strength of their kind. What a maker's own test bars said is left out: a palette is drawn for all of them.
 */
export const candidatesOf = (items: readonly ShelfItem[]): readonly MatchCandidate[] =>
  items.flatMap(item => {
    const known = item.colourant === undefined ? undefined : colourantById(item.colourant);
    const colourant = known && jarOf(item).colourant;
    if (!colourant || item.pigmentFraction !== undefined || LYE_RISK[colourant.alkali.behaviour] === 1)
      return [];
    const { spoonWeight } = item.lot;
    const gramsPerTeaspoon = spoonWeight
      ? (spoonWeight.grams * US_TEASPOON_ML) / spoonWeight.spoonMillilitres
      : usualTeaspoon(colourant);
    const { grams } = item.stock;
    return [
      {
        id: item.id,
        optics: opticsOf(colourant),
        gramsPerTeaspoon,
        ceilingTspPerCup: colourant.dose.ceilingTspPerCup,
        white: colourant.kind === 'white',
        risk: LYE_RISK[colourant.alkali.behaviour],
        ...(grams !== undefined && { stockTeaspoons: grams / gramsPerTeaspoon }),
      },
    ];
  });
