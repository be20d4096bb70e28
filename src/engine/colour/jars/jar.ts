import { colourantById } from '../../colourants/catalogue.ts';
import { believedOptics } from '../calibration/joint/jar-model.ts';
import {
  independent,
  type JarBelief,
  type JarParameters,
  USUAL_SPREAD,
} from '../calibration/joint/jar-parameters.ts';
import { pooledPrior } from '../calibration/joint/pooled-prior.ts';
import type { ScaleBelief } from '../calibration/test-bar.ts';
import type { Optics } from '../mixing/optics.ts';
import { opticsOf } from './colourant-optics.ts';

/** How strong one jar was measured to be beside its kind, and the error that is left at full dose (CIEDE2000). */
export type JarScale = { readonly k: number; readonly s: number; readonly plusMinus: number };

/** A jar as far as colour goes: its colourant in the catalogue, and what test bars said of it or of others like it. */
export type ColourJar = {
  readonly colourant: string;
  /** From test bars of this very lot. */
  readonly measured?: JarScale;
  /** From test bars and cured batches of this very lot together; stands before {@link measured}. */
  readonly learnt?: JarBelief;
  /** From test bars of others with the same product. */
  readonly pool?: readonly ScaleBelief[];
};

/** What a jar does in soap. Throws an Error for a colourant that the catalogue does not have. */
export function opticsOfJar({ colourant: id, measured, learnt, pool = [] }: ColourJar): Optics {
  const colourant = colourantById(id);
  if (!colourant) throw new Error(`no colourant has the id ${id}`);
  const kind = opticsOf(colourant);
  if (learnt) return believedOptics(kind, learnt);
  if (measured) {
    const { k, s, plusMinus } = measured;
    const parameters: JarParameters = [Math.log(k), Math.log(s), 0, 0];
    const spread = [MEASURED_SPREAD, MEASURED_SPREAD, USUAL_SPREAD[2], USUAL_SPREAD[3]];
    return believedOptics(kind, { parameters, covariance: independent(spread) }, plusMinus);
  }
  return pool.length > 0 ? opticsByPool(kind, pool) : kind;
}

/** What test bars leave open about strength and covering where nothing more was kept of them. From memory. */
const MEASURED_SPREAD = 0.15;

/** A jar nobody tried, after what others found of the same product: their shrunk mean, and the error that leaves. */
function opticsByPool(kind: Optics, pool: readonly ScaleBelief[]): Optics {
  const { mean, spread } = pooledPrior(pool);
  const belief = { parameters: mean, covariance: independent(spread) };
  return believedOptics(kind, belief, kind.plusMinus);
}
