import { heldBackWater } from '../../dispersion/shift.ts';
import { refuse } from '../../refusal.ts';
import type { AdditiveId } from '../additives/additive.ts';
import type { AdditiveMass } from '../additives/additives.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'lye-too-strong': { percent: number; most: number };
    'milk-more-than-water': { additiveGrams: number; waterGrams: number };
    /** What is left in the jug does not dissolve the lye: `mostGrams` of that liquid would leave enough. */
    'jug-too-little-water': {
      liquid: AdditiveId;
      lyeGrams: number;
      jugWaterGrams: number;
      mostGrams: number;
    };
    'liquid-never-in-jug': { liquid: AdditiveId };
    /** The water that dissolved lye brings with it is more than the batch may have. */
    'solution-too-weak': { percent: number; solutionWaterGrams: number; leftGrams: number };
  }
}

/** Percent of alkali by weight above which lye no longer dissolves safely: less water than lye (common practice). */
export const STRONGEST_LYE = 50;
/** Grams: what floating point may be off by. */
const CRUMB = 1e-6;

/** How the lye is dissolved. `split`: in water alone, while other liquids go into the oils. */
export type JugMethod = 'water' | 'split' | 'frozen' | 'masterbatch';

/** A liquid other than water, where it goes, and the water in it. Grams. */
export type PlacedLiquid = {
  readonly id: AdditiveId;
  readonly grams: number;
  readonly waterGrams: number;
  readonly into: 'jug' | 'oils';
  readonly frozen: boolean;
};

/** What is in the lye jug when lye meets it. Grams; strength in percent by weight of everything counted as water. */
export type Jug = {
  readonly method: JugMethod;
  readonly lyeGrams: number;
  /** Plain water, once what the colours bring is held back; for dissolved lye, the water added to it. */
  readonly waterGrams: number;
  readonly heldBackGrams: number;
  readonly liquids: readonly PlacedLiquid[];
  /** Water from all of it: plain, in liquids, in a solution. */
  readonly waterInJugGrams: number;
  readonly strength: number;
  readonly solution:
    | { readonly percent: number; readonly grams: number; readonly waterGrams: number }
    | undefined;
};

/** What a batch wants of its jug. Grams; `lyeGrams` is the alkali as weighed, or as dissolved in a solution. */
export type JugWish = {
  readonly lyeGrams: number;
  /** All the water of the batch, from whatever source. */
  readonly waterGrams: number;
  readonly liquids: readonly AdditiveMass[];
  /** Water in what is stirred in elsewhere: honey, a lactate solution. */
  readonly otherWaterGrams: number;
  /** Water that colours bring, to be held back as far as the lye allows. */
  readonly colourWaterGrams: number;
  readonly solutionPercent: number | undefined;
};

/**
 * Decides what is in the lye jug: the one place that does. There is never less water than lye in it, by weight.
 * Liquids that scorch stay out of it while the water is enough for the lye; else the lye goes into them frozen, in small
 * steps. Throws a Refusal: `lye-too-strong`, `milk-more-than-water`, `jug-too-little-water`, `liquid-never-in-jug`,
 * `solution-too-weak`.
 */
export function lyeJug(wish: JugWish): Jug {
  const { lyeGrams, waterGrams, liquids } = wish;
  checkStrength((100 * lyeGrams) / (lyeGrams + waterGrams));
  const brought = liquids.reduce((sum, one) => sum + waterOf(one), 0);
  if (brought > waterGrams + CRUMB) {
    refuse('milk-more-than-water', { additiveGrams: brought, waterGrams });
  }
  const plain = Math.max(0, waterGrams - brought);
  const jug =
    wish.solutionPercent === undefined ? mixed(wish, plain) : dissolved(wish, plain, wish.solutionPercent);
  checkStrength(jug.strength);
  return jug;
}

const waterOf = ({ additive, grams }: AdditiveMass) => grams * additive.water;
const responseModeOf = ({ additive }: AdditiveMass) => additive.liquid?.jug ?? 'never';

function checkStrength(percent: number): void {
  if (!(percent <= STRONGEST_LYE + 1e-7)) refuse('lye-too-strong', { percent, most: STRONGEST_LYE });
}

