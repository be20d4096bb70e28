import type { Level } from './levels.ts';

/** Seen, felt, smelt; happened in the pot; was done or used; when; or a name the member gave it. */
export type FindingGroup = 'seen' | 'felt' | 'batter' | 'done' | 'when' | 'named';

/**
 * One thing a maker can notice or report.
 * `leak`: how often it is reported with none of its causes at work.
 * `said`: how far the words alone are to be believed, 0.5 to 1 (a guess at a name counts less than a sight).
 * `denied`: the chance it is there although the member says it is not ("no zap" says little: lye pockets are local).
 * `ask`: true where a yes, no or don't-know question about it makes sense to a beginner.
 */
export type Finding = {
  readonly group: FindingGroup;
  readonly leak: Level;
  readonly said: number;
  readonly denied: number;
  readonly ask: boolean;
};

const seen = (leak: Level, ask = true): Finding => ({ group: 'seen', leak, said: 0.98, denied: 0.1, ask });
const felt = (leak: Level, ask = true): Finding => ({ group: 'felt', leak, said: 0.98, denied: 0.1, ask });
const batter = (leak: Level, ask = true): Finding => ({
  group: 'batter',
  leak,
  said: 0.98,
  denied: 0.1,
  ask,
});
const done = (leak: Level, ask = true): Finding => ({ group: 'done', leak, said: 0.95, denied: 0.1, ask });
const when = (leak: Level, ask = false): Finding => ({ group: 'when', leak, said: 0.9, denied: 0.15, ask });
const named = (): Finding => ({ group: 'named', leak: 'hardly ever', said: 0.9, denied: 0.3, ask: false });

