import type { CauseId } from './cause.ts';
import { barLikelihoods } from './likelihoods/bar.ts';
import { makingLikelihoods } from './likelihoods/making.ts';
import { swirlAndShapeLikelihoods } from './likelihoods/swirl-and-shape.ts';
import type { Likelihoods } from './likelihoods/table.ts';

/**
 * How often each cause brings a finding with it, among makers who describe it in their own words.
 * What is not named comes only as often as the finding's leak. Every level: from memory.
 */
export const LIKELIHOODS: Readonly<Record<CauseId, Likelihoods>> = {
  ...barLikelihoods,
  ...makingLikelihoods,
  ...swirlAndShapeLikelihoods,
};
