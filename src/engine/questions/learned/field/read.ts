import { logChances, type Model } from '../../../text/learned/model.ts';
import { hashesOf, modelOf } from '../../../text/learned/written.ts';
import type { Words } from '../../found/words-of.ts';
import type { Found } from '../features.ts';
import { fieldFeaturesOf } from './features.ts';
import WRITTEN from './weights.json' with { type: 'json' };

/** In the order in which the model scores them. */
export const FIELDS = ['ours', 'elsewhere'] as const;

let model: Model | undefined;
let known: ReadonlySet<number> | undefined;

/**
 * How likely a question is about somebody else's field, 0 to 1. Learned from what makers of many kinds wrote; a logistic
 * regression over words, their pieces and the matters that they speak of. Pure, but that the weights are unpacked once.
 */
export function chanceElsewhere(words: Words, found: Found): number {
  model ??= modelOf(WRITTEN);
  known ??= hashesOf(WRITTEN.known);
  return Math.exp(logChances(fieldFeaturesOf(words, found, known), model)[FIELDS.indexOf('elsewhere')]!);
}
