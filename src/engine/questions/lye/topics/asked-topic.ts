import type { Origin } from '../../../origin.ts';

/** What is asked of a thing near lye in general, found by what is asked of what (`asked/`) and never learned. */
export type AskedTopic =
  | 'takes-no-lye'
  | 'wax-counted'
  | 'names-of-lye'
  | 'flakes-or-pearls'
  | 'soda-or-potash'
  | 'tap-water'
  | 'lye-water-keeps'
  | 'cooling-time'
  | 'superfat-on-which'
  | 'superfat-low'
  | 'superfat-from-lye'
  | 'less-lye-went-in'
  | 'lye-heavy-laundry'
  | 'children-cured'
  | 'lye-smell'
  | 'ash-lye-once'
  | 'trace-signs'
  | 'wrapping'
  | 'soda-ash-avoided'
  | 'rest-of-lye'
  | 'scale-by-grams'
  | 'lye-on-label';

const MEMORY = (source: string): Origin => ({ trust: 'from memory', source });
const TRADE: Origin = { trust: 'common practice', source: 'soap makers handling lye at home' };

/** Where each answer comes from. */
export const ASKED_TOPIC_ORIGINS: Readonly<Record<AskedTopic, Origin>> = {
  'takes-no-lye': MEMORY('only fats, waxes and acids use hydroxide up; sugar, salt and minerals do not'),
  'wax-counted': {
    trust: 'published',
    source: 'European Pharmacopoeia, Beeswax, yellow: saponification value 87 to 104 mg KOH/g',
  },
  'names-of-lye': MEMORY('names and CAS numbers: sodium hydroxide 1310-73-2, potassium hydroxide 1310-58-3'),
  'flakes-or-pearls': MEMORY('flakes, pearls and grains of one purity hold the same hydroxide by weight'),
  'soda-or-potash': TRADE,
  'tap-water': MEMORY('calcium and magnesium make insoluble soaps (textbook chemistry)'),
  'lye-water-keeps': MEMORY(
    'sodium hydroxide takes up carbon dioxide; a 50 % solution sets solid below about 12 C (handbook tables)',
  ),
  'cooling-time': TRADE,
  'superfat-on-which': MEMORY('lye for 0 % times (1 - superfat) is what superfat means (arithmetic)'),
  'superfat-low': TRADE,
  'superfat-from-lye': MEMORY('1 - lye that went in / lye that the oils take (arithmetic)'),
  'less-lye-went-in': MEMORY('less hydroxide leaves more fat over (stoichiometry)'),
  'rest-of-lye': TRADE,
  'scale-by-grams': MEMORY('a constant error weighs most on the smallest weight (arithmetic)'),
  'lye-on-label': MEMORY('INCI names of soaps: sodium olivate and others, or the oils and sodium hydroxide'),
  'lye-heavy-laundry': MEMORY(
    'safety data sheets of sodium hydroxide, sections 4 and 13: H314, caustic waste',
  ),
  'children-cured': TRADE,
  'lye-smell': MEMORY('safety data sheets of sodium hydroxide, section 9: odourless'),
  'ash-lye-once': MEMORY(
    'wood ash holds potassium carbonate, with lime potassium hydroxide (textbook chemistry)',
  ),
  'trace-signs': TRADE,
  wrapping: TRADE,
  'soda-ash-avoided': MEMORY(
    'soda ash is sodium carbonate, from lye and the carbon dioxide of air (textbook chemistry)',
  ),
};
