import type { Carrier, Colourant, ColourantKind } from '../colourants/colourant.ts';
import { US_TEASPOON_ML } from '../quantities/units.ts';
import { refuse } from '../refusal.ts';
import type { CarrierAdvice, CarrierReason, DishTest } from './advice.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'carrier-cannot-work': {
      colourant: Colourant['names'];
      kind: ColourantKind;
      asked: Carrier;
      allowed: readonly Carrier[];
    };
  }
}

/** What carrier advice needs to know of a colourant. */
export type WettedColourant = Pick<Colourant, 'kind' | 'names' | 'carriers' | 'dishTestDecides'>;

/** Powders that clump badly: they want time or shear, not more liquid (common practice). */
const CLUMPING: ReadonlySet<ColourantKind> = new Set(['oxide', 'ultramarine', 'chromium', 'carbon', 'white']);

/** A small frother needs about two tablespoons to turn in without flinging powder about (common practice). */
const LEAST_TO_FROTH_ML = 6 * US_TEASPOON_ML;
/** Below a teaspoon the cup itself keeps too much of the colour (common practice). */
const LEAST_CARRIER_TSP = 1;
/** Of a portion so small that a teaspoon of liquid would be more than that of it (common practice), and the least that spoons measure. */
const MOST_OF_PORTION = 0.1;
const SMALLEST_CARRIER_TSP = 1 / 8;
/** 1 tsp of colourant to 1 Tbsp of carrier (common practice). */
const CARRIER_PER_POWDER = 3;

/**
 * The liquid to wet so much powder in (`powderMillilitres`, loose), how much of it, and the two steps: wet, then blend.
 * What the member asked for goes first, then the dish test of their own lot, then the usual carrier of that colourant.
 * Throws a Refusal `carrier-cannot-work` for an asked carrier that never wets it (a neon in water).
 */
export function carrierFor(wish: {
  readonly colourant: WettedColourant;
  readonly powderMillilitres: number;
  /** Of the batter that is coloured: a small one takes no whole teaspoon of liquid. */
  readonly portionMillilitres?: number;
  readonly asked?: Carrier;
  readonly dishTest?: DishTest;
}): CarrierAdvice {
  const { colourant, asked, dishTest, powderMillilitres, portionMillilitres } = wish;
  const { choice, why } = chosen(colourant, asked, dishTest);
  const millilitres = carrierMillilitres(powderMillilitres, portionMillilitres);
  return {
    choice,
    millilitres,
    wet: howToWet(colourant.kind, choice, millilitres),
    blend: howToBlend(colourant.kind, choice),
    why,
  };
}

/** The carrier a dish test points to, where this colourant can be wetted in it at all. */
export function testedCarrier(
  colourant: WettedColourant,
  dishTest: DishTest | undefined,
): Carrier | undefined {
  if (dishTest === undefined) return undefined;
  // Sat on the bottom and would not take oil either: glycerin wets everything.
  const carrier = dishTest === 'neither' ? 'glycerin' : dishTest;
  return colourant.carriers.includes(carrier) ? carrier : undefined;
}

function chosen(colourant: WettedColourant, asked: Carrier | undefined, dishTest: DishTest | undefined) {
  const { carriers } = colourant;
  if (asked !== undefined && !carriers.includes(asked)) {
    refuse('carrier-cannot-work', {
      colourant: colourant.names,
      kind: colourant.kind,
      asked,
      allowed: carriers,
    });
  }
  const tested = testedCarrier(colourant, dishTest);
  const as = (choice: Carrier, why: CarrierReason) => ({ choice, why });
  if (asked !== undefined) return as(asked, 'asked');
  if (tested !== undefined) return as(tested, `dish-test-${dishTest!}`);
  if (colourant.dishTestDecides) return as(carriers[0], 'untested-lot');
  return as(carriers[0], carriers.includes('water') ? 'usual-for-kind' : 'never-in-water');
}

/** Three times the powder, at least a teaspoon, in amounts that spoons can measure. */
function carrierMillilitres(powderMillilitres: number, portionMillilitres = Infinity): number {
  const wanted = (CARRIER_PER_POWDER * powderMillilitres) / US_TEASPOON_ML;
  const most = (MOST_OF_PORTION * portionMillilitres) / US_TEASPOON_ML;
  if (most < LEAST_CARRIER_TSP) {
    const least = Math.max(SMALLEST_CARRIER_TSP, wanted, most);
    return Math.max(1, Math.round(least / SMALLEST_CARRIER_TSP)) * SMALLEST_CARRIER_TSP * US_TEASPOON_ML;
  }
  const teaspoons = Math.max(LEAST_CARRIER_TSP, wanted);
  const step = teaspoons < 3 ? 1 / 4 : teaspoons < 12 ? 1 / 2 : teaspoons < 48 ? 1 : 3;
  return Math.round(teaspoons / step) * step * US_TEASPOON_ML;
}

/** How to get the powder wet in the cup. The millilitres are of carrier. */
export function howToWet(kind: ColourantKind, carrier: Carrier, millilitres: number): CarrierAdvice['wet'] {
  if (!CLUMPING.has(kind)) return 'stir';
  if (millilitres >= LEAST_TO_FROTH_ML - 1e-9) return 'froth';
  // Glycerin wets everything, and water-dispersible white takes to water by itself.
  return carrier === 'glycerin' || (kind === 'white' && carrier === 'water') ? 'stir' : 'soak';
}

/** How to get the wetted colour into the batter: glycerin and water-dispersed white leave pockets unless stick-blended. */
export function howToBlend(kind: ColourantKind, carrier: Carrier): CarrierAdvice['blend'] {
  return carrier === 'glycerin' || (kind === 'white' && carrier === 'water') ? 'stick-blend' : 'whisk';
}
