import { opticsOf, usualTeaspoon } from '../../engine/colour/colourant-optics.ts';
import type { MatchCandidate } from '../../engine/colour/match.ts';
import { colourantById } from '../../engine/colourants/catalogue.ts';
import type { AlkaliBehaviour } from '../../engine/colourants/colourant.ts';
import { US_TEASPOON_ML } from '../../engine/quantities/units.ts';
import type { ShelfItem } from '../../records/shelf/shelf.ts';

/** How likely lye spoils a colour, 0 to 1: our own choice, for ordering recipes only. */
const RISK: Readonly<Record<AlkaliBehaviour, number>> = {
  stable: 0,
  conditional: 0.3,
  unknown: 0.5,
  shifts: 0.6,
  bleeds: 0.7,
  destroyed: 1,
  never: 1,
};

/** What of a shelf may colour a bar: known powders that lye leaves alone enough; bought liquids are of unknown strength. */
export const candidatesOf = (items: readonly ShelfItem[]): readonly MatchCandidate[] =>
  items.flatMap(item => {
    const colourant = item.colourant === undefined ? undefined : colourantById(item.colourant);
    if (!colourant || item.pigmentFraction !== undefined || RISK[colourant.alkali.behaviour] === 1) return [];
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
        risk: RISK[colourant.alkali.behaviour],
        ...(grams !== undefined && { stockTeaspoons: grams / gramsPerTeaspoon }),
      },
    ];
  });
