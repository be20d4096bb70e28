import type { HotBatter } from './estimate.ts';
import { quickHeat } from './estimate.ts';
import type { HeatShape } from './mould.ts';
import type { GelOdds, HeatSetting, RiskLevel } from './setting.ts';

/** One change that lowers the heat, with what it would bring. Degrees Celsius. */
export type Lever = {
  readonly id: 'start-cooler' | 'less-water' | 'no-insulation' | 'fridge';
  /** What to change to: a start temperature, or lye strength in percent; absent where the id says it all. */
  readonly to?: number;
  readonly peakCoreC: number;
  readonly gelChance: number;
  readonly risk: RiskLevel;
};

/** How likely white pigment is to crackle: an estimate from common practice, with what lowers it, best first. */
export type Crackle = { readonly risk: RiskLevel; readonly score: number; readonly levers: readonly Lever[] };

/** What the risk depends on besides heat. */
export type White = {
  /** White pigment over its ceiling in the whitest portion, 0 (none) to 1. */
  readonly ceilingShare: number;
  /** Percent of alkali in the lye water of that portion. */
  readonly lyeStrength: number;
};

/** Kelvin by which starting cooler is tried, and the coolest start worth trying, C. */
const COOLER_BY = 10;
const COOLEST_START = 27;
/** A lye strength that leaves little water and most makers can still pour (common practice). */
const LITTLE_WATER = 36;

/** Score from which a risk is called `some`, and `high` (estimate). */
const SOME = 0.1;
const HIGH = 0.4;

/**
 * Chance of gel, weighted by how much white and how much water there is: common practice names overheating, water and
 * white pigment as the three, none has published numbers. 0 to 1.
 */
function crackleScore(gel: GelOdds, white: White): number {
  const water = white.lyeStrength < 28 ? 1 : white.lyeStrength < 33 ? 0.8 : 0.6;
  return (gel.partial + gel.full) * water * (0.5 + 0.5 * white.ceilingShare);
}

function level(score: number): RiskLevel {
  if (score >= HIGH) return 'high';
  return score >= SOME ? 'some' : 'low';
}

/** The batter with its water changed to another lye strength (`from` and `to` in percent). */
export type Drier = (lyeStrength: number) => HotBatter;

/**
 * Crackle risk of the white in a loaf of known gel odds, and what each single change would make of it. Without white
 * there is none. `drier` gives the batter at another lye strength.
 */
export function crackleRisk(
  white: White,
  gel: GelOdds,
  loaf: {
    readonly shape: HeatShape;
    readonly batter: HotBatter;
    readonly setting: HeatSetting;
    readonly drier: Drier;
  },
): Crackle {
  if (white.ceilingShare <= 0) return { risk: 'none', score: 0, levers: [] };
  const score = crackleScore(gel, white);
  const { shape, batter, setting, drier } = loaf;
  const lever = (id: Lever['id'], changed: HeatSetting, wetness = batter, to?: number): Lever => {
    const { peakCoreC, gel: odds } = quickHeat(shape, wetness, changed);
    const strength = id === 'less-water' ? LITTLE_WATER : white.lyeStrength;
    const risk = level(crackleScore(odds, { ...white, lyeStrength: strength }));
    return { id, ...(to === undefined ? {} : { to }), peakCoreC, gelChance: odds.partial + odds.full, risk };
  };
  const levers: Lever[] = [];
  const cooler = Math.max(COOLEST_START, setting.startC - COOLER_BY);
  if (cooler < setting.startC) {
    levers.push(lever('start-cooler', { ...setting, startC: cooler }, batter, cooler));
  }
  if (white.lyeStrength < LITTLE_WATER - 1) {
    levers.push(lever('less-water', setting, drier(LITTLE_WATER), LITTLE_WATER));
  }
  if (setting.process === 'insulated' || setting.process === 'oven') {
    levers.push(lever('no-insulation', { ...setting, process: 'ambient' }));
  }
  if (setting.process !== 'fridge') levers.push(lever('fridge', { ...setting, process: 'fridge' }));
  return { risk: level(score), score, levers: levers.sort((a, b) => a.gelChance - b.gelChance) };
}
