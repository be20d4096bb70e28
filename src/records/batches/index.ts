/*
 * Batches that were really made: what was poured, from which jars and lots, what became of it until it was cured, and
 * what the cured bars said of the jars. A member's own, in every group, unless shown to one.
 */

export * from './batch.ts';
export {
  hideBatch,
  keepPhoto,
  noteEvent,
  type PourOutcome,
  pourBatch,
  removeBatch,
  showBatch,
  type ToPour,
  undoPour,
} from './mutations.ts';
export {
  batchAmong,
  batchOf,
  findBatch,
  isShared,
  listBatches,
  listShared,
  nearestBatches,
  photoOf,
  readBatch,
  reminderOf,
  type SharedBatch,
} from './queries.ts';
