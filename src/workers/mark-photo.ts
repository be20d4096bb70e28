import sharp from 'sharp';
import { decodePhoto } from '../photo/decode.ts';
import type { PhotoReading } from '../photo/reading.ts';
import { drawMarkedPhoto } from '../pictures/marked-photo.ts';

export type PhotoToMark = {
  readonly bytes: Uint8Array;
  readonly reading: Pick<PhotoReading, 'bars' | 'findings'>;
  readonly title: string;
  readonly labels: readonly string[];
};

/**
 * The photo with what was seen outlined and numbered, as PNG: finding `i` of the reading gets number `i + 1` and
 * `labels[i]` in the legend. A finding whose label is missing is left out. Throws the Refusals of `decodePhoto`.
 */
export async function markPhoto({ bytes, reading, title, labels }: PhotoToMark): Promise<Uint8Array> {
  const { width, height, rgb } = await decodePhoto(bytes);
  const jpeg = await sharp(rgb, { raw: { width, height, channels: 3 } })
    .jpeg({ quality: 85 })
    .toBuffer();
  return drawMarkedPhoto({
    photo: { bytes: jpeg, width, height },
    title,
    bars: reading.bars.map(bar => bar.outline),
    marks: reading.findings.flatMap(({ region }, i) => {
      const label = labels[i];
      return label === undefined ? [] : [{ number: i + 1, outlines: region.outlines, label }];
    }),
  });
}
