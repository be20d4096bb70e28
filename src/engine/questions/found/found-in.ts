import type { Found } from '../learned/features.ts';
import { settled } from '../settled.ts';
import { amountsIn } from './amounts.ts';
import { factsOf } from './facts.ts';
import { thingsIn } from './names/entities.ts';
import type { NamedThing } from './names/named-thing.ts';
import { type Words, wordsOf } from './words-of.ts';

/** A text's words, slips put right, and what is named and told in them. */
export type Heard = { readonly words: Words; readonly found: Found };

/** What stands in a text, before anybody is asked what it is about. Pure. */
export function foundIn(text: string): Heard {
  const typed = wordsOf(text);
  const things: readonly NamedThing[] = thingsIn(typed);
  const words = settled(typed, things);
  const amounts = amountsIn(words, things);
  return { words, found: { things, amounts, facts: factsOf(text, words, { things, amounts }) } };
}
