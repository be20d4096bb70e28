import { reflectanceOfRatio } from '../../../src/engine/colour/mixing/kubelka-munk.ts';
import {
  type SaundersonSurface,
  saundersonReflectance,
} from '../../../src/engine/colour/mixing/saunderson.ts';
import { type BorderedSystem, solveBordered } from './bordered-cholesky.ts';
import type { Film } from './films.ts';
import { type FilmFit, KubelkaMunkFit } from './kubelka-munk-fit.ts';
import { CHARACTERISE_SETTINGS, type CharacteriseSettings } from './settings.ts';

/** Two optical constants of each pigment per unit of mass share, in units of the reference white's S. */
export type Characterisation = {
  readonly pigments: readonly string[];
  /** One list a pigment, one value a band. */
  readonly absorption: readonly Float64Array[];
  readonly scattering: readonly Float64Array[];
  readonly surface: SaundersonSurface;
  /** Of the bands, nm. */
  readonly wavelengths: readonly number[];
};

const MOST_STEPS = 40;

/**
 * Finds K and S of every pigment from all films at once: both sides of each film are predicted through the
 * surface from K, S and the film's thickness, and a Huber-like loss of the misfit, with Tikhonov terms, is made least by
 * damped Gauss-Newton steps. S of the reference white fixes the unit.
 * @param wavelengths of the bands, nm
 * @param referenceWhite pigment whose S at 550 nm is 1; without it the units float, ratios still hold
 */
export function characterise(
  films: readonly Film[],
  wavelengths: readonly number[],
  referenceWhite: string | undefined,
  settings: CharacteriseSettings = CHARACTERISE_SETTINGS,
): Characterisation {
  const problem = new KubelkaMunkFit(films, wavelengths, referenceWhite, settings);
  let fit = problem.start();
  let cost = problem.cost(fit);
  let damping = 1e-2;
  for (let step = 0; step < MOST_STEPS; step++) {
    const normal = problem.normalEquations(fit);
    const better = firstBetter(problem, fit, cost, normal, damping);
    if (better === undefined) break;
    const gained = cost - better.cost;
    ({ fit, cost } = better);
    damping = Math.max(better.damping / 5, 1e-6);
    if (gained < 1e-4 * cost) break;
  }
  return { ...problem.constants(fit), surface: settings.surface, wavelengths };
}

/** Raises the damping until a step lowers the cost; undefined when none does. */
function firstBetter(
  problem: KubelkaMunkFit,
  fit: FilmFit,
  cost: number,
  normal: BorderedSystem,
  from: number,
): { fit: FilmFit; cost: number; damping: number } | undefined {
  for (let damping = from; damping < 1e6; damping *= 4) {
    const solution = solveBordered(damped(normal, damping));
    if (solution === undefined) continue;
    const next = problem.moved(fit, solution);
    const nextCost = problem.cost(next);
    if (nextCost < cost) return { fit: next, cost: nextCost, damping };
  }
  return undefined;
}

/** A copy with each diagonal entry raised by that share of itself (Levenberg and Marquardt). */
function damped(normal: BorderedSystem, damping: number): BorderedSystem {
  const band = normal.band.slice();
  for (let at = normal.reach; at < band.length; at += normal.reach + 1) band[at]! *= 1 + damping;
  return {
    band,
    reach: normal.reach,
    border: normal.border.slice(),
    corner: normal.corner.map(value => value * (1 + damping)),
    right: normal.right.slice(),
    cornerRight: normal.cornerRight.slice(),
  };
}

/** True when every pigment of the mixture was characterised. */
export function knowsAll(known: Characterisation, shares: ReadonlyMap<string, number>): boolean {
  return [...shares.keys()].every(pigment => known.pigments.includes(pigment));
}

/** Reflectance, seen from outside, of a hiding film of that mixture (mass shares); one value a band. */
export function hidingReflectanceOfMixture(
  known: Characterisation,
  shares: ReadonlyMap<string, number>,
): number[] {
  const bands = known.absorption[0]?.length ?? 0;
  const parts = [...shares].map(([pigment, share]) => ({ share, at: known.pigments.indexOf(pigment) }));
  return Array.from({ length: bands }, (_, band) => {
    const sum = (constants: readonly Float64Array[]) =>
      parts.reduce((total, { share, at }) => total + share * (constants[at]?.[band] ?? 0), 0);
    return saundersonReflectance(
      reflectanceOfRatio(sum(known.absorption) / sum(known.scattering)),
      known.surface,
    );
  });
}
