import type { JobName } from './jobs.ts';

/** Jobs that draw what another of the same answer found: done first of what a member waits for, they end that answer. */
export const DRAWING: ReadonlySet<JobName> = new Set<JobName>([
  'markPhoto',
  'challengeCard',
  'matchCard',
  'photoPalette',
  'paletteStrips',
  'swatchCard',
  'fitPlot',
  'labelSheet',
  'batchCard',
  'printBatchCard',
  'timeline',
  'batchPairs',
  'classHandout',
]);
