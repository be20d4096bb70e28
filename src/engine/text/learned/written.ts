import type { Model } from './model.ts';

/** A model as it is written down: `data` holds, in base64, the hashes (three bytes each, low first), `idf` and `weights`. */
export type WrittenModel = Pick<Model, 'steps' | 'intercepts'> & { readonly data: string };

const HASH_BYTES = 3;

export function hashesOf(written: string): ReadonlySet<number> {
  const text = atob(written);
  const hashes = new Set<number>();
  for (let at = 0; at < text.length; at += HASH_BYTES)
    hashes.add(text.charCodeAt(at) | (text.charCodeAt(at + 1) << 8) | (text.charCodeAt(at + 2) << 16));
  return hashes;
}

export function modelOf({ steps, intercepts, data }: WrittenModel): Model {
  const text = atob(data);
  const bytes = new Uint8Array(text.length);
  for (let at = 0; at < text.length; at += 1) bytes[at] = text.charCodeAt(at);
  const size = bytes.length / (HASH_BYTES + 1 + steps.length);
  const rows = new Map<number, number>();
  for (let row = 0, at = 0; row < size; row += 1, at += HASH_BYTES)
    rows.set(bytes[at]! | (bytes[at + 1]! << 8) | (bytes[at + 2]! << 16), row);
  const idf = bytes.subarray(size * HASH_BYTES, size * (HASH_BYTES + 1));
  return { rows, idf, weights: new Int8Array(bytes.buffer, size * (HASH_BYTES + 1)), steps, intercepts };
}
