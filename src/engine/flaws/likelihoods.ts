import type { CauseId } from './cause.ts';
import type { FindingId } from './findings.ts';
import type { Level } from './levels.ts';
import { barLikelihoods } from './likelihoods/bar.ts';
import { makingLikelihoods } from './likelihoods/making.ts';

/** The findings a cause brings with it, by how often. */
export type Likelihoods = { readonly [L in Level]?: readonly FindingId[] };

export type LikelihoodTable = { readonly [Id in CauseId]?: Likelihoods };

/**
 * How often each cause brings a finding with it, among makers who describe it in their own words.
 * What is not named comes only as often as the finding's leak. Every level: from memory.
 */
export const LIKELIHOODS: Readonly<Record<CauseId, Likelihoods>> = {
  ...barLikelihoods,
  ...makingLikelihoods,
};
