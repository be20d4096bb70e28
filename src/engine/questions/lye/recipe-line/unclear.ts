import type { Doubt } from './doubts/in-the-pot.ts';
import type { Way } from './items/item.ts';
import type { Twice } from './state.ts';

/** Why a line of a recipe is asked about, with what is asked of it. */
export type Why =
  /** A word or an amount has no place, or may have two. */
  | { readonly why: 'place' }
  /** Which alkali is meant, or that both are. */
  | { readonly why: 'alkalis' }
  /** Which of its two amounts an oil has. */
  | { readonly why: 'twice'; readonly twice: Twice }
  /** Which of two superfats or discounts counts, or whether both do. */
  | { readonly why: 'fats'; readonly fats: { readonly one: string; readonly other: string } }
  /** Of which whole these percents are, whose sum is no hundred. */
  | { readonly why: 'sum'; readonly sum: number }
  /** Whether an oil is in the pot; `ways` are the recipes that it may be, whichever way that is answered. */
  | { readonly why: 'doubt'; readonly doubt: Doubt; readonly ways: readonly Way[] }
  /** Only what some words do to a recipe that reads whole without them; `ways` are that recipe. */
  | { readonly why: 'words'; readonly ways: readonly Way[] }
  /** What was to be stands beside what is. */
  | { readonly why: 'planned' }
  /** Another's pot is told beside the asker's own. */
  | { readonly why: 'another' };

/** What is unclear, why it is, and whether anything of the recipe was changed as it was told. */
export type Unclear = Why & { readonly unclear: string; readonly isTurned?: boolean };
