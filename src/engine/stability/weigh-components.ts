import type { LabelComponent } from './label.ts';
import type { Component } from './report.ts';

/** A powder that went into a bar: its ingredients in the order of its label, and its mass, g. */
export type WeighedPowder = { readonly components: readonly Component[]; readonly grams: number };

/**
 * Shares of a powder's mass by the place of each ingredient: what the label says in percent, and what is left falls in
 * even steps from the first to the last, since labels list the heaviest first (21 CFR 701.3(a); Regulation (EC)
 * No 1223/2009, Article 19(1)(g)). An estimate that keeps the order, no analysis.
 */
function shares(components: readonly Component[]): readonly number[] {
  const told = components.map(({ percent }) => (percent === undefined ? undefined : percent / 100));
  const left = Math.max(0, 1 - told.reduce<number>((sum, share) => sum + (share ?? 0), 0));
  const untold = told.filter(share => share === undefined).length;
  const steps = (untold * (untold + 1)) / 2;
  let next = untold;
  return told.map(share => share ?? (left * next--) / steps);
}

/**
 * The ingredients of all powders in a bar with their estimated masses, each ingredient once: certainly there wins over
 * perhaps there.
 */
export function weighComponents(powders: readonly WeighedPowder[]): readonly LabelComponent[] {
  const byId = new Map<string, LabelComponent>();
  for (const { components, grams } of powders) {
    const share = shares(components);
    components.forEach((component, at) => {
      const before = byId.get(component.id);
      const mass = (before?.grams ?? 0) + grams * (share[at] ?? 0);
      const kept = before && (!before.ifPresent || component.ifPresent) ? before : component;
      byId.set(component.id, { ...kept, grams: mass });
    });
  }
  return [...byId.values()];
}
