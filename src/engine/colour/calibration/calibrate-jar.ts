import { colourantById } from '../../colourants/catalogue.ts';
import { refuse } from '../../refusal.ts';
import { opticsOf } from '../jars/colourant-optics.ts';
import { barLab } from '../mixing/bar.ts';
import { baseSoap, type ShadeShare } from '../mixing/base-soap.ts';
import { hexOfLab, type Lab } from '../spectra/cielab.ts';
import { darkened, darkerBy } from './darker-base.ts';
import { jarOptics } from './joint/jar-model.ts';
import { learnJars } from './joint/learn-jars.ts';
import type { BarFit, ScaleBelief, TestBar } from './test-bar.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'calibration-without-bars': Record<string, never>;
    'calibration-dose-unusable': { grams: number };
  }
}

export type JarCalibrationAsk = {
  /** The catalogue's id. */
  readonly colourant: string;
  readonly bars: readonly TestBar[];
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
  /** What others found of the same product, where they share. */
  readonly pool?: readonly ScaleBelief[];
};

/** A fitted colour at one dose: of the kind as it was believed, and of this jar. */
export type CurvePoint = { readonly grams: number; readonly usual: Lab; readonly fitted: Lab };

export type JarCalibration = {
  /** Scales on K and S, 1 where the jar is as its kind. */
  readonly scale: { readonly k: number; readonly s: number };
  /** What the bars alone say (the likelihood, as a normal distribution), without the prior; goes into the group's pool. */
  readonly evidence: ScaleBelief;
  /** Stated CIEDE2000 at full dose: of a jar nobody tried, and after these bars. */
  readonly plusMinus: { readonly before: number; readonly after: number };
  readonly bars: readonly BarFit[];
  /** Mean CIEDE2000 of the bars as foretold of the kind, and of this jar. */
  readonly before: number;
  readonly after: number;
  /** `at-bound`: the jar would have to be over six times off its kind. `poor-fit`: no jar of the kind explains the bars. */
  readonly doubt: 'at-bound' | 'poor-fit' | undefined;
  /** From nothing to a quarter more than the deepest bar. */
  readonly curve: readonly CurvePoint[];
};

/** Bars further off than this on average (CIEDE2000) are not explained: they speak of something else. */
export const POOR_FIT = 10;
/** Further from its kind nobody sells it under its name, as a natural logarithm. */
const BOUND = Math.log(6);
const POINTS = 36;

/**
 * What test bars say of one jar, by the same learning that cured batches go through; plain bars correct the base.
 * Throws a Refusal: `calibration-without-bars`, `calibration-dose-unusable`; an Error for a colourant that the catalogue does
 * not have.
 */
export function calibrateJar({
  colourant: id,
  bars,
  shades,
  gelled,
  pool,
}: JarCalibrationAsk): JarCalibration {
  const colourant = colourantById(id);
  if (!colourant) throw new Error(`no colourant has the id ${id}`);
  for (const { grams } of bars)
    if (!(grams >= 0 && grams < 50)) refuse('calibration-dose-unusable', { grams });
  const coloured = bars.filter(({ grams }) => grams > 0);
  if (coloured.length === 0) refuse('calibration-without-bars', {});
  const darker = darkerBy(baseSoap(shades, gelled), bars);
  const base = darkened(baseSoap(shades, gelled), darker);
  const found = learnJars({
    jars: [{ colourant: id, ...(pool && { pool }) }],
    bars: coloured.map(({ grams, lab, plusMinus }) => ({
      mix: [{ jar: 0, grams }],
      shades,
      gelled,
      darker,
      lab,
      plusMinus,
    })),
  });
  const [jar] = found.jars;
  const { parameters, evidence, plusMinus, usual } = jar!;
  const kind = opticsOf(colourant);
  const seen = (optics: typeof kind, grams: number) => barLab([{ optics, grams }], base);
  const [asUsual, asFound] = [jarOptics(kind, usual), jarOptics(kind, parameters)];
  const after = mean(found.bars.map(bar => bar.after));
  const deepest = Math.max(...coloured.map(({ grams }) => grams));
  return {
    scale: { k: Math.exp(parameters[0]), s: Math.exp(parameters[1]) },
    evidence,
    plusMinus,
    bars: coloured.map(({ grams, lab }, at) => {
      const predicted = seen(asFound, grams);
      return {
        grams,
        measured: lab,
        predicted,
        predictedHex: hexOfLab(predicted),
        deltaE: found.bars[at]!.after,
      };
    }),
    before: mean(found.bars.map(bar => bar.before)),
    after,
    doubt:
      after > POOR_FIT
        ? 'poor-fit'
        : parameters.slice(0, 2).some(one => Math.abs(one) > BOUND)
          ? 'at-bound'
          : undefined,
    curve: Array.from({ length: POINTS + 1 }, (_, step) => {
      // Colour changes most where there is little of it.
      const grams = deepest * 1.25 * (step / POINTS) ** 2;
      return { grams, usual: seen(asUsual, grams), fitted: seen(asFound, grams) };
    }),
  };
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
