import { march } from './conduction.ts';
import { growthTable, rateFrom, SAPONIFICATION } from './kinetics.ts';
import type { Section } from './section.ts';

/** One run of a loaf through its first day. */
export type LoafRun = {
  /** The hottest any soap cell got, C, and when, hours after the pour. */
  readonly peakCoreC: number;
  readonly peakHours: number;
  /** The hottest the soap got {@link EDGE_DEPTH} inside the middle of the side wall, C. */
  readonly peakEdgeC: number;
  /** What each soap cell reached while there was soap to gel, C, with its share of the section; hottest first. */
  readonly reached: readonly { readonly celsius: number; readonly share: number; readonly at: number }[];
  readonly converted: number;
  /** The hottest soap cell at the pour and at every {@link CURVE_MINUTES} after it, C. */
  readonly curve: readonly number[];
};

export type LoafDrive = {
  readonly section: Section;
  readonly startC: number;
  readonly wallStartC: number;
  readonly outsideC: (seconds: number) => number;
  /** Heat of all the saponification, J for each m3 of batter. */
  readonly heatPerVolume: number;
  /** From `rateTable`. */
  readonly rates: Float64Array;
};

/** Time between two points of a curve. */
export const CURVE_MINUTES = 10;

const DAY = 24 * 3600;
/** There is no gel without soap: what must have converted for a hot cell to count. */
const SOAP_ENOUGH = 0.4;
/** The run ends once the core has cooled this far below its peak, K. */
const COOLED = 6;

/** Where the edge is measured, metres inside the wall: as deep as a probe must sit to be in soap. */
const EDGE_DEPTH = 0.0025;

/** Runs a loaf until its core is well past its peak, or for a day. Deterministic; about 2 x 10^4 cell steps. */
export function runLoaf(drive: LoafDrive): LoafRun {
  const { section, rates, heatPerVolume } = drive;
  const { soap, volume } = section;
  const poured = SAPONIFICATION.convertedAtPour;
  const converted = new Float64Array(volume.length).fill(poured);
  const odds = new Float64Array(volume.length).fill(poured / (1 - poured));
  const reached = new Float64Array(volume.length).fill(Number.NEGATIVE_INFINITY);
  const edge = edgeCell(section);
  const width = section.widths[edge % section.columns]!;
  const beyond = (width / 2 - EDGE_DEPTH) / width;
  const peak = { core: drive.startC, hours: 0, edge: drive.startC };
  const curve = [drive.startC];
  let growth = { step: Number.NaN, table: rates };
  const react = (temperature: Float64Array, heat: Float64Array, step: number) => {
    if (growth.step !== step) growth = { step, table: growthTable(rates, step) };
    const { table } = growth;
    for (let place = 0; place < soap.length; place += 1) {
      const at = soap[place]!;
      const grown = odds[at]! * rateFrom(table, temperature[at]!);
      const after = grown / (1 + grown);
      heat[at]! += (after - converted[at]!) * heatPerVolume * volume[at]!;
      odds[at] = grown;
      converted[at] = after;
    }
    return true;
  };
  const watch = (temperature: Float64Array, seconds: number) => {
    let hottest = Number.NEGATIVE_INFINITY;
    for (let place = 0; place < soap.length; place += 1) {
      const at = soap[place]!;
      const here = temperature[at]!;
      if (here > hottest) hottest = here;
      if (here > reached[at]! && converted[at]! >= SOAP_ENOUGH) reached[at] = here;
    }
    if (seconds >= curve.length * CURVE_MINUTES * 60) curve.push(hottest);
    if (hottest > peak.core) {
      peak.core = hottest;
      peak.hours = seconds / 3600;
    }
    // On the line through the outermost two cells: cells of another width measure the same depth.
    const atEdge = temperature[edge]! - beyond * (temperature[edge - 1]! - temperature[edge]!);
    peak.edge = Math.max(peak.edge, atEdge);
    return hottest > peak.core - COOLED || converted[soap[0]!]! < SOAP_ENOUGH;
  };
  march(section, { ...drive, seconds: DAY, react, watch });
  const all = soap.reduce((sum, at) => sum + volume[at]!, 0);
  return {
    peakCoreC: peak.core,
    peakHours: peak.hours,
    peakEdgeC: peak.edge,
    reached: Array.from(soap, at => ({ celsius: reached[at]!, share: volume[at]! / all, at })).sort(
      (a, b) => b.celsius - a.celsius,
    ),
    curve,
    converted: soap.reduce((sum, at) => sum + converted[at]! * volume[at]!, 0) / all,
  };
}

/** The outermost soap cell half way up. */
function edgeCell({ soap, columns }: Section): number {
  const middle = Math.floor(soap[Math.floor(soap.length / 2)]! / columns);
  return soap.filter(at => Math.floor(at / columns) === middle).reduce((far, at) => Math.max(far, at), 0);
}

/** The share of the section that got at least that hot, 0 to 1. */
export function gelledShare(run: LoafRun, onsetC: number): number {
  return run.reached.reduce((sum, { celsius, share }) => sum + (celsius >= onsetC ? share : 0), 0);
}
