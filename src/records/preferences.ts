import type { Store } from './store.ts';

/** How a member likes to be answered. */
export type Preferences = {
  /** US customary spoon, the 5 ml spoon of nutrition labels, or metric spoon and 250 ml cup. */
  readonly spoons: 'us' | 'label' | 'metric';
  readonly temperature: 'celsius' | 'fahrenheit';
  readonly mass: 'grams' | 'ounces';
  /** Overrides the language that the platform reports for the member. */
  readonly language?: 'en' | 'es' | undefined;
};

export const usualPreferences: Preferences = { spoons: 'us', temperature: 'celsius', mass: 'grams' };

/** The member's preferences, or the usual ones. */
export async function preferencesOf(_store: Store, _member: string): Promise<Preferences> {
  throw new Error('not yet');
}

/** Changes those preferences that are given and leaves the others. */
export async function prefer(
  _store: Store,
  _member: string,
  _wishes: Partial<Preferences>,
): Promise<Preferences> {
  throw new Error('not yet');
}
