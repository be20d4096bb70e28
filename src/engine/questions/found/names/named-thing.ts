import type { Colourant } from '../../../colourants/colourant.ts';

/** Something named in a question: as it was typed (slips put right), where, and what it may be. */
export type NamedThing = {
  readonly text: string;
  /** First word and the one after the last, in the question's words. */
  readonly from: number;
  readonly to: number;
  /** Catalogue entries it may mean; none for a mere ingredient or a colour that is refused. */
  readonly colourants: readonly Colourant[];
};
