import { refuse } from '../refusal.ts';
import type { Oil, OilMass } from './oils/oil.ts';

declare module '../refusal.ts' {
  interface Reasons {
    /** Hard fats and waxes that are solid at the pouring temperature are too large a part of the blend. */
    'blend-sets-before-pour': { oil: Oil['names']; percent: number; meltsC: number; startC: number };
    /** Of a wax only about half is something that lye turns into soap. */
    'wax-too-much': { percent: number; most: number };
  }
}

/**
 * Where waxes, fatty acids and the hardest fats are melted through, C. From memory: European Pharmacopoeia drop and freezing points
 * (beeswax 61 to 66, carnauba 80 to 88, stearic acid 50 about 54 to 58, lanolin 38 to 44; refined coconut 23 to 26); the acids from the
 * CRC Handbook.
 */
export const MELTS_AT: Readonly<Record<string, number>> = {
  coconut: 24,
  babassu: 24,
  'palm-kernel': 26,
  beeswax: 64,
  candelilla: 70,
  carnauba: 84,
  lanolin: 41,
  'stearic-acid': 56,
  'lauric-acid': 44,
  'myristic-acid': 54,
  'palmitic-acid': 63,
  'hydrogenated-soybean': 68,
  'palm-stearin': 52,
};

/** A percent or two stays dissolved in warm oil; beyond, grains or a false trace show (common practice). */
const DISSOLVES_PERCENT = 2;
/** With so much of it solid, what is poured is no batter (common practice). */
const MOST_SOLID_PERCENT = 25;
/** A wax is half alcohols: beyond this a bar stays half wax (common practice). */
const MOST_WAX_PERCENT = 30;

/** An oil of the blend that is solid at the temperature asked, and how much of the blend it is. */
export type Solid = { readonly oil: Oil; readonly percent: number; readonly meltsC: number };

/** What of a blend is solid at that pouring temperature, the largest part first. Percents of the oils, degrees Celsius. */
export function solidAt(oils: readonly OilMass[], startC: number): readonly Solid[] {
  const all = oils.reduce((sum, { grams }) => sum + grams, 0);
  return oils
    .flatMap(({ oil, grams }) => {
      const meltsC = MELTS_AT[oil.id];
      const percent = (100 * grams) / all;
      return meltsC !== undefined && meltsC > startC && percent > DISSOLVES_PERCENT
        ? [{ oil, percent, meltsC }]
        : [];
    })
    .sort((a, b) => b.percent - a.percent);
}

/**
 * Degrees Celsius, whole, above which a blend pours that is solid at `startC`; undefined where it pours at that. The lye of a shaving soap is the
 * same however hot it is poured.
 */
export function poursFrom(oils: readonly OilMass[], startC: number): number | undefined {
  const solid = solidAt(oils, startC);
  const percent = solid.reduce((sum, one) => sum + one.percent, 0);
  return percent > MOST_SOLID_PERCENT ? Math.ceil(Math.max(...solid.map(({ meltsC }) => meltsC))) : undefined;
}

/** Throws a Refusal `blend-sets-before-pour` or `wax-too-much` for a blend that cannot be poured, or never is soap. */
export function checkBlend(oils: readonly OilMass[], startC: number): void {
  const all = oils.reduce((sum, { grams }) => sum + grams, 0);
  const wax = oils.reduce((sum, { oil, grams }) => sum + (oil.oilClass === 'wax' ? grams : 0), 0);
  if ((100 * wax) / all > MOST_WAX_PERCENT) {
    refuse('wax-too-much', { percent: (100 * wax) / all, most: MOST_WAX_PERCENT });
  }
  const solid = solidAt(oils, startC);
  const percent = solid.reduce((sum, one) => sum + one.percent, 0);
  const [most] = solid;
  if (most && percent > MOST_SOLID_PERCENT) {
    const meltsC = Math.max(...solid.map(one => one.meltsC));
    refuse('blend-sets-before-pour', { oil: most.oil.names, percent, meltsC, startC });
  }
}
