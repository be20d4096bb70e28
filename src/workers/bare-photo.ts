import sharp from 'sharp';
import { decodePhoto, type Pixels } from '../photo/decode.ts';
import { readPixels } from '../photo/read.ts';
import type { PhotoReading } from '../photo/reading.ts';

/** A photo as JPEG at reading size, upright, without the place and time that cameras write into it. */
export type BarePhoto = { readonly jpeg: Uint8Array; readonly width: number; readonly height: number };

/** Throws the Refusals of `decodePhoto`. */
export const barePhoto = async ({ bytes }: { bytes: Uint8Array }): Promise<BarePhoto> =>
  bare(await decodePhoto(bytes));

/** A photo read, and the photo itself for whatever comes after: it is decoded once. Throws the Refusals of `decodePhoto`. */
export async function readPhoto({
  bytes,
}: {
  bytes: Uint8Array;
}): Promise<{ readonly reading: PhotoReading; readonly photo: BarePhoto }> {
  const pixels = await decodePhoto(bytes);
  return { reading: await readPixels(pixels), photo: await bare(pixels) };
}

async function bare({ width, height, rgb }: Pixels): Promise<BarePhoto> {
  const jpeg = await sharp(rgb, { raw: { width, height, channels: 3 } })
    .jpeg({ quality: 90 })
    .toBuffer();
  return { jpeg, width, height };
}
