import type { LyeQuestion } from '../question.ts';

/**
 * Which alkali is how pure, percent, as the options of a lye question tell it ("KOH 90%", or a purity beside sodium hydroxide);
 * undefined where none is told. Pure.
 */
export function purityTold({
  lye,
  purity,
}: LyeQuestion['given']): { readonly alkali: 'NaOH' | 'KOH'; readonly percent: number } | undefined {
  const [, potash] = /^KOH (\d+(?:[.,]\d+)?)%$/u.exec(String(lye ?? '')) ?? [];
  const percent = potash ?? purity;
  if (percent === undefined) return undefined;
  return {
    alkali: potash === undefined ? 'NaOH' : 'KOH',
    percent: Number(String(percent).replace(',', '.')),
  };
}
