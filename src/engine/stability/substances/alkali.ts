import type { Substance } from './substance.ts';

type Alkali = Substance['alkali'];

export const stable: Alkali = { behaviour: 'stable' };
/** Nobody has told us. */
export const unknown: Alkali = { behaviour: 'unknown' };
/** Sulphonated dyes nobody has told us more about: they dissolve in water, so they wander. */
export const bleeds: Alkali = { behaviour: 'bleeds', on: 'dye-migrates' };
/** A dye that keeps colour, perhaps another shade of it, and wanders. */
export const migrates = (towards?: string): Alkali => ({
  behaviour: 'conditional',
  on: 'dye-migrates',
  ...(towards === undefined ? {} : { towards }),
});
