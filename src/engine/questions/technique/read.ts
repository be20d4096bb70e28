import { logChances, type Model } from '../../text/learned/model.ts';
import { modelOf } from '../../text/learned/written.ts';
import { featuresOf } from './features.ts';
import { isTechnique, type Technique } from './topic.ts';
import WRITTEN from './weights.json' with { type: 'json' };

/** A technique that a question may be about, and how likely it is, 0 to 1. */
export type NearTechnique = { readonly technique: Technique; readonly chance: number };

/** Techniques, the likeliest first, and how likely a question is about none of them, 0 to 1. */
export type TechniqueChances = { readonly near: readonly NearTechnique[]; readonly none: number };

/** What a model that scores `classes`, one of which is `none`, tells of a question. Pure. */
export function techniquesBy(question: string, model: Model, classes: readonly string[]): TechniqueChances {
  const chances = logChances(featuresOf(question), model).map(Math.exp);
  const near = classes
    .map((technique, at) => ({ technique, chance: chances[at]! }))
    .filter((one): one is NearTechnique => isTechnique(one.technique))
    .toSorted((a, b) => b.chance - a.chance);
  return { near, none: chances[classes.indexOf('none')]! };
}

let model: Model | undefined;

/**
 * Which way of working with coloured batter a question asks about. Learned from questions of several makers: a multinomial logistic
 * regression over words and their pieces in English and Spanish. Pure, but that the weights are unpacked once.
 */
export function techniquesOf(question: string): TechniqueChances {
  model ??= modelOf(WRITTEN);
  return techniquesBy(question, model, WRITTEN.classes);
}
