import type { Band } from '../origin.ts';
import type { HeatProcess, HeatSetting } from './setting.ts';

/**
 * Heat transfer from the outside of a mould, W/(m2 K). From memory: natural convection and radiation of a bare mould, 6 to 12;
 * wrapped in towels 1 to 2.
 */
export const TRANSFER: Readonly<Record<HeatProcess, Band>> = {
  ambient: { low: 6, typical: 8, high: 12 },
  insulated: { low: 1, typical: 1.5, high: 2.2 },
  oven: { low: 6, typical: 8, high: 12 },
  fridge: { low: 6, typical: 8, high: 12 },
};

/** Of a kitchen fridge, C (common practice: how makers keep a loaf in its first day). */
const FRIDGE_C = 5;
/** Where makers set an oven before they switch it off, C (170 F; common practice). */
export const OVEN_C = 77;
/** Seconds in which a closed oven that is switched off loses all but 1/e of its warmth (estimate). */
const OVEN_COOLING = 1.5 * 3600;

/** The air about the mould, C, by seconds since the pour. A switched-off oven falls back to the room. */
export function outsideTemperature(setting: HeatSetting): (seconds: number) => number {
  switch (setting.process) {
    case 'ambient':
    case 'insulated':
      return () => setting.roomC;
    case 'fridge':
      return () => Math.min(FRIDGE_C, setting.roomC);
    case 'oven': {
      const above = (setting.ovenC ?? OVEN_C) - setting.roomC;
      return seconds => setting.roomC + above * Math.exp(-seconds / OVEN_COOLING);
    }
  }
}
