import type { Origin } from '../../origin.ts';

/** What anybody who handles lye must be told; `src/words` speaks each. */
export type LyeCautionId =
  | 'lye-burns'
  | 'lye-gear'
  | 'lye-into-water'
  | 'lye-air'
  | 'lye-children'
  | 'lye-by-scale'
  | 'lye-aluminium'
  | 'lye-vessel'
  | 'lye-label'
  | 'lye-first-aid'
  | 'tested-recipe';

const CLP: Origin = {
  trust: 'published',
  source:
    'Regulation (EC) 1272/2008 (CLP), Annex VI, index 011-002-00-6: H314; H290 from supplier classifications',
};
const OCCUPATIONAL: Origin = {
  trust: 'from memory',
  source: 'CCOHS chemical profile and New Jersey Right to Know fact sheet, sodium hydroxide',
};
const FIRST_AID: Origin = {
  trust: 'published',
  source:
    'New Jersey Right to Know fact sheet, sodium hydroxide: rinse eyes at least 30 minutes, get medical help',
};
const TRADE: Origin = { trust: 'common practice', source: 'soap makers handling lye at home' };

/** The order is that of the work: what it does, what to wear, how to mix, what to do when it goes wrong. */
export const LYE_CAUTIONS: readonly { readonly id: LyeCautionId; readonly origin: Origin }[] = [
  { id: 'lye-burns', origin: CLP },
  { id: 'lye-gear', origin: OCCUPATIONAL },
  { id: 'lye-into-water', origin: OCCUPATIONAL },
  { id: 'lye-air', origin: OCCUPATIONAL },
  { id: 'lye-children', origin: TRADE },
  { id: 'lye-by-scale', origin: TRADE },
  { id: 'lye-aluminium', origin: CLP },
  { id: 'lye-vessel', origin: TRADE },
  { id: 'lye-label', origin: TRADE },
  { id: 'lye-first-aid', origin: FIRST_AID },
  { id: 'tested-recipe', origin: TRADE },
];
