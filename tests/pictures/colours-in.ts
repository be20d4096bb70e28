import sharp from 'sharp';

const bytesOf = (hex: string) => [1, 3, 5].map(at => Number.parseInt(hex.slice(at, at + 2), 16));
const hexOf = (bytes: Uint8Array | readonly number[]) =>
  `#${[...bytes].map(byte => byte.toString(16).padStart(2, '0')).join('')}`;

/** A picture as pixels. */
export async function decoded(png: Uint8Array) {
  const { data, info } = await sharp(png).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return {
    width: info.width,
    height: info.height,
    /** The colour at a place, `#rrggbb`. */
    at(x: number, y: number): string {
      const first = (y * info.width + x) * 3;
      return hexOf(data.subarray(first, first + 3));
    },
    /** How many pixels have exactly this colour. */
    count(hex: string): number {
      const [r, g, b] = bytesOf(hex);
      let found = 0;
      for (let at = 0; at < data.length; at += 3)
        if (data[at] === r && data[at + 1] === g && data[at + 2] === b) found += 1;
      return found;
    },
  };
}
