/** What a word does to the recipe beside it. */
export type Turn =
  /** All oils together. */
  | 'whole'
  /** What is left of the whole. */
  | 'rest'
  /** The same share of each. */
  | 'even'
  /** As much, or half or twice as much, as of another. */
  | 'alike'
  /** So much of each that is named. */
  | 'each'
  /** What was said is put right by what follows. */
  | 'corrects'
  /** What follows was not it. */
  | 'not'
  /** What follows is left away. */
  | 'without'
  /** What stands before takes the place of what follows, or of what is lacking. */
  | 'instead'
  /** A recipe is multiplied. */
  | 'times'
  /** A recipe is brought to another weight. */
  | 'rescales'
  /** The oil behind it is taken for the one in front. */
  | 'swaps'
  /** Whose recipe now follows. */
  | 'mine'
  /** What a recipe, a book or somebody else says, and what was to be. */
  | 'planned'
  /** What is in the pot, or at hand. */
  | 'actual'
  /** Words that change nothing. */
  | 'aside';

/** The unit of an amount; `other` is one that weighs nothing: a time, a length, a spoon. */
export type Unit = 'g' | 'kg' | 'oz' | 'lb' | '%' | 'part' | 'ml' | 'other';
type Span = { readonly from: number; readonly to: number; readonly text: string };
export type Amount = Span & {
  readonly is: 'amount';
  readonly figure: number;
  readonly unit: Unit | undefined;
  /** "Four of castor": the unit is the one just told. */
  readonly isOf?: boolean;
};
export type Name = Span & {
  readonly is: 'name';
  readonly known: 'oil' | 'any-oil' | 'lye' | 'water' | 'other';
  /** As it stands in the line, where it is spelt amiss. */
  readonly typed?: string;
};
/** A share told by a word: "half", "tres cuartos"; between 0 and 1. */
export type Fraction = Span & { readonly is: 'fraction'; readonly share: number };
/** What is left of the whole. */
export type Rest = Span & { readonly is: 'rest' };
/** A piece of a line that tells a recipe. */
export type Item =
  | Amount
  | Name
  | Fraction
  | (Span & { readonly is: 'units'; readonly unit: Unit })
  | Rest
  | (Span & { readonly is: Exclude<Turn, 'rest'> })
  | (Span & { readonly is: 'mark' | 'joint' | 'link' | 'asks' | 'word' });
/** A recipe as it is where these oils stay out of the pot, in the words of the strict reader; where none does, all are in. */
export type Way = { readonly without: readonly string[]; readonly line: string };
