/**
 * Kubelka and Munk's two-flux theory: light in a layer is absorbed at K and turned back at S a unit depth.
 * Everything here is inside the surface; `surface.ts` goes through it.
 */

/** Reflectance of a layer deep enough to hide what lies behind, from K/S. K = 0 gives 1. */
export function reflectanceOfRatio(ratio: number): number {
  return 1 / (1 + ratio + Math.sqrt(ratio * (ratio + 2)));
}

/** K/S of a hiding layer of that reflectance (0 < reflectance <= 1). */
export function ratioOfReflectance(reflectance: number): number {
  return (1 - reflectance) ** 2 / (2 * reflectance);
}
