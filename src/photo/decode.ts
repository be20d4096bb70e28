import sharp, { type Sharp } from 'sharp';
import { Refusal, refuse } from '../engine/refusal.ts';
import { withHeic } from './heic.ts';
import { PHOTO_LIMITS } from './limits.ts';
import { inSrgb } from './profiled.ts';
import { type PictureFormat, sniff } from './sniff.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'photo-empty': Record<string, never>;
    'photo-too-heavy': { megabytes: number; most: number };
    'photo-too-large': { megapixels: number; most: number };
    'photo-not-a-picture': Record<string, never>;
    'photo-heif-unread': Record<string, never>;
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
  operation: [
    'VipsForeignLoadJpegBuffer',
    'VipsForeignLoadPngBuffer',
    'VipsForeignLoadWebpBuffer',
    // AVIF whole, of HEIC the header alone: sharp comes without a decoder for HEVC.
    'VipsForeignLoadHeifBuffer',
  ],
});
// A photo is read once: libvips' cache would only hold its memory.
sharp.cache(false);

const options = { limitInputPixels: PHOTO_LIMITS.pixels, failOn: 'error', sequentialRead: true } as const;

type Header = {
  readonly format: 'heic' | 'any';
  readonly page: number;
  readonly icc: Uint8Array | undefined;
};

/**
 * Opens a JPEG, PNG, WebP, HEIC or AVIF photo: upright by its EXIF orientation or its own, in sRGB, on white where it is
 * transparent, its longer side brought down to `readAt` pixels (never up). Of several pictures in a HEIC or AVIF the main
 * one. Nothing is written to disk.
 * Throws a Refusal, before any pixel is decoded wherever the header tells: `photo-empty`, `photo-too-heavy`,
 * `photo-not-a-picture`, `photo-heif-unread`, `photo-moving`, `photo-too-large`, `photo-too-small`, `photo-too-thin`; and
 * `photo-broken`.
 */
export async function decodePhoto(bytes: Uint8Array, readAt: number = PHOTO_LIMITS.readAt): Promise<Pixels> {
  const format = sniffed(bytes);
  const header = await checkHeader(bytes, format);
  try {
    if (header.format !== 'heic')
      return await brought(sharp(bytes, { ...options, page: header.page }).rotate(), readAt);
    const photo = await withHeic(bytes, ({ data, ...raw }) =>
      brought(sharp(data, { raw, limitInputPixels: PHOTO_LIMITS.pixels }), readAt),
    );
    checkSize(photo);
    return header.icc ? await inSrgb(photo, header.icc) : photo;
  } catch (error) {
    if (error instanceof Refusal) throw error;
    return unreadable(format);
  }
}

/** A picture at reading size, in sRGB by its profile, where it carries one. */
async function brought(picture: Sharp, readAt: number): Promise<Pixels> {
  const { data, info } = await picture
    .resize(readAt, readAt, { fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb')
    .removeAlpha()
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgb: data };
}

/** Of a HEIF nobody here can tell whether it is broken or coded in a way that we have no decoder for. */
const unreadable = (format: PictureFormat): never =>
  refuse(format === 'heif' ? 'photo-heif-unread' : 'photo-broken', {});

function sniffed(bytes: Uint8Array): PictureFormat {
  if (bytes.length === 0) refuse('photo-empty', {});
  if (bytes.length > PHOTO_LIMITS.bytes)
    refuse('photo-too-heavy', { megabytes: Math.ceil(bytes.length / 1024 / 1024), most: 25 });
  return sniff(bytes) ?? refuse('photo-not-a-picture', {});
}

/** What the header claims, checked before a pixel is decoded; the decoders are held to the same claim. */
async function checkHeader(bytes: Uint8Array, format: PictureFormat): Promise<Header> {
  const header = await sharp(bytes, { ...options, limitInputPixels: false })
    .metadata()
    .catch(() => unreadable(format));
  if (header.format !== format) unreadable(format);
  if (format !== 'heif' && (header.pages ?? 1) > 1) refuse('photo-moving', {});
  checkSize(header);
  if (format !== 'heif') return { format: 'any', page: 0, icc: undefined };
  const { compression, pagePrimary = 0, icc } = header;
  if (compression !== 'hevc' && compression !== 'av1') unreadable(format);
  return { format: compression === 'hevc' ? 'heic' : 'any', page: pagePrimary, icc };
}

function checkSize({ width, height }: { readonly width: number; readonly height: number }): void {
  const pixels = width * height;
  if (pixels > PHOTO_LIMITS.pixels)
    refuse('photo-too-large', { megapixels: Math.ceil(pixels / 1e6), most: PHOTO_LIMITS.pixels / 1e6 });
  if (Math.min(width, height) < PHOTO_LIMITS.least) refuse('photo-too-small', { least: PHOTO_LIMITS.least });
  if (Math.max(width, height) > PHOTO_LIMITS.slender * Math.min(width, height))
    refuse('photo-too-thin', { most: PHOTO_LIMITS.slender });
}
