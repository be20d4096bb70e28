import { KOH_MOLAR_MASS, NAOH_MOLAR_MASS, WATER_MOLAR_MASS } from '../oils/fatty-acids.ts';

type Point = readonly [x: number, y: number];

/**
 * Density of sodium hydroxide solutions at 20 C, g/ml, by percent by mass. Published: engineering reference table of aqueous sodium
 * hydroxide (as in CRC and Perry); 25, 35, 45 and 50 % from memory.
 */
const NAOH_DENSITY: readonly Point[] = [
  [0, 0.99821],
  [5, 1.0538],
  [10, 1.1089],
  [20, 1.2192],
  [25, 1.2739],
  [30, 1.3277],
  [35, 1.3798],
  [40, 1.4299],
  [45, 1.4779],
  [50, 1.5253],
];
/** Density of potassium hydroxide solutions at 20 C, g/ml, by percent by mass. From memory: CRC Handbook. */
const KOH_DENSITY: readonly Point[] = [
  [0, 0.99821],
  [10, 1.0918],
  [20, 1.1884],
  [30, 1.2905],
  [40, 1.3991],
  [50, 1.5143],
];

/** How a 19.4 % solution thins with warmth, g/ml per K: 1.20866 at 25 C, 1.18192 at 70 C (published fit). */
const DENSITY_SLOPE = (1.18192 - 1.20866) / 45;

/** Straight line between the points around `x`; the end value beyond the ends. Points rise in x. */
export function interpolate(points: readonly Point[], x: number): number {
  const above = points.findIndex(([px]) => px >= x);
  if (above === 0) return points[0]![1];
  if (above === -1) return points.at(-1)![1];
  const [x0, y0] = points[above - 1]!;
  const [x1, y1] = points[above]!;
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/**
 * Density of a lye solution, g/ml. `percent` is alkali by mass, `potassiumShare` the part of the alkali's mass that is
 * potassium hydroxide, `celsius` its temperature. Published tables at 20 C, interpolated; mixed alkalis by mass.
 */
export function lyeSolutionDensity(percent: number, potassiumShare: number, celsius: number): number {
  const sodium = interpolate(NAOH_DENSITY, percent);
  const potassium = interpolate(KOH_DENSITY, percent);
  return sodium * (1 - potassiumShare) + potassium * potassiumShare + DENSITY_SLOPE * (celsius - 20);
}

/**
 * Heat given off by dissolving one mole of sodium hydroxide in n moles of water, kJ, 18 C. From memory: Felder and Rousseau,
 * Elementary Principles of Chemical Processes, Table B.11.
 */
const NAOH_DISSOLVING: readonly Point[] = [
  [3, 28.87],
  [4, 34.43],
  [5, 37.74],
  [10, 42.51],
  [20, 42.84],
];
/**
 * The same for potassium hydroxide at much water, kJ/mol; taken for every strength. From memory: CRC Handbook, 57.6 at infinite
 * dilution.
 */
const KOH_DISSOLVING = 55;
/** Of a 25 to 35 % solution, J/(g K); Perry, from memory. */
const SOLUTION_HEAT_CAPACITY = 3.5;

/**
 * How far a lye solution warms while it is mixed, K, if no heat leaves it: alkalis and water in grams.
 * A real jug loses some: this is the most.
 */
export function lyeMixingRise(sodium: number, potassium: number, water: number): number {
  const moles = sodium / NAOH_MOLAR_MASS + potassium / KOH_MOLAR_MASS;
  if (moles === 0) return 0;
  const waterPerAlkali = water / WATER_MOLAR_MASS / moles;
  const kilojoules =
    (sodium / NAOH_MOLAR_MASS) * interpolate(NAOH_DISSOLVING, waterPerAlkali) +
    (potassium / KOH_MOLAR_MASS) * KOH_DISSOLVING;
  return (kilojoules * 1000) / ((sodium + potassium + water) * SOLUTION_HEAT_CAPACITY);
}

/** Heat of a mole of hydroxide and a mole of protons, kJ (CRC Handbook: 55.8 to 57.3; weak acids give somewhat less). */
const NEUTRALISING = 56;

/** How far acid in a jug warms it while lye neutralises it, K, if no heat leaves; moles of protons and grams. */
export function neutralisingRise(acidMoles: number, jugGrams: number): number {
  return (acidMoles * NEUTRALISING * 1000) / (jugGrams * SOLUTION_HEAT_CAPACITY);
}

/** Melting ice and warming its water to 20 C takes that much, J/g (334 and 20 x 4.18; CRC Handbook, from memory). */
const ICE_TAKES = 334 + 20 * 4.18;

/** How much less a jug warms for the frozen water in it, K; all masses in grams. */
export function iceCooling(frozenWater: number, jugGrams: number): number {
  return (frozenWater * ICE_TAKES) / (jugGrams * SOLUTION_HEAT_CAPACITY);
}

/**
 * How far a solution warms when water is added to it, K, if no heat leaves it: the heat of dissolving at the end less
 * that at the start. Grams.
 */
export function dilutionRise(
  sodium: number,
  { waterBefore, waterAfter }: { readonly waterBefore: number; readonly waterAfter: number },
): number {
  const moles = sodium / NAOH_MOLAR_MASS;
  if (moles === 0) return 0;
  const given = (water: number) => interpolate(NAOH_DISSOLVING, water / WATER_MOLAR_MASS / moles);
  const kilojoules = moles * (given(waterAfter) - given(waterBefore));
  return (kilojoules * 1000) / ((sodium + waterAfter) * SOLUTION_HEAT_CAPACITY);
}
