import type { Origin } from '../../origin.ts';
import type { LyeTopic } from '../lye/topics/topic.ts';

const TRADE: Origin = { trust: 'common practice', source: 'soap makers working with coloured batter' };
const MEMORY = (source: string): Origin => ({ trust: 'from memory', source });

/** What members ask of soap round its colour, and where each answer comes from. */
export const BESIDE_ORIGINS = {
  'vanilla-brown': TRADE,
  'ash-avoid': TRADE,
  piping: TRADE,
  'rebatch-colour': TRADE,
  'colour-in-mould': TRADE,
  'cover-mould': TRADE,
  'cure-time': TRADE,
  'what-is-trace': TRADE,
  'too-much-colour': TRADE,
  'powder-dust': TRADE,
  'lye-nerves': MEMORY('sodium hydroxide heats water to 80 to 90 °C (safety data sheets)'),
  'stained-things': TRADE,
  'swirl-tools': MEMORY('aluminium, zinc and tin dissolve in lye and give off hydrogen'),
  'easiest-swirl': TRADE,
  'split-batter': MEMORY('1 kg oils with some 0.14 kg lye and 0.29 kg water (arithmetic)'),
  botanicals: TRADE,
  'milk-colour': TRADE,
  'honey-sugar': TRADE,
  'yellow-base': TRADE,
  'unlabelled-powder': TRADE,
  'cosmetic-grade': MEMORY('iron blue and manganese violet do not last at the pH of raw soap'),
  'shine-sparkle': TRADE,
  'dust-on-top': TRADE,
  'mica-settles': TRADE,
  'clays-colour': TRADE,
  'steep-in-oil': TRADE,
  'coloured-suds': TRADE,
  'hot-soap': TRADE,
  'scent-speeds': TRADE,
  'changed-in-pot': TRADE,
  'label-selling': MEMORY('EU Regulation 1223/2009, article 19(1)(g)'),
  'blend-two': TRADE,
  'colour-families': TRADE,
  'darker-lighter': TRADE,
  'mould-care': TRADE,
  'pour-order': TRADE,
  'scent-amount': MEMORY(
    '3 % of 1,000 g oils are 30 g, half an ounce a pound (arithmetic); limits are by the scent’s own sheet',
  ),
  'scent-lasts': TRADE,
  'scent-mix': TRADE,
  'small-batch': MEMORY('100 g of oils take some 14 g of lye: half a gram is 3.5 % (arithmetic)'),
  'starter-recipe': TRADE,
  'clean-clothes': TRADE,
  'stuck-in-mould': TRADE,
  'clean-tools': TRADE,
  'scale-drift': MEMORY('half a gram is 0.7 % of the lye of 500 g of oils (arithmetic, as of small batches)'),
  'make-it-gel': TRADE,
} as const satisfies Readonly<Record<string, Origin>>;

/** What members ask in the same way, and is answered among what is said near lye: the answer it has unless a part of it is named. */
export const LED_TO = {
  'demould-cut': 'after-pour',
  'no-trace': 'no-trace',
  'goggles-gloves': 'no-goggles',
  'children-helping': 'children',
  'lye-cloudy': 'undissolved-lye',
  'lye-spilt-surface': 'clean-up',
  'rising-now': 'hot-crack',
  'kitchen-tools': 'back-to-food',
  'water-amount': 'water-amount',
} as const satisfies Readonly<Record<string, LyeTopic>>;
export type Led = keyof typeof LED_TO;

/** What is said where nothing is asked of soap yet: a cry that names nothing, chat, and what a program of this kind cannot do. */
export const TALK = ['vague-trouble', 'chat', 'cannot-do'] as const;
export type Talk = (typeof TALK)[number];
