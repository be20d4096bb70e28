import type { HeatSetting, MouldMaterial } from '../heat/setting.ts';
import { OVEN_C } from '../heat/surroundings.ts';
import { refuse } from '../refusal.ts';
import { MELTS_AT } from './blend-limits.ts';
import type { OilBlend } from './oils/blend.ts';
import type { LyeChoice } from './request.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'start-too-hot': { startC: number; most: number };
    /** Degrees Celsius; `most` for a mould of that material. */
    'oven-too-hot': { ovenC: number; most: number; material: MouldMaterial };
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

/** Plastic moulds soften or warp above this, C (common practice: household polypropylene sags under load from about 60). */
const HOTTEST_PLASTIC = 60;

/** The warmest oven that a mould is put into, C: 77 (170 F, common practice), 60 for plastic. */
export const hottestOven = (material: MouldMaterial): number =>
  material === 'plastic' ? HOTTEST_PLASTIC : OVEN_C;

/** Throws a Refusal `oven-too-hot` for an oven warmer than {@link hottestOven}. */
export function checkOven({ process, material, ovenC }: HeatSetting): void {
  const most = hottestOven(material);
  if (process === 'oven' && ovenC !== undefined && ovenC > most + 0.5)
    refuse('oven-too-hot', { ovenC, most, material });
}
