import { colourantById } from '../../colourants/catalogue.ts';
import { LEAST_PLUS_MINUS, usualBelief } from '../calibration/calibrate.ts';
import { poolCalibrations } from '../calibration/pool.ts';
import { type ScaleBelief, ScaleEstimation, type Scales, scaled } from '../calibration/scale-estimation.ts';
import { plainBase } from '../mixing/base-soap.ts';
import type { Optics } from '../mixing/optics.ts';
import { fullDose, opticsOf } from './colourant-optics.ts';

/** How strong one jar was measured to be beside its kind, and the error that is left at full dose (CIEDE2000). */
export type JarScale = { readonly k: number; readonly s: number; readonly plusMinus: number };

/** A jar as far as colour goes: its colourant in the catalogue, and what test bars said of it or of others like it. */
export type ColourJar = {
  readonly colourant: string;
  /** From test bars of this very lot. */
  readonly measured?: JarScale;
  /** From test bars of others with the same product. */
  readonly pool?: readonly ScaleBelief[];
};

/** What a jar does in soap. Throws an Error for a colourant that the catalogue does not have. */
export function opticsOfJar({ colourant: id, measured, pool = [] }: ColourJar): Optics {
  const colourant = colourantById(id);
  if (!colourant) throw new Error(`no colourant has the id ${id}`);
  const optics = opticsOf(colourant);
  if (measured) {
    const { k, s, plusMinus } = measured;
    return {
      ...scaled(optics, [Math.log(k), Math.log(s)]),
      plusMinus: Math.min(plusMinus, optics.plusMinus),
    };
  }
  return pool.length > 0 ? opticsByPool(optics, fullDose(colourant), pool) : optics;
}

/** A jar nobody tried, after what others found of the same product: their shrunk mean, and the error that leaves. */
function opticsByPool(optics: Optics, grams: number, pool: readonly ScaleBelief[]): Optics {
  const base = plainBase('cream', false);
  const belief = poolCalibrations(pool, usualBelief(optics, base, grams));
  const scales: Scales = [belief.k.ln, belief.s.ln];
  const left = new ScaleEstimation(optics, base, [], belief).errorAt(grams, scales, belief);
  return {
    ...scaled(optics, scales),
    plusMinus: Math.min(Math.hypot(LEAST_PLUS_MINUS, left), optics.plusMinus),
  };
}
