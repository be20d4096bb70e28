import type { Band } from '../origin.ts';
import { GEL_ONSET_SPREAD, gelKind, gelOnset, ONSET_OFFSETS } from './gel.ts';
import { rateTable, SAPONIFICATION, SAPONIFICATION_HEAT } from './kinetics.ts';
import { type HeatShape, mouldSection } from './mould.ts';
import { CURVE_MINUTES, gelledShare, type LoafRun, runLoaf } from './run.ts';
import type { GelOdds, HeatSetting } from './setting.ts';
import { outsideTemperature, TRANSFER } from './surroundings.ts';

/** The batter as its heat sees it. */
export type HotBatter = {
  /** g/ml. */
  readonly density: number;
  /** J/(g K). */
  readonly heatCapacity: number;
  /** Moles of hydroxide used up by the oils in a gram of batter. */
  readonly hydroxidePerGram: number;
  /** Water in percent of soap and water together, once all has reacted. */
  readonly waterPercent: number;
  /** How many times as fast as plain batter: sugars and some fragrances speed it up; 1 is plain. */
  readonly speed: number;
  /** Heat that sugar adds of its own, kJ in a gram of batter; none unless said. */
  readonly sugarHeatPerGram?: number;
};

export type GelVerdict = 'none' | 'partial' | 'full' | 'uncertain';

/** How a loaf warms in its first day: an estimate over the band of what is not known. Degrees Celsius. */
export type HeatEstimate = {
  readonly peakCoreC: number;
  readonly peakCoreBand: Band;
  readonly peakEdgeC: number;
  readonly peakEdgeBand: Band;
  readonly peakHours: number;
  readonly gel: GelOdds;
  readonly verdict: GelVerdict;
  readonly gelOnset: Band;
  /** Typical share of the section that gels, 0 to 1. */
  readonly gelledShare: number;
  /** A ring where gelled core meets pale edge: its chance is that of partial gel. Distance from the side, should there be one. */
  readonly ring: { readonly chance: number; readonly millimetresFromSide: number | undefined };
  /** Chance that the core passes 85 C, where loaves crack, heave or separate (common practice). */
  readonly overheatChance: number;
  /** The core from the pour until it has cooled well past its peak; the band over the runs that still go, C. */
  readonly curve: readonly (Band & { readonly hours: number })[];
};

/** Below this, no outcome is likely enough to be called. */
const SURE = 0.65;
const OVERHEATED_C = 85;
/** Celsius in the core at which the water in a loaf boils and throws batter out: steam tables, at sea level. */
export const BOILING_C = 100;

type Spread = readonly (readonly [value: number, weight: number])[];

/** Ends and middle of a band as three values: the middle half of the weight. */
function threeOf(band: Band): Spread {
  return [
    [band.low, 0.25],
    [band.typical, 0.5],
    [band.high, 0.25],
  ];
}

type WeightedRun = { readonly run: LoafRun; readonly weight: number };

/**
 * Estimates a loaf over the band of heat of saponification, speed and heat loss (27 runs of the heat equation in its
 * cross-section) and over the band of gel temperature. Pure and deterministic; plain data in and out, so a worker can
 * run it. All of it is estimate: measure one loaf with a probe to narrow it.
 */
export function estimateHeat(shape: HeatShape, batter: HotBatter, setting: HeatSetting): HeatEstimate {
  const runs = bandRuns(shape, batter, setting, threeOf(TRANSFER[setting.process]));
  const typical = runs.reduce((best, one) => (one.weight > best.weight ? one : best)).run;
  const onset = gelOnset(batter.waterPercent);
  const gel = gelOdds(runs, onset);
  return {
    peakCoreC: typical.peakCoreC,
    peakCoreBand: bandOver(runs, typical, run => run.peakCoreC),
    peakEdgeC: typical.peakEdgeC,
    peakEdgeBand: bandOver(runs, typical, run => run.peakEdgeC),
    peakHours: typical.peakHours,
    gel,
    verdict: verdictOf(gel),
    gelOnset: { low: onset - GEL_ONSET_SPREAD, typical: onset, high: onset + GEL_ONSET_SPREAD },
    gelledShare: gelledShare(typical, onset),
    ring: { chance: gel.partial, millimetresFromSide: ringDistance(runs, onset, shape) },
    overheatChance: sumOf(runs, run => (run.peakCoreC >= OVERHEATED_C ? 1 : 0)),
    curve: typical.curve.map((_, at) => ({
      hours: (at * CURVE_MINUTES) / 60,
      ...bandOver(
        runs.filter(({ run }) => run.curve.length > at),
        typical,
        run => run.curve[at]!,
      ),
    })),
  };
}