/** Every finding the reader, the picture and the questions share. Leaks and weights: from memory. */
export const FINDINGS = {
  // Spots and specks
  'coloured-specks': seen('seldom'),
  'white-specks': seen('seldom'),
  'waxy-bits': seen('hardly ever'),
  'clumps-of-pigment': seen('hardly ever'),
  'specks-smear-colour': seen('hardly ever'),
  'orange-spots': seen('hardly ever'),
  'rice-grains': batter('hardly ever'),
  'crunchy-pockets': seen('hardly ever'),
  'liquid-pockets': seen('hardly ever'),
  'coloured-liquid-pockets': seen('hardly ever'),
  'clear-liquid-pockets': seen('hardly ever'),
  pinholes: seen('hardly ever'),
  'water-beads': seen('hardly ever'),
  'fuzzy-growth': seen('hardly ever'),
  // Lines and veins
  'translucent-veins': seen('hardly ever'),
  'crackle-network': seen('hardly ever'),
  'drag-lines': seen('hardly ever'),
  'streaks-of-colour': seen('seldom', false),
  // Where
  'only-in-white': seen('seldom'),
  'only-in-one-colour': seen('seldom'),
  'only-on-surface': seen('seldom'),
  'all-through': seen('seldom', false),
  'same-place-every-slice': seen('seldom', false),
  // Surface
  'powdery-film': seen('hardly ever'),
  'wipes-off': seen('seldom'),
  'crack-on-top': seen('hardly ever'),
  'rose-out-of-mould': seen('hardly ever'),
  'metal-stain': seen('hardly ever'),
  'glitter-oil-pools': seen('hardly ever'),
  'oil-layer': seen('hardly ever'),
  'two-layers': seen('hardly ever'),
  'dark-centre-ring': seen('hardly ever'),
  // Swirl, layers and shape
  'layers-parted': seen('hardly ever'),
  'colours-ran-together': seen('hardly ever'),
  'swirl-sank': seen('hardly ever'),
  'bent-bars': seen('hardly ever'),
  'mica-rubs-off': seen('hardly ever'),
  'deeper-from-heat': seen('hardly ever'),
  'tore-at-unmoulding': seen('hardly ever'),
  'liner-marks': seen('hardly ever'),
  'wrinkled-skin': seen('hardly ever'),
  // Feel and smell
  zaps: felt('hardly ever', false),
  'zaps-in-spots': felt('hardly ever', false),
  'burns-skin': felt('hardly ever', false),
  'high-ph': felt('hardly ever'),
  'brittle-crumbly': felt('seldom'),
  'chalky-white': felt('seldom'),
  'rock-hard': felt('seldom'),
  soft: felt('seldom'),
  greasy: felt('seldom'),
  'sticky-wet': felt('seldom'),
  'stale-smell': felt('hardly ever'),
  'musty-smell': felt('hardly ever'),
  // Colour
  'turned-brown': seen('seldom'),
  'brown-outside-in': seen('hardly ever'),
  'turned-yellow': seen('seldom'),
  'turned-other-hue': seen('seldom', false),
  'colour-changed-in-lye': seen('hardly ever'),
  'colour-vanished': seen('seldom'),
  'colour-bled': seen('hardly ever'),
  'coloured-lather': seen('hardly ever'),
  'too-dark': seen('seldom'),
  'too-pale': seen('seldom'),
  'warm-cast': seen('seldom'),
  'faded-later': seen('seldom'),
  'faded-in-light': seen('hardly ever'),
  'grey-stain': seen('seldom'),
  // In the pot
  'thick-fast': batter('hardly ever'),
  'could-not-swirl': batter('seldom', false),
  'batter-split': batter('hardly ever'),
  'never-thickened': batter('hardly ever'),
  'fizzed-on-metal': batter('hardly ever', false),
  // Done or used
  gelled: done('sometimes'),
  'not-gelled': done('seldom'),
  'ran-hot': done('seldom'),
  'ran-cool': done('seldom'),
  'much-water': done('seldom'),
  'sugar-or-milk': done('seldom'),
  'white-pigment': done('sometimes'),
  'much-white-pigment': done('hardly ever'),
  'dry-pigment': done('hardly ever'),
  'glycerin-carrier': done('seldom'),
  'not-blended-in': done('hardly ever'),
  'much-carrier': done('hardly ever'),
  'much-colour': done('hardly ever'),
  'little-colour': done('hardly ever'),
  'fragrance-added': done('sometimes'),
  'fragrance-vanilla': done('seldom'),
  'fragrance-no-vanilla': done('seldom'),
  'old-oils': done('hardly ever'),
  'rancid-prone-oils': done('seldom', false),
  'hard-oils': done('seldom'),
  'cut-late': done('hardly ever'),
  'low-superfat': done('hardly ever'),
  'high-superfat': done('hardly ever'),
  'lye-mistake': done('hardly ever'),
  'lye-not-dissolved': done('hardly ever'),
  'yellow-oils': done('seldom'),
  'colour-lake': done('seldom'),
  'colour-dye': done('seldom'),
  'colour-botanical': done('seldom'),
  'colour-fragile-mica': done('seldom'),
  'colour-mica': done('sometimes'),
  'colour-oxide': done('sometimes'),
  'colour-neon': done('seldom'),
  'mica-oil-top': done('hardly ever'),
  'metal-contact': done('hardly ever'),
  'damp-place': done('seldom'),
  'light-place': done('hardly ever'),
  'fresh-food': done('seldom'),
  'wire-cutter': done('seldom', false),
  'much-blending': done('hardly ever'),
  'colour-not-for-soap': done('hardly ever'),
  'poured-on-set-layer': done('hardly ever'),
  'swirled-too-long': done('hardly ever'),
  'thin-batter': done('hardly ever'),
  'poured-high': done('hardly ever', false),
  'uneven-drying': done('hardly ever'),
  'dry-mica-top': done('hardly ever'),
  'unmoulded-soon': done('hardly ever'),
  'lined-mould': done('seldom'),
  // When
  'at-once': when('sometimes'),
  'next-day': when('sometimes'),
  'after-days': when('sometimes'),
  'after-weeks': when('sometimes', true),
  'after-months': when('seldom'),
  'when-cut': when('sometimes'),
  // A name the member gave it, right or wrong
  'named-undispersed': named(),
  'named-carrier-pockets': named(),
  'named-crackle': named(),
  'named-rivers': named(),
  'named-too-much-white': named(),
  'named-lye-heavy': named(),
  'named-lye-pockets': named(),
  'named-hard-recipe': named(),
  'named-ash': named(),
  'named-partial-gel': named(),
  'named-vanillin': named(),
  'named-unstable-colour': named(),
  'named-bleed': named(),
  'named-overdose': named(),
  'named-underdose': named(),
  'named-base-cast': named(),
  'named-overheating': named(),
  'named-acceleration': named(),
  'named-ricing': named(),
  'named-separation': named(),
  'named-stearic': named(),
  'named-dos': named(),
  'named-air': named(),
  'named-dew': named(),
  'named-fade': named(),
  'named-discolouration': named(),
  'named-metal': named(),
  'named-mica-pools': named(),
  'named-drag': named(),
  'named-mould': named(),
  'named-layers-apart': named(),
  'named-muddy': named(),
  'named-sunk': named(),
  'named-warped': named(),
  'named-loose-mica': named(),
  'named-gel-shift': named(),
  'named-unsuitable': named(),
  'named-unmoulded-early': named(),
  'named-mould-texture': named(),
  'named-wrinkled': named(),
} as const satisfies Readonly<Record<string, Finding>>;

export type FindingId = keyof typeof FINDINGS;

export const FINDING_IDS = Object.keys(FINDINGS) as readonly FindingId[];
