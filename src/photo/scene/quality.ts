import type { Pixels } from '../decode.ts';
import type { LabPlanes } from '../pixels/plane.ts';
import { quantile } from '../pixels/quantile.ts';
import type { PhotoQuality } from '../reading.ts';
import type { Face } from './face.ts';
import { pictureBlur } from './sharpness.ts';

/** A quarter of normal deviates are smaller than this part of their standard deviation. */
const LOWER_QUARTER = 0.3186;
/** The mask [1 -2 1; -2 4 -2; 1 -2 1] has 6 times the noise of a pixel (J. Immerkaer, CVIU 64 (1996) 300-302). */
const GAIN = 6;

/** How good a picture of this bar is. */
export const qualityOf = (photo: Pixels, small: Pixels, face: Face): PhotoQuality => ({
  blur: (pictureBlur(photo) * face.scale) / face.barWidth,
  noise: noiseOf(face.lab, face.inside),
  glare: face.glare,
  light: lightIn(small),
  resolution: Math.max(face.width, face.height),
});

/** The noise of L* where the bar is smoothest, so that its own texture does not count. */
function noiseOf({ l: { width, height, data } }: LabPlanes, inside: Uint8Array): number {
  const sizes = new Float64Array(data.length);
  let count = 0;
  for (let y = 1; y < height - 1; y += 2) {
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      if (!inside[i]) continue;
      const row = (at: number) => data[at - 1]! - 2 * data[at]! + data[at + 1]!;
      sizes[count++] = Math.abs(row(i - width) - 2 * row(i) + row(i + width));
    }
  }
  return quantile(sizes.subarray(0, count), 0.25) / LOWER_QUARTER / GAIN;
}

/** How bright the brightest twentieth of a picture is: 0 black, 1 white. */
export function lightIn({ rgb }: Pixels): number {
  const brightest = new Uint8Array(rgb.length / 3);
  for (let i = 0; i < brightest.length; i++)
    brightest[i] = Math.max(rgb[3 * i]!, rgb[3 * i + 1]!, rgb[3 * i + 2]!);
  return quantile(brightest, 0.95) / 255;
}
