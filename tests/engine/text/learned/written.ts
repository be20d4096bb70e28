import type { Model } from '../../../../src/engine/text/learned/model.ts';
import type { WrittenModel } from '../../../../src/engine/text/learned/written.ts';

/** A model as `modelOf` reads it. */
export function written({ rows, idf, weights, steps, intercepts }: Model): WrittenModel {
  const hashes = [...rows.keys()].flatMap(hash => [hash & 255, (hash >> 8) & 255, hash >> 16]);
  const bytes = [...hashes, ...idf, ...new Uint8Array(weights.buffer)];
  return { steps, intercepts, data: btoa(bytes.map(byte => String.fromCharCode(byte)).join('')) };
}

/** Hashes of words as they are written down: base64, three bytes each, low first. */
export const hashesWritten = (hashes: Iterable<number>): string =>
  btoa([...hashes].map(hash => String.fromCharCode(hash & 255, (hash >> 8) & 255, hash >> 16)).join(''));
