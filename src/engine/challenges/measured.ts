import type { Lab } from '../colour/appearance.ts';

/** One colour found in the photo of a bar. */
export type BarColour = {
  readonly lab: Lab;
  /** The part of the bar's face it takes, 0 to 1. */
  readonly share: number;
  /** How far the measurement may be off, CIEDE2000. */
  readonly plusMinus: number;
};

/** Why a bar has no measured score. */
export type Unscored = 'no-white' | 'neon' | 'pearl' | 'no-colours';

/** One palette colour beside the colour of the bar that stands for it. */
export type Match = {
  /** Number of the palette colour, from 0. */
  readonly target: number;
  /** Number of the bar's colour, from 0; undefined where the bar had none left for it. */
  readonly bar: number | undefined;
  /** CIEDE2000 between them. */
  readonly difference: number;
  /** Its weight in the score; the weights of a palette sum to 1. */
  readonly weight: number;
};

/** How near a bar came to the palette; the lower the nearer. */
export type ColourScore = {
  /** Weighted mean of the matches, plus what stray colour adds; CIEDE2000. */
  readonly score: number;
  readonly plusMinus: number;
  readonly matches: readonly Match[];
  /** Colours of the bar that stand for no palette colour: their part of the face, and what they add. */
  readonly stray: { readonly share: number; readonly adds: number };
};
