import { DEFAULT_PURITY, hydroxideDemand, hydroxideIn, superfatPercent } from '../../../batch/lye/lye.ts';
import { NAOH_MOLAR_MASS } from '../../../batch/oils/fatty-acids.ts';
import type { Band } from '../../../origin.ts';
import type { LyeCheck } from '../sums/check.ts';
import type { Role, ToldAmount } from './told-amounts.ts';

/**
 * Lye that went in amiss, or oil missing that it was weighed for: how far over (percent of what was meant, less than nothing:
 * short), and the superfat it leaves, percent.
 */
export type LyeAmiss = {
  readonly percentOver: number;
  readonly superfat: Band;
  readonly verdict: LyeCheck['verdict'];
  /** Grams of lye that went in and that were meant, where both are told or follow. */
  readonly putGrams: number | undefined;
  readonly meantGrams: number | undefined;
  /** The superfat that was meant, percent; `isTold`: the question says it, else the usual one is taken. */
  readonly meantSuperfat: number;
  readonly isTold: boolean;
  /** Grams of oils of the same blend that would bring that superfat back; undefined where the oils are not weighed. */
  readonly moreOilGrams: number | undefined;
  /** Oil was missing that the lye was weighed for. */
  readonly isOilShort: boolean;
};

/** Points of superfat that oils of one name differ by: saponification ranges of Codex CXS 33 and 210, some 3 %. */
export const OILS_DIFFER = 3;
/**
 * Grams of NaOH that a gram of oils nobody named takes: common blends between olive, which takes least (Codex CXS 33, from
 * 184 mg KOH/g), and coconut, which takes most (CXS 210, to 265).
 */
const ANY_BLEND: Band = { low: 0.131, typical: 0.1355, high: 0.189 };
/** Oils in a batch that is told as a whole: at least this share of it (common practice: a third of water and lye on top). */
const LEAST_OILS_OF_BATCH = 0.65;

export type Alkali = 'NaOH' | 'KOH';

export const sum = (amounts: readonly ToldAmount[]): number =>
  amounts.reduce((all, { grams }) => all + grams, 0);
export const one = (amounts: readonly ToldAmount[]): number | undefined =>
  amounts.length === 1 ? amounts[0]!.grams : undefined;
export const ofRole = (amounts: readonly ToldAmount[], role: Role): readonly ToldAmount[] =>
  amounts.filter(amount => amount.role === role);

/** The lye that is told, whether it went in, was meant, or only stands there. */
export const ofLye = (amounts: readonly ToldAmount[]): readonly ToldAmount[] =>
  amounts.filter(({ role }) => role === 'lye' || role === 'meant' || role === 'put');

/** Moles of hydroxide in grams of an alkali as it is sold. */
export const molesOf = (grams: number, alkali: Alkali): number =>
  hydroxideIn([{ alkali, grams, exactGrams: grams, purity: DEFAULT_PURITY[alkali] }]);

/** Moles that grams of oils nobody named take up. */
export const demandOfAny = (grams: number, isBatch = false): Band => {
  const moles = (perGram: number) => (perGram * grams) / NAOH_MOLAR_MASS;
  return {
    low: moles(ANY_BLEND.low) * (isBatch ? LEAST_OILS_OF_BATCH : 1),
    typical: moles(ANY_BLEND.typical),
    high: moles(ANY_BLEND.high),
  };
};

export const demandOfNamed = (oils: readonly ToldAmount[]): Band =>
  hydroxideDemand(oils.map(({ oil, grams }) => ({ oil: oil!, grams })));

/** What is left where the oils are named: percents. */
export function leftByOils(moles: number, demand: Band): Band {
  const left = (all: number) => superfatPercent(moles, all);
  return { low: left(demand.low), typical: left(demand.typical), high: left(demand.high) };
}

/** Where only the recipe's own lye is known: it left what was meant, give or take what oils differ by. */
export const leftByRatio = (ratio: number, meant: number): Band => ({
  low: 100 - (100 + OILS_DIFFER - meant) * ratio,
  typical: 100 - (100 - meant) * ratio,
  high: 100 - (100 - OILS_DIFFER - meant) * ratio,
});

/** Where only the weight of the oils is known, and by how many moles the lye was over (or short: less than nothing). */
export function leftByDifference(moles: number, demand: Band, meant: number): Band {
  const left = (all: number) => meant - (100 * moles) / all;
  const ends = [left(demand.low), left(demand.high)];
  return {
    low: Math.min(...ends) - OILS_DIFFER,
    typical: left(demand.typical),
    high: Math.max(...ends) + OILS_DIFFER,
  };
}
