import type { Price } from '../../engine/cost/money.ts';
import type { Store } from '../store.ts';

/** Whose shelf, and where it is kept. The member's id is the platform's, the same in every group. */
export type Shelf = { readonly store: Store; readonly member: string };

/**
 * What brings a change about. `cause` is the id of the interaction (or a button's nonce): a change that was
 * already made for it is not made again, its first outcome is told again. `press` is the id of the interaction that pressed
 * the button: a change that was taken back is made anew by another press of it.
 */
export type Change = { readonly cause: string; readonly at: Date; readonly press?: string };

/** Where a pinch of it went in a dish of water: in, only into oil, or into neither. */
export type DishTestResult = 'water' | 'oil' | 'neither';

export type SpoonWeight = {
  /** What one level spoon of it weighs, g. */
  readonly grams: number;
  /** The spoon it was weighed with, ml. */
  readonly spoonMillilitres: number;
};

/** What the label lists, and what was made of it; the words of `kind`, `components` and `verdict` are ids. */
export type Ingredients = {
  readonly text: string;
  readonly kind?: string | undefined;
  readonly components?: readonly string[] | undefined;
  readonly verdict?: string | undefined;
  /** Where the whole stands with the law of the US and of the EU, as of when it was kept. */
  readonly permitted?: { readonly us: string; readonly eu: string } | undefined;
};

/** Measured behaviour of one lot in one member's soap; whoever measures says what is in it. */
export type Calibration = Readonly<Record<string, unknown>>;

export type Lot = {
  /** 1 for the first. */
  readonly number: number;
  /** What is printed on it. */
  readonly label?: string | undefined;
  readonly since: Date;
  readonly dishTest?: DishTestResult | undefined;
  readonly spoonWeight?: SpoonWeight | undefined;
  /** Grams of a spoon that cannot be right: nothing is counted by it, and its owner is told. */
  readonly oddSpoonGrams?: number | undefined;
  readonly calibration?: Calibration | undefined;
  /** What test bars and cured batches together said of it. */
  readonly learnt?: LearntLot | undefined;
};

/** How a lot differs from its kind, as `engine/colour/calibration/joint` has it. */
export type LearntLot = {
  /** The colourant it was learnt as: described anew, the item is another one. */
  readonly colourant: string;
  readonly parameters: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly unexplained?: number;
  readonly bars: number;
};

export type Stock = {
  /** What is left, g; undefined until the member says how much there is. */
  readonly grams: number | undefined;
  /** At this much or less the member is told, g. */
  readonly lowAt: number;
  readonly low: boolean;
};

export type ShelfItem = {
  readonly id: string;
  /** As the member wrote it. */
  readonly name: string;
  /** Id of a catalogue colourant. */
  readonly colourant?: string | undefined;
  /** Pigment by weight, 0 to 1, of an item that was bought dispersed in a liquid. */
  readonly pigmentFraction?: number | undefined;
  /** What it cost, where its owner said so. */
  readonly price?: Price | undefined;
  readonly ingredients?: Ingredients | undefined;
  readonly since: Date;
  readonly lot: Lot;
  readonly stock: Stock;
};

export type NewItem = {
  readonly name: string;
  readonly colourant?: string | undefined;
  /** What is there, g. */
  readonly grams?: number | undefined;
  readonly pigmentFraction?: number | undefined;
  readonly price?: Price | undefined;
  /** What is printed on the lot. */
  readonly lot?: string | undefined;
  readonly ingredients?: Ingredients | undefined;
  /** Tell me at this much or less, g. */
  readonly lowAt?: number | undefined;
};

/** One line of the stock ledger. */
export type LedgerLine = {
  readonly at: Date;
  readonly action: 'add' | 'use' | 'restock' | 'new-lot';
  /** Positive in, negative out, g. */
  readonly change: number;
  /** What was there after it, g. */
  readonly left: number;
  readonly lot: number;
  /** Where it took an earlier line back. */
  readonly undoes?: boolean;
};

export type Action =
  | 'add'
  | 'use'
  | 'restock'
  | 'remove'
  | 'dish-test'
  | 'weigh'
  | 'new-lot'
  | 'low-mark'
  | 'ingredients'
  | 'describe'
  | 'calibrate';

/** What a change did. */
export type Outcome = {
  readonly action: Action;
  readonly id: string;
  readonly name: string;
  /** How much went in (positive) or out (negative), g, where stock moved. */
  readonly change?: number | undefined;
  /** What is left, g, where it is known. */
  readonly left?: number | undefined;
  readonly lowAt?: number | undefined;
  /** True when what is left is at or under the member's mark. */
  readonly low: boolean;
  readonly lot: number;
  /** True when this interaction had already made its change, and nothing was changed now. */
  readonly repeated: boolean;
};

/** At most this many items on one shelf: a shelf is read as one, and nobody's cupboard is larger. */
export const mostItems = 500;

/** The mark below which a member is told when they set none: about two full doses for a large batch, g. */
export const usualLowMark = 10;
