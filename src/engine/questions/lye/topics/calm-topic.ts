import type { Origin } from '../../../origin.ts';

/** Matters asked calmly, signs that mean less or more than they seem, and soap at large, of which no answer is known. */
export type CalmTopic =
  | 'tared'
  | 'never-taste'
  | 'hair-on-bars'
  | 'soap-at-large'
  | 'indicator-pink'
  | 'puddle-on-top'
  | 'lye-heats'
  | 'lye-water-in-cold'
  | 'cold-room';

const MEMORY = (source: string): Origin => ({ trust: 'from memory', source });
const TRADE: Origin = { trust: 'common practice', source: 'soap makers handling lye at home' };

/** Where each answer comes from. */
export const CALM_TOPIC_ORIGINS: Readonly<Record<CalmTopic, Origin>> = {
  tared: MEMORY('a weight in a vessel is the whole less the vessel (arithmetic)'),
  'never-taste': MEMORY('poison centres on caustics: nothing of unknown content is tasted'),
  'hair-on-bars': TRADE,
  'soap-at-large': TRADE,
  'indicator-pink': MEMORY('phenolphthalein turns between pH 8.2 and 10 (handbook tables of indicators)'),
  'puddle-on-top': TRADE,
  'cold-room': TRADE,
  'lye-heats': MEMORY('heat of solution of sodium hydroxide, about 44 kJ/mol (handbook tables)'),
  'lye-water-in-cold': MEMORY(
    'sodium hydroxide of 30 % freezes at about 1 °C, of 40 % at 15 °C, of 50 % at 12 °C (handbook tables)',
  ),
};
