import type { Origin } from '../../../origin.ts';

/** Matters of weighing by guess, of what goes on in the jug, and of who stands near. */
export type CareTopic =
  | 'lye-guessed'
  | 'fluid-ounces'
  | 'too-much-in'
  | 'too-little-in'
  | 'extra-lye'
  | 'rest-later'
  | 'second-water'
  | 'oil-spilled'
  | 'two-figures'
  | 'water-unwritten'
  | 'metal-in-lye'
  | 'cloudy-lye'
  | 'undissolved-lye'
  | 'honey-in-lye'
  | 'alcohol-in-lye'
  | 'water-was-put-on'
  | 'unsteady-hands'
  | 'class-rules'
  | 'food-kitchen'
  | 'not-sober'
  | 'fan'
  | 'flame-near'
  | 'goggles-fog'
  | 'power-cut'
  | 'left-halfway'
  | 'batter-in-hair'
  | 'soap-in-eye'
  | 'red-skin'
  | 'blocked-sink'
  | 'bleach-went-in'
  | 'used-early'
  | 'old-bar'
  | 'no-vinegar'
  | 'zap-young'
  | 'no-lye-in-it'
  | 'blender-smokes'
  | 'rusty-lid'
  | 'purity-unknown';

const MEMORY = (source: string): Origin => ({ trust: 'from memory', source });
const TRADE: Origin = { trust: 'common practice', source: 'soap makers handling lye at home' };
const SHEET = (sections: string): Origin => MEMORY(`safety data sheets of sodium hydroxide, ${sections}`);

/** Where each answer comes from. */
export const CARE_TOPIC_ORIGINS: Readonly<Record<CareTopic, Origin>> = {
  'lye-guessed': TRADE,
  'fluid-ounces': MEMORY(
    'an ounce of weight is 28.35 g; a US fluid ounce is a volume of 29.57 ml (NIST HB 44)',
  ),
  'too-much-in': TRADE,
  'too-little-in': TRADE,
  'extra-lye': MEMORY('stoichiometry of saponification: what the fats do not take stays free'),
  'rest-later': TRADE,
  'second-water': MEMORY('water takes no part in saponification, it carries the lye (textbook chemistry)'),
  'oil-spilled': MEMORY('lye goes in proportion to the oils (stoichiometry)'),
  'two-figures': MEMORY('saponification values are ranges (Codex CXS 33 and 210); superfat leaves lye out'),
  'water-unwritten': TRADE,
  'metal-in-lye': SHEET('section 10: hydrogen with aluminium, zinc and tin'),
  'cloudy-lye': MEMORY('sodium carbonate is hardly soluble in strong lye (textbook chemistry)'),
  'undissolved-lye': SHEET(
    'section 7: cold water, slowly; lye of 50 % sets below about 15 C (handbook tables)',
  ),
  'honey-in-lye': TRADE,
  'alcohol-in-lye': MEMORY(
    'ethanol boils at 78 C, lye water reaches 90 C; it burns (safety data sheets, section 9)',
  ),
  'water-was-put-on': SHEET('section 7: heat of solution'),
  'unsteady-hands': TRADE,
  'class-rules': SHEET('sections 4, 7 and 8: running water at hand, goggles, gloves'),
  'food-kitchen': MEMORY(
    'food hygiene rules: no dangerous substances where food is made (EC 852/2004, Annex II)',
  ),
  'not-sober': TRADE,
  fan: SHEET('section 8: no mist or dust breathed in, none blown about'),
  'flame-near': MEMORY('safety data sheets: flash points of alcohol and scents; hydrogen of metals in lye'),
  'goggles-fog': SHEET('section 8: tight goggles'),
  'power-cut': TRADE,
  'left-halfway': TRADE,
  'batter-in-hair': SHEET('section 4: running water for a long time'),
  'soap-in-eye': SHEET('section 4: rinse the open eye for at least 15 minutes'),
  'red-skin': SHEET('section 4: running water; a doctor for a child'),
  'blocked-sink': SHEET('section 7: heat with water in a closed pipe'),
  'bleach-went-in': MEMORY('safety data sheets of sodium hypochlorite, section 10: chlorine with acids'),
  'used-early': TRADE,
  'old-bar': TRADE,
  'no-vinegar': MEMORY('heat of neutralisation; poison centres: water only, at once, for long'),
  'zap-young': TRADE,
  'no-lye-in-it': MEMORY('without hydroxide fat stays fat (textbook chemistry)'),
  'blender-smokes': TRADE,
  'rusty-lid': SHEET('section 10: attacks zinc and tin of coated lids'),
  'purity-unknown': MEMORY('sodium hydroxide is sold at 97 to 99 %, technical grades lower (labels)'),
};
