import { logChances, type Model } from '../../text/learned/model.ts';
import { modelOf } from '../../text/learned/written.ts';
import { featuresOf } from './features.ts';
import { isMatter, type Matter } from './topic.ts';
import WRITTEN from './weights.json' with { type: 'json' };

/** A matter that a question may be about, and how likely it is, 0 to 1. */
export type NearMatter = { readonly matter: Matter; readonly chance: number };

/** Matters, the likeliest first, and how likely a question is about none of them, 0 to 1. */
export type MatterChances = { readonly near: readonly NearMatter[]; readonly none: number };

/** What a model that scores `classes`, one of which is `none`, tells of a question. Pure. */
export function mattersBy(question: string, model: Model, classes: readonly string[]): MatterChances {
  const chances = logChances(featuresOf(question), model).map(Math.exp);
  const near = classes
    .map((matter, at) => ({ matter, chance: chances[at]! }))
    .filter((one): one is NearMatter => isMatter(one.matter))
    .toSorted((a, b) => b.chance - a.chance);
  return { near, none: chances[classes.indexOf('none')]! };
}

let model: Model | undefined;

/**
 * Which way of working with coloured batter, or which matter round it, a question asks about. Learned from questions of several makers: a
 * multinomial logistic regression over words, their pieces and what they stand for in English and Spanish. Pure, but that the weights are
 * unpacked once.
 */
export function mattersOf(question: string): MatterChances {
  model ??= modelOf(WRITTEN);
  return mattersBy(question, model, WRITTEN.classes);
}
