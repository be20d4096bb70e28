import sharp from 'sharp';
import { decodePhoto } from '../photo/decode.ts';

/** The photo of an entry as it is kept: everybody sees what was measured. */
export type EntryPhoto = { readonly bytes: Uint8Array; readonly width: number; readonly height: number };

/** Longer side of a kept photo, pixels: enough to measure its colours again, small enough for the records. */
const KEPT_AT = 800;

/**
 * A photo as a JPEG of at most 800 pixels, upright, without the place and time that cameras write into it.
 * Throws the Refusals of `decodePhoto`.
 */
export async function keepEntryPhoto({ bytes }: { bytes: Uint8Array }): Promise<EntryPhoto> {
  const { width, height, rgb } = await decodePhoto(bytes, KEPT_AT);
  // Full colour resolution: halving it, as JPEG usually does, would smear thin swirls.
  const jpeg = await sharp(rgb, { raw: { width, height, channels: 3 } })
    .jpeg({ quality: 88, chromaSubsampling: '4:4:4' })
    .toBuffer();
  return { bytes: jpeg, width, height };
}
