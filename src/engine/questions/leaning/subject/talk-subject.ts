/** What a talk is about, whatever became of the question: later turns that name nothing are about it. */
export type Subject = {
  /** A colourant, as it was named. */
  readonly named?: string;
  /** A colour that no colourant was named for. */
  readonly hue?: string;
  /** How much is to be coloured. */
  readonly portion?: string;
  /** Of a scent, which is no colour. */
  readonly isScent?: true;
  /** Named by the turn before, and not by an earlier one. */
  readonly isFresh: boolean;
};
