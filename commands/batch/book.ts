import type { Context } from '../../src/conversation/context.ts';
import type { BatchBook } from '../../src/records/batches/index.ts';

/** The asker's own batches. */
export const bookOf = ({ store, asker }: Context): BatchBook => ({ store, member: asker.id });
