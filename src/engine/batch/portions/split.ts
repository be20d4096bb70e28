import { refuse } from '../../refusal.ts';
import type { PortionShare } from '../request.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'portions-exceed-batter': { askedMillilitres: number; batterMillilitres: number };
    'portions-parts-and-rest': Record<never, never>;
    'reserve-out-of-range': { percent: number; most: number };
  }
}

const MOST_RESERVE = 25;
/** A remainder too small to be a portion: it stays with the reserve. */
const CRUMB = 1e-6;

/** Millilitres of each portion as asked, what no portion claimed, and what clings to pot and cups. */
export type Split = {
  readonly portions: readonly number[];
  readonly unclaimed: number;
  readonly reserve: number;
};

/**
 * Splits a batter so that portions, what nobody claimed and the reserve add up to it exactly. Percents and parts are
 * of what can be poured, that is the batter less its reserve; a reserve gives way to volumes that need it.
 * Throws a Refusal: `portions-exceed-batter`, `portions-parts-and-rest`, `reserve-out-of-range`.
 */
export function splitBatter(
  batter: { readonly millilitres: number; readonly grams: number },
  shares: readonly PortionShare[],
  reservePercent: number,
): Split {
  if (!(reservePercent >= 0 && reservePercent <= MOST_RESERVE)) {
    refuse('reserve-out-of-range', { percent: reservePercent, most: MOST_RESERVE });
  }
  const parts = shares.reduce((sum, share) => sum + (share.by === 'parts' ? share.parts : 0), 0);
  const hasRest = shares.some(({ by }) => by === 'rest');
  if (parts > 0 && hasRest) refuse('portions-parts-and-rest', {});
  const pourable = batter.millilitres * (1 - reservePercent / 100);
  const fixed = shares.map(share => fixedMillilitres(share, batter, pourable));
  const claimed = fixed.reduce((sum, millilitres) => sum + millilitres, 0);
  if (claimed > batter.millilitres * (1 + 1e-9)) {
    refuse('portions-exceed-batter', { askedMillilitres: claimed, batterMillilitres: batter.millilitres });
  }
  const left = Math.max(0, pourable - claimed);
  const portions = shares.map((share, at) => {
    if (share.by === 'rest') return left;
    return share.by === 'parts' ? (left * share.parts) / parts : fixed[at]!;
  });
  const taken = parts > 0 || hasRest ? left : 0;
  const unclaimed = left - taken > CRUMB * batter.millilitres ? left - taken : 0;
  const reserve = batter.millilitres - portions.reduce((sum, one) => sum + one, unclaimed);
  return { portions, unclaimed, reserve: Math.max(0, reserve) };
}

function fixedMillilitres(
  share: PortionShare,
  batter: { readonly millilitres: number; readonly grams: number },
  pourable: number,
): number {
  switch (share.by) {
    case 'volume':
      return share.millilitres;
    case 'mass':
      return (share.grams * batter.millilitres) / batter.grams;
    case 'percent':
      return (pourable * share.percent) / 100;
    case 'parts':
    case 'rest':
      return 0;
  }
}
