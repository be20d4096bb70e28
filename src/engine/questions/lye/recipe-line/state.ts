import { knownOil } from '../../../batch/oils/find-oil.ts';
import type { Amount, Name } from './items/item.ts';
import type { Pair } from './settling/parts.ts';

/** An oil as it is named, and its two amounts. */
export type Twice = { readonly name: string; readonly one: string; readonly other: string };

/** What has been read of a line so far. Mutable: it lives for one reading. */
export type State = {
  pairs: Pair[];
  /** Where the recipe begins that counts; another's, or another day's, stands before. */
  begins: number;
  /** Oils named without an amount. */
  unpaired: Name[];
  /** Sentences that name a part of the recipe. */
  told: ReadonlySet<number>;
  /** Sentences that put something right. */
  isPutRight: ReadonlySet<number>;
  /** Sentences that speak of oils, amounts, water or lye. */
  isWet: ReadonlySet<number>;
  even: boolean;
  each: Amount | undefined;
  /** How many oils there are. */
  count: Amount | undefined;
  whole: Amount | undefined;
  /** Amounts without a name. */
  masses: (Amount & { readonly isSum?: boolean })[];
  percents: Amount[];
  removed: Name[];
  /** Of these what was struck out by name: told again behind that, they are unclear. */
  struck: Name[];
  /** What is left away, in words that name no oil. */
  wordsRemoved: string[];
  times: string | undefined;
  isRescaled: boolean;
  isCorrecting: boolean;
  /** Whether the next figure without a name puts the last one right. */
  awaitsFigure: boolean;
  /** Whether a correction has put an oil right yet: more oils may follow it. */
  isCorrected: boolean;
  /** Alkalis that are named as those which are not used. */
  notMeant: Name[];
  /** An oil whose amount was not the one that was told. */
  denied: Name | undefined;
  /** Who speaks of the amounts that follow: a recipe or another person, or whoever poured. */
  voice: 'planned' | 'actual' | undefined;
  /** Whose amounts of oils there are. */
  voices: Set<State['voice']>;
  /** An oil that has two amounts. */
  twice: Twice | undefined;
  /** What all of the oils are, beside its weight. */
  hundred: Name | undefined;
  /** Whether something was put right, left away, taken instead, scaled, or told of another's recipe. */
  isTurned: boolean;
  unit: Amount['unit'];
  liquids: Name[];
  /** What is taken, instead of which oil, and how much of that. */
  swaps: { readonly by: Name; readonly of: Name | undefined; readonly amount?: Amount }[];
};

export const beginning = (): State => ({
  pairs: [],
  begins: 0,
  unpaired: [],
  told: new Set(),
  isPutRight: new Set(),
  isWet: new Set(),
  even: false,
  each: undefined,
  count: undefined,
  whole: undefined,
  masses: [],
  percents: [],
  removed: [],
  struck: [],
  wordsRemoved: [],
  times: undefined,
  isRescaled: false,
  isCorrecting: false,
  awaitsFigure: false,
  isCorrected: false,
  notMeant: [],
  denied: undefined,
  voice: undefined,
  voices: new Set(),
  twice: undefined,
  hundred: undefined,
  isTurned: false,
  unit: undefined,
  liquids: [],
  swaps: [],
});

export const oilOf = (name: Name) => knownOil(name.text);
/** Whether two names are of one ingredient. */
export const same = (a: Name, b: Name): boolean =>
  a.known === b.known &&
  (a.known === 'oil' ? oilOf(a) === oilOf(b) : a.known !== 'other' || a.text === b.text);

/** Whether an amount was told for an ingredient. */
export const isPaired = ({ pairs }: State, one: Name): boolean => pairs.some(({ name }) => same(name, one));

/** A figure that is put right keeps the unit it had. */
export const withUnit = (pair: Pair, before: Pair): Pair =>
  pair.measure.is === 'amount' && pair.measure.unit === undefined && before.measure.is === 'amount'
    ? { ...pair, measure: { ...pair.measure, unit: before.measure.unit } }
    : pair;
