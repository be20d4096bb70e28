import { oilsIn, TYPICAL_BATTER } from '../dispersion/batter.ts';
import { lyeAfterWater, superfatAfterOil } from '../dispersion/shift.ts';
import { MEASURES, type Measures } from '../quantities/units.ts';
import { refuse } from '../refusal.ts';
import { cautionsFor } from './cautioning.ts';
import { type Kitchen, measuredDose, wantedDose } from './dose.ts';
import { mixFullness } from './mix.ts';
import { portionMillilitres } from './portion.ts';
import type { Dose, DoseAnswer, DoseRequest, Shift } from './request.ts';

/** More colours than this in one cup are mud. */
export const MOST_COLOURANTS = 5;

/**
 * The whole answer to "how much colour for this much batter": doses held together under their ceilings,
 * carriers,
 * what the carriers do to this portion, and what to be careful of.
 * Throws Refusals: `mix-too-many`, `never-meets-lye`, `carrier-cannot-work`, `spoon-weight-out-of-range`,
 * `amount-out-of-range`. Throws RangeError without any colourant.
 * @example answerDose({ portion: parsePortion('2 cups'), colourants: [{ colourant: findColourant('ultramarine
 * blue'), strength: parseStrength('full') }] }).doses[0].teaspoons // 0.5
 */
export function answerDose(request: DoseRequest): DoseAnswer {
  const { portion, colourants, batter = TYPICAL_BATTER, measures = MEASURES.us } = request;
  if (colourants.length === 0) throw new RangeError('a dose is of at least one colourant');
  if (colourants.length > MOST_COLOURANTS) refuse('mix-too-many', { most: MOST_COLOURANTS });
  const millilitres = portionMillilitres(portion, batter);
  const kitchen: Kitchen = { portionMillilitres: millilitres, batter, measures };
  const wanted = colourants.map(asked => wantedDose(asked, kitchen));
  const fullness = mixFullness(
    wanted.map(({ asked, millilitres: dose, ceilingMillilitres: ceiling }) => ({
      kind: asked.colourant.kind,
      dose,
      ceiling,
    })),
  );
  const scale = fullness.all > 1 + 1e-9 ? 1 / fullness.all : 1;
  const doses = wanted.map(one =>
    // Rounding to spoons may use up the room that is left, in proportion, and no more.
    measuredDose({ ...one, millilitres: one.millilitres * scale }, kitchen, one.millilitres / fullness.all),
  );
  const shifts = shiftsOf(doses, kitchen);
  return {
    portion: {
      millilitres,
      cups: millilitres / measures.cup,
      grams: millilitres * batter.gramsPerMillilitre,
      oilsGrams: oilsIn(millilitres, batter),
      typicalBatter: request.batter === undefined,
    },
    doses,
    ...shifts,
    cautions: cautionsFor({
      portionMillilitres: millilitres,
      request,
      wanted,
      doses,
      fullness,
      scale,
      shifts,
      measures,
      oilsGrams: oilsIn(millilitres, batter),
    }),
  };
}

/** Liquid that goes into the portion with a dose, ml: of a paste made because the dose is too small to spoon, its one part. */
function broughtMillilitres(
  { carrier, premix, spoons: { spoons, paste } }: Dose,
  measures: Measures,
): number {
  if (premix !== undefined || paste === undefined || spoons.length > 0) return carrier.millilitres;
  return (paste.carrierTeaspoons * measures.teaspoon) / paste.parts;
}

/** Percent before and after, to a tenth, in this portion alone. */
function shiftsOf(doses: readonly Dose[], { portionMillilitres: portion, batter, measures }: Kitchen) {
  const brought = (choice: Dose['carrier']['choice']) =>
    doses.reduce(
      (sum, dose) => sum + (dose.carrier.choice === choice ? broughtMillilitres(dose, measures) : 0),
      0,
    );
  const [oil, water] = [brought('oil'), brought('water')];
  const shift = (from: number, to: number): Shift => ({ fromPercent: tenth(from), toPercent: tenth(to) });
  return {
    ...(oil > 0 ? { superfatShift: shift(batter.superfat, superfatAfterOil(batter, portion, oil)) } : {}),
    ...(water > 0 ? { lyeShift: shift(batter.lyeConcentration, lyeAfterWater(batter, portion, water)) } : {}),
  };
}

const tenth = (share: number): number => Math.round(share * 1000) / 10;
