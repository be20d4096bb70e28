import type { Section } from './section.ts';

/** What drives a section through time. */
export type Drive = {
  /** Of the surroundings, C, by seconds since the pour. */
  readonly outsideC: (seconds: number) => number;
  readonly startC: number;
  /** Of walls when they differ from the soap; else they start with it. */
  readonly wallStartC?: number;
  readonly seconds: number;
  /**
   * Called before each step with the temperatures; adds the heat that cell `at` gives off in the step to `heat[at]`, J.
   * Returns false when nothing more can happen.
   */
  readonly react?: (temperature: Float64Array, heat: Float64Array, step: number) => boolean;
  /** Called after each step. */
  readonly watch?: (temperature: Float64Array, seconds: number) => boolean;
};

/** Where a run ended, and its books: J per metre or radian. */
export type March = {
  readonly temperature: Float64Array;
  readonly seconds: number;
  readonly given: number;
  readonly lost: number;
  readonly stored: number;
};

/** Of the largest stable step, so that rounding never tips it over. */
const SAFETY = 0.9;

/** Seconds of one explicit step: below the smallest capacity over conductance of any cell, where it is stable. */
export function stableStep(section: Section): number {
  const leaving = Float64Array.from(section.outsideConductance);
  eachLink(section, (from, to, conductance) => {
    leaving[from]! += conductance;
    leaving[to]! += conductance;
  });
  return (
    SAFETY *
    section.capacity.reduce((least, c, at) => Math.min(least, c / leaving[at]!), Number.POSITIVE_INFINITY)
  );
}

function eachLink(section: Section, visit: (from: number, to: number, conductance: number) => void): void {
  const { columns, outwardConductance, upwardConductance } = section;
  for (let at = 0; at < outwardConductance.length; at += 1) {
    const [outward, upward] = [outwardConductance[at]!, upwardConductance[at]!];
    if (outward > 0) visit(at, at + 1, outward);
    if (upward > 0) visit(at, at + columns, upward);
  }
}

/**
 * Marches the heat equation through a section by explicit finite volumes: every joule that leaves a cell arrives in a
 * neighbour or outside, so the books balance to rounding. Steps are {@link stableStep}, the last one shorter.
 */
export function march(section: Section, drive: Drive): March {
  const cells = section.capacity.length;
  const temperature = new Float64Array(cells).fill(drive.wallStartC ?? drive.startC);
  for (const at of section.soap) temperature[at] = drive.startC;
  const started = Float64Array.from(temperature);
  const heat = new Float64Array(cells);
  const warming = section.capacity.map(capacity => 1 / capacity);
  const largest = stableStep(section);
  let [seconds, given, lost] = [0, 0, 0];
  while (seconds < drive.seconds) {
    const step = Math.min(largest, drive.seconds - seconds);
    heat.fill(0);
    const active = drive.react?.(temperature, heat, step) ?? true;
    for (let at = 0; at < cells; at += 1) given += heat[at]!;
    lost += exchange(section, { temperature, heat, outsideC: drive.outsideC(seconds), step });
    for (let at = 0; at < cells; at += 1) temperature[at]! += heat[at]! * warming[at]!;
    seconds += step;
    if (drive.watch?.(temperature, seconds) === false || !active) break;
  }
  const stored = temperature.reduce((sum, t, at) => sum + (t - started[at]!) * section.capacity[at]!, 0);
  return { temperature, seconds, given, lost, stored };
}

type Moment = {
  readonly temperature: Float64Array;
  readonly heat: Float64Array;
  readonly outsideC: number;
  readonly step: number;
};

/** Adds to `heat` what each cell gains from its neighbours and the surroundings in a step; returns the loss, J. */
function exchange(section: Section, { temperature, heat, outsideC, step }: Moment): number {
  const { columns, outwardConductance, upwardConductance, outsideConductance } = section;
  let lost = 0;
  for (let at = 0; at < temperature.length; at += 1) {
    const here = temperature[at]!;
    const outward = outwardConductance[at]!;
    if (outward > 0) {
      const flow = outward * (here - temperature[at + 1]!) * step;
      heat[at]! -= flow;
      heat[at + 1]! += flow;
    }
    const upward = upwardConductance[at]!;
    if (upward > 0) {
      const flow = upward * (here - temperature[at + columns]!) * step;
      heat[at]! -= flow;
      heat[at + columns]! += flow;
    }
    const outside = outsideConductance[at]!;
    if (outside > 0) {
      const flow = outside * (here - outsideC) * step;
      heat[at]! -= flow;
      lost += flow;
    }
  }
  return lost;
}
