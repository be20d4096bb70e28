import type { Spoon } from '../../quantities/spoons.ts';
import type { BaseOptics, Optics } from '../mixing/optics.ts';
import type { Lab } from '../spectra/cielab.ts';

/** A colourant a recipe may use. Plain data, so it may cross to a worker. */
export type MatchCandidate = {
  /** The shelf item's or the catalogue's id; unique in the request. */
  readonly id: string;
  readonly optics: Optics;
  readonly gramsPerTeaspoon: number;
  /** Level teaspoons a US cup of batter at most. */
  readonly ceilingTspPerCup: number;
  readonly white: boolean;
  /** How likely lye or light spoils it: 0 holds, 1 is lost. */
  readonly risk: number;
  /** Teaspoons left on the shelf; unknown when absent. */
  readonly stockTeaspoons?: number;
};

/** What is asked of `matchColour`. */
export type MatchRequest = {
  readonly target: Lab;
  readonly candidates: readonly MatchCandidate[];
  readonly base: BaseOptics;
  readonly portion: { readonly cups: number; readonly grams: number };
  /** The spoons there are to measure with; every one unless said. */
  readonly owned?: readonly Spoon[] | undefined;
  /** Colourants beside the white: 1 to 3. */
  readonly most: number;
  /** Recipes wanted. */
  readonly recipes?: number;
};
