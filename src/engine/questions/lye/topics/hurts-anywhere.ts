import type { LyeTopic } from './topic.ts';

/** Ways of handling lye that hurt somebody whatever it is for: what keeps from harm is said first, never another field's sentence. */
export const HURTS_ANYWHERE: ReadonlySet<string> = new Set<LyeTopic>([
  'drink-bottle',
  'bleach-in-soap',
  'water-onto-lye',
  'aluminium',
  'milk-at-once',
  'no-goggles',
  'zap-use',
  'more-lye',
]);
