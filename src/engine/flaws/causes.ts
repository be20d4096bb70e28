import { CAUSE_IDS, type CauseId } from './cause.ts';
import type { RemedyId } from './remedies.ts';

/** How often a flaw that makers ask about has this cause: three words, from memory. */
export type Commonness = 'common' | 'usual' | 'uncommon';

export const PRIOR: Readonly<Record<Commonness, number>> = { common: 0.05, usual: 0.035, uncommon: 0.025 };

export type Cause = {
  readonly commonness: Commonness;
  /** True where the soap must not be used as it is. */
  readonly doNotUse: boolean;
  readonly thisBatch: readonly RemedyId[];
  readonly nextBatch: readonly RemedyId[];
};

type Remedies = readonly RemedyId[];

const cause = (
  commonness: Commonness,
  thisBatch: Remedies,
  nextBatch: Remedies,
  doNotUse = false,
): Cause => ({
  commonness,
  doNotUse,
  thisBatch,
  nextBatch,
});

/** What each cause calls for. Remedies are common practice of the trade. */
export const CAUSES: Readonly<Record<CauseId, Cause>> = {
  'undispersed-pigment': cause(
    'common',
    ['only-looks', 'use-as-it-is'],
    ['wet-pigment-first', 'strain-or-mill-colour', 'stick-blend-carrier-in'],
  ),
  'carrier-pockets': cause(
    'usual',
    ['dab-oil-off', 'use-as-it-is'],
    ['stick-blend-carrier-in', 'less-carrier'],
  ),
  'white-pigment-crackle': cause(
    'usual',
    ['only-looks', 'use-as-it-is'],
    ['less-heat', 'less-white-pigment', 'less-water', 'cooler-fragrance'],
  ),
  'glycerin-rivers': cause(
    'common',
    ['only-looks', 'use-as-it-is'],
    ['less-water', 'less-heat', 'less-white-pigment', 'hold-water-back'],
  ),
  'excess-white-pigment': cause(
    'usual',
    ['cut-warm-or-thin-wire', 'confetti-or-rebatch'],
    ['keep-white-under-ceiling', 'less-white-pigment'],
  ),
  'lye-excess': cause(
    'usual',
    ['do-not-use', 'keep-gloves-on', 'no-guessed-repair', 'discard-safely'],
    ['check-lye-calculation', 'check-scale-and-measures'],
    true,
  ),
  'lye-pockets': cause(
    'usual',
    ['do-not-use', 'keep-gloves-on', 'discard-safely'],
    ['dissolve-lye-fully-and-strain', 'stir-lye-in-evenly'],
    true,
  ),
  'over-hard-recipe': cause(
    'usual',
    ['cut-warm-or-thin-wire', 'confetti-or-rebatch'],
    ['softer-recipe', 'cut-sooner'],
  ),
  'soda-ash': cause(
    'common',
    ['plane-or-steam-ash', 'only-looks'],
    ['cover-and-gel', 'steam-or-alcohol-on-top', 'steeper-water-discount'],
  ),
  'partial-gel': cause('common', ['only-looks', 'insulate-now-for-full-gel'], ['all-gel-or-no-gel']),
  'vanillin-browning': cause(
    'common',
    ['only-looks', 'wait-and-see-colour'],
    ['plan-for-brown', 'vanillin-free-or-portion'],
  ),
  'alkali-unstable-colourant': cause(
    'usual',
    ['only-looks', 'wait-and-see-colour'],
    ['swap-to-alkali-stable', 'test-in-small-cup'],
  ),
  'dye-bleed': cause(
    'usual',
    ['only-looks', 'tell-bleeding-bars-apart'],
    ['swap-dye-for-pigment', 'test-in-small-cup'],
  ),
  'overdosed-colour': cause('usual', ['mark-as-staining', 'use-as-it-is'], ['dose-down-to-ceiling']),
  'underdosed-colour': cause(
    'usual',
    ['only-looks', 'use-as-it-is'],
    ['dose-up-stepwise', 'white-under-bright-colour'],
  ),
  'base-colour-cast': cause(
    'usual',
    ['only-looks', 'wait-and-see-colour'],
    ['paler-base-oils', 'counter-tint', 'white-under-bright-colour'],
  ),
  'overheating-crack': cause(
    'common',
    ['cool-loaf-now', 'level-and-cap-crack', 'use-as-it-is'],
    ['no-insulation-for-hot-recipe', 'less-sugar-milk-honey', 'less-heat'],
  ),
  acceleration: cause(
    'common',
    ['pour-plain-and-fast', 'spoon-into-mould', 'use-as-it-is'],
    ['slower-fragrance', 'fragrance-last-hand-stir', 'thinner-trace-and-cooler'],
  ),
  ricing: cause(
    'usual',
    ['stick-blend-back-together', 'hot-process-now'],
    ['slower-fragrance', 'fragrance-last-hand-stir'],
  ),
  separation: cause(
    'usual',
    [
      'do-not-use',
      'keep-gloves-on',
      'reabsorb-then-test-strip',
      'stick-blend-back-together',
      'hot-process-now',
    ],
    ['reach-true-emulsion', 'slower-fragrance', 'check-scale-and-measures'],
    true,
  ),
  'stearic-spots': cause(
    'usual',
    ['only-looks', 'use-as-it-is'],
    ['warm-enough-to-stay-melted', 'melt-and-stir-butters'],
  ),
  rancidity: cause(
    'common',
    ['use-soon-and-apart'],
    [
      'fresh-oils-lower-superfat',
      'fewer-unsaturated-oils',
      'antioxidant-and-chelator',
      'cure-dry-moving-air',
    ],
  ),
  'air-bubbles': cause(
    'usual',
    ['only-looks', 'use-as-it-is'],
    ['burp-blender-tap-mould', 'thinner-trace-and-cooler'],
  ),
  'humidity-dew': cause(
    'usual',
    ['wipe-and-dry', 'keep-dry-and-airy'],
    ['cure-dry-moving-air', 'keep-dry-and-airy'],
  ),
  'soft-from-carrier': cause(
    'usual',
    ['wait-longer-to-cure', 'keep-dry-and-airy'],
    ['less-carrier', 'hold-water-back'],
  ),
  'light-fade': cause('usual', ['keep-in-dark', 'only-looks'], ['light-stable-colour', 'store-out-of-light']),
  'fragrance-discolouration': cause(
    'usual',
    ['only-looks', 'wait-and-see-colour'],
    ['ask-seller-about-discolouring', 'test-in-small-cup', 'vanillin-free-or-portion'],
  ),
  'reactive-metal': cause('uncommon', ['scrape-stained-face', 'keep-gloves-on'], ['steel-or-plastic-only']),
  'mica-oil-pools': cause('uncommon', ['dab-oil-off', 'wait-longer-to-cure'], ['less-oil-in-mica-top']),
  'wire-drag': cause(
    'uncommon',
    ['clean-cut-face', 'only-looks'],
    ['turn-bar-and-clean-wire', 'cut-when-firm-wipe-wire', 'finer-additives'],
  ),
  'mould-growth': cause('uncommon', ['discard-mouldy'], ['no-fresh-food', 'cure-dry-moving-air']),
  'layers-apart': cause(
    'uncommon',
    ['use-halves-apart', 'only-looks'],
    ['pour-layer-while-soft', 'roughen-and-spray-layer', 'less-between-layers'],
  ),
  'muddy-swirl': cause(
    'uncommon',
    ['only-looks', 'use-as-it-is'],
    ['stop-swirling-sooner', 'swirl-a-little-thicker', 'colours-that-mix-clean'],
  ),
  'sunk-swirl': cause(
    'uncommon',
    ['only-looks', 'use-as-it-is'],
    ['swirl-a-little-thicker', 'pour-low-over-spatula', 'pour-high-for-depth'],
  ),
  warped: cause(
    'uncommon',
    ['press-flat-while-pliable', 'turn-bars-often'],
    ['dry-evenly-on-all-sides', 'cut-even-and-thicker', 'less-water'],
  ),
  'loose-mica': cause(
    'uncommon',
    ['brush-loose-mica-off', 'only-looks'],
    ['spray-mica-onto-wet-top', 'less-dry-mica-on-top'],
  ),
  'gel-shifted-colour': cause(
    'uncommon',
    ['only-looks', 'use-as-it-is'],
    ['all-gel-or-no-gel', 'less-heat', 'test-in-small-cup'],
  ),
  'unsuitable-colour': cause(
    'uncommon',
    ['not-for-skin-unless-permitted', 'wait-and-see-colour'],
    ['colour-made-for-soap', 'test-in-small-cup'],
  ),
  'unmoulded-early': cause(
    'uncommon',
    ['leave-to-firm-gloved', 'keep-gloves-on', 'trim-when-firm'],
    ['wait-before-unmoulding', 'firm-up-recipe', 'chill-before-unmoulding'],
  ),
  'mould-texture': cause(
    'uncommon',
    ['plane-sides-smooth', 'only-looks'],
    ['smooth-taut-liner', 'all-gel-or-no-gel'],
  ),
  'wrinkled-top': cause(
    'uncommon',
    ['plane-top-smooth', 'only-looks'],
    ['less-heat', 'less-water', 'less-white-pigment'],
  ),
};

/** The prior chance of a cause, 0 to 1, before anything is known. */
export function prior(id: CauseId): number {
  return PRIOR[CAUSES[id].commonness];
}

export { CAUSE_IDS };
