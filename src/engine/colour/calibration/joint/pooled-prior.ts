import { poolCalibrations } from '../pool.ts';
import type { Belief, ScaleBelief } from '../test-bar.ts';
import { AS_ITS_KIND, type JarParameters, USUAL_SPREAD } from './jar-parameters.ts';

/** What is believed of a jar before any bar of its own, by parameter: where, and one standard deviation. */
export type Prior = { readonly mean: JarParameters; readonly spread: JarParameters };

/** As its kind, or where others calibrated the same product: that narrows strength and covering; hue and dust are a jar's own. */
export function pooledPrior(pool: readonly ScaleBelief[] = []): Prior {
  if (pool.length === 0) return { mean: AS_ITS_KIND, spread: USUAL_SPREAD };
  const usual = (at: 0 | 1): Belief => ({ ln: 0, spread: USUAL_SPREAD[at] });
  const { k, s } = poolCalibrations(pool, { k: usual(0), s: usual(1) });
  return { mean: [k.ln, s.ln, 0, 0], spread: [k.spread, s.spread, USUAL_SPREAD[2], USUAL_SPREAD[3]] };
}
