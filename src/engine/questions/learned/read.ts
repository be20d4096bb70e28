import { logChances, type Model } from '../../text/learned/model.ts';
import { hashesOf, modelOf } from '../../text/learned/written.ts';
import type { Words } from '../found/words-of.ts';
import { CLASSES, type Class } from './classes.ts';
import { type Found, featuresOf } from './features.ts';
import WRITTEN from './weights.json' with { type: 'json' };

/** Something a question may ask for, and how likely it does, 0 to 1. */
export type Chance = { readonly of: Class; readonly chance: number };

let model: Model | undefined;
let known: ReadonlySet<number> | undefined;

/**
 * What a question may ask for, the likeliest first; the chances sum to 1. Learned from what makers of many kinds wrote; a
 * multinomial logistic regression over words, their pieces and what is named. Pure, but that the weights are unpacked once.
 */
export function chancesOf(words: Words, found: Found): readonly Chance[] {
  model ??= modelOf(WRITTEN);
  known ??= hashesOf(WRITTEN.known);
  const logs = logChances(featuresOf(words, found, known), model);
  return CLASSES.map((of, at) => ({ of, chance: Math.exp(logs[at]!) })).toSorted(
    (a, b) => b.chance - a.chance,
  );
}
