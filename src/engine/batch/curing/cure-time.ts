import type { Band } from '../../origin.ts';
import type { OilMass } from '../oils/oil.ts';

/** What cure hangs on. Percents 0 to 100. */
export type CureFacts = {
  readonly oils: readonly OilMass[];
  /** Alkali in alkali and water together. */
  readonly lyeConcentration: number;
  /** Potassium hydroxide's share of the saponification, 0 to 1. */
  readonly kohShare: number;
};

/**
 * Days: low, typical and high of a usual bar at 33 % lye. Source: common practice, four to six weeks for usual bars; more
 * water dries longer; soft oils (olive above all) want months; measure by weight.
 */
const USUAL: Band = { low: 28, typical: 35, high: 42 };
/** The lye strength that {@link USUAL} is for, and the days that a point less of it adds. */
const USUAL_LYE = 33;
const DAYS_PER_POINT = 1.5;
/** At stronger lye there is less to dry, and still the crystals want their weeks. */
const SHORTEST = 21;
/** Share of soft fatty acids in the oils from which a bar hardens slowly, and days each further tenth adds. */
const SOFT_FROM = 0.7;
const DAYS_PER_SOFT_TENTH = 30;
/** Paste does not dry; it is left to clear. */
const PASTE: Band = { low: 7, typical: 14, high: 28 };
const PASTE_FROM = 0.5;

const HARD = ['C12:0', 'C14:0', 'C16:0', 'C18:0', 'C20:0', 'C22:0', 'C24:0', 'C10:0', 'C8:0'] as const;

/** Mass share of fatty acids that leave a bar soft, 0 to 1; oils without a profile count as hard. */
export function softShare(oils: readonly OilMass[]): number {
  const grams = oils.reduce((sum, one) => sum + one.grams, 0);
  const soft = oils.reduce((sum, { oil, grams: mass }) => {
    if (!oil.profile) return sum;
    const all = Object.values(oil.profile).reduce((total, percent) => total + percent, 0);
    const hard = HARD.reduce((total, acid) => total + (oil.profile?.[acid] ?? 0), 0);
    return sum + mass * (1 - hard / all);
  }, 0);
  return grams > 0 ? soft / grams : 0;
}

/** Days from pouring until a bar is cured, by water, oils and lye; common practice throughout. */
export function cureDays({ oils, lyeConcentration, kohShare }: CureFacts): Band {
  if (kohShare >= PASTE_FROM) return PASTE;
  const forWater = (USUAL_LYE - lyeConcentration) * DAYS_PER_POINT;
  const softness = Math.max(0, softShare(oils) - SOFT_FROM);
  const forOils = softness * 10 * DAYS_PER_SOFT_TENTH;
  const days = (usual: number, spread: number) =>
    Math.max(SHORTEST, Math.round(usual + forWater + forOils * spread));
  return { low: days(USUAL.low, 0.5), typical: days(USUAL.typical, 1), high: days(USUAL.high, 2) };
}
