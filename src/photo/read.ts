import type { PhotoReading } from './reading.ts';

/** Reads a photo of soap: see {@link PhotoReading}. Throws the Refusals of `decodePhoto`. */
export async function readPhoto(_bytes: Uint8Array): Promise<PhotoReading> {
  throw new Error('not built yet');
}
