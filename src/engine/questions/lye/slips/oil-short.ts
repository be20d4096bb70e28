import { knownOil } from '../../../batch/oils/find-oil.ts';
import type { Band } from '../../../origin.ts';
import { USUAL_SUPERFAT, verdictOf } from '../sums/check.ts';
import { demandOfAny, demandOfNamed, type LyeAmiss, OILS_DIFFER } from './reckoned.ts';
import type { ToldAmount } from './told-amounts.ts';

const MISSING =
  /(?<!\p{L})(?:forgot|left out|missed|short of|olvide|olvido|me olvide|faltaron|falto|sobraron|sobro|left (?:over )?in the)(?!\p{L})/u;
const OF_LYE: ReadonlySet<string> = new Set(['put', 'lye', 'more', 'less', 'water']);

/** The last oil that is named before a place in a text. */
function oilBefore(plain: string, at: number) {
  const words = plain
    .slice(0, at)
    .split(/[ ,;:]+/u)
    .filter(Boolean);
  for (let end = words.length; end > 0; end -= 1)
    for (let count = Math.min(3, end); count > 0; count -= 1) {
      const oil = knownOil(words.slice(end - count, end).join(' '));
      if (oil) return oil;
    }
  return undefined;
}

/**
 * Oil that is missing from a batch whose weight is told: lye for all of it meets the rest alone. Undefined where two weights do
 * not tell that. Takes plain words; percents and grams. Pure.
 */
export function oilShortIn(
  plain: string,
  amounts: readonly ToldAmount[],
  superfat: number | undefined,
): LyeAmiss | undefined {
  if (!MISSING.test(plain) || amounts.length !== 2 || amounts.some(({ role }) => OF_LYE.has(role)))
    return undefined;
  const [missing, whole] = amounts.toSorted((a, b) => a.grams - b.grams) as [ToldAmount, ToldAmount];
  const oil = missing.oil ?? (missing.role === 'whole' ? undefined : oilBefore(plain, missing.at));
  if (!oil || whole.oil !== undefined || !(missing.grams < whole.grams)) return undefined;
  const gone = demandOfNamed([{ ...missing, oil }]);
  const rest = demandOfAny(whole.grams - missing.grams, whole.isBatch);
  const meant = superfat ?? USUAL_SUPERFAT;
  const over = (part: number, of: number) => ((100 - meant) * part) / of;
  const band: Band = {
    low: meant - over(gone.high, rest.low) - OILS_DIFFER,
    typical: meant - over(gone.typical, rest.typical),
    high: meant - over(gone.low, rest.high) + OILS_DIFFER,
  };
  return {
    percentOver: (100 * gone.typical) / rest.typical,
    superfat: band,
    verdict: verdictOf(band),
    putGrams: undefined,
    meantGrams: undefined,
    meantSuperfat: meant,
    isTold: superfat !== undefined,
    moreOilGrams: missing.grams,
    isOilShort: true,
  };
}
