/** What a job on a photo is given and gives back, for those who ask the workers and may not look into `photo`. */

export { findingOf, PHOTO_FINDING_IDS, type PhotoFindingId } from '../photo/findings/ids.ts';
export { PHOTO_LIMITS } from '../photo/limits.ts';
export type {
  Bar,
  Box,
  MainColour,
  Outline,
  PhotoColours,
  PhotoFinding,
  PhotoQuality,
  PhotoReading,
  Region,
  WhiteReference,
} from '../photo/reading.ts';
export type { BarePhoto } from './bare-photo.ts';