/** The same over fewer runs (heat loss held typical): for comparing one change with another. */
export function quickHeat(
  shape: HeatShape,
  batter: HotBatter,
  setting: HeatSetting,
): Pick<HeatEstimate, 'peakCoreC' | 'gel'> {
  const runs = bandRuns(shape, batter, setting, [[TRANSFER[setting.process].typical, 1]]);
  const typical = runs.reduce((best, one) => (one.weight > best.weight ? one : best)).run;
  return { peakCoreC: typical.peakCoreC, gel: gelOdds(runs, gelOnset(batter.waterPercent)) };
}

function bandRuns(
  shape: HeatShape,
  batter: HotBatter,
  setting: HeatSetting,
  transfers: Spread,
): readonly WeightedRun[] {
  const capacity = batter.density * 1e6 * batter.heatCapacity;
  const rates = threeOf(SAPONIFICATION.rateAt40C).map(
    ([rate, weight]) => [rateTable(SAPONIFICATION, rate * batter.speed), weight] as const,
  );
  const outsideC = outsideTemperature(setting);
  return transfers.flatMap(([transfer, transferWeight]) => {
    const section = mouldSection(shape, setting, capacity, transfer);
    return threeOf(SAPONIFICATION_HEAT).flatMap(([kilojoules, heatWeight]) =>
      rates.map(([table, rateWeight]) => ({
        weight: transferWeight * heatWeight * rateWeight,
        run: runLoaf({
          section,
          startC: setting.startC,
          wallStartC: setting.roomC,
          outsideC,
          heatPerVolume:
            (kilojoules * batter.hydroxidePerGram + (batter.sugarHeatPerGram ?? 0)) *
            1000 *
            batter.density *
            1e6,
          rates: table,
        }),
      })),
    );
  });
}

function sumOf(runs: readonly WeightedRun[], value: (run: LoafRun) => number): number {
  return runs.reduce((sum, { run, weight }) => sum + weight * value(run), 0);
}

function gelOdds(runs: readonly WeightedRun[], onset: number): GelOdds {
  const odds = { none: 0, partial: 0, full: 0 };
  for (const { run, weight } of runs) {
    for (const [offset, share] of ONSET_OFFSETS) {
      odds[gelKind(gelledShare(run, onset + offset))] += weight * share;
    }
  }
  return odds;
}

function verdictOf(gel: GelOdds): GelVerdict {
  const likely = (['none', 'partial', 'full'] as const).find(kind => gel[kind] >= SURE);
  return likely ?? 'uncertain';
}

/** About the typical run: what one run in ten stays below, and what one in ten goes above. */
function bandOver(runs: readonly WeightedRun[], typical: LoafRun, value: (run: LoafRun) => number): Band {
  const rising = runs
    .map(({ run, weight }) => ({ value: value(run), weight }))
    .sort((a, b) => a.value - b.value);
  const all = rising.reduce((sum, { weight }) => sum + weight, 0);
  const quantile = (share: number) => {
    let sum = 0;
    return rising.find(({ weight }) => {
      sum += weight / all;
      return sum >= share - 1e-12;
    })!.value;
  };
  return { low: quantile(0.1), typical: value(typical), high: quantile(0.9) };
}

/** Where a ring would stand if there is one, half way up, millimetres from the side: the mean over the cases with one. */
function ringDistance(runs: readonly WeightedRun[], onset: number, shape: HeatShape): number | undefined {
  const halfMillimetres = (shape.shape === 'loaf' ? shape.widthCm : shape.diameterCm) * 5;
  let [sum, weights] = [0, 0];
  for (const { run, weight } of runs) {
    for (const [offset, onsetWeight] of ONSET_OFFSETS) {
      const share = gelledShare(run, onset + offset);
      if (gelKind(share) !== 'partial') continue;
      // The gelled part keeps the section's own shape, so its sides shrink with the root of its share.
      sum += weight * onsetWeight * halfMillimetres * (1 - Math.sqrt(share));
      weights += weight * onsetWeight;
    }
  }
  return weights === 0 ? undefined : sum / weights;
}
