import { CARRIER_DENSITY } from '../../dispersion/batter.ts';
import type { Caution } from '../../dosing/cautions.ts';
import type { Dose } from '../../dosing/request.ts';
import { refuse } from '../../refusal.ts';
import type { FragranceAsk } from '../additives/fragrance.ts';
import type { Jug } from '../liquids/jug.ts';
import { hydroxideDemand, superfatPercent } from '../lye/lye.ts';
import { oilById } from '../oils/find-oil.ts';
import type { Oil, OilMass } from '../oils/oil.ts';
import { jugOf, type Recipe } from '../recipe.ts';
import type { PlannedColour, PlanRequest } from '../request.ts';
import { type Draw, drawPortions } from './draw.ts';
import { fromBlend, NOTHING_TAKEN, oilDensity, type Pot, potOf, potSuperfat, type Taken } from './pot.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** So much oil dipped that what stays in the pot would hold more lye than it can take. */
    'dip-too-deep': { dippedGrams: number; potSuperfat: number };
    'dipped-oil-missing': { oil: Oil['names']; wantedGrams: number; recipeGrams: number };
  }
}

/** Carriers are measured at room temperature, C. */
const ROOM_C = 20;
/** Of a fragrance, g/ml: plant oils and their like lie between 0.85 and 1.1 (common practice). */
const FRAGRANCE_DENSITY = 0.98;
/** A light oil where the member names none. */
const LIGHT_OIL = oilById('sunflower');

/** What the colours bring into one portion. Grams, except where named. */
type Brought = {
  readonly added: readonly OilMass[];
  readonly dipped: readonly OilMass[];
  readonly water: number;
  readonly glycerin: number;
  readonly millilitres: number;
};

/** One portion as it is poured. Percents 0 to 100; `millilitres` and `grams` are the batter drawn for it. */
export type FilledPortion = {
  readonly name: string;
  readonly millilitres: number;
  readonly grams: number;
  readonly superfat: number;
  readonly lyeConcentration: number;
  readonly fragranceGrams: number;
  readonly scented: boolean;
  readonly pouredMillilitres: number;
  readonly pouredGrams: number;
  readonly doses: readonly Dose[];
  readonly cautions: readonly Caution[];
};

/** The pot once everything for the colours has left it, and the portions drawn from it. */
export type Filled = {
  readonly pot: Pot;
  readonly taken: Taken;
  /** What is in the lye jug once `taken.holdBackGrams` stays out of it. */
  readonly jug: Jug;
  /** Carrier oils that are not the recipe's own. */
  readonly addedOils: readonly OilMass[];
  /** Water the colours bring, of which `taken.holdBackGrams` could be kept from the lye water. */
  readonly carrierWaterGrams: number;
  readonly portions: readonly FilledPortion[];
  readonly reserveMillilitres: number;
};

/** Doses depend on portions, carriers on doses, the pot on carriers: this settles in a few rounds. */
const MOST_ROUNDS = 12;

/**
 * Draws the portions from the pot. Oil dipped for a colour leaves the pot and returns in its portion; water for a
 * colour is held back from the lye water, never below as much water as lye. Throws a Refusal: `dip-too-deep`,
 * `dipped-oil-missing`, or one of the split's or the dosing's own.
 */
export function fillPortions(recipe: Recipe, request: PlanRequest): Filled {
  let taken = NOTHING_TAKEN;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const { draws } = drawPortions(potOf(recipe, taken, request.heat.startC), request);
    const next = takenFor(
      draws.map(draw => broughtInto(draw, recipe)),
      recipe,
    );
    const settled =
      Math.abs(next.holdBackGrams - taken.holdBackGrams) + Math.abs(dipped(next) - dipped(taken));
    taken = next;
    if (settled < 1e-9) break;
  }
  return pour(recipe, request, taken);
}

function takenFor(brought: readonly Brought[], recipe: Recipe): Taken {
  const { heldBackGrams } = jugFor(recipe, waterIn(brought));
  return { dipped: brought.flatMap(one => one.dipped), holdBackGrams: heldBackGrams };
}

const waterIn = (brought: readonly Brought[]) => brought.reduce((sum, { water }) => sum + water, 0);

const jugFor = (recipe: Recipe, colourWaterGrams: number): Jug =>
  jugOf({ ...recipe, solutionPercent: recipe.jug.solution?.percent }, colourWaterGrams);

function dipped(taken: Taken): number {
  return taken.dipped.reduce((sum, { grams }) => sum + grams, 0);
}

