import type { Origin } from '../../../origin.ts';

/** Matters of harm near lye: what is done or asked that may hurt, and weights that went wrong. */
export type HarmTopic =
  | 'swallowed'
  | 'electric-shock'
  | 'lye-in-food'
  | 'maybe-lye'
  | 'not-for-washing'
  | 'soap-in-wound'
  | 'amounts-swapped'
  | 'oil-forgotten'
  | 'ph-high'
  | 'ash-or-lye'
  | 'alcohol-and-fire'
  | 'smoking-oil'
  | 'hot-liquid'
  | 'heating-lye'
  | 'lye-into-water'
  | 'bleach-mixed'
  | 'ultramarine-acid'
  | 'prussian-acid'
  | 'zap-child'
  | 'hands-full'
  | 'bare-hands'
  | 'no-window'
  | 'birds'
  | 'weak-gear'
  | 'craft-colour'
  | 'ground-stuff'
  | 'filler'
  | 'lye-by-food';

const MEMORY = (source: string): Origin => ({ trust: 'from memory', source });
const TRADE: Origin = { trust: 'common practice', source: 'soap makers handling lye at home' };

/** Where each answer comes from. */
export const HARM_TOPIC_ORIGINS: Readonly<Record<HarmTopic, Origin>> = {
  swallowed: MEMORY(
    'safety data sheets of sodium hydroxide, section 4, and poison centres on caustics: rinse, no vomiting, call',
  ),
  'electric-shock': MEMORY(
    'first aid for electric shock: current off before touching anybody, emergency call, a doctor afterwards',
  ),
  'lye-in-food': MEMORY('poison centres on caustics: food that lye may have got into is not eaten'),
  'maybe-lye': MEMORY(
    'safety data sheets of sodium hydroxide, sections 7 and 13: labelled, never tasted, handed in as caustic',
  ),
  'not-for-washing': MEMORY(
    'first aid: wounds are rinsed with clean water; food safety offices: food with water only',
  ),
  'soap-in-wound': MEMORY(
    'safety data sheets of sodium hydroxide, section 4: rinse with water for a long time',
  ),
  'amounts-swapped': MEMORY(
    'stoichiometry; safety data sheets of sodium hydroxide, section 7: never water onto strong hot lye',
  ),
  'oil-forgotten': MEMORY('every fat takes lye by its saponification value: Codex CXS 33 and 210'),
  'ph-high': MEMORY(
    'soap in water hydrolyses to a pH of about 9 to 10.5; free alkali lies above (textbook chemistry)',
  ),
  'ash-or-lye': TRADE,
  'alcohol-and-fire': MEMORY(
    'safety data sheets of ethanol, section 9: flash point about 13 to 17 C; vapour heavier than air',
  ),
  'smoking-oil': MEMORY('fire services on burning fat: heat off, lid on, never water'),
  'hot-liquid': MEMORY('safety data sheets of sodium hydroxide, section 7: cold water, heat of solution'),
  'heating-lye': TRADE,
  'lye-into-water': MEMORY(
    'safety data sheets of sodium hydroxide, section 7: always the solid into cold water',
  ),
  'bleach-mixed': MEMORY(
    'safety data sheets of sodium hypochlorite, section 10: chlorine with acids, chloramines with ammonia, chlorinated compounds with alcohol',
  ),
  'ultramarine-acid': MEMORY('acid frees hydrogen sulfide from ultramarine (textbook chemistry)'),
  'prussian-acid': MEMORY(
    'hot strong acid can free hydrogen cyanide from ferrocyanides; alkali turns iron blue into iron hydroxide (textbook chemistry)',
  ),
  'zap-child': MEMORY('poison centres on caustics: children kept away from lye and fresh soap'),
  'hands-full': TRADE,
  'bare-hands': TRADE,
  'no-window': MEMORY('safety data sheets of sodium hydroxide, section 8: ventilation, no mist breathed in'),
  birds: MEMORY('veterinary advice: lungs of birds take up fumes and mist faster than ours'),
  'weak-gear': MEMORY(
    'safety data sheets of sodium hydroxide, section 8: tight goggles, skin covered; cloth filters no mist',
  ),
  'craft-colour': MEMORY(
    'EU Regulation 1223/2009, Annex IV and 21 CFR 73 to 82: colours for skin are listed and of stated purity',
  ),
  'ground-stuff': MEMORY(
    'metals in scrap, brick and ash are not controlled; metal powders react with lye (textbook chemistry)',
  ),
  filler: MEMORY('plaster sets and heats with water; safety data sheets of talc, section 8: dust'),
  'lye-by-food': MEMORY(
    'safety data sheets of sodium hydroxide, section 7: closed, labelled, apart from food and drink',
  ),
};
