import type { WrittenPlan } from '../../engine/batch/planning/written-plan.ts';
import type { Store } from '../store.ts';

/** What a colour's words were found to mean: a catalogue colourant, and how much of a bought dispersion is pigment. */
export type KnownColour = {
  readonly text: string;
  readonly colourant: string;
  readonly pigmentFraction?: number;
};

/** How many times as much as the words say. A part that was written anew is 1 again. */
export type Times = {
  readonly size: number;
  readonly portions: number;
  readonly additives: number;
  /** Once unless said. */
  readonly liquids?: number;
};

/** A plan as it can be kept: its own words, and all that is needed to read them the same way again. */
export type KeptPlan = {
  readonly written: WrittenPlan;
  readonly spoons: 'us' | 'label' | 'metric';
  readonly times: Times;
  readonly colours: readonly KnownColour[];
};

export const ONCE: Times = { size: 1, portions: 1, additives: 1 };

/** A plan under a name. */
export type Recipe = KeptPlan & {
  readonly name: string;
  readonly by: string;
  readonly byName: string;
  readonly at: Date;
};

/** Whose recipes, in which group. */
export type RecipeShelf = { readonly store: Store; readonly member: string; readonly group: string };

/** A recipe, and whether it is the member's own or lies with the group. */
export type Found = Recipe & { readonly shared: boolean };

/** At most this many recipes of one member, and of one group. */
export const mostRecipes = 200;
