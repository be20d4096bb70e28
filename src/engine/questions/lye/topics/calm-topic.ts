import type { Origin } from '../../../origin.ts';

/** Matters asked calmly, and soap at large, of which no answer is known. */
export type CalmTopic = 'tared' | 'never-taste' | 'hair-on-bars' | 'soap-at-large';

const MEMORY = (source: string): Origin => ({ trust: 'from memory', source });
const TRADE: Origin = { trust: 'common practice', source: 'soap makers handling lye at home' };

/** Where each answer comes from. */
export const CALM_TOPIC_ORIGINS: Readonly<Record<CalmTopic, Origin>> = {
  tared: MEMORY('a weight in a vessel is the whole less the vessel (arithmetic)'),
  'never-taste': MEMORY('poison centres on caustics: nothing of unknown content is tasted'),
  'hair-on-bars': TRADE,
  'soap-at-large': TRADE,
};
