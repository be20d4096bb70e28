import { colourantById } from '../../colourants/catalogue.ts';
import { opticsOf } from '../jars/colourant-optics.ts';
import { barLab } from '../mixing/bar.ts';
import { baseSoap, type ShadeShare } from '../mixing/base-soap.ts';
import type { Lab } from '../spectra/cielab.ts';
import { type Calibration, calibrate, usualBelief } from './calibrate.ts';
import { poolCalibrations } from './pool.ts';
import { type ScaleBelief, scaled, type TestBar } from './scale-estimation.ts';

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

export type JarCalibration = Omit<Calibration, 'optics' | 'base'> & {
  /** CIEDE2000 at full dose, as expected of the kind and after the bars. */
  readonly plusMinus: { readonly before: number; readonly after: number };
  /** From nothing to a quarter more than the deepest bar. */
  readonly curve: readonly CurvePoint[];
};

const POINTS = 36;

/**
 * Fits one jar to its test bars, starting from its kind and from what others found of it.
 * Throws the Refusals of {@link calibrate}, and an Error for a colourant that the catalogue does not have.
 */
export function calibrateJar({
  colourant: id,
  bars,
  shades,
  gelled,
  pool = [],
}: JarCalibrationAsk): JarCalibration {
  const colourant = colourantById(id);
  if (!colourant) throw new Error(`no colourant has the id ${id}`);
  const kind = opticsOf(colourant);
  const asked = baseSoap(shades, gelled);
  const deepest = Math.max(0, ...bars.map(({ grams }) => grams));
  const prior =
    pool.length > 0 && deepest > 0 && deepest < 50
      ? poolCalibrations(pool, usualBelief(kind, asked, deepest))
      : undefined;
  const { optics, base, ...found } = calibrate({ optics: kind, base: asked, bars, ...(prior && { prior }) });
  const usual = prior ? scaled(kind, [prior.k.ln, prior.s.ln]) : kind;
  return {
    ...found,
    plusMinus: { before: kind.plusMinus, after: optics.plusMinus },
    curve: Array.from({ length: POINTS + 1 }, (_, step) => {
      // Colour changes most where there is little of it.
      const grams = deepest * 1.25 * (step / POINTS) ** 2;
      return {
        grams,
        usual: barLab([{ optics: usual, grams }], base),
        fitted: barLab([{ optics, grams }], base),
      };
    }),
  };
}
