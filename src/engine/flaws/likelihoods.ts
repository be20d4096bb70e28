import type { CauseId } from './cause.ts';
import type { FindingId } from './findings.ts';
import type { Level } from './levels.ts';

type Row = { readonly [L in Level]?: readonly FindingId[] };

/**
 * How often each cause brings a finding with it, among makers who describe it in their own words.
 * What is not named comes only as often as the finding's leak. Every level: from memory.
 */
export const LIKELIHOODS: Readonly<Record<CauseId, Row>> = {
  'undispersed-pigment': {
    'nearly always': ['coloured-specks'],
    often: ['clumps-of-pigment', 'dry-pigment', 'named-undispersed', 'colour-oxide'],
    sometimes: ['white-specks', 'specks-smear-colour', 'not-blended-in', 'streaks-of-colour', 'white-pigment', 'when-cut', 'all-through', 'colour-mica', 'coloured-lather'],
    seldom: ['drag-lines', 'too-pale'],
  },
  'carrier-pockets': {
    'nearly always': ['coloured-liquid-pockets', 'liquid-pockets'],
    often: ['glycerin-carrier', 'not-blended-in', 'named-carrier-pockets', 'when-cut'],
    sometimes: ['sticky-wet', 'coloured-specks', 'much-carrier', 'colour-mica', 'only-in-one-colour', 'clumps-of-pigment', 'pinholes'],
    seldom: ['greasy', 'oil-layer'],
  },
  'white-pigment-crackle': {
    'nearly always': ['crackle-network', 'white-pigment'],
    often: ['only-in-white', 'gelled', 'ran-hot', 'named-crackle'],
    sometimes: ['much-white-pigment', 'much-water', 'when-cut', 'named-rivers', 'named-too-much-white', 'crack-on-top'],
    seldom: ['brittle-crumbly', 'translucent-veins', 'only-on-surface'],
  },
  'glycerin-rivers': {
    'nearly always': ['translucent-veins'],
    often: ['gelled', 'white-pigment', 'ran-hot', 'named-rivers', 'much-water'],
    sometimes: ['only-in-white', 'when-cut', 'all-through', 'much-white-pigment', 'glycerin-carrier', 'crackle-network'],
  },
  'excess-white-pigment': {
    'nearly always': ['white-pigment'],
    often: ['much-white-pigment', 'chalky-white', 'brittle-crumbly', 'named-too-much-white', 'only-in-white'],
    sometimes: ['when-cut', 'white-specks', 'powdery-film', 'drag-lines'],
    seldom: ['crackle-network', 'clumps-of-pigment'],
  },
  'lye-excess': {
    'nearly always': ['zaps'],
    often: ['burns-skin', 'high-ph', 'lye-mistake', 'named-lye-heavy', 'brittle-crumbly'],
    sometimes: ['low-superfat', 'all-through', 'chalky-white', 'rock-hard', 'powdery-film', 'crunchy-pockets', 'named-lye-pockets'],
    seldom: ['clear-liquid-pockets', 'crack-on-top'],
  },
  'lye-pockets': {
    'nearly always': ['zaps-in-spots'],
    often: ['crunchy-pockets', 'lye-not-dissolved', 'zaps', 'burns-skin', 'clear-liquid-pockets', 'liquid-pockets', 'named-lye-pockets', 'high-ph'],
    sometimes: ['white-specks', 'when-cut', 'named-lye-heavy', 'never-thickened', 'lye-mistake', 'thick-fast'],
    seldom: ['pinholes', 'clumps-of-pigment'],
  },
  'over-hard-recipe': {
    'nearly always': ['brittle-crumbly'],
    often: ['hard-oils', 'rock-hard', 'cut-late', 'named-hard-recipe', 'when-cut'],
    sometimes: ['low-superfat', 'wire-cutter', 'next-day'],
    seldom: ['drag-lines', 'crack-on-top'],
  },
  'soda-ash': {
    'nearly always': ['powdery-film', 'only-on-surface'],
    often: ['wipes-off', 'named-ash', 'not-gelled'],
    sometimes: ['after-days', 'next-day', 'after-weeks', 'ran-cool', 'too-pale', 'white-specks', 'much-water', 'damp-place', 'chalky-white'],
  },
  'partial-gel': {
    'nearly always': ['dark-centre-ring'],
    often: ['named-partial-gel', 'gelled'],
    sometimes: ['when-cut', 'translucent-veins', 'not-gelled', 'same-place-every-slice', 'ran-cool', 'ran-hot', 'too-dark', 'too-pale', 'next-day'],
  },
  'vanillin-browning': {
    'nearly always': ['turned-brown', 'fragrance-vanilla', 'fragrance-added'],
    often: ['named-vanillin', 'after-weeks', 'brown-outside-in'],
    sometimes: ['after-days', 'too-dark', 'only-on-surface', 'turned-yellow', 'named-discolouration', 'next-day'],
  },
  'alkali-unstable-colourant': {
    'nearly always': ['colour-changed-in-lye'],
    often: ['colour-botanical', 'at-once', 'named-unstable-colour', 'colour-vanished', 'colour-fragile-mica'],
    sometimes: ['colour-dye', 'colour-lake', 'next-day', 'turned-brown', 'colour-mica', 'too-pale', 'turned-other-hue', 'faded-later', 'grey-stain', 'warm-cast', 'turned-yellow'],
  },
  'dye-bleed': {
    'nearly always': ['colour-bled'],
    often: ['colour-dye', 'named-bleed', 'after-weeks'],
    sometimes: ['colour-lake', 'only-in-white', 'after-days', 'coloured-lather', 'next-day', 'colour-neon', 'streaks-of-colour', 'colour-botanical'],
  },
  'overdosed-colour': {
    'nearly always': ['coloured-lather'],
    often: ['much-colour', 'too-dark', 'named-overdose'],
    sometimes: ['colour-oxide', 'colour-mica', 'soft', 'brittle-crumbly', 'greasy', 'coloured-specks', 'colour-dye', 'specks-smear-colour'],
  },
  'underdosed-colour': {
    'nearly always': ['too-pale'],
    often: ['little-colour', 'named-underdose'],
    sometimes: ['colour-mica', 'colour-oxide', 'white-pigment', 'colour-neon', 'warm-cast'],
    seldom: ['faded-later'],
  },
  'base-colour-cast': {
    'nearly always': ['warm-cast'],
    often: ['yellow-oils', 'named-base-cast'],
    sometimes: ['turned-other-hue', 'turned-yellow', 'colour-changed-in-lye', 'white-pigment', 'too-pale', 'all-through', 'colour-oxide'],
  },
  'overheating-crack': {
    'nearly always': ['crack-on-top'],
    often: ['ran-hot', 'gelled', 'rose-out-of-mould', 'named-overheating'],
    sometimes: ['sugar-or-milk', 'only-on-surface', 'next-day', 'translucent-veins', 'fragrance-added', 'oil-layer', 'dark-centre-ring'],
  },
  acceleration: {
    'nearly always': ['thick-fast'],
    often: ['could-not-swirl', 'fragrance-added', 'at-once', 'named-acceleration'],
    sometimes: ['ran-hot', 'pinholes', 'rice-grains', 'rock-hard', 'hard-oils', 'much-blending', 'streaks-of-colour'],
  },
  ricing: {
    'nearly always': ['rice-grains'],
    often: ['fragrance-added', 'at-once', 'named-ricing'],
    sometimes: ['batter-split', 'thick-fast', 'white-specks', 'could-not-swirl', 'named-acceleration', 'named-stearic', 'clumps-of-pigment'],
  },
  separation: {
    'nearly always': ['oil-layer'],
    often: ['two-layers', 'batter-split', 'never-thickened', 'named-separation', 'greasy'],
    sometimes: ['fragrance-added', 'clear-liquid-pockets', 'zaps', 'soft', 'next-day', 'brittle-crumbly', 'not-blended-in', 'high-ph', 'rice-grains', 'when-cut', 'ran-cool', 'sticky-wet', 'crunchy-pockets'],
  },
  'stearic-spots': {
    'nearly always': ['white-specks'],
    often: ['waxy-bits', 'hard-oils', 'ran-cool', 'named-stearic'],
    sometimes: ['all-through', 'when-cut', 'rice-grains', 'thick-fast', 'never-thickened', 'not-gelled', 'streaks-of-colour'],
    seldom: ['powdery-film'],
  },
  rancidity: {
    'nearly always': ['orange-spots'],
    often: ['stale-smell', 'after-months', 'named-dos', 'old-oils'],
    sometimes: ['sticky-wet', 'rancid-prone-oils', 'high-superfat', 'after-weeks', 'turned-yellow', 'turned-brown', 'damp-place', 'greasy', 'water-beads'],
  },
  'air-bubbles': {
    'nearly always': ['pinholes'],
    often: ['much-blending', 'named-air'],
    sometimes: ['when-cut', 'all-through', 'thick-fast', 'only-on-surface', 'white-specks'],
  },
  'humidity-dew': {
    'nearly always': ['water-beads'],
    often: ['damp-place', 'sticky-wet', 'named-dew', 'only-on-surface'],
    sometimes: ['after-weeks', 'wipes-off', 'soft', 'glycerin-carrier', 'after-days', 'after-months', 'high-superfat', 'sugar-or-milk'],
  },
  'soft-from-carrier': {
    'nearly always': ['soft'],
    often: ['much-carrier', 'only-in-one-colour', 'greasy', 'sticky-wet'],
    sometimes: ['after-weeks', 'high-superfat', 'glycerin-carrier', 'much-water', 'colour-neon', 'colour-mica', 'next-day', 'water-beads'],
  },
  'light-fade': {
    'nearly always': ['faded-later'],
    often: ['faded-in-light', 'light-place', 'after-weeks', 'named-fade'],
    sometimes: ['colour-neon', 'colour-botanical', 'after-months', 'colour-vanished', 'too-pale', 'colour-lake', 'colour-dye', 'only-on-surface'],
  },
  'fragrance-discolouration': {
    'nearly always': ['fragrance-added'],
    often: ['turned-other-hue', 'fragrance-no-vanilla', 'turned-yellow', 'named-discolouration', 'turned-brown'],
    sometimes: ['at-once', 'after-days', 'next-day', 'after-weeks', 'brown-outside-in', 'warm-cast', 'only-in-white', 'too-dark'],
  },
  'reactive-metal': {
    'nearly always': ['metal-contact'],
    often: ['metal-stain', 'grey-stain', 'named-metal', 'fizzed-on-metal'],
    sometimes: ['only-on-surface', 'turned-other-hue', 'next-day', 'same-place-every-slice', 'when-cut', 'stale-smell', 'colour-changed-in-lye'],
  },
  'mica-oil-pools': {
    'nearly always': ['glitter-oil-pools', 'mica-oil-top'],
    often: ['colour-mica', 'named-mica-pools', 'greasy', 'only-on-surface'],
    sometimes: ['oil-layer', 'sticky-wet', 'wipes-off', 'much-carrier', 'next-day', 'soft', 'coloured-liquid-pockets', 'after-days'],
  },
  'wire-drag': {
    'nearly always': ['drag-lines'],
    often: ['wire-cutter', 'same-place-every-slice', 'when-cut', 'named-drag'],
    sometimes: ['only-on-surface', 'streaks-of-colour', 'coloured-specks', 'soft', 'colour-bled'],
  },
  'mould-growth': {
    'nearly always': ['fuzzy-growth', 'named-mould'],
    often: ['fresh-food', 'musty-smell'],
    sometimes: ['damp-place', 'after-weeks', 'grey-stain', 'after-months', 'only-on-surface', 'wipes-off', 'colour-botanical'],
  },
};
