import type { Origin } from '../../origin.ts';
import { BESIDE_ORIGINS, LED_TO, type Led, TALK, type Talk } from './beside.ts';

const TRADE: Origin = { trust: 'common practice', source: 'soap makers working with coloured batter' };
const MEMORY = (source: string): Origin => ({ trust: 'from memory', source });

/** What members ask of working with coloured batter, and where each answer comes from. */
export const TECHNIQUE_ORIGINS = {
  'thick-now': TRADE,
  'riced-now': TRADE,
  'thin-it': TRADE,
  'keep-fluid': TRADE,
  'pot-time': TRADE,
  'slow-oils': TRADE,
  'swirl-water': MEMORY('a strength of 28 to 30 % is 2.57 to 2.33 parts of water to one of lye (arithmetic)'),
  'swirl-temperature': TRADE,
  'blend-or-stir': TRADE,
  'when-colour': TRADE,
  'colour-or-scent': TRADE,
  'colour-in-lye-water': TRADE,
  'dry-in': TRADE,
  'which-trace': TRADE,
  'false-trace': TRADE,
  'layers-how': TRADE,
  'mica-line': TRADE,
  'drop-swirl': TRADE,
  'pot-swirl': TRADE,
  'hanger-swirl': TRADE,
  'spoon-swirl': TRADE,
  'comb-swirl': TRADE,
  'divider-swirl': TRADE,
  'how-many-colours': TRADE,
  'gel-and-colour': TRADE,
  'mix-colourants': TRADE,
  'premix-keeps': TRADE,
  'carrier-counts': MEMORY(
    '14 g of oil left over beside 1 kg of oils at 5 % superfat: 64 of 1,014 g (arithmetic)',
  ),
  'spoon-or-grams': TRADE,
  'of-oils-or-soap': MEMORY('1 kg oils with some 0.14 kg lye and 0.29 kg water (arithmetic)'),
  'first-colours': TRADE,
  'mica-or-oxide': TRADE,
  'whiter-soap': TRADE,
  'bright-colours': TRADE,
  'pastel-colours': TRADE,
  'colour-in-cure': TRADE,
  'colours-that-stay': TRADE,
  'colours-that-bleed': TRADE,
  'natural-colours': TRADE,
  'test-colour': TRADE,
  'store-colours': TRADE,
  'no-lumps': TRADE,
  'mica-floats': TRADE,
  'powder-thickens': TRADE,
  'egg-smell': MEMORY('ultramarine gives hydrogen sulphide with acids (safety data sheets, section 10)'),
  'children-colours': MEMORY('EU Regulation 1223/2009: Annex IV, and Annex I for children under three'),
  'buy-where': TRADE,
  ...BESIDE_ORIGINS,
} as const satisfies Readonly<Record<string, Origin>>;

/** A matter that is answered in words of its own. */
export type Answered = keyof typeof TECHNIQUE_ORIGINS;
/** Any matter that a question may be about: of some, the answer stands among those near lye. */
export type Technique = Answered | Led;

/** True of the id of a matter that has an answer. */
export const isTechnique = (id: string): id is Technique =>
  Object.hasOwn(TECHNIQUE_ORIGINS, id) || Object.hasOwn(LED_TO, id);
/** A technique, or that nothing is asked yet. */
export type Matter = Technique | Talk;
/** True of the id of a matter. */
export const isMatter = (id: string): id is Matter =>
  isTechnique(id) || (TALK as readonly string[]).includes(id);
/** True where the answer is in words of its own. */
export const isAnswered = (id: Technique): id is Answered => Object.hasOwn(TECHNIQUE_ORIGINS, id);

/** Raw batter or lye is at hand while these are done. */
export const WITH_RAW_BATTER: ReadonlySet<Technique> = new Set([
  'thick-now',
  'riced-now',
  'thin-it',
  'keep-fluid',
  'blend-or-stir',
  'when-colour',
  'colour-or-scent',
  'colour-in-lye-water',
  'which-trace',
  'false-trace',
  'layers-how',
  'drop-swirl',
  'pot-swirl',
  'hanger-swirl',
  'spoon-swirl',
  'comb-swirl',
  'divider-swirl',
  'swirl-water',
  'swirl-temperature',
  'test-colour',
  'piping',
  'colour-in-mould',
  'changed-in-pot',
  'split-batter',
  'small-batch',
  'clean-clothes',
  'clean-tools',
  'rising-now',
]);

/** Powder may rise while these are done. */
export const WITH_DRY_POWDER: ReadonlySet<Technique> = new Set([
  'dry-in',
  'mica-line',
  'store-colours',
  'no-lumps',
  'mica-floats',
  'spoon-or-grams',
  'dust-on-top',
  'powder-dust',
]);
