import type { LikelihoodTable } from './table.ts';

/** What flaws of swirls, layers, moulds and shape bring with them. Every level: from memory. */
export const swirlAndShapeLikelihoods = {
  'layers-apart': {
    'nearly always': ['named-layers-apart', 'layers-parted'],
    often: ['poured-on-set-layer'],
    sometimes: [
      'when-cut',
      'only-in-one-colour',
      'mica-oil-top',
      'dry-mica-top',
      'after-weeks',
      'after-days',
    ],
    seldom: ['powdery-film', 'batter-split'],
  },
  'muddy-swirl': {
    'nearly always': ['named-muddy', 'colours-ran-together'],
    often: ['swirled-too-long'],
    sometimes: ['thin-batter', 'when-cut', 'turned-brown', 'warm-cast', 'all-through'],
    seldom: ['colour-bled', 'never-thickened', 'turned-other-hue'],
  },
  'sunk-swirl': {
    'nearly always': ['named-sunk', 'swirl-sank'],
    often: ['thin-batter', 'poured-high'],
    sometimes: ['when-cut', 'never-thickened', 'colour-mica', 'only-in-one-colour'],
    seldom: ['two-layers'],
  },
  warped: {
    'nearly always': ['named-warped', 'bent-bars'],
    often: ['uneven-drying', 'after-weeks'],
    sometimes: ['after-days', 'much-water', 'soft', 'damp-place', 'unmoulded-soon'],
  },
  'loose-mica': {
    'nearly always': ['named-loose-mica', 'mica-rubs-off'],
    often: ['dry-mica-top', 'colour-mica', 'only-on-surface'],
    sometimes: ['after-weeks', 'coloured-lather'],
    seldom: ['dry-pigment', 'wipes-off'],
  },
  'gel-shifted-colour': {
    'nearly always': ['named-gel-shift', 'deeper-from-heat'],
    often: ['gelled', 'ran-hot', 'too-dark'],
    sometimes: ['next-day', 'all-through', 'not-gelled', 'when-cut', 'turned-other-hue', 'translucent-veins'],
    seldom: ['colour-changed-in-lye', 'dark-centre-ring'],
  },
  'unsuitable-colour': {
    'nearly always': ['named-unsuitable', 'colour-not-for-soap'],
    often: ['colour-dye', 'colour-changed-in-lye'],
    sometimes: [
      'waxy-bits',
      'streaks-of-colour',
      'coloured-specks',
      'colour-vanished',
      'coloured-lather',
      'clumps-of-pigment',
      'next-day',
      'turned-brown',
      'at-once',
      'too-pale',
      'colour-bled',
    ],
    seldom: ['stale-smell', 'greasy'],
  },
  'unmoulded-early': {
    'nearly always': ['named-unmoulded-early', 'unmoulded-soon'],
    often: ['tore-at-unmoulding', 'soft', 'next-day'],
    sometimes: ['sticky-wet', 'not-gelled', 'brittle-crumbly', 'high-superfat'],
    seldom: ['streaks-of-colour'],
  },
  'mould-texture': {
    'nearly always': ['named-mould-texture', 'liner-marks'],
    often: ['lined-mould', 'only-on-surface'],
    sometimes: ['pinholes', 'gelled', 'ran-hot', 'next-day', 'tore-at-unmoulding'],
  },
  'wrinkled-top': {
    'nearly always': ['named-wrinkled', 'wrinkled-skin'],
    often: ['only-on-surface', 'ran-hot', 'gelled'],
    sometimes: ['next-day', 'white-pigment', 'much-water', 'crackle-network', 'named-crackle'],
    seldom: ['crack-on-top', 'powdery-film'],
  },
} as const satisfies LikelihoodTable;
