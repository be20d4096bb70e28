import type { Pixels } from '../decode.ts';
import { edgeBlur } from '../pixels/edge-blur.ts';
import { plane } from '../pixels/plane.ts';

/** Blur assumed where a picture has no edge to judge by, in pixels. */
const UNKNOWN = 2;
/** The mean of two pixels each way has blurred by itself: its variance in pixels of half the size. */
const HALVING_VARIANCE = 1 / 12;

/**
 * The blur of a whole picture by its sharpest edges: a standard deviation in its own pixels. Reads green alone at half
 * the size, where grain makes no edges.
 */
export function pictureBlur({ width, height, rgb }: Pixels): number {
  const green = plane(width >> 1, height >> 1);
  for (let y = 0, i = 0; y < green.height; y++) {
    for (let x = 0; x < green.width; x++, i++) {
      const at = 3 * (2 * y * width + 2 * x) + 1;
      const below = at + 3 * width;
      green.data[i] = (rgb[at]! + rgb[at + 3]! + rgb[below]! + rgb[below + 3]!) * (100 / 255 / 4);
    }
  }
  const blur = edgeBlur(green);
  return Number.isFinite(blur) ? 2 * Math.sqrt(Math.max(0.02, blur * blur - HALVING_VARIANCE)) : UNKNOWN;
}
