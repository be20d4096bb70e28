import type { Origin } from '../../origin.ts';

/** Why a colour stays out of soap. */
export type BarredReason =
  | 'cadmium'
  | 'lead'
  | 'mercury'
  | 'arsenic'
  | 'antimony'
  | 'chromate'
  | 'oxidiser'
  | 'cobalt'
  | 'nickel'
  | 'copper-poison'
  | 'radioactive'
  | 'asbestos'
  | 'delisted-dye'
  | 'us-delisted'
  | 'burning-plant'
  | 'metal'
  | 'paint'
  | 'crayon'
  | 'candle-dye'
  | 'cloth-dye'
  | 'food-colouring'
  | 'make-up';

/** A colour that is refused by name, wherever a colourant can be named. */
export type BarredColour = {
  readonly reason: BarredReason;
  /** Names in both languages, parted by `; `, matched word by word in singular and without accents. */
  readonly names: string;
  /** Further names that people also give to a mere hue: with `mica`, `tone` and the like beside them they pass. */
  readonly hues?: string;
  /** Colour Index numbers. */
  readonly ci?: readonly string[];
  /** E numbers, with the E. */
  readonly e?: readonly string[];
  readonly source: Origin;
};
