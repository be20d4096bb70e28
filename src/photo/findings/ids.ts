import type { FindingId } from '../../engine/flaws/findings.ts';

/**
 * Everything the network was taught, in the order of its maps, and the finding of the engine each is evidence of.
 * What has no cause among the engine's is shown and not weighed.
 */
export const TAUGHT = {
  'coloured-specks': 'coloured-specks',
  smears: 'streaks-of-colour',
  'white-specks': 'white-specks',
  'translucent-veins': 'translucent-veins',
  'crackle-network': 'crackle-network',
  'powdery-film': 'powdery-film',
  'dark-centre-ring': 'dark-centre-ring',
  'orange-spots': 'orange-spots',
  pinholes: 'pinholes',
  crack: 'crack-on-top',
  'brown-outside-in': 'brown-outside-in',
  'colour-bled': 'colour-bled',
  'drag-lines': 'drag-lines',
  'layer-gap': undefined,
  'wrinkled-top': undefined,
  'mould-dimples': undefined,
} as const satisfies Readonly<Record<string, FindingId | undefined>>;

export type TaughtId = keyof typeof TAUGHT;

export const TAUGHT_IDS = Object.keys(TAUGHT) as readonly TaughtId[];

/** Small dark dots that may be holes or specks of colour are told as one. */
export const PIT_OR_SPECK = 'pit-or-speck';

export type PhotoFindingId = TaughtId | typeof PIT_OR_SPECK;

export const PHOTO_FINDING_IDS: readonly PhotoFindingId[] = [...TAUGHT_IDS, PIT_OR_SPECK];

/** The finding of the engine that a sight in the picture is evidence of. */
export const findingOf = (id: PhotoFindingId): FindingId | undefined =>
  id === PIT_OR_SPECK ? undefined : TAUGHT[id];