function pour(recipe: Recipe, request: PlanRequest, taken: Taken): Filled {
  const pot = potOf(recipe, taken, request.heat.startC);
  checkDip(recipe, taken, pot);
  const { draws, reserve } = drawPortions(pot, request);
  const brought = draws.map(draw => broughtInto(draw, recipe));
  return {
    pot,
    taken,
    jug: jugFor(recipe, taken.holdBackGrams),
    addedOils: brought.flatMap(({ added }) => added),
    carrierWaterGrams: waterIn(brought),
    portions: draws.map((draw, at) => fill(draw, brought[at]!, pot, request.fragrance)),
    reserveMillilitres: reserve,
  };
}

/** The lye in the pot was weighed for all the oils: what is dipped out must leave enough for it. */
function checkDip(recipe: Recipe, taken: Taken, pot: Pot): void {
  for (const { oil, grams } of recipe.oils) {
    const wanted = taken.dipped.reduce((sum, one) => sum + (one.oil.id === oil.id ? one.grams : 0), 0);
    if (wanted > grams) {
      refuse('dipped-oil-missing', { oil: oil.names, wantedGrams: wanted, recipeGrams: grams });
    }
  }
  const strange = taken.dipped.find(({ oil }) => !recipe.oils.some(one => one.oil.id === oil.id));
  if (strange !== undefined) {
    refuse('dipped-oil-missing', { oil: strange.oil.names, wantedGrams: strange.grams, recipeGrams: 0 });
  }
  const left = potSuperfat(pot);
  if (left < 0) refuse('dip-too-deep', { dippedGrams: dipped(taken), potSuperfat: left });
}

function fill(draw: Draw, brought: Brought, pot: Pot, fragrance: FragranceAsk | undefined): FilledPortion {
  const share = draw.millilitres / pot.millilitres;
  const carriers = [...brought.added, ...brought.dipped];
  const demand = share * pot.demand + hydroxideDemand(carriers).typical;
  const [lye, water] = [share * pot.lyeGrams, share * pot.waterGrams + brought.water];
  const scented = draw.portion.scented && fragrance !== undefined;
  const fragranceGrams = scented ? (share * pot.oilGrams * fragrance.percentOfOils) / 100 : 0;
  const carrierGrams = carriers.reduce((sum, { grams }) => sum + grams, brought.water + brought.glycerin);
  const grams = share * pot.grams;
  return {
    name: draw.portion.name,
    millilitres: draw.millilitres,
    grams,
    // An empty portion is as the pot is.
    superfat: share > 0 ? superfatPercent(share * pot.hydroxide, demand) : potSuperfat(pot),
    lyeConcentration:
      share > 0 ? (100 * lye) / (lye + water) : (100 * pot.lyeGrams) / (pot.lyeGrams + pot.waterGrams),
    fragranceGrams,
    scented,
    pouredMillilitres: draw.millilitres + brought.millilitres + fragranceGrams / FRAGRANCE_DENSITY,
    pouredGrams: grams + carrierGrams + fragranceGrams,
    doses: draw.doses,
    cautions: draw.cautions,
  };
}

/** What the colours of one portion bring with their carriers. The powders' own volume is too small to count. */
function broughtInto(draw: Draw, recipe: Recipe): Brought {
  const liquids = draw.doses.map((dose, at) => liquidOf(dose, draw.portion.colours[at]!, recipe));
  return {
    added: liquids.flatMap(({ added }) => added),
    dipped: liquids.flatMap(one => one.dipped),
    water: liquids.reduce((sum, { water }) => sum + water, 0),
    glycerin: liquids.reduce((sum, { glycerin }) => sum + glycerin, 0),
    millilitres: liquids.reduce((sum, { millilitres }) => sum + millilitres, 0),
  };
}

function liquidOf(dose: Dose, { asked, carrier }: PlannedColour, recipe: Recipe): Brought {
  const { choice, millilitres } = dose.carrier;
  const none: Brought = { added: [], dipped: [], water: 0, glycerin: 0, millilitres };
  if (choice === 'water') return { ...none, water: millilitres * CARRIER_DENSITY.water };
  if (choice === 'glycerin') return { ...none, glycerin: millilitres * CARRIER_DENSITY.glycerin };
  const isDipped = carrier?.dipped === true && asked.premix === undefined;
  if (isDipped) return { ...none, dipped: dip(carrier.oil, millilitres, recipe) };
  const oil = carrier?.oil ?? LIGHT_OIL;
  return { ...none, added: [{ oil, grams: millilitres * oilDensity(oil, ROOM_C) }] };
}

/** Millilitres of one of the recipe's oils, or of their melted blend. */
function dip(oil: Oil | undefined, millilitres: number, recipe: Recipe): readonly OilMass[] {
  if (oil !== undefined) return [{ oil, grams: millilitres * oilDensity(oil, ROOM_C) }];
  const oneGram = fromBlend(recipe, 1).reduce((sum, one) => sum + one.grams / oilDensity(one.oil, ROOM_C), 0);
  return fromBlend(recipe, millilitres / oneGram);
}
