import { parseLye } from '../../../batch/lye/lye-choice.ts';
import type { LyeQuestion } from '../question.ts';

/**
 * Which alkali is how pure, percent, by the options of a lye question ("KOH 90%", or a purity beside sodium hydroxide); undefined
 * where none is told. Pure.
 */
export function purityTold({
  lye,
  purity,
}: LyeQuestion['given']): { readonly alkali: 'NaOH' | 'KOH'; readonly percent: number } | undefined {
  const choice = lye === undefined ? undefined : parseLye(lye);
  if (choice?.kind === 'KOH' && choice.kohPurity !== undefined)
    return { alkali: 'KOH', percent: 100 * choice.kohPurity };
  return purity === undefined ? undefined : { alkali: 'NaOH', percent: purity };
}
