/** The kinds of picture file we can name from their first bytes. */
export type PictureFormat = 'jpeg' | 'png' | 'webp' | 'heic';

const text = (bytes: Uint8Array, from: number, to: number) =>
  String.fromCharCode(...bytes.subarray(from, Math.min(to, bytes.length)));

const HEIF_BRANDS = new Set(['heic', 'heix', 'hevc', 'hevx', 'heim', 'heis', 'mif1', 'msf1', 'avif', 'avis']);

/**
 * Tells a picture file by its signature, whatever its name says: JPEG (ITU-T T.81), PNG (W3C PNG, section 5.2),
 * WebP (RFC 9649), HEIF (ISO/IEC 14496-12 file type box). Undefined for anything else.
 */
export function sniff(bytes: Uint8Array): PictureFormat | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'jpeg';
  if (text(bytes, 0, 8) === '\x89PNG\r\n\x1a\n') return 'png';
  if (text(bytes, 0, 4) === 'RIFF' && text(bytes, 8, 12) === 'WEBP') return 'webp';
  if (text(bytes, 4, 8) === 'ftyp' && HEIF_BRANDS.has(text(bytes, 8, 12))) return 'heic';
  return undefined;
}
