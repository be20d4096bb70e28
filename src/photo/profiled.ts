import { crc32, deflateSync } from 'node:zlib';
import sharp from 'sharp';

const SIGNATURE = 8;
/** A PNG begins with its signature and the chunk IHDR: length, type, 13 bytes and a checksum. */
const AFTER_HEADER = SIGNATURE + 4 + 4 + 13 + 4;

/** Rows of interleaved 8-bit red, green and blue. */
type Rows = { readonly width: number; readonly height: number; readonly rgb: Uint8Array };

/**
 * Pixels that mean colours of `profile` (an ICC profile), brought to sRGB. By way of a PNG that carries the profile
 * (W3C PNG, 11.3.2.3 iCCP), since raw pixels cannot carry one.
 */
export async function inSrgb({ width, height, rgb }: Rows, profile: Uint8Array): Promise<Rows> {
  const plain = await sharp(rgb, { raw: { width, height, channels: 3 } })
    .png({ compressionLevel: 0 })
    .toBuffer();
  const png = Buffer.concat([plain.subarray(0, AFTER_HEADER), iccp(profile), plain.subarray(AFTER_HEADER)]);
  const data = await sharp(png).toColourspace('srgb').removeAlpha().raw({ depth: 'uchar' }).toBuffer();
  return { width, height, rgb: data };
}

/** Name, a zero, the method of compression (0) and the deflated profile. */
function iccp(profile: Uint8Array): Uint8Array {
  const body = Buffer.concat([Buffer.from('iCCPicc\0\0', 'latin1'), deflateSync(profile)]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(body.length - 4, 0);
  body.copy(framed, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}
