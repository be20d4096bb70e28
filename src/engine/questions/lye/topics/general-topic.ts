import type { Origin } from '../../../origin.ts';

/** What is asked of lye, its water and its reckoning in general, with no recipe and no harm at hand. */
export type GeneralTopic =
  | 'superfat-meaning'
  | 'superfat-high'
  | 'superfat-at-trace'
  | 'liquid-lye'
  | 'liquid-amount'
  | 'koh-and-naoh'
  | 'sap-to-naoh'
  | 'acid-lye'
  | 'water-amount'
  | 'more-water'
  | 'strength-and-ratio'
  | 'lye-roughly'
  | 'animal-fat'
  | 'caustic-for-soda'
  | 'lather-without-coconut'
  | 'free-alkali-test'
  | 'purity-ignored'
  | 'scale-off'
  | 'hot-lye'
  | 'ph-enough'
  | 'why-cure'
  | 'lye-free-claim'
  | 'selling'
  | 'melt-and-pour-lye'
  | 'slimy'
  | 'lye-for-food'
  | 'smell-fades'
  | 'hot-process-cure'
  | 'bars-per-kilo'
  | 'lye-tub'
  | 'shop-fat'
  | 'more-oil';

const MEMORY = (source: string): Origin => ({ trust: 'from memory', source });
const PUBLISHED = (source: string): Origin => ({ trust: 'published', source });
const TRADE: Origin = { trust: 'common practice', source: 'soap makers handling lye at home' };

/** Where each answer comes from. */
export const GENERAL_TOPIC_ORIGINS: Readonly<Record<GeneralTopic, Origin>> = {
  'superfat-meaning': TRADE,
  'superfat-high': TRADE,
  'superfat-at-trace': MEMORY(
    'fats that saponify side by side exchange their fatty acids (textbook chemistry)',
  ),
  'liquid-lye': MEMORY(
    'hydroxide is used up by fats and acids, not by water or sugar at rest (textbook chemistry)',
  ),
  'liquid-amount': TRADE,
  'koh-and-naoh': TRADE,
  'sap-to-naoh': MEMORY('molar masses 39.997 and 56.105 g/mol (IUPAC atomic weights)'),
  'acid-lye': MEMORY('molar masses of citric acid, 192.12 with three protons, and acetic acid, 60.05 g/mol'),
  'water-amount': MEMORY('water carries the lye and takes no part in saponification (textbook chemistry)'),
  'more-water': TRADE,
  'strength-and-ratio': MEMORY('a share of the whole and a ratio of its parts (arithmetic)'),
  'lye-roughly': PUBLISHED(
    'saponification values of Codex CXS 33 (olive 184 to 196) and CXS 210 (coconut 248 to 265 mg KOH/g)',
  ),
  'animal-fat': PUBLISHED(
    'Codex CXS 211, lard 192 to 203 and tallow 190 to 202 mg KOH/g; other animals from memory',
  ),
  'caustic-for-soda': MEMORY('sodium carbonate is no hydroxide (textbook chemistry)'),
  'lather-without-coconut': TRADE,
  'free-alkali-test': MEMORY(
    'ISO 456: free caustic alkali in soap, by acid against phenolphthalein in ethanol',
  ),
  'purity-ignored': MEMORY('less hydroxide in the same weight leaves more fat over (stoichiometry)'),
  'scale-off': MEMORY('a constant factor on every weight leaves their ratios as they are (arithmetic)'),
  'hot-lye': TRADE,
  'ph-enough': TRADE,
  'why-cure': TRADE,
  'lye-free-claim': MEMORY(
    'saponification (textbook chemistry); EU Regulation 655/2013: claims must be true',
  ),
  selling: MEMORY('EU Regulation 1223/2009: safety assessment, responsible person, notification before sale'),
  'melt-and-pour-lye': TRADE,
  slimy: TRADE,
  'lye-for-food': MEMORY('food grade sodium hydroxide is E 524; poison centres on caustics'),
  'smell-fades': TRADE,
  'hot-process-cure': TRADE,
  'bars-per-kilo': MEMORY('1 kg oils, some 0.14 kg lye and 0.29 kg water (arithmetic)'),
  'lye-tub': TRADE,
  'shop-fat': TRADE,
  'more-oil': MEMORY('lye goes in proportion to the oils (stoichiometry)'),
};
