import { type Export, exportPart } from '../../../src/records/privacy/export.ts';
import type { Store } from '../../../src/records/store.ts';

/** Everything about a member as they are given it, read back. */
export async function exportOf(store: Store, member: string, made: Date): Promise<Export> {
  const { bytes, next } = await exportPart(store, member, { made, from: 0, most: Number.POSITIVE_INFINITY });
  if (next !== undefined) throw new Error('more than fits into one part without a bound');
  return JSON.parse(Buffer.from(bytes).toString('utf8')) as Export;
}