/** Lye weighed dry. `plain` is the water that no liquid brings. */
function mixed(wish: JugWish, plain: number): Jug {
  const { lyeGrams, liquids } = wish;
  const wrong = liquids.find(one => one.into === 'jug' && responseModeOf(one) === 'never');
  if (wrong) refuse('liquid-never-in-jug', { liquid: wrong.additive.id });
  const surely = liquids.map(inJugAnyway);
  const watery = plain + sumWhere(liquids, at => surely[at]!);
  const enough = watery >= lyeGrams - CRUMB;
  const placed = liquids.map((one, at) =>
    place(one, surely[at]! || (!enough && responseModeOf(one) === 'frozen' && one.into !== 'oils')),
  );
  const fromLiquids = placed.reduce((sum, one) => sum + (one.into === 'jug' ? one.waterGrams : 0), 0);
  if (plain + fromLiquids < lyeGrams - CRUMB) refuseDry(wish, plain + fromLiquids);
  const spare = Math.max(0, plain + fromLiquids - lyeGrams);
  const other = Math.min(wish.otherWaterGrams, plain, spare);
  const spareable = heldBackWater(lyeGrams, plain + fromLiquids - other, wish.colourWaterGrams);
  const held = Math.min(plain - other, spareable);
  const water = plain - other - held;
  const inJug = water + fromLiquids;
  return {
    method: methodOf(placed, water, lyeGrams),
    lyeGrams,
    waterGrams: water,
    heldBackGrams: held,
    liquids: placed,
    waterInJugGrams: inJug,
    strength: (100 * lyeGrams) / (lyeGrams + inJug),
    solution: undefined,
  };
}

/** Liquids like water, and what the member wants frozen or in the jug. */
function inJugAnyway(one: AdditiveMass): boolean {
  const manner = responseModeOf(one);
  if (one.into === 'oils' || manner === 'never') return false;
  return manner === 'cold' || one.into === 'jug' || one.frozen === true;
}

const sumWhere = (liquids: readonly AdditiveMass[], wanted: (at: number) => boolean) =>
  liquids.reduce((sum, one, at) => sum + (wanted(at) ? waterOf(one) : 0), 0);

function place(one: AdditiveMass, inJug: boolean): PlacedLiquid {
  const { additive, grams } = one;
  const frozen = additive.id === 'ice' || one.frozen === true || responseModeOf(one) === 'frozen';
  return {
    id: additive.id,
    grams,
    waterGrams: waterOf(one),
    into: inJug ? 'jug' : 'oils',
    frozen: inJug && frozen,
  };
}

/** With ice in enough water the lye is stirred in as ever; into what is all ice or slush it goes in small steps. */
function methodOf(placed: readonly PlacedLiquid[], plain: number, lyeGrams: number): JugMethod {
  const inJug = placed.filter(({ into }) => into === 'jug');
  const scorching = inJug.some(({ id, frozen }) => frozen && id !== 'ice');
  const flowing = plain + inJug.reduce((sum, one) => sum + (one.frozen ? 0 : one.waterGrams), 0);
  if (scorching || (inJug.some(({ frozen }) => frozen) && flowing < lyeGrams - CRUMB)) return 'frozen';
  return placed.some(({ into }) => into === 'oils') ? 'split' : 'water';
}

/** The liquid that takes most water away from the jug is the one to use less of. */
function refuseDry({ lyeGrams, liquids }: JugWish, jugWaterGrams: number): never {
  const away = liquids.filter(one => !inJugAnyway(one));
  const most = away.reduce(
    (wettest, one) => (waterOf(one) > waterOf(wettest) ? one : wettest),
    away[0] ?? liquids[0]!,
  );
  const missing = lyeGrams - jugWaterGrams;
  return refuse('jug-too-little-water', {
    liquid: most.additive.id,
    lyeGrams,
    jugWaterGrams,
    // Whole grams, rounded down: what is printed must do.
    mostGrams: Math.max(0, Math.floor(most.grams - missing / most.additive.water)),
  });
}

/** Lye that is dissolved already: its own water counts, what is left is added to it, other liquids go into the oils. */
function dissolved(wish: JugWish, plain: number, percent: number): Jug {
  const { lyeGrams, liquids } = wish;
  checkStrength(percent);
  const solutionWaterGrams = (lyeGrams * (100 - percent)) / percent;
  const further = plain - solutionWaterGrams;
  if (further < -CRUMB) refuse('solution-too-weak', { percent, solutionWaterGrams, leftGrams: plain });
  const left = Math.max(0, further - wish.otherWaterGrams);
  const held = Math.min(wish.colourWaterGrams, left);
  const inJug = solutionWaterGrams + left - held;
  return {
    method: 'masterbatch',
    lyeGrams,
    waterGrams: left - held,
    heldBackGrams: held,
    liquids: liquids.map(one => place(one, false)),
    waterInJugGrams: inJug,
    strength: (100 * lyeGrams) / (lyeGrams + inJug),
    solution: { percent, grams: lyeGrams + solutionWaterGrams, waterGrams: solutionWaterGrams },
  };
}
