import type { Origin } from '../../../origin.ts';
import { ASKED_TOPIC_ORIGINS, type AskedTopic } from './asked-topic.ts';
import { CALM_TOPIC_ORIGINS, type CalmTopic } from './calm-topic.ts';
import { CARE_TOPIC_ORIGINS, type CareTopic } from './care-topic.ts';
import { GENERAL_TOPIC_ORIGINS, type GeneralTopic } from './general-topic.ts';
import { HARM_TOPIC_ORIGINS, type HarmTopic } from './harm-topic.ts';

/** A question about handling lye that has one answer, whatever the recipe; `src/words` speaks each. */
export type LyeTopic =
  | HarmTopic
  | CareTopic
  | CalmTopic
  | AskedTopic
  | GeneralTopic
  | 'clean-up'
  | 'drain-cleaner'
  | 'baking-soda'
  | 'bleach'
  | 'water-onto-lye'
  | 'glass-jug'
  | 'aluminium'
  | 'no-goggles'
  | 'lye-twice'
  | 'wrong-unit'
  | 'lye-forgotten'
  | 'harder-by-lye'
  | 'too-little-water'
  | 'disposal'
  | 'drink-bottle'
  | 'storing'
  | 'clumped'
  | 'children'
  | 'microwave'
  | 'more-lye'
  | 'zap-use'
  | 'zap-test'
  | 'soap-ph'
  | 'milk-at-once'
  | 'scorched-milk'
  | 'spooned-lye'
  | 'no-lye'
  | 'lye-gone'
  | 'when-safe'
  | 'koh-for-naoh'
  | 'bleach-in-soap'
  | 'acid-in-batter'
  | 'acid-on-soap'
  | 'cure-lye-heavy'
  | 'rebatch-lye-heavy'
  | 'baby'
  | 'hot-loaf'
  | 'lye-and-water-swapped'
  | 'lye-on-skin'
  | 'lye-fumes'
  | 'vessel'
  | 'liquid-instead'
  | 'sugars'
  | 'hot-oven'
  | 'hot-oils'
  | 'candle-scent'
  | 'lye-with-cleaner'
  | 'hot-crack'
  | 'batter-away'
  | 'safe-test'
  | 'no-superfat'
  | 'vanillin'
  | 'scale-batch'
  | 'gear'
  | 'dust'
  | 'cooling-lye'
  | 'unattended'
  | 'other-alkali'
  | 'oil-swapped'
  | 'less-lye'
  | 'scale'
  | 'scent-dose'
  | 'old-oil'
  | 'other-water'
  | 'lye-in-oil'
  | 'water-forgotten'
  | 'mixing-temperature'
  | 'back-to-food'
  | 'pregnant'
  | 'asthma'
  | 'contact-lenses'
  | 'pets-washed'
  | 'bad-batch-away'
  | 'washing-up'
  | 'outdoors'
  | 'electric-blanket'
  | 'oven-to-hurry'
  | 'fridge-with-food'
  | 'flame'
  | 'mould-stuff'
  | 'not-an-oil'
  | 'sand-and-shells'
  | 'fresh-plants'
  | 'craft-glitter'
  | 'household-scent'
  | 'ink'
  | 'hot-oils-of-scent'
  | 'no-trace'
  | 'kitchen-spice'
  | 'puree'
  | 'first-soap'
  | 'after-pour'
  | 'unsure';

const MEMORY = (source: string): Origin => ({ trust: 'from memory', source });
const TRADE: Origin = { trust: 'common practice', source: 'soap makers handling lye at home' };

