import { refuse } from '../refusal.ts';
import { MELTS_AT } from './blend-limits.ts';
import type { LyeChoice, OilBlend } from './request.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'start-too-hot': { startC: number; most: number };
  }
}

/** Batter hotter than this foams, separates or climbs out of the mould, C (common practice). */
export const HOTTEST_START = 60;
/** Oils that melt from here on are poured hot, C (common practice). */
const NEEDS_HEAT = 50;
/** Nothing is poured hotter, whatever has to melt, C (common practice: carnauba melts at 84). */
const HOTTEST_EVER = 85;

/**
 * Throws a Refusal `start-too-hot` for a batter hotter than cold process takes: 60 C for sodium hydroxide unless a wax or
 * hard fat in the blend melts near that, 85 C for anything. Degrees Celsius.
 */
export function checkStart(startC: number, oils: OilBlend, lye: LyeChoice): void {
  const melting = Math.max(...oils.shares.map(({ oil }) => MELTS_AT[oil.id] ?? 0));
  const most = lye.kind === 'KOH' || melting >= NEEDS_HEAT ? HOTTEST_EVER : HOTTEST_START;
  if (startC > most) refuse('start-too-hot', { startC, most });
}
