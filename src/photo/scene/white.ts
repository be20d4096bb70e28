import type { Pixels } from '../decode.ts';
import { components } from '../pixels/components.ts';
import { blurred } from '../pixels/gaussian.ts';
import { LINEAR } from '../pixels/lab.ts';
import { grown, shrunk } from '../pixels/nearest.ts';
import { type LabPlanes, type Mask, mask, maskWhere, type Plane } from '../pixels/plane.ts';

/** How near the brightest of the picture each channel of white paper must be. */
const NEAR_BRIGHTEST = 0.72;
/** Paper is plain: lightness wanders less than this round each of its pixels (L*). */
const PLAIN = 2.2;
const LEAST_SHARE = 0.012;

/**
 * The smooth patches that send back most of the light in every channel: nothing matt in the picture can be much
 * brighter than white paper in any of them, whatever the colour of the light (E. H. Land and J. J. McCann, "Lightness
 * and retinex theory", JOSA 61 (1971) 1-11). White soap passes as well; which is which is for the caller.
 */
export function whitePatches(small: Pixels, lab: LabPlanes): Mask[] {
  const { width, height, rgb } = small;
  const count = width * height;
  const bright = [0, 1, 2].map(channel => brightest(rgb, channel) * NEAR_BRIGHTEST) as [
    number,
    number,
    number,
  ];
  const mean = blurred(lab.l, 1.5);
  const square = blurred({ ...lab.l, data: lab.l.data.map(value => value * value) }, 1.5);
  const found = maskWhere(
    width,
    height,
    i =>
      LINEAR[rgb[3 * i]!]! >= bright[0] &&
      LINEAR[rgb[3 * i + 1]!]! >= bright[1] &&
      LINEAR[rgb[3 * i + 2]!]! >= bright[2] &&
      square.data[i]! - mean.data[i]! ** 2 < PLAIN * PLAIN,
  );
  const opened = grown(shrunk(found, 2), 2.5);
  return components(opened, count * LEAST_SHARE)
    .filter(({ pixels }) => couldBePaper(lab, pixels))
    .map(({ pixels }) => {
      const patch = mask(width, height);
      for (const pixel of pixels) patch.data[pixel] = 1;
      return patch;
    });
}

/** Light that people see by is bluish, white, yellow or orange, never purple or green: nor is paper in it. */
function couldBePaper({ l, a, b }: LabPlanes, pixels: Int32Array): boolean {
  const mean = ({ data }: Plane) => pixels.reduce((sum, pixel) => sum + data[pixel]!, 0) / pixels.length;
  const [light, red, yellow] = [mean(l), mean(a), mean(b)];
  return light > 66 && yellow > -24 && yellow < 60 && red > -10 && red < 8 + 0.35 * Math.max(0, yellow);
}

/** The linear light that 2 % of the pixels exceed in one channel. */
function brightest(rgb: Uint8Array, channel: number): number {
  const counts = new Uint32Array(256);
  for (let at = channel; at < rgb.length; at += 3) counts[rgb[at]!]! += 1;
  let left = (0.02 * rgb.length) / 3;
  let value = 255;
  for (; value > 0; value--) {
    left -= counts[value]!;
    if (left <= 0) break;
  }
  return LINEAR[value]!;
}
