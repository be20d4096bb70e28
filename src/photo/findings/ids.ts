import type { FindingId } from '../../engine/flaws/findings.ts';

/**
 * Everything the picture can show, and the finding of the engine it is evidence of.
 * A centre lighter than its rim has no cause among the engine's: it is shown and not weighed.
 */
export const PHOTO_FINDINGS = {
  'coloured-specks': 'coloured-specks',
  'white-specks': 'white-specks',
  'orange-spots': 'orange-spots',
  pinholes: 'pinholes',
  'translucent-veins': 'translucent-veins',
  'crackle-network': 'crackle-network',
  'drag-lines': 'drag-lines',
  'crack-on-top': 'crack-on-top',
  'powdery-film': 'powdery-film',
  'dark-centre-ring': 'dark-centre-ring',
  'light-centre-ring': undefined,
  'colour-bled': 'colour-bled',
  'brown-outside-in': 'brown-outside-in',
} as const satisfies Readonly<Record<string, FindingId | undefined>>;

export type PhotoFindingId = keyof typeof PHOTO_FINDINGS;

export const PHOTO_FINDING_IDS = Object.keys(PHOTO_FINDINGS) as readonly PhotoFindingId[];

/** The finding of the engine that a sight in the picture is evidence of. */
export const findingOf = (id: PhotoFindingId): FindingId | undefined => PHOTO_FINDINGS[id];
