/** The kinds of picture file we can name from their first bytes. */
export type PictureFormat = 'jpeg' | 'png' | 'webp' | 'heif';

const text = (bytes: Uint8Array, from: number, to: number) =>
  String.fromCharCode(...bytes.subarray(from, Math.min(to, bytes.length)));

const HEIF_BRANDS = new Set(['heic', 'heix', 'hevc', 'hevx', 'heim', 'heis', 'mif1', 'msf1', 'avif', 'avis']);
/** Brands looked at beside the main one: writers name a handful. */
const MOST_BRANDS = 16;

/**
 * Tells a picture file by its signature, whatever its name says: JPEG (ITU-T T.81), PNG (W3C PNG, section 5.2),
 * WebP (RFC 9649), HEIF, which is HEIC or AVIF (ISO/IEC 14496-12 file type box; its main brand or any that it says it
 * is compatible with). Undefined for anything else.
 */
export function sniff(bytes: Uint8Array): PictureFormat | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'jpeg';
  if (text(bytes, 0, 8) === '\x89PNG\r\n\x1a\n') return 'png';
  if (text(bytes, 0, 4) === 'RIFF' && text(bytes, 8, 12) === 'WEBP') return 'webp';
  if (text(bytes, 4, 8) === 'ftyp' && brands(bytes).some(brand => HEIF_BRANDS.has(brand))) return 'heif';
  return undefined;
}

/** The main brand, and after the four bytes of its version the compatible ones, up to the end of the box. */
function brands(bytes: Uint8Array): string[] {
  const length = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(0);
  const end = Math.min(length, bytes.length, 16 + 4 * MOST_BRANDS);
  const found = [text(bytes, 8, 12)];
  for (let at = 16; at + 4 <= end; at += 4) found.push(text(bytes, at, at + 4));
  return found;
}
