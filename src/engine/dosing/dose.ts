import { type Batter, batterFromOils, oilsIn } from '../dispersion/batter.ts';
import { carrierFor, howToBlend } from '../dispersion/carrier.ts';
import { practicalSpoons } from '../quantities/spoons.ts';
import { STRENGTH_SHARES, type Strength } from '../quantities/strength.ts';
import { type Measures, POUND_G, US_CUP_ML, US_TEASPOON_ML } from '../quantities/units.ts';
import { refuse } from '../refusal.ts';
import { powderGrams } from './powder.ts';
import { premixFor, UNKNOWN_PREMIX_START } from './premix.ts';
import type { Dose, DoseAsked, Premix } from './request.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'never-meets-lye': { colourant: DoseAsked['colourant']['names'] };
  }
}

/** A dose before it is measured out: loose millilitres of powder for the portion. */
export type Wanted = {
  readonly asked: DoseAsked;
  /** As asked, before any ceiling. */
  readonly askedMillilitres: number;
  /** As allowed: never above the ceiling. */
  readonly millilitres: number;
  readonly ceilingMillilitres: number;
};

/** What the measuring of one dose depends on besides the dose itself. */
export type Kitchen = {
  readonly portionMillilitres: number;
  readonly batter: Batter;
  readonly measures: Measures;
};

/** US teaspoons a US cup, as millilitres of powder a millilitre of batter. */
const TSP_PER_CUP = US_TEASPOON_ML / US_CUP_ML;

/**
 * How much powder a strength asks for in a portion, held at the ceiling of that colourant.
 * Throws a Refusal `never-meets-lye` for a colourant that must not go into raw soap.
 */
export function wantedDose(asked: DoseAsked, kitchen: Kitchen): Wanted {
  const { colourant, strength, premix } = asked;
  if (colourant.alkali.behaviour === 'never') refuse('never-meets-lye', { colourant: colourant.names });
  const { fullTspPerCup, ceilingTspPerCup } = colourant.dose;
  const ceilingMillilitres = ceilingTspPerCup * TSP_PER_CUP * kitchen.portionMillilitres;
  const full = fullTspPerCup * TSP_PER_CUP * kitchen.portionMillilitres;
  const askedMillilitres = powderFor(strength, full, { ...kitchen, asked });
  const most = premix?.by === 'unknown' ? full * UNKNOWN_PREMIX_START : ceilingMillilitres;
  return { asked, askedMillilitres, ceilingMillilitres, millilitres: Math.min(askedMillilitres, most) };
}

function powderFor(
  strength: Strength,
  full: number,
  { portionMillilitres, batter, measures, asked }: Kitchen & { readonly asked: DoseAsked },
): number {
  switch (strength.by) {
    case 'name':
      return (full * STRENGTH_SHARES[strength.name]) / timesOf(asked);
    case 'share':
      return (full * strength.ofFull) / timesOf(asked);
    case 'percent-of-oils': {
      const grams = (oilsIn(portionMillilitres, batter) * strength.percent) / 100;
      const { colourant, gramsPerTeaspoon } = asked;
      return gramsPerTeaspoon === undefined
        ? grams / colourant.bulkDensity.typical
        : (grams / gramsPerTeaspoon) * measures.teaspoon;
    }
    case 'cup':
      return (strength.tspPerCup * measures.teaspoon * portionMillilitres) / measures.cup;
    case 'pound-of-oils':
      return (
        (strength.tspPerPound * measures.teaspoon * portionMillilitres) / batterFromOils(POUND_G, batter)
      );
  }
}

/** Amounts that were said in spoons or percent are taken as said, however strong the jar. */
const timesOf = ({ timesKind = 1, strength }: DoseAsked): number =>
  strength.by === 'name' || strength.by === 'share' ? timesKind : 1;

/** Whether more was asked for than the ceiling allows; a hair over, from rounding, is not. */
export function isAboveCeiling({ askedMillilitres, ceilingMillilitres }: Wanted): boolean {
  return askedMillilitres > ceilingMillilitres * (1 + 1e-6);
}

