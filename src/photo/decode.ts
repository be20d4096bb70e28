import sharp from 'sharp';
import { refuse } from '../engine/refusal.ts';
import { PHOTO_LIMITS } from './limits.ts';
import { type PictureFormat, sniff } from './sniff.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'photo-empty': Record<string, never>;
    'photo-too-heavy': { megabytes: number; most: number };
    'photo-too-large': { megapixels: number; most: number };
    'photo-not-a-picture': Record<string, never>;
    'photo-heic': Record<string, never>;
    'photo-moving': Record<string, never>;
    'photo-broken': Record<string, never>;
    'photo-too-small': { least: number };
    'photo-too-thin': { most: number };
  }
}

/** A picture in memory: rows of interleaved 8-bit sRGB, top row first, turned upright. */
export type Pixels = {
  readonly width: number;
  readonly height: number;
  readonly rgb: Uint8Array;
};

// libvips would otherwise open any kind of file (SVG, PDF, ...) that a member names .jpg. This is for the whole process.
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({
  operation: ['VipsForeignLoadJpegBuffer', 'VipsForeignLoadPngBuffer', 'VipsForeignLoadWebpBuffer'],
});
// A photo is read once: libvips' cache would only hold its memory.
sharp.cache(false);

const options = { limitInputPixels: PHOTO_LIMITS.pixels, failOn: 'error', sequentialRead: true } as const;

/**
 * Opens a JPEG, PNG or WebP photo: upright by its EXIF orientation, in sRGB, on white where it is transparent, its
 * longer side brought down to `readAt` pixels (never up). Nothing is written to disk.
 * Throws a Refusal, before any pixel is decoded wherever the header tells: `photo-empty`, `photo-too-heavy`,
 * `photo-not-a-picture`, `photo-heic`, `photo-moving`, `photo-too-large`, `photo-too-small`, `photo-too-thin`; and `photo-broken`.
 */
export async function decodePhoto(bytes: Uint8Array, readAt: number = PHOTO_LIMITS.readAt): Promise<Pixels> {
  const format = sniffed(bytes);
  await checkHeader(bytes, format);
  try {
    const { data, info } = await sharp(bytes, options)
      .rotate()
      .resize(readAt, readAt, { fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#ffffff' })
      .toColourspace('srgb')
      .removeAlpha()
      .raw({ depth: 'uchar' })
      .toBuffer({ resolveWithObject: true });
    return { width: info.width, height: info.height, rgb: data };
  } catch {
    return refuse('photo-broken', {});
  }
}

function sniffed(bytes: Uint8Array): PictureFormat {
  if (bytes.length === 0) refuse('photo-empty', {});
  if (bytes.length > PHOTO_LIMITS.bytes)
    refuse('photo-too-heavy', { megabytes: Math.ceil(bytes.length / 1024 / 1024), most: 25 });
  const format = sniff(bytes);
  if (format === 'heic') refuse('photo-heic', {});
  if (format === undefined) refuse('photo-not-a-picture', {});
  return format;
}

/** What the header claims, checked before a pixel is decoded; libvips holds the decoder to the same claim. */
async function checkHeader(bytes: Uint8Array, format: PictureFormat): Promise<void> {
  const header = await sharp(bytes, { ...options, limitInputPixels: false })
    .metadata()
    .catch(() => refuse('photo-broken', {}));
  if (header.format !== format) refuse('photo-broken', {});
  const { width, height, pages = 1 } = header;
  if (pages > 1) refuse('photo-moving', {});
  const pixels = width * height;
  if (pixels > PHOTO_LIMITS.pixels)
    refuse('photo-too-large', { megapixels: Math.ceil(pixels / 1e6), most: PHOTO_LIMITS.pixels / 1e6 });
  if (Math.min(width, height) < PHOTO_LIMITS.least) refuse('photo-too-small', { least: PHOTO_LIMITS.least });
  if (Math.max(width, height) > PHOTO_LIMITS.slender * Math.min(width, height))
    refuse('photo-too-thin', { most: PHOTO_LIMITS.slender });
}
