/** One colour as it really went into a portion. */
export type MadeColour = {
  /** As its maker calls it. */
  readonly name: string;
  /** Id of the catalogue. */
  readonly colourant: string;
  /** Of what is in the jar, in the maker's own level teaspoons. */
  readonly teaspoons: number;
  /** Of what is in the jar. */
  readonly grams: number;
  /** Pigment, grams per 100 g of batter. */
  readonly pigment: number;
};

/** A portion of a batch as it was really made. */
export type MadePortion<Colour extends MadeColour = MadeColour> = {
  readonly name: string;
  /** Of batter. */
  readonly grams: number;
  readonly colours: readonly Colour[];
};
