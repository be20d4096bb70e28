import type { Pixels } from '../decode.ts';
import { components } from '../pixels/components.ts';
import { blurred } from '../pixels/gaussian.ts';
import { LINEAR } from '../pixels/lab.ts';
import { grown, shrunk } from '../pixels/nearest.ts';
import { type LabPlanes, type Mask, maskWhere } from '../pixels/plane.ts';
import { quantile } from '../pixels/quantile.ts';

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
  const bright = [0, 1, 2].map(channel => {
    const values = Float32Array.from({ length: count }, (_, i) => LINEAR[rgb[3 * i + channel]!]!);
    return quantile(values, 0.98) * NEAR_BRIGHTEST;
  }) as [number, number, number];
  const mean = blurred(lab.l, 1.5);
  const square = blurred({ ...lab.l, data: lab.l.data.map(value => value * value) }, 1.5);
  const found = maskWhere(
    width,
    height,
    i =>
      bright.every((least, channel) => LINEAR[rgb[3 * i + channel]!]! >= least) &&
      square.data[i]! - mean.data[i]! ** 2 < PLAIN * PLAIN,
  );
  const opened = grown(shrunk(found, 2), 2.5);
  return components(opened, count * LEAST_SHARE).map(({ pixels }) => {
    const patch = maskWhere(width, height, () => false);
    for (const pixel of pixels) patch.data[pixel] = 1;
    return patch;
  });
}
