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
    'nearly always': ['named-undispersed', 'coloured-specks'],
    often: ['clumps-of-pigment', 'dry-pigment', 'colour-oxide'],
    sometimes: ['orange-spots', 'white-specks', 'specks-smear-colour', 'not-blended-in', 'streaks-of-colour', 'white-pigment', 'when-cut', 'all-through', 'colour-mica', 'coloured-lather'],
    seldom: ['crunchy-pockets', 'drag-lines', 'too-pale'],
  },
  'carrier-pockets': {
    'nearly always': ['named-carrier-pockets', 'coloured-liquid-pockets', 'liquid-pockets'],
    often: ['glycerin-carrier', 'not-blended-in', 'when-cut'],
    sometimes: ['sticky-wet', 'coloured-specks', 'much-carrier', 'colour-mica', 'only-in-one-colour', 'clumps-of-pigment', 'pinholes'],
    seldom: ['greasy', 'oil-layer'],
  },
  'white-pigment-crackle': {
    'nearly always': ['named-crackle', 'crackle-network', 'white-pigment'],
    often: ['only-in-white', 'gelled', 'ran-hot'],
    sometimes: ['translucent-veins', 'much-white-pigment', 'much-water', 'when-cut', 'named-rivers', 'named-too-much-white', 'crack-on-top'],
    seldom: ['brittle-crumbly', 'only-on-surface'],
  },
  'glycerin-rivers': {
    'nearly always': ['named-rivers', 'translucent-veins'],
    often: ['gelled', 'white-pigment', 'ran-hot', 'much-water'],
    sometimes: ['only-in-white', 'when-cut', 'all-through', 'much-white-pigment', 'glycerin-carrier'],
    seldom: ['crackle-network'],
  },
  'excess-white-pigment': {
    'nearly always': ['named-too-much-white', 'white-pigment'],
    often: ['much-white-pigment', 'chalky-white', 'brittle-crumbly', 'only-in-white'],
    sometimes: ['when-cut', 'white-specks', 'powdery-film', 'drag-lines'],
    seldom: ['crackle-network', 'clumps-of-pigment'],
  },
  'lye-excess': {
    'nearly always': ['named-lye-heavy', 'zaps'],
    often: ['burns-skin', 'high-ph', 'lye-mistake', 'brittle-crumbly'],
    sometimes: ['low-superfat', 'all-through', 'chalky-white', 'rock-hard', 'powdery-film', 'crunchy-pockets', 'named-lye-pockets'],
    seldom: ['clear-liquid-pockets', 'crack-on-top'],
  },
  'lye-pockets': {
    'nearly always': ['named-lye-pockets', 'zaps-in-spots'],
    often: ['crunchy-pockets', 'lye-not-dissolved', 'zaps', 'burns-skin', 'clear-liquid-pockets', 'liquid-pockets', 'high-ph'],
    sometimes: ['white-specks', 'when-cut', 'named-lye-heavy', 'never-thickened', 'lye-mistake', 'thick-fast'],
    seldom: ['pinholes', 'clumps-of-pigment'],
  },
  'over-hard-recipe': {
    'nearly always': ['named-hard-recipe', 'brittle-crumbly'],
    often: ['hard-oils', 'rock-hard', 'cut-late', 'when-cut'],
    sometimes: ['low-superfat', 'wire-cutter', 'next-day'],
    seldom: ['drag-lines', 'crack-on-top'],
  },
  'soda-ash': {
    'nearly always': ['named-ash', 'powdery-film', 'only-on-surface'],
    often: ['wipes-off', 'not-gelled'],
    sometimes: ['after-days', 'next-day', 'after-weeks', 'ran-cool', 'too-pale', 'white-specks', 'much-water', 'damp-place', 'chalky-white'],
  },
  'partial-gel': {
    'nearly always': ['named-partial-gel', 'dark-centre-ring'],
    often: ['gelled'],
    sometimes: ['chalky-white', 'when-cut', 'translucent-veins', 'not-gelled', 'same-place-every-slice', 'ran-cool', 'ran-hot', 'too-dark', 'too-pale', 'next-day'],
    seldom: ['powdery-film'],
  },
  'vanillin-browning': {
    'nearly always': ['named-vanillin', 'turned-brown', 'fragrance-vanilla', 'fragrance-added'],
    often: ['after-weeks', 'brown-outside-in'],
    sometimes: ['after-days', 'too-dark', 'only-on-surface', 'turned-yellow', 'named-discolouration', 'next-day'],
  },
  'alkali-unstable-colourant': {
    'nearly always': ['named-unstable-colour', 'colour-changed-in-lye'],
    often: ['colour-botanical', 'at-once', 'colour-vanished', 'colour-fragile-mica'],
    sometimes: ['colour-dye', 'colour-lake', 'next-day', 'turned-brown', 'colour-mica', 'too-pale', 'turned-other-hue', 'faded-later', 'grey-stain', 'warm-cast', 'turned-yellow'],
  },
  'dye-bleed': {
    'nearly always': ['named-bleed', 'colour-bled'],
    often: ['colour-dye', 'after-weeks'],
    sometimes: ['drag-lines', 'turned-other-hue', 'colour-lake', 'only-in-white', 'after-days', 'coloured-lather', 'next-day', 'colour-neon', 'streaks-of-colour', 'colour-botanical'],
    seldom: ['coloured-liquid-pockets', 'translucent-veins'],
  },
  'overdosed-colour': {
    'nearly always': ['named-overdose', 'coloured-lather'],
    often: ['colour-oxide', 'much-colour', 'too-dark'],
    sometimes: ['colour-bled', 'wipes-off', 'colour-mica', 'soft', 'brittle-crumbly', 'greasy', 'coloured-specks', 'colour-dye', 'specks-smear-colour'],
  },
  'underdosed-colour': {
    'nearly always': ['named-underdose', 'too-pale'],
    often: ['little-colour'],
    sometimes: ['colour-mica', 'colour-oxide', 'white-pigment', 'colour-neon', 'warm-cast'],
    seldom: ['faded-later'],
  },
  'base-colour-cast': {
    'nearly always': ['named-base-cast', 'warm-cast'],
    often: ['yellow-oils'],
    sometimes: ['turned-other-hue', 'turned-yellow', 'colour-changed-in-lye', 'white-pigment', 'too-pale', 'all-through', 'colour-oxide'],
    seldom: ['turned-brown', 'too-dark'],
  },
  'overheating-crack': {
    'nearly always': ['named-overheating', 'crack-on-top'],
    often: ['ran-hot', 'gelled', 'rose-out-of-mould'],
    sometimes: ['sugar-or-milk', 'only-on-surface', 'next-day', 'translucent-veins', 'fragrance-added', 'oil-layer', 'dark-centre-ring'],
  },
  acceleration: {
    'nearly always': ['named-acceleration', 'thick-fast'],
    often: ['could-not-swirl', 'fragrance-added', 'at-once'],
    sometimes: ['ran-hot', 'pinholes', 'rock-hard', 'hard-oils', 'much-blending', 'streaks-of-colour'],
    seldom: ['rice-grains'],
  },
  ricing: {
    'nearly always': ['named-ricing', 'rice-grains'],
    often: ['fragrance-added', 'at-once'],
    sometimes: ['batter-split', 'thick-fast', 'white-specks', 'could-not-swirl', 'named-acceleration', 'named-stearic', 'clumps-of-pigment', 'never-thickened'],
  },
  separation: {
    'nearly always': ['named-separation', 'oil-layer'],
    often: ['two-layers', 'batter-split', 'never-thickened', 'greasy'],
    sometimes: ['liquid-pockets', 'white-specks', 'chalky-white', 'fragrance-added', 'clear-liquid-pockets', 'zaps', 'soft', 'next-day', 'brittle-crumbly', 'not-blended-in', 'high-ph', 'rice-grains', 'when-cut', 'ran-cool', 'sticky-wet'],
    seldom: ['pinholes', 'burns-skin', 'waxy-bits', 'crunchy-pockets', 'zaps-in-spots'],
  },
  'stearic-spots': {
    'nearly always': ['named-stearic', 'white-specks'],
    often: ['waxy-bits', 'hard-oils', 'ran-cool'],
    sometimes: ['all-through', 'when-cut', 'rice-grains', 'not-gelled', 'streaks-of-colour'],
    seldom: ['powdery-film', 'never-thickened', 'thick-fast'],
  },
  rancidity: {
    'nearly always': ['named-dos', 'orange-spots'],
    often: ['stale-smell', 'after-months', 'old-oils'],
    sometimes: ['sticky-wet', 'rancid-prone-oils', 'high-superfat', 'after-weeks', 'turned-yellow', 'turned-brown', 'damp-place', 'greasy', 'water-beads'],
  },
  'air-bubbles': {
    'nearly always': ['named-air', 'pinholes'],
    often: ['much-blending'],
    sometimes: ['when-cut', 'all-through', 'thick-fast', 'only-on-surface', 'white-specks'],
  },
  'humidity-dew': {
    'nearly always': ['named-dew', 'water-beads'],
    often: ['damp-place', 'sticky-wet', 'only-on-surface'],
    sometimes: ['after-weeks', 'wipes-off', 'soft', 'glycerin-carrier', 'after-days', 'after-months', 'high-superfat', 'sugar-or-milk'],
  },
  'soft-from-carrier': {
    'nearly always': ['soft'],
    often: ['much-carrier', 'only-in-one-colour', 'greasy', 'sticky-wet'],
    sometimes: ['after-weeks', 'high-superfat', 'glycerin-carrier', 'much-water', 'colour-neon', 'colour-mica', 'next-day', 'water-beads'],
  },
  'light-fade': {
    'nearly always': ['named-fade', 'faded-later'],
    often: ['faded-in-light', 'light-place', 'after-weeks'],
    sometimes: ['colour-neon', 'colour-botanical', 'after-months', 'colour-vanished', 'too-pale', 'colour-lake', 'colour-dye', 'only-on-surface'],
  },
  'fragrance-discolouration': {
    'nearly always': ['named-discolouration', 'fragrance-added'],
    often: ['turned-other-hue', 'fragrance-no-vanilla', 'turned-yellow', 'turned-brown'],
    sometimes: ['at-once', 'after-days', 'next-day', 'after-weeks', 'brown-outside-in', 'warm-cast', 'only-in-white', 'too-dark'],
  },
  'reactive-metal': {
    'nearly always': ['named-metal', 'metal-contact'],
    often: ['metal-stain', 'grey-stain', 'fizzed-on-metal'],
    sometimes: ['turned-brown', 'too-dark', 'streaks-of-colour', 'only-on-surface', 'turned-other-hue', 'next-day', 'same-place-every-slice', 'when-cut', 'stale-smell', 'colour-changed-in-lye'],
    seldom: ['orange-spots', 'coloured-specks'],
  },
  'mica-oil-pools': {
    'nearly always': ['named-mica-pools', 'glitter-oil-pools', 'mica-oil-top'],
    often: ['colour-mica', 'greasy', 'only-on-surface'],
    sometimes: ['oil-layer', 'sticky-wet', 'wipes-off', 'much-carrier', 'next-day', 'soft', 'coloured-liquid-pockets', 'after-days'],
  },
  'wire-drag': {
    'nearly always': ['named-drag', 'drag-lines'],
    often: ['wire-cutter', 'same-place-every-slice', 'when-cut'],
    sometimes: ['only-on-surface', 'streaks-of-colour', 'coloured-specks', 'soft', 'colour-bled'],
  },
  'mould-growth': {
    'nearly always': ['fuzzy-growth', 'named-mould'],
    often: ['fresh-food', 'musty-smell'],
    sometimes: ['damp-place', 'after-weeks', 'grey-stain', 'after-months', 'only-on-surface', 'wipes-off', 'colour-botanical'],
  },
};
