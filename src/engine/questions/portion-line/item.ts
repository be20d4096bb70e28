import type { ToldAmount } from '../found/amounts.ts';

/** Where something stands in the words of a question: its first word and the one after the last. */
type Span = { readonly from: number; readonly to: number; readonly text: string };

/** What is counted: soap or what shapes it, what holds parted batter, layers and colours, or anything. */
export type Kind = 'pieces' | 'vessels' | 'parts' | 'things';

/** What was multiplied: `count` of `noun` ("wells"), `each` as it was told. */
export type Product = {
  readonly count: number;
  readonly noun: string;
  readonly of: Kind;
  readonly each: string;
};

/** An amount with its unit, and what it comes to in millilitres or grams. */
export type Quantity = Span & {
  readonly is: 'amount';
  readonly told: ToldAmount;
  readonly value: number;
  /** Told in teaspoons or tablespoons. */
  readonly isSpoons: boolean;
  /** Of water, lye and the like, which no portion is. */
  readonly isOther: boolean;
  readonly product?: Product;
};

/** So many of something. */
export type Count = Span & {
  readonly is: 'count';
  readonly count: number;
  readonly noun: string;
  readonly of: Kind;
};
/** Some of what was counted: "3 of them", "all 12"; `all` has no number of its own. */
export type Some = Span & { readonly is: 'some'; readonly count: number | 'all' };
/** A part of the whole, above 0 and below 1, as the grammar of amounts writes it: `1/3`. */
export type Share = Span & { readonly is: 'share'; readonly share: string; readonly value: number };
/** Parted evenly into so many. */
export type Split = Span & { readonly is: 'split'; readonly parts: number };
/** A figure without a unit. */
export type Figure = Span & { readonly is: 'figure'; readonly value: number };

/** What a word does to the amounts beside it. */
export type Turn =
  /** So much to each of what is counted. */
  | 'each'
  /** What follows is taken out of a larger whole. */
  | 'takes'
  /** What was said is put right by what follows. */
  | 'corrects'
  /** What follows is not meant. */
  | 'denies'
  /** Tells of another time. */
  | 'past'
  /** Tells of this time. */
  | 'now'
  /** The amount beside it is all there is. */
  | 'whole'
  /** What follows is gone. */
  | 'lost';

/** A piece of a question, by what it does to the amounts in it. */
export type Item =
  | Quantity
  | Count
  | Some
  | Share
  | Split
  | Figure
  | (Span & { readonly is: Turn })
  | (Span & { readonly is: 'thing' | 'mark' | 'word' });
