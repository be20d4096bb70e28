import { additiveTotals, parseAdditives, weighAdditives } from '../../../batch/additives/additives.ts';
import { hydroxideDemand, hydroxideIn, superfatPercent } from '../../../batch/lye/lye.ts';
import { parseWater, waterGrams } from '../../../batch/lye/water.ts';
import { OILS } from '../../../batch/oils/index.ts';
import { parseOils } from '../../../batch/oils/lists/oil-list.ts';
import type { Band } from '../../../origin.ts';
import { refuse } from '../../../refusal.ts';

/** Lye as it was weighed. */
export type WeighedLye = {
  readonly alkali: 'NaOH' | 'KOH';
  readonly grams: number;
  /** 0 to 1. */
  readonly purity: number;
};

/** What weighed lye does in weighed oils: superfat in percent, less than nothing being lye that no oil takes. */
export type LyeCheck = {
  readonly lye: WeighedLye;
  readonly oilGrams: number;
  readonly superfat: Band;
  readonly verdict: 'lye-heavy' | 'may-be-heavy' | 'usual' | 'soft';
  /** The lye for that recipe at the superfat that is wanted, or the usual one, grams; and that superfat, percent. */
  readonly usualGrams: number;
  readonly usualPercent: number;
};

/** Percent; from the plan's default, and where a bar turns soft and soon rancid (common practice). */
export const USUAL_SUPERFAT = 5;
const SOFT_FROM = 15;
export const USUAL_STRENGTH = 33;

/**
 * The superfat that weighed lye leaves in weighed oils; acids take their lye first. Grams, percents. Throws the Refusals
 * of `parseOils` and `parseAdditives`, and `size-missing` where the oils are told in percents without a size.
 */
export function checkLye(
  lye: WeighedLye,
  recipe: {
    readonly oils: string;
    readonly additives?: string | undefined;
    readonly sizeGrams?: number | undefined;
    /** Percent that was wanted. */
    readonly superfat?: number | undefined;
  },
): LyeCheck {
  const blend = parseOils(recipe.oils);
  const oilGrams = recipe.sizeGrams ?? blend.totalGrams ?? refuse('size-missing', {});
  const oils = blend.shares.map(({ oil, share }) => ({ oil, grams: share * oilGrams }));
  const added = additiveTotals(
    weighAdditives(parseAdditives(recipe.additives ?? ''), { oilGrams, waterGrams: 0 }),
  );
  // How fat a milk or a yolk is nobody weighed: it may leave the bar milder than told, never hotter.
  const demand = { ...hydroxideDemand(oils), high: hydroxideDemand([...oils, ...added.fats]).high };
  const told = hydroxideIn([{ ...lye, exactGrams: lye.grams }]);
  const left = (all: number) => superfatPercent(told - added.acidMoles, all);
  const superfat = { low: left(demand.low), typical: left(demand.typical), high: left(demand.high) };
  const usualPercent = recipe.superfat ?? USUAL_SUPERFAT;
  const usual = demand.typical * (1 - usualPercent / 100) + added.acidMoles;
  const usualGrams = (lye.grams * usual) / told;
  return { lye, oilGrams, superfat, verdict: verdictOf(superfat), usualGrams, usualPercent };
}

/** What a superfat, percent, makes of a bar. */
export function verdictOf({ low, typical }: Band): LyeCheck['verdict'] {
  if (typical < 0) return 'lye-heavy';
  if (low < 0) return 'may-be-heavy';
  return typical > SOFT_FROM ? 'soft' : 'usual';
}

/** Percent; lye of a tenth, or less, of what any recipe wants is a figure gone wrong rather than a soft soap. */
const ABSURD_SUPERFAT = 80;

/**
 * Grams of lye that were likely meant where a figure is by tens too small for its oils: as it would be a usual recipe; undefined
 * elsewhere. Pure.
 */
export function slippedTo({ lye, superfat, usualGrams }: LyeCheck): number | undefined {
  if (superfat.typical < ABSURD_SUPERFAT) return undefined;
  return [10, 100, 1000]
    .map(times => lye.grams * times)
    .find(grams => grams <= usualGrams * 1.03 && grams >= usualGrams * 0.85);
}

/** What is known of lye for oils nobody named: whether even the hungriest oil takes it, and the mildest. */
export function lyeForAnyOil(lye: WeighedLye, oilGrams: number): 'too-much-for-all' | 'hangs-on-oils' {
  const told = hydroxideIn([{ ...lye, exactGrams: lye.grams }]);
  const most = Math.max(...OILS.map(oil => hydroxideDemand([{ oil, grams: oilGrams }]).typical));
  return told > most ? 'too-much-for-all' : 'hangs-on-oils';
}

/**
 * Water for weighed lye, grams, and how strong that lye is, percent: as asked, else at the usual 33 %. `oilGrams` is what
 * a percent of the oils is taken of; without it that percent is refused. Throws the Refusals of `parseWater`, and
 * `size-missing`.
 */
export function waterForLye(
  lyeGrams: number,
  asked: string = `${USUAL_STRENGTH}% lye`,
  oilGrams?: number,
): { readonly grams: number; readonly percent: number } {
  const ask = parseWater(asked);
  if (ask.by === 'percent-of-oils' && oilGrams === undefined) refuse('size-missing', {});
  const grams = waterGrams(ask, lyeGrams, oilGrams ?? 0);
  return { grams, percent: (100 * lyeGrams) / (lyeGrams + grams) };
}
