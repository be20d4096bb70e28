import type { Colourant, ColourantKind } from '../../colourants/colourant.ts';
import type { Origin } from '../../origin.ts';
import { emission } from '../mixing/fluorescence.ts';
import type { Emission } from '../mixing/optics.ts';

/** What is believed of a whole kind where no spectrum was published. */
type KindLook = {
  /** Scattering a full dose adds, in units of plain soap's. */
  readonly scattering: number;
  /**
   * The K/S that a full dose draws near where the masstone's is without end. A bar is no masstone: an eighth of
   * the full dose must still look like a tint, so a full dose reflects 5 to 7 % where it absorbs most.
   */
  readonly mostRatio: number;
  /** Error of the full-dose colour, CIEDE2000. */
  readonly plusMinus: number;
};

/**
 * Scattering from refractive index and grain: titania, oxides and pearl plates scatter far more than soap does;
 * ultramarine, lakes and resins are nearly matched to it; dyes scatter nothing. The errors are the spread of
 * jars sold under one name. All from memory.
 */
export const KIND_LOOKS: Readonly<Record<ColourantKind, KindLook>> = {
  oxide: { scattering: 0.5, mostRatio: 10, plusMinus: 7 },
  ultramarine: { scattering: 0.15, mostRatio: 6, plusMinus: 7 },
  chromium: { scattering: 0.5, mostRatio: 6, plusMinus: 7 },
  mica: { scattering: 0.6, mostRatio: 6, plusMinus: 10 },
  neon: { scattering: 0.3, mostRatio: 8, plusMinus: 12 },
  white: { scattering: 4, mostRatio: 6, plusMinus: 4 },
  lake: { scattering: 0.2, mostRatio: 8, plusMinus: 10 },
  dye: { scattering: 0, mostRatio: 8, plusMinus: 12 },
  carbon: { scattering: 0.02, mostRatio: 18, plusMinus: 6 },
  clay: { scattering: 0.4, mostRatio: 4, plusMinus: 8 },
  botanical: { scattering: 0.1, mostRatio: 12, plusMinus: 14 },
};

export const LOOK_ORIGIN: Origin = {
  trust: 'from memory',
  source:
    'smoothest reflectance (Burns 2020) of the usual full-dose colour; scattering by kind after Kubelka-Munk handbooks',
};

/** A colour that lye has changed is hardly foretold. */
export const CHANGED_PLUS_MINUS = 15;

/** What is left in the bar of a colour that lye destroys or shifts, by where it goes. From memory. */
const AFTER_LYE: Readonly<Record<string, string>> = {
  beige: '#d8c6a8',
  rust: '#9a5a33',
  'green-beige': '#b9b48c',
  'yellow-brown': '#b08d57',
  'grey-brown': '#8f8272',
  'olive-brown': '#746a3c',
  'peach-tan': '#dba878',
  'purple-then-dull': '#7a5a72',
  'green-then-yellow': '#c2b25a',
};

/** Where the cured colour differs from the powder's: its CSS colour, else undefined. */
export function lookAfterLye({ alkali }: Pick<Colourant, 'alkali'>): string | undefined {
  const changes = alkali.behaviour === 'destroyed' || alkali.behaviour === 'shifts';
  return changes && alkali.towards !== undefined ? AFTER_LYE[alkali.towards] : undefined;
}

/** Glow of the neon shades: where it peaks (nm) and how much comes out of a bar. From memory. */
export const NEON_GLOW: Readonly<Record<string, Emission>> = {
  'neon-pink': emission(600, 22, 0.05),
  'neon-red': emission(610, 22, 0.05),
  'neon-orange': emission(600, 22, 0.05),
  'neon-yellow': emission(525, 20, 0.05),
  'neon-green': emission(515, 20, 0.05),
  'neon-blue': emission(450, 20, 0.02),
  'neon-purple': emission(610, 24, 0.02),
};