/**
 * One wanted dose as real measures: spoons (never above `mostMillilitres`), millilitres, grams with their band, the
 * ceiling of the portion, and how to wet and blend it. Throws Refusals of the carrier and of the spoon's weight.
 */
export function measuredDose(
  wanted: Wanted,
  kitchen: Kitchen,
  mostMillilitres = wanted.ceilingMillilitres,
): Dose {
  const { asked, millilitres, ceilingMillilitres } = wanted;
  const { colourant, strength, gramsPerTeaspoon } = asked;
  const { measures, batter, portionMillilitres } = kitchen;
  const teaspoons = millilitres / measures.teaspoon;
  const grams = powderGrams({
    bulkDensity: colourant.bulkDensity,
    teaspoons,
    teaspoonMillilitres: measures.teaspoon,
    gramsPerTeaspoon,
  });
  const perMillilitre = teaspoons / portionMillilitres;
  return {
    colourant: { id: colourant.id, kind: colourant.kind },
    strength,
    teaspoons: tidy(teaspoons),
    spoons: practicalSpoons(teaspoons, mostMillilitres / measures.teaspoon, measures.owned),
    millilitres: tidy(millilitres),
    grams,
    weighedSpoon: gramsPerTeaspoon !== undefined,
    ceilingTeaspoons: tidy(ceilingMillilitres / measures.teaspoon),
    ceilingShare: tidy(millilitres / ceilingMillilitres),
    perCup: tidy(perMillilitre * measures.cup),
    perPoundOfOils: tidy(perMillilitre * batterFromOils(POUND_G, batter)),
    ...(isAboveCeiling(wanted) ? { askedTeaspoons: tidy(wanted.askedMillilitres / measures.teaspoon) } : {}),
    ...(timesOf(asked) === 1 ? {} : { timesKind: timesOf(asked) }),
    ...(asked.timesKind === undefined ? {} : { overKind: asked.timesKind }),
    ...wetting(asked, { millilitres, grams, portionMillilitres }, measures),
  };
}

/** Twelve significant digits: 0.9999999999999998 tsp is 1 tsp. */
export const tidy = (value: number): number => Number(value.toPrecision(12));

function wetting(
  asked: DoseAsked,
  dry: Pick<Dose, 'millilitres' | 'grams'> & Pick<Kitchen, 'portionMillilitres'>,
  measures: Measures,
) {
  const { colourant, premix, carrier, dishTest } = asked;
  const spoonsOf = (millilitres: number) =>
    practicalSpoons(millilitres / measures.teaspoon, undefined, measures.owned);
  if (premix === undefined) {
    const advice = carrierFor({
      colourant,
      powderMillilitres: dry.millilitres,
      portionMillilitres: dry.portionMillilitres,
      ...(carrier === undefined ? {} : { asked: carrier }),
      ...(dishTest === undefined ? {} : { dishTest }),
    });
    return { carrier: { ...advice, spoons: spoonsOf(advice.millilitres) } };
  }
  const wet = wetted(premix, asked);
  const measure = premixFor(wet, dry, colourant.density);
  return {
    carrier: {
      choice: wet.carrier,
      millilitres: measure.carrierMillilitres,
      spoons: spoonsOf(measure.carrierMillilitres),
      wet: 'stir' as const,
      blend: howToBlend(colourant.kind, wet.carrier),
      why: 'already-wetted' as const,
    },
    premix: {
      ...(measure.share === undefined ? {} : { share: measure.share }),
      grams: measure.grams,
      teaspoons: measure.millilitres / measures.teaspoon,
      spoons: spoonsOf(measure.millilitres),
    },
  };
}

/** A premix in the carrier the member names, else its own. Throws `carrier-cannot-work`, as for a neon paste in water. */
function wetted(premix: Premix, { colourant, carrier = premix.carrier, carrier: named }: DoseAsked): Premix {
  if (!colourant.carriers.includes(carrier) && (named !== undefined || carrier === 'water')) {
    const { names, kind, carriers } = colourant;
    refuse('carrier-cannot-work', { colourant: names, kind, asked: carrier, allowed: carriers });
  }
  return { ...premix, carrier };
}