/** Where each answer comes from. */
export const LYE_TOPIC_ORIGINS: Readonly<Record<LyeTopic, Origin>> = {
  ...HARM_TOPIC_ORIGINS,
  ...CARE_TOPIC_ORIGINS,
  ...CALM_TOPIC_ORIGINS,
  ...ASKED_TOPIC_ORIGINS,
  ...GENERAL_TOPIC_ORIGINS,
  'clean-up': MEMORY(
    'safety data sheets of sodium hydroxide, section 6 (sweep up dry, then flush) and 4 (rinse skin with water only)',
  ),
  'drain-cleaner': MEMORY(
    'safety data sheets of crystal drain openers: aluminium chips, nitrates, surfactants',
  ),
  'baking-soda': MEMORY('sodium hydrogen carbonate does not saponify fats (textbook chemistry)'),
  bleach: MEMORY('household bleach is sodium hypochlorite; sodium hydroxide is another substance (labels)'),
  'water-onto-lye': MEMORY(
    'safety data sheets of sodium hydroxide, section 7: always the solid into cold water',
  ),
  'glass-jug': TRADE,
  aluminium: MEMORY(
    'safety data sheets of sodium hydroxide, section 10: hydrogen with aluminium, zinc and tin',
  ),
  'no-goggles': MEMORY('safety data sheets of sodium hydroxide, section 8: tight goggles; H314, H318'),
  'lye-twice': TRADE,
  'wrong-unit': TRADE,
  'lye-forgotten': TRADE,
  'harder-by-lye': TRADE,
  'too-little-water': MEMORY(
    'solubility of sodium hydroxide: about its own weight of water at 20 C, CRC Handbook',
  ),
  disposal: MEMORY(
    'safety data sheets of sodium hydroxide, section 13: by local rules; section 7: closed and labelled',
  ),
  'drink-bottle': MEMORY('poison centres on caustics: never in a bottle for drinks'),
  storing: MEMORY(
    'safety data sheets of sodium hydroxide, section 7: closed, dry, labelled, away from acids and metals',
  ),
  clumped: MEMORY('sodium hydroxide draws water and carbon dioxide out of the air (textbook chemistry)'),
  children: MEMORY('poison centres on caustics: locked away, children and animals out of the room'),
  microwave: TRADE,
  'more-lye': TRADE,
  'zap-use': TRADE,
  'zap-test': TRADE,
  'soap-ph': MEMORY('soap in water hydrolyses to a pH of about 9 to 10.5 (textbook chemistry)'),
  'milk-at-once': TRADE,
  'scorched-milk': TRADE,
  'spooned-lye': TRADE,
  'no-lye': MEMORY('saponification (textbook chemistry)'),
  'lye-gone': MEMORY('saponification (textbook chemistry)'),
  'when-safe': TRADE,
  'koh-for-naoh': MEMORY('molar masses 40.00 and 56.11 g/mol; KOH is usually sold at about 90 %'),
  'bleach-in-soap': MEMORY(
    'safety data sheets of sodium hypochlorite, section 10: chlorine with acids, chloramines with ammonia',
  ),
  'acid-in-batter': MEMORY('acid and base neutralise by their moles (textbook chemistry)'),
  'acid-on-soap': TRADE,
  'cure-lye-heavy': TRADE,
  'rebatch-lye-heavy': TRADE,
  baby: MEMORY('EU Regulation 1223/2009, Annex I: a separate assessment for children under three'),
  'hot-loaf': TRADE,
  'lye-and-water-swapped': TRADE,
  'lye-on-skin': MEMORY('safety data sheets of sodium hydroxide, sections 4 and 11: H314'),
  'liquid-instead': TRADE,
  sugars: TRADE,
  'hot-oven': TRADE,
  'hot-oils': TRADE,
  'candle-scent': MEMORY('IFRA Standards: a certificate states the most for category 9, rinse-off products'),
  'lye-with-cleaner': MEMORY(
    'safety data sheets of sodium hypochlorite, section 10: chlorine with acids, chloramines with ammonia; of sodium hydroxide: heat',
  ),
  'hot-crack': TRADE,
  'batter-away': TRADE,
  'safe-test': TRADE,
  'no-superfat': TRADE,
  vanillin: MEMORY('vanillin browns in alkali; sellers of fragrance state its share (trade practice)'),
  gear: MEMORY(
    'safety data sheets of sodium hydroxide, section 8: tight goggles, nitrile, neoprene or natural rubber gloves',
  ),
  dust: MEMORY('safety data sheets of titanium dioxide, iron oxide and mica, section 8: dust'),
  'cooling-lye': MEMORY('safety data sheets of sodium hydroxide, section 7: cold water, heat of solution'),
  unattended: TRADE,
  'other-alkali': MEMORY('carbonate and lime do not saponify fats at room temperature (textbook chemistry)'),
  'oil-swapped': MEMORY('saponification values: Codex CXS 33 and 210'),
  'less-lye': TRADE,
  scale: TRADE,
  'scent-dose': MEMORY('IFRA Standards: a certificate states the most for category 9, rinse-off products'),
  'old-oil': TRADE,
  'other-water': MEMORY(
    'safety data sheets of sodium hydroxide, section 7 (cold water), and of hydrogen peroxide, section 10 (alkali)',
  ),
  'lye-in-oil': MEMORY(
    'sodium hydroxide is insoluble in fats and gives off heat in water (textbook chemistry)',
  ),
  'water-forgotten': MEMORY(
    'sodium hydroxide is insoluble in fats and gives off heat in water (textbook chemistry)',
  ),
  'mixing-temperature': TRADE,
  'back-to-food': TRADE,
  pregnant: TRADE,
  asthma: MEMORY(
    'safety data sheets of sodium hydroxide, section 11: irritates airways; asthma needs a doctor',
  ),
  'contact-lenses': MEMORY(
    'safety data sheets of sodium hydroxide, section 4: remove contact lenses; section 8: tight goggles',
  ),
  'pets-washed': MEMORY('poison centres on tea tree oil in dogs and cats'),
  'bad-batch-away': MEMORY('safety data sheets of sodium hydroxide, section 13: by local rules'),
  'washing-up': TRADE,
  outdoors: TRADE,
  'electric-blanket': TRADE,
  'oven-to-hurry': TRADE,
  'fridge-with-food': TRADE,
  flame: TRADE,
  'mould-stuff': MEMORY(
    'safety data sheets of sodium hydroxide, section 10: hydrogen with aluminium, zinc and tin; softening points of PS and PVC (handbook tables)',
  ),
  'not-an-oil': MEMORY('hydrocarbons do not saponify (textbook chemistry)'),
  'sand-and-shells': TRADE,
  'fresh-plants': TRADE,
  'craft-glitter': MEMORY('glitter is cut polyester film, often coated with aluminium (trade practice)'),
  'household-scent': TRADE,
  ink: MEMORY('EU Regulation 1223/2009, Annex IV lists the colours allowed on skin'),
  'hot-oils-of-scent': MEMORY('IFRA Standards: cinnamal and eugenol are restricted, category 9'),
  'no-trace': TRADE,
  'kitchen-spice': MEMORY('IFRA Standards: cinnamal and eugenol are restricted, category 9'),
  puree: TRADE,
  unsure: TRADE,
  'first-soap': TRADE,
  'after-pour': TRADE,
  'scale-batch': MEMORY('lye and water go in proportion to the oils (stoichiometry)'),
  vessel: MEMORY(
    'chemical resistance tables: sodium hydroxide 50 % and polypropylene, HDPE, stainless steel 304',
  ),
  'lye-fumes': MEMORY('safety data sheets of sodium hydroxide, sections 4, 7 and 8: mist and dust'),
};
