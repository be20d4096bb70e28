/**
 * The border between air and binder turns some light back on its way in and much more on its way out.
 * J. L. Saunderson, "Calculation of the color of pigmented plastics", JOSA 32 (1942) 727-736.
 */
export type SaundersonSurface = {
  /** Share of outside light reflected by the surface and seen (0.04 at refractive index 1.5). */
  readonly outside: number;
  /** Share of diffuse light inside turned back by the surface (0.6 at refractive index 1.5). */
  readonly inside: number;
};

/** Reflectance an eye or instrument meets, from reflectance inside. */
export function saundersonReflectance(within: number, { outside, inside }: SaundersonSurface): number {
  return outside + ((1 - outside) * (1 - inside) * within) / (1 - inside * within);
}

/** The inverse of {@link saundersonReflectance}; never below `least`, since gloss varies from film to film. */
export function inverseSaunderson(
  seen: number,
  { outside, inside }: SaundersonSurface,
  least = 2e-4,
): number {
  return Math.max((seen - outside) / (1 - outside - inside + inside * seen), least);
}
