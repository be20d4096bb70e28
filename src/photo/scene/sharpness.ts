import type { Pixels } from '../decode.ts';
import { edgeBlur } from '../pixels/edge-blur.ts';
import { plane } from '../pixels/plane.ts';

/** Blur assumed where a picture has no edge to judge by, in pixels. */
const UNKNOWN = 2;

/** The blur of a whole picture by its sharpest edges: a standard deviation in its own pixels. Reads green alone. */
export function pictureBlur({ width, height, rgb }: Pixels): number {
  const green = plane(width, height);
  for (let i = 0; i < green.data.length; i++) green.data[i] = rgb[3 * i + 1]! * (100 / 255);
  const blur = edgeBlur(green);
  return Number.isFinite(blur) ? blur : UNKNOWN;
}
